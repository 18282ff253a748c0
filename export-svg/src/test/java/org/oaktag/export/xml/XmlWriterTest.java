package org.oaktag.export.xml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

/** The rules of XML 1.0 (fifth edition), sections 2.2, 2.4 and 3.3.3. */
class XmlWriterTest {

    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

    @Test
    void elements_are_nested_and_text_stays_on_its_line() {
        String document = XmlWriter.xml()
                .begin("svg")
                .attribute("width", 12.5)
                .begin("g")
                .begin("text")
                .text("front")
                .end()
                .begin("path")
                .attribute("d", "M 0 0")
                .end()
                .end()
                .end()
                .document();
        assertThat(document)
                .isEqualTo(
                        HEAD
                                + "<svg width=\"12.5\">\n  <g>\n    <text>front</text>\n    <path d=\"M 0 0\"/>\n  </g>\n</svg>\n");
    }

    @Test
    void markup_is_escaped_in_text_and_in_attributes() {
        assertThat(XmlWriter.xml()
                        .begin("a")
                        .attribute("b", "<\"&>")
                        .text("</a>&amp;")
                        .end()
                        .document())
                .isEqualTo(HEAD + "<a b=\"&lt;&quot;&amp;&gt;\">&lt;/a&gt;&amp;amp;</a>\n");
    }

    @Test
    void white_space_survives_in_attributes() {
        assertThat(XmlWriter.xml().begin("a").attribute("b", "x\ty\nz").end().document())
                .isEqualTo(HEAD + "<a b=\"x&#9;y&#10;z\"/>\n");
    }

    @Test
    void what_xml_cannot_hold_is_replaced_and_what_it_can_is_kept() {
        assertThat(XmlWriter.xml()
                        .begin("a")
                        .text("\u0000\u001B\uFFFE\uD800!\u00E9\uD83E\uDDE5")
                        .end()
                        .document())
                .isEqualTo(HEAD + "<a>\uFFFD\uFFFD\uFFFD\uFFFD!\u00E9\uD83E\uDDE5</a>\n");
    }

    @Test
    void an_attribute_after_content_is_refused() {
        XmlWriter xml = XmlWriter.xml().begin("a").text("b");
        assertThatThrownBy(() -> xml.attribute("c", "d"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("attribute 'c' must follow the beginning of its element");
    }

    @Test
    void a_document_with_an_open_element_is_refused() {
        XmlWriter xml = XmlWriter.xml().begin("svg").begin("g").end();
        assertThatThrownBy(xml::document)
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("every element must be ended, still open: [svg]");
    }
}

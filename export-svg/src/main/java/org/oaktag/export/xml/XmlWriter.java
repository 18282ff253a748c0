package org.oaktag.export.xml;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Writes well-formed XML 1.0, whatever the text: markup is escaped, and a character that XML cannot hold becomes
 * U+FFFD.
 *
 * <pre>{@code
 * XmlWriter svg = XmlWriter.xml();
 * svg.begin("text").attribute("x", "5").text("front & back").end();
 * svg.document();   // the ampersand is escaped
 * }</pre>
 *
 * <p>Lines end in a line feed. Not thread-safe.
 */
public final class XmlWriter {

    private static final String INDENT = "  ";

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private final boolean indented;
    private State state = State.BETWEEN;

    private enum State {
        /** Inside a start tag. */
        TAG,
        /** After text, in an element that must stay on its line. */
        TEXT,
        /** Between elements. */
        BETWEEN
    }

    private XmlWriter(String prolog, boolean indented) {
        this.indented = indented;
        out.append(prolog).append('\n');
    }

    /** Begins an XML document. */
    public static XmlWriter xml() {
        return new XmlWriter("<?xml version=\"1.0\" encoding=\"UTF-8\"?>", true);
    }

    /** Begins a document that a browser reads as HTML, and anything else as XML. */
    public static XmlWriter html() {
        return new XmlWriter("<!DOCTYPE html>", true);
    }

    /** Begins such a document without white space of our own, for running text whose words stand in elements. */
    public static XmlWriter compactHtml() {
        return new XmlWriter("<!DOCTYPE html>", false);
    }

    /** Begins an element. */
    public XmlWriter begin(String element) {
        closeTag();
        if (state == State.BETWEEN) {
            indent();
        }
        out.append('<').append(element);
        open.push(element);
        state = State.TAG;
        return this;
    }

    /**
     * Adds an attribute to the element just begun.
     *
     * @throws IllegalStateException if anything else was written since
     */
    public XmlWriter attribute(String name, String value) {
        if (state != State.TAG) {
            throw new IllegalStateException("attribute '" + name + "' must follow the beginning of its element");
        }
        out.append(' ').append(name).append("=\"");
        escape(value);
        out.append('"');
        return this;
    }

    /** Adds an attribute in millimetres. */
    public XmlWriter attribute(String name, double value) {
        return attribute(name, Decimal.text(value));
    }

    /** Writes text into the element just begun; an empty text keeps it from being closed in its start tag. */
    public XmlWriter text(String text) {
        if (state == State.TAG) {
            out.append('>');
        }
        escape(text);
        state = State.TEXT;
        return this;
    }

    /**
     * Writes a style sheet or a script into the element just begun, whose content HTML reads as it stands.
     *
     * @throws IllegalArgumentException if it has a {@code <} or an {@code &}, which XML would read as markup
     */
    public XmlWriter verbatim(String content) {
        if (content.indexOf('<') >= 0 || content.indexOf('&') >= 0) {
            throw new IllegalArgumentException("a style sheet or script must have neither '<' nor '&'");
        }
        text("");
        out.append(content);
        return this;
    }

    /** Ends the element begun last. */
    public XmlWriter end() {
        String element = open.pop();
        if (state == State.TAG) {
            out.append("/>");
        } else {
            if (state == State.BETWEEN) {
                indent();
            }
            out.append("</").append(element).append('>');
        }
        breakLine();
        state = State.BETWEEN;
        return this;
    }

    /**
     * Returns the document.
     *
     * @throws IllegalStateException if an element was not ended
     */
    public String document() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("every element must be ended, still open: " + open);
        }
        return out.toString();
    }

    private void indent() {
        if (indented) {
            out.append(INDENT.repeat(open.size()));
        }
    }

    private void breakLine() {
        if (indented) {
            out.append('\n');
        }
    }

    private void closeTag() {
        if (state == State.TAG) {
            out.append('>');
            breakLine();
            state = State.BETWEEN;
        }
    }

    private void escape(String text) {
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\t', '\n', '\r' -> out.append("&#").append(c).append(';');
                default -> out.appendCodePoint(isXml(c) ? c : 0xFFFD);
            }
        });
    }

    /** XML 1.0, production 2 (Char), less the three white-space characters that are escaped before. */
    private static boolean isXml(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || (c >= 0x10000 && c <= 0x10FFFF);
    }
}

package org.oaktag.export.svg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.sheet.PaperSheet;
import org.oaktag.export.sheet.Placement;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.xml.Decimal;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.geometry.Bounds;

/**
 * A printout as one page for a browser, from which it is printed at true scale: it says how large the paper is and that
 * the browser is to add no margin. It refers to nothing outside itself and carries no script. Immutable.
 *
 * <pre>{@code
 * HtmlPages.of(Printout.tiled(top, allowances, Tiling.on(Paper.A4))).writeTo(Path.of("to-print.html"));
 * }</pre>
 *
 * @param text the page, to be stored as UTF-8; it is well-formed XML as well
 */
public record HtmlPages(String text) {
    /** Refuses null. */
    public HtmlPages {
        Objects.requireNonNull(text, "text");
    }

    /** Writes a printout, whose sheets must all be of one size. */
    public static HtmlPages of(Printout printout) {
        PaperSheet first = printout.sheets().get(0);
        for (PaperSheet sheet : printout.sheets()) {
            if (sheet.width() != first.width() || sheet.height() != first.height()) {
                throw new IllegalArgumentException("sheets of a page must be of one size, " + size(first) + ", got '"
                        + sheet.title() + "' of " + size(sheet));
            }
        }
        XmlWriter xml = XmlWriter.html();
        xml.begin("html").attribute("xmlns", "http://www.w3.org/1999/xhtml").attribute("lang", "en");
        head(xml, printout, first);
        xml.begin("body");
        definitions(xml, printout);
        printout.sheets().forEach(sheet -> write(xml, sheet));
        return new HtmlPages(xml.end().end().document());
    }

    private static String size(PaperSheet sheet) {
        return Decimal.text(sheet.width()) + "mm " + Decimal.text(sheet.height()) + "mm";
    }

    private static void head(XmlWriter xml, Printout printout, PaperSheet first) {
        xml.begin("head");
        xml.begin("meta").attribute("charset", "utf-8").end();
        xml.begin("meta")
                .attribute("http-equiv", "Content-Security-Policy")
                .attribute("content", "default-src 'none'; style-src 'unsafe-inline'")
                .end();
        xml.begin("title").text(printout.title()).end();
        xml.begin("meta")
                .attribute("name", "description")
                .attribute("content", printout.description())
                .end();
        // Without @page the browser adds margins and shrinks the sheet to fit between them.
        xml.begin("style")
                .text("@page{size:" + size(first) + ";margin:0} html,body{margin:0;padding:0}"
                        + " .sheet{display:block;break-after:page;break-inside:avoid;background:#fff}"
                        + " .sheet:last-child{break-after:auto}"
                        + " .definitions{position:absolute;width:0;height:0}"
                        + " @media screen{body{background:#d8dade} .sheet{margin:0 auto 5mm}}")
                .end();
        xml.end();
    }

    /** What is drawn on several sheets is written once. */
    private static void definitions(XmlWriter xml, Printout printout) {
        Map<String, Figure> figures = new LinkedHashMap<>();
        printout.sheets().forEach(sheet -> sheet.placements().forEach(each -> figures.put(each.id(), each.figure())));
        xml.begin("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("class", "definitions")
                .attribute("aria-hidden", "true");
        xml.begin("defs");
        printout.paints().forEach(paint -> SvgInk.define(paint, xml));
        figures.forEach((id, figure) -> {
            xml.begin("g").attribute("id", id);
            SvgInk.write(figure, xml);
            xml.end();
        });
        xml.end().end();
    }

    private static void write(XmlWriter xml, PaperSheet sheet) {
        xml.begin("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("class", "sheet")
                .attribute("width", Decimal.text(sheet.width()) + "mm")
                .attribute("height", Decimal.text(sheet.height()) + "mm")
                .attribute("viewBox", "0 0 " + Decimal.text(sheet.width()) + " " + Decimal.text(sheet.height()))
                .attribute("role", "img")
                .attribute("font-family", Font.FAMILY)
                .attribute("stroke-linejoin", "round");
        xml.begin("title").text(sheet.title()).end();
        for (Placement placement : sheet.placements()) {
            write(xml, placement);
        }
        xml.end();
    }

    private static void write(XmlWriter xml, Placement placement) {
        // An inner svg of the size of its own view shows what lies inside it and moves nothing.
        Optional<Bounds> window = placement.window();
        window.ifPresent(box -> xml.begin("svg")
                .attribute("x", box.minX())
                .attribute("y", box.minY())
                .attribute("width", box.width())
                .attribute("height", box.height())
                .attribute(
                        "viewBox",
                        Decimal.text(box.minX()) + " " + Decimal.text(box.minY()) + " " + Decimal.text(box.width())
                                + " " + Decimal.text(box.height())));
        xml.begin("use").attribute("href", "#" + placement.id());
        if (placement.dx() != 0 || placement.dy() != 0) {
            xml.attribute("x", placement.dx()).attribute("y", placement.dy());
        }
        placement.layer().ifPresent(layer -> xml.attribute("data-layer", layer));
        xml.end();
        window.ifPresent(box -> xml.end());
    }

    /**
     * Stores the page as UTF-8.
     *
     * @throws IOException if the file cannot be written
     */
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, text);
    }
}

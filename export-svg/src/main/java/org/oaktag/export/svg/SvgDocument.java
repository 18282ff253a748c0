package org.oaktag.export.svg;

import java.util.List;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.xml.Decimal;
import org.oaktag.export.xml.XmlWriter;

/** Frames figures into an SVG document whose user unit is the millimetre. */
final class SvgDocument {

    private final XmlWriter xml = XmlWriter.xml();

    private SvgDocument() {}

    /** Begins a document of a size in mm, on white paper, as {@link #beginBare}. */
    public static SvgDocument begin(
            double width, double height, String title, String description, List<ClothPaint> paints) {
        SvgDocument document = beginBare(width, height, title, description, paints);
        document.xml
                .begin("rect")
                .attribute("width", width)
                .attribute("height", height)
                .attribute("fill", Colours.PAPER)
                .end();
        return document;
    }

    /**
     * Begins a document of a size in mm, on nothing.
     *
     * @param title what a reader announces
     * @param description what it is for, in a sentence
     * @param paints the textures that the figures may use
     */
    public static SvgDocument beginBare(
            double width, double height, String title, String description, List<ClothPaint> paints) {
        SvgDocument document = new SvgDocument();
        XmlWriter xml = document.xml;
        xml.begin("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("version", "1.1")
                .attribute("width", Decimal.text(width) + "mm")
                .attribute("height", Decimal.text(height) + "mm")
                .attribute("viewBox", "0 0 " + Decimal.text(width) + " " + Decimal.text(height))
                .attribute("font-family", Font.FAMILY)
                .attribute("stroke-linejoin", "round");
        xml.begin("title").text(title).end();
        xml.begin("desc").text(description).end();
        xml.begin("defs");
        paints.forEach(paint -> SvgInk.define(paint, xml));
        xml.end();
        return document;
    }

    /** Draws a figure, moved by so much, as a group under that identifier. */
    public SvgDocument draw(String id, Figure figure, double dx, double dy) {
        xml.begin("g").attribute("id", id);
        if (dx != 0 || dy != 0) {
            xml.attribute("transform", "translate(" + Decimal.text(dx) + " " + Decimal.text(dy) + ")");
        }
        SvgInk.write(figure, xml);
        xml.end();
        return this;
    }

    /** Begins a group of what can be shown and hidden together: a layer of that name. */
    public SvgDocument beginLayer(String id, String name) {
        xml.begin("g").attribute("id", id).attribute("data-layer", name);
        return this;
    }

    /** Ends the group. */
    public SvgDocument endLayer() {
        xml.end();
        return this;
    }

    /** Ends the document and returns it. */
    public String end() {
        return xml.end().document();
    }
}

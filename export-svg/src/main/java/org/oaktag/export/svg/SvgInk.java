package org.oaktag.export.svg;

import java.util.stream.Collectors;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.xml.Decimal;
import org.oaktag.export.xml.PathData;
import org.oaktag.export.xml.XmlWriter;

/** Writes what is drawn as SVG elements. */
final class SvgInk {

    private SvgInk() {}

    /** Writes the elements of a figure in order. */
    static void write(Figure figure, XmlWriter xml) {
        for (Ink ink : figure.inks()) {
            // The family is sealed; a switch over its types needs a later Java.
            if (ink instanceof Stroke stroke) {
                write(stroke, xml);
            } else if (ink instanceof Fill fill) {
                write(fill, xml);
            } else if (ink instanceof Label label) {
                write(label, xml);
            }
        }
    }

    /** Writes the definition that the paint refers to, if any. */
    static void define(ClothPaint paint, XmlWriter xml) {
        if (paint.texture().isEmpty()) {
            return;
        }
        xml.begin("pattern")
                .attribute("id", paint.id())
                .attribute("width", ClothPaint.TILE)
                .attribute("height", ClothPaint.TILE)
                .attribute("patternUnits", "userSpaceOnUse");
        xml.begin("rect")
                .attribute("width", ClothPaint.TILE)
                .attribute("height", ClothPaint.TILE)
                .attribute("fill", paint.colour())
                .end();
        xml.begin("path")
                .attribute("d", paint.texture())
                .attribute("fill", "none")
                .attribute("stroke", Colours.INK)
                .attribute("stroke-width", ClothPaint.TEXTURE_WIDTH)
                .attribute("stroke-opacity", ClothPaint.TEXTURE_OPACITY)
                .end();
        xml.end();
    }

    private static void write(Stroke stroke, XmlWriter xml) {
        LineType type = stroke.type();
        xml.begin("path");
        stroke.edge()
                .ifPresent(id -> xml.attribute("id", id)
                        .attribute("data-length-mm", stroke.path().length()));
        xml.attribute("d", PathData.of(stroke.path()))
                .attribute("fill", "none")
                .attribute("stroke", type.colour())
                .attribute("stroke-width", type.width());
        if (!type.dashes().isEmpty()) {
            xml.attribute(
                    "stroke-dasharray",
                    type.dashes().stream().map(Decimal::text).collect(Collectors.joining(" ")));
        }
        xml.end();
    }

    private static void write(Fill fill, XmlWriter xml) {
        xml.begin("path").attribute("d", PathData.of(fill.outline()) + " Z").attribute("fill", fill.paint());
        if (fill.opacity() < 1) {
            xml.attribute("fill-opacity", fill.opacity());
        }
        xml.end();
    }

    /** One text element for each line. */
    private static void write(Label label, XmlWriter xml) {
        for (Label.Placed placed : label.placed()) {
            double x = placed.at().x();
            double y = placed.at().y();
            Font font = placed.line().font();
            xml.begin("text").attribute("x", x).attribute("y", y);
            double angle = label.box().angle();
            if (angle != 0) {
                xml.attribute(
                        "transform",
                        "rotate(" + Decimal.text(Math.toDegrees(angle)) + " " + Decimal.text(x) + " " + Decimal.text(y)
                                + ")");
            }
            xml.attribute("font-size", font.size());
            if (font.bold()) {
                xml.attribute("font-weight", "bold");
            }
            xml.attribute("text-anchor", anchor(label.align()))
                    .attribute("fill", placed.line().colour())
                    .text(placed.line().text())
                    .end();
        }
    }

    private static String anchor(Label.Align align) {
        return switch (align) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
    }
}

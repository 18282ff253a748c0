package org.oaktag.export.svg.drawing;

import org.oaktag.export.svg.layout.Box;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Lettering in its place. Immutable.
 *
 * @param block what it says
 * @param box the room it takes
 * @param align how its lines lie in the box
 */
public record Label(TextBlock block, Box box, Align align) implements Ink {

    /** How lines lie in their box. */
    public enum Align {
        /** Flush left. */
        START("start", -0.5),
        /** Centred. */
        MIDDLE("middle", 0),
        /** Flush right. */
        END("end", 0.5);

        private final String anchor;
        private final double share;

        Align(String anchor, double share) {
            this.anchor = anchor;
            this.share = share;
        }
    }

    /** Returns the label with its lines aligned in another way. */
    public Label aligned(Align other) {
        return new Label(block, box, other);
    }

    @Override
    public Bounds bounds() {
        return box.bounds();
    }

    /** Writes one text element for each line. */
    @Override
    public void writeTo(XmlWriter xml) {
        Vector along = Vector.polar(1, box.angle());
        Vector down = along.rightNormal();
        double fromTop = 0;
        for (TextLine line : block.lines()) {
            Font font = line.font();
            Point at = box.center()
                    .plus(along.times(align.share * box.width()))
                    .plus(down.times(fromTop + font.baseline() - block.height() / 2));
            xml.begin("text").attribute("x", at.x()).attribute("y", at.y());
            if (box.angle() != 0) {
                xml.attribute(
                        "transform",
                        "rotate(" + Decimal.text(Math.toDegrees(box.angle())) + " " + Decimal.text(at.x()) + " "
                                + Decimal.text(at.y()) + ")");
            }
            xml.attribute("font-size", font.size());
            if (font.bold()) {
                xml.attribute("font-weight", "bold");
            }
            xml.attribute("text-anchor", align.anchor)
                    .attribute("fill", line.colour())
                    .text(line.text())
                    .end();
            fromTop += font.lineHeight();
        }
    }
}

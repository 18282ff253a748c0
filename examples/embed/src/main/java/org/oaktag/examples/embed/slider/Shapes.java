package org.oaktag.examples.embed.slider;

import java.awt.geom.Path2D;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** Hands outlines to Java 2D curve by curve: both draw cubics, so nothing is flattened and nothing is lost. */
final class Shapes {

    private Shapes() {}

    static Path2D of(Piece piece) {
        Path outline = piece.outline().path();
        Path2D shape = new Path2D.Double(Path2D.WIND_NON_ZERO, outline.curves().size() + 2);
        Point start = outline.start();
        shape.moveTo(start.x(), start.y());
        for (Curve curve : outline.curves()) {
            Point end = curve.end();
            if (curve instanceof Cubic cubic) {
                Point first = cubic.control1();
                Point second = cubic.control2();
                shape.curveTo(first.x(), first.y(), second.x(), second.y(), end.x(), end.y());
            } else {
                shape.lineTo(end.x(), end.y());
            }
        }
        shape.closePath();
        return shape;
    }
}

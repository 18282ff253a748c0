package org.oaktag.lay;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;

/** An outline as a polygon whose corners lie on it. Nothing that is drawn, measured or cut is made of it. */
final class Chords {

    /** The greatest distance of a chord from its curve, mm. */
    private static final double TOLERANCE = 0.15;

    private Chords() {}

    /** Returns the corners in order, the first not repeated. */
    static List<Point> of(Outline outline) {
        List<Point> corners = new ArrayList<>();
        for (Curve curve : outline.path().curves()) {
            int parts = curve instanceof Cubic cubic ? parts(cubic) : 1;
            for (int i = 0; i < parts; i++) {
                corners.add(curve.pointAt((double) i / parts));
            }
        }
        return corners;
    }

    /** Returns the greatest distance of the polygon from the outline, mm: none where all is straight. */
    static double error(Outline outline) {
        return outline.path().curves().stream().anyMatch(Cubic.class::isInstance) ? TOLERANCE : 0;
    }

    /**
     * A chord over 1/n of the parameter lies within max|r''| / (8 n²) of its curve, and |r''| is at most six times the
     * greater bend of the control polygon.
     */
    private static int parts(Cubic cubic) {
        double bend = Math.max(
                bend(cubic.start(), cubic.control1(), cubic.control2()),
                bend(cubic.control1(), cubic.control2(), cubic.end()));
        return (int) Math.max(1, Math.ceil(Math.sqrt(6 * bend / (8 * TOLERANCE))));
    }

    private static double bend(Point a, Point b, Point c) {
        double x = a.x() - 2 * b.x() + c.x();
        double y = a.y() - 2 * b.y() + c.y();
        return Math.sqrt(x * x + y * y);
    }
}

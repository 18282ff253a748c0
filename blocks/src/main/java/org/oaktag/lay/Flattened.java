package org.oaktag.lay;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Point;

/**
 * A polygon that holds an outline and everything within a margin of it, and errs outwards by at most about
 * {@link #CHORD} at smooth places: the exact parallel curve a chord's error further out, its curves replaced by chords.
 */
final class Flattened {

    /** The greatest distance of a chord from its curve, mm. */
    static final double CHORD = 0.15;

    private static final double OFFSET_TOLERANCE = 0.01;

    /** Tips are cut off not much further out than the margin, and without an arc. */
    private static final CornerStyle CORNERS = CornerStyle.mitre(1.5);

    private Flattened() {}

    /** Returns the corners in order, the first not repeated. */
    static List<Point> around(Outline outline, double margin) {
        double distance = margin + CHORD + OFFSET_TOLERANCE;
        List<Point> corners = new ArrayList<>();
        for (Curve curve : OutlineOffset.outward(outline, distance, CORNERS, OFFSET_TOLERANCE)
                .outline()
                .path()
                .curves()) {
            int parts = curve instanceof Cubic cubic ? parts(cubic) : 1;
            for (int i = 0; i < parts; i++) {
                corners.add(curve.pointAt((double) i / parts));
            }
        }
        return corners;
    }

    /**
     * A chord over 1/n of the parameter lies within max|r''| / (8 n²) of its curve, and |r''| is at most six times the
     * greater bend of the control polygon.
     */
    private static int parts(Cubic cubic) {
        double bend = Math.max(
                bend(cubic.start(), cubic.control1(), cubic.control2()),
                bend(cubic.control1(), cubic.control2(), cubic.end()));
        return (int) Math.max(1, Math.ceil(Math.sqrt(6 * bend / (8 * CHORD))));
    }

    private static double bend(Point a, Point b, Point c) {
        double x = a.x() - 2 * b.x() + c.x();
        double y = a.y() - 2 * b.y() + c.y();
        return Math.sqrt(x * x + y * y);
    }
}

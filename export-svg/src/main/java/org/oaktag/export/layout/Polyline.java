package org.oaktag.export.layout;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * A path as straight segments, good enough to keep a label off it. Nothing that is drawn or measured is made of it.
 *
 * <pre>{@code
 * Polyline rough = Polyline.of(front.path(ARMHOLE));
 * rough.points().get(0).equals(front.path(ARMHOLE).start());   // = true
 * }</pre>
 *
 * @param points the corners in order
 */
public record Polyline(List<Point> points) {

    /** The greatest distance of a segment from its curve, mm. */
    private static final double TOLERANCE = 0.05;

    /** Copies the list. */
    public Polyline {
        points = List.copyOf(points);
    }

    /** Returns a path as segments within 0.05 mm of it. */
    public static Polyline of(Path path) {
        List<Point> points = new ArrayList<>();
        points.add(path.start());
        for (Curve curve : path.curves()) {
            int parts = curve instanceof Cubic cubic ? parts(cubic) : 1;
            for (int i = 1; i < parts; i++) {
                points.add(curve.pointAt((double) i / parts));
            }
            points.add(curve.end());
        }
        return new Polyline(points);
    }

    /**
     * A chord of 1/n of the parameter lies within max|r''| / (8 n²) of the curve, and |r''| within 6 times the
     * polygon's bend.
     */
    private static int parts(Cubic cubic) {
        double bend = Math.max(
                bend(cubic.start(), cubic.control1(), cubic.control2()),
                bend(cubic.control1(), cubic.control2(), cubic.end()));
        return (int) Math.max(1, Math.ceil(Math.sqrt(6 * bend / (8 * TOLERANCE))));
    }

    private static double bend(Point a, Point b, Point c) {
        return Math.hypot(a.x() - 2 * b.x() + c.x(), a.y() - 2 * b.y() + c.y());
    }
}

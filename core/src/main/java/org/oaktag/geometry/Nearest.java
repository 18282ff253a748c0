package org.oaktag.geometry;

import java.util.Objects;

/**
 * The point of a curve that lies nearest to a given point.
 *
 * <pre>{@code
 * Nearest foot = Line.of(Point.of(0, 0), Point.of(100, 0)).nearest(Point.of(25, 8));
 * foot.t();          // = 0.25
 * foot.distance();   // = 8.0
 * }</pre>
 *
 * <p>No place of the curve is nearer by more than rounding. The parameter is looser than the distance: near the centre
 * of curvature many places are nearly as near.
 *
 * @param t its parameter, 0 to 1
 * @param point the point on the curve
 * @param distance from the given point, mm
 */
public record Nearest(double t, Point point, double distance) {
    /** Refuses null. */
    public Nearest {
        Objects.requireNonNull(point, "point");
    }
}

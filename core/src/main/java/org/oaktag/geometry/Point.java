package org.oaktag.geometry;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A place on the plane: millimetres, x to the right and y down. Immutable and thread-safe.
 *
 * <pre>{@code
 * Point sideNeck = Point.of(72.5, 0);
 * Point shoulder = sideNeck.plus(Vector.polar(135, Math.toRadians(20)));
 * sideNeck.distanceTo(shoulder);   // = 135.0
 * shoulder.y();                    // = 46.17
 * }</pre>
 *
 * <p>A point is not a {@link Vector}: points are subtracted to give a vector, and moved by one. A negative zero is
 * stored as zero, so that equal places are equal points, and so is a coordinate nearer to zero than 1e-60 mm.
 *
 * <p><b>Error.</b> Rounding alone: coordinates about 1 m lie 1e-13 mm apart, those at the limit 1.2e-4 mm. A result
 * beyond the limit is refused with an {@link IllegalArgumentException}, whatever made it.
 *
 * @param x across, mm, within -1e12 to 1e12
 * @param y down, mm, within -1e12 to 1e12
 */
public record Point(double x, double y) {
    public static final Point ORIGIN = new Point(0, 0);

    /** @throws IllegalArgumentException if a coordinate is not a number within -1e12 to 1e12 mm */
    public Point {
        x = Plane.coordinate("x", x);
        y = Plane.coordinate("y", y);
    }

    /**
     * Returns the point (x, y).
     *
     * @throws IllegalArgumentException if a coordinate is out of range
     */
    public static Point of(double x, double y) {
        return new Point(x, y);
    }

    /** By hand: joins of curves, edges and seams are compared by it all the time. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other
                || (other instanceof Point point && Double.compare(x, point.x) == 0 && Double.compare(y, point.y) == 0);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(x) + Double.hashCode(y);
    }

    /** Returns this point moved by the vector. */
    public Point plus(Vector shift) {
        return new Point(x + shift.x(), y + shift.y());
    }

    /** Returns the vector from the other point to this one. */
    public Vector minus(Point other) {
        return new Vector(x - other.x, y - other.y);
    }

    /** Returns the straight distance to the other point, mm. */
    public double distanceTo(Point other) {
        double dx = other.x - x;
        double dy = other.y - y;
        return Math.sqrt(dx * dx + dy * dy);
    }

    /**
     * Returns the point the share {@code t} of the way to the other: exactly this at 0, exactly the other at 1; t is
     * not limited.
     */
    public Point lerp(Point other, double t) {
        if (t == 1) {
            return Objects.requireNonNull(other, "other");
        }
        return new Point(x + t * (other.x - x), y + t * (other.y - y));
    }

    /** Returns the point halfway to the other. */
    public Point midpoint(Point other) {
        return new Point(0.5 * (x + other.x), 0.5 * (y + other.y));
    }

    /** Tells whether the other point lies within the tolerance (mm) of this one. */
    public boolean isCloseTo(Point other, double tolerance) {
        return distanceTo(other) <= tolerance;
    }

    /** Returns the image of this point. */
    public Point transformed(Transform transform) {
        return transform.apply(this);
    }
}

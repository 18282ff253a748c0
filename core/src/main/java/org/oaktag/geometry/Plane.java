package org.oaktag.geometry;

/** The limits of the plane, and the checks that keep every argument inside them. */
final class Plane {
    /**
     * Greatest coordinate, mm: a million kilometres, whose sixth power, the greatest that the package takes, is still
     * far from overflow, and at which a {@code double} tells 1.2e-4 mm apart.
     */
    static final double LIMIT = 1e12;

    /**
     * A coordinate nearer to zero than this, mm, is zero: the squares and products of what lies beyond it do not vanish
     * in a double.
     */
    static final double LEAST = 1e-60;

    private Plane() {}

    /**
     * Returns the coordinate, zero if it is next to nothing, and never a negative zero, which would make equal points
     * differ.
     */
    static double coordinate(String name, double value) {
        if (!(Math.abs(value) <= LIMIT)) {
            throw new IllegalArgumentException(name + " must lie within -1e12 to 1e12 mm, got " + value);
        }
        return Math.abs(value) < LEAST ? 0 : value;
    }

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be finite, got " + value);
        }
        return value;
    }

    static double positive(String name, double value) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be positive and finite, got " + value);
        }
        return value;
    }

    static double parameter(double t) {
        if (!(t >= 0 && t <= 1)) {
            throw new IllegalArgumentException("t must lie within 0 to 1, got " + t);
        }
        return t;
    }

    static void interval(double t0, double t1) {
        parameter(t0);
        parameter(t1);
        if (t0 > t1) {
            throw new IllegalArgumentException("t0 must not exceed t1, got " + t0 + " and " + t1);
        }
    }

    /** Returns the distance clamped to 0 to length, forgiving what rounding may have added. */
    static double distance(double distance, double length, double slack) {
        if (!(distance >= -slack && distance <= length + slack)) {
            throw new IllegalArgumentException(
                    "distance must lie within 0 to " + length + " mm (the length), got " + distance);
        }
        return Math.min(Math.max(distance, 0), length);
    }
}

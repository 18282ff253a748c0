package org.oaktag.geometry;

/** Cubics written down as polynomials, for tests that know where these meet. */
final class Polynomial {
    private Polynomial() {}

    /** The graph of y = c0 + c1 x + c2 x² + c3 x³ from one x to another, run at an even speed in x. */
    static Cubic graph(double from, double to, double... c) {
        double h = to - from;
        double q0 = c[0] + from * (c[1] + from * (c[2] + from * c[3]));
        double q1 = h * (c[1] + from * (2 * c[2] + from * 3 * c[3]));
        double q2 = h * h * (c[2] + from * 3 * c[3]);
        double q3 = h * h * h * c[3];
        return ofPowers(Vector.of(from, q0), Vector.of(h, q1), Vector.of(0, q2), Vector.of(0, q3));
    }

    /** The cubic d + c t + b t² + a t³. */
    static Cubic ofPowers(Vector d, Vector c, Vector b, Vector a) {
        Point start = Point.ORIGIN.plus(d);
        return new Cubic(
                start,
                start.plus(c.times(1.0 / 3)),
                start.plus(c.times(2).plus(b).times(1.0 / 3)),
                start.plus(c).plus(b).plus(a));
    }
}

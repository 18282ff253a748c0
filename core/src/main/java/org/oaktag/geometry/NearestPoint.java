package org.oaktag.geometry;

/**
 * The nearest point of a cubic: the least of the distances at the ends and at every root of the quintic
 * {@code f(t) = (r(t) - p) . r'(t)}, the derivative of half the distance squared.
 *
 * <p>The extrema of f are tried as well: where the point sits on the evolute f touches zero without crossing it, and
 * rounding may lift it off.
 *
 * <p><b>Error.</b> Every candidate is a point of the curve, so no distance is less than the true one; at a simple root
 * t is known to the last bits, and what t lacks changes the distance in the second order only.
 */
final class NearestPoint {
    private NearestPoint() {}

    static Nearest of(Cubic cubic, Point point) {
        double[] quintic = quintic(cubic, point);
        Nearest best = at(cubic, 0, point);
        double[] stationary = Polynomials.stationary(quintic);
        for (double t : Polynomials.roots(quintic, stationary)) {
            best = nearer(best, at(cubic, t, point));
        }
        for (double t : stationary) {
            best = nearer(best, at(cubic, t, point));
        }
        return nearer(best, at(cubic, 1, point));
    }

    private static Nearest nearer(Nearest best, Nearest candidate) {
        return candidate.distance() < best.distance() ? candidate : best;
    }

    private static Nearest at(Cubic cubic, double t, Point point) {
        Point on = cubic.pointAt(t);
        return new Nearest(t, on, on.distanceTo(point));
    }

    /** The Bernstein coefficients of (r - p) . r' / 3: a cubic times a quadratic, degree 5. */
    private static double[] quintic(Cubic cubic, Point point) {
        Vector a0 = cubic.start().minus(point);
        Vector a1 = cubic.control1().minus(point);
        Vector a2 = cubic.control2().minus(point);
        Vector a3 = cubic.end().minus(point);
        Vector d0 = a1.minus(a0);
        Vector d1 = a2.minus(a1);
        Vector d2 = a3.minus(a2);
        return new double[] {
            a0.dot(d0),
            (3 * a1.dot(d0) + 2 * a0.dot(d1)) / 5,
            (3 * a2.dot(d0) + 6 * a1.dot(d1) + a0.dot(d2)) / 10,
            (a3.dot(d0) + 6 * a2.dot(d1) + 3 * a1.dot(d2)) / 10,
            (2 * a3.dot(d1) + 3 * a2.dot(d2)) / 5,
            a3.dot(d2)
        };
    }
}

package org.oaktag.geometry;

import java.util.List;

/** Where a curve meets itself, and where neighbouring curves of one path meet other than at their join. */
final class SelfContacts {
    /**
     * Neighbours that leave their join at a small angle are within the tolerance of each other this far from it, mm.
     */
    private static final double JOIN = 1e-5;

    private SelfContacts() {}

    /**
     * Returns the double point of a cubic, if it has one; not the end of one that ends where it starts, which is a
     * join, and nothing of one on a line, see {@link Folds}.
     *
     * <p>With {@code r = a t³ + b t² + c t + d}, s = t + u and p = t u, the condition r(t) = r(u), t other than u, is
     * {@code a (s² - p) + b s + c = 0}. Its cross product with a gives s and its scalar product with a gives p; t and u
     * are the roots of {@code x² - s x + p}.
     */
    static List<Contact> of(Cubic cubic) {
        if (cubic.start().equals(cubic.end())) {
            return List.of();
        }
        Vector a = cubic.thirdDerivative().times(1.0 / 6);
        Vector b = cubic.secondDerivativeAt(0).times(0.5);
        Vector c = cubic.derivativeAt(0);
        double s = -c.cross(a) / b.cross(a);
        double p = s * s + b.times(Double.isFinite(s) ? s : 0).plus(c).dot(a) / a.dot(a);
        double half = 0.25 * s * s - p;
        if (!(half > 0)) {
            return List.of();
        }
        double t = 0.5 * s - Math.sqrt(half);
        double u = 0.5 * s + Math.sqrt(half);
        return t >= 0 && u <= 1 ? List.of(Contact.point(t, u)) : List.of();
    }

    /**
     * Returns the contacts of two curves but for their join: end of the first at the start of the second, or the other
     * way round.
     */
    static List<Contact> between(Curve a, Curve b, boolean joined, boolean joinedBack) {
        if ((joined || joinedBack) && runsOneWay(a, b)) {
            return List.of();
        }
        return CurveContacts.between(a, b).stream()
                .filter(c -> !(c.isPoint() && joined && isNear(a, c.t0(), 1) && isNear(b, 0, c.u0())))
                .filter(c -> !(c.isPoint() && joinedBack && isNear(a, 0, c.t0()) && isNear(b, c.u0(), 1)))
                .toList();
    }

    private static boolean isNear(Curve curve, double t0, double t1) {
        return curve.lengthBetween(t0, t1, 0.1 * JOIN) <= JOIN;
    }

    /** Tells whether both curves run forward along one line throughout, so that neighbours meet at their join only. */
    private static boolean runsOneWay(Curve a, Curve b) {
        Cubic p = Cubic.from(a);
        Cubic q = Cubic.from(b);
        Vector way =
                a.end().equals(b.start()) ? q.end().minus(p.start()) : p.end().minus(q.start());
        return isForward(p, way) && isForward(q, way);
    }

    private static boolean isForward(Cubic cubic, Vector way) {
        return cubic.control1().minus(cubic.start()).dot(way) > 0
                && cubic.control2().minus(cubic.control1()).dot(way) > 0
                && cubic.end().minus(cubic.control2()).dot(way) > 0;
    }
}

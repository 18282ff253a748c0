package org.oaktag.geometry;

/**
 * The cubic that joins two paths with their directions and, where that can be done, their curvatures.
 *
 * <p><b>Formula.</b> With handles p and q the curvatures at the ends of a cubic are {@code 2/3 (T0 x D - q T0 x T1) /
 * p²} and {@code 2/3 (D x T1 - p T0 x T1) / q²}, D from start to end. Set to k0 and k1 these are two quadratics, solved
 * by Newton's method from the handle of a circular arc, {@code chord / (3 cos²(turn/4))}. They may have no solution, or
 * one with handles that would loop or bulge: then the arc's handles are taken and the curvatures are what they become.
 */
final class Blend {
    private static final int NEWTON_STEPS = 30;

    private Blend() {}

    static Cubic between(Path before, Path after) {
        Point a = before.end();
        Point b = after.start();
        Vector gap = b.minus(a);
        double chord = gap.length();
        if (chord == 0) {
            throw new IllegalArgumentException("a blend needs a gap to bridge, got two paths that meet at " + a);
        }
        Vector t0 = before.endDirection();
        Vector t1 = after.startDirection();
        double k0 = before.curvatureAt(before.length());
        double k1 = after.curvatureAt(0);
        double arc = arcHandle(chord, t0.angleTo(t1));
        double p = arc;
        double q = arc;
        double turn = t0.cross(t1);
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double f = 1.5 * k0 * p * p + q * turn - t0.cross(gap);
            double g = 1.5 * k1 * q * q + p * turn - gap.cross(t1);
            double determinant = 9 * k0 * p * k1 * q - turn * turn;
            double dp = (f * 3 * k1 * q - g * turn) / determinant;
            double dq = (g * 3 * k0 * p - f * turn) / determinant;
            p -= dp;
            q -= dq;
            if (Math.abs(dp) + Math.abs(dq) <= 1e-14 * chord) {
                boolean sound = p > arc / 3 && p < 3 * arc && q > arc / 3 && q < 3 * arc;
                return sound
                        ? Cubic.hermite(a, t0.times(p), b, t1.times(q))
                        : Cubic.hermite(a, t0.times(arc), b, t1.times(arc));
            }
        }
        return Cubic.hermite(a, t0.times(arc), b, t1.times(arc));
    }

    /**
     * The handle of a circular arc with this chord and turn, {@code 4/3 tan(turn/4) radius}; of a straight one, a
     * third.
     */
    private static double arcHandle(double chord, double turn) {
        double cos = Math.cos(turn / 4);
        return chord / (3 * cos * cos);
    }
}

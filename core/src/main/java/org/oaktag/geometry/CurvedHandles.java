package org.oaktag.geometry;

/**
 * The handles with which a cubic between two ends with given directions has given curvatures there.
 *
 * <p><b>Formula.</b> With handles p and q the curvatures are {@code 2/3 (T0 x D - q T0 x T1) / p²} and {@code 2/3 (D x
 * T1 - p T0 x T1) / q²}, D from start to end. Set to k0 and k1 these are two quadratics, solved by Newton's method from
 * a guess. There may be no solution, or several. An instance is a workspace; it is not thread-safe.
 */
final class CurvedHandles {
    private static final int NEWTON_STEPS = 30;

    private double first;
    private double last;

    /**
     * Looks for the handles, and tells whether they were found.
     *
     * @param startSide T0 x D
     * @param endSide D x T1
     * @param turn T0 x T1
     * @param nearness the sum of two changes below which a step is the last, mm
     */
    boolean find(
            double k0,
            double k1,
            double startSide,
            double endSide,
            double turn,
            double firstGuess,
            double lastGuess,
            double nearness) {
        double p = firstGuess;
        double q = lastGuess;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double f = 1.5 * k0 * p * p + q * turn - startSide;
            double g = 1.5 * k1 * q * q + p * turn - endSide;
            double determinant = 9 * k0 * p * k1 * q - turn * turn;
            double dp = (f * 3 * k1 * q - g * turn) / determinant;
            double dq = (g * 3 * k0 * p - f * turn) / determinant;
            p -= dp;
            q -= dq;
            if (Math.abs(dp) + Math.abs(dq) <= nearness) {
                first = p;
                last = q;
                return true;
            }
        }
        return false;
    }

    double first() {
        return first;
    }

    double last() {
        return last;
    }
}

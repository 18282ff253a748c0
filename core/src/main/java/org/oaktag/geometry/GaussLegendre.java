package org.oaktag.geometry;

/**
 * Nodes and weights of Gauss-Legendre quadrature on -1 to 1, for orders that are multiples of {@link #STEP}, computed
 * once.
 *
 * <p>Nodes come in pairs +-u of one weight, so only the positive ones are kept: {@code u0, w0, u1, w1, ...} with u
 * rising. A node is a zero of the Legendre polynomial P(n), found by Newton's method from {@code cos(pi (i + 3/4) / (n
 * + 1/2))}; its weight is {@code 2 / ((1 - u²) P(n)'(u)²)} (Abramowitz and Stegun, 25.4.29). Both are good to a few
 * units in the last place.
 */
final class GaussLegendre {
    /** Orders go up by this. */
    static final int STEP = 4;

    /** The highest order. */
    static final int MAX_ORDER = 48;

    private static final double[][] RULES = new double[MAX_ORDER / STEP + 1][];

    static {
        for (int order = STEP; order <= MAX_ORDER; order += STEP) {
            RULES[order / STEP] = rule(order);
        }
    }

    private GaussLegendre() {}

    /** Returns the pairs of node and weight of this order; not to be changed. */
    static double[] pairs(int order) {
        return RULES[order / STEP];
    }

    private static double[] rule(int n) {
        double[] pairs = new double[n];
        for (int i = 0; i < n / 2; i++) {
            double u = Math.cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 1;
            for (int step = 0; step < 8; step++) {
                double p = 1;
                double before = 0;
                for (int k = 1; k <= n; k++) {
                    double next = ((2 * k - 1) * u * p - (k - 1) * before) / k;
                    before = p;
                    p = next;
                }
                slope = n * (u * p - before) / (u * u - 1);
                u -= p / slope;
            }
            int at = n - 2 - 2 * i;
            pairs[at] = u;
            pairs[at + 1] = 2 / ((1 - u * u) * slope * slope);
        }
        return pairs;
    }
}

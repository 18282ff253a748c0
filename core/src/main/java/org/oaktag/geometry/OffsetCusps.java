package org.oaktag.geometry;

import java.util.Arrays;

/**
 * The parameters at which the parallel of a cubic has a cusp: the roots of {@code g = |r'|³ + d (r' x r'')} at which g changes sign.
 *
 * <p>They are among the roots of the polynomial {@code (|r'|²)³ - d² (r' x r'')²} of degree 12, all of which are isolated; those of
 * the opposite distance are dropped and the rest polished on g itself. A polynomial whose Bernstein coefficients have one sign has no root,
 * which settles most curves at once.
 */
final class OffsetCusps {
    private static final double[] NONE = {};

    private OffsetCusps() {}

    static double[] of(Cubic cubic, double distance) {
        double[] hx = hodograph(
                cubic.start().x(),
                cubic.control1().x(),
                cubic.control2().x(),
                cubic.end().x());
        double[] hy = hodograph(
                cubic.start().y(),
                cubic.control1().y(),
                cubic.control2().y(),
                cubic.end().y());
        double[] sx = {2 * (hx[1] - hx[0]), 2 * (hx[2] - hx[1])};
        double[] sy = {2 * (hy[1] - hy[0]), 2 * (hy[2] - hy[1])};
        double[] turn = Bernstein.minus(Bernstein.product(hx, sy), Bernstein.product(hy, sx));
        boolean away = true;
        for (double b : turn) {
            away &= distance * b >= 0;
        }
        if (away) {
            return NONE;
        }
        double[] square = Bernstein.plus(Bernstein.product(hx, hx), Bernstein.product(hy, hy));
        double[] sixth = Bernstein.product(square, Bernstein.product(square, square));
        double[] turns = Bernstein.product(turn, turn);
        double[] scaled = Bernstein.raised(turns, sixth.length - 1);
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= distance * distance;
        }
        double[] polynomial = Bernstein.minus(sixth, scaled);
        if (Bernstein.hasOneSign(polynomial)) {
            return NONE;
        }
        double[] cusps = new double[polynomial.length];
        int count = 0;
        for (double t : Polynomials.roots(polynomial)) {
            if (t > 0 && t < 1 && distance * Polynomials.value(turn, t) < 0) {
                cusps[count++] = t;
            }
        }
        return Arrays.copyOf(cusps, count);
    }

    private static double[] hodograph(double c0, double c1, double c2, double c3) {
        return new double[] {3 * (c1 - c0), 3 * (c2 - c1), 3 * (c3 - c2)};
    }
}

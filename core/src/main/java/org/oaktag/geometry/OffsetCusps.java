package org.oaktag.geometry;

import java.util.Arrays;

/**
 * The parameters at which the parallel of a cubic has a cusp: where {@code g = |r'|³ + d (r' x r'')} changes sign.
 *
 * <p>Its roots are among those of the polynomial {@code (|r'|²)³ - d² (r' x r'')²} of degree 12, which is monotone
 * between its stationary points. So g changes sign at most once between neighbours among those and the ends; the sign
 * of g itself, which is known to more digits than that of the polynomial, tells where, and bisection finds the place. A
 * polynomial whose Bernstein coefficients have one sign has no root, which settles most curves at once.
 */
final class OffsetCusps {
    private static final double[] NONE = {};

    /** A cusp this near to an end is the end: there a curve that stands still has g = 0. */
    private static final double AT_END = 1e-12;

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
        double[] stationary = Polynomials.stationary(polynomial);
        double[] places = Arrays.copyOf(stationary, stationary.length + 1);
        places[stationary.length] = 1;
        double[] cusps = new double[places.length];
        int count = 0;
        double from = 0;
        boolean backwards = g(square, turn, distance, 0) < 0;
        for (double to : places) {
            if (g(square, turn, distance, to) < 0 != backwards) {
                double cusp = change(square, turn, distance, from, to, backwards);
                if (cusp > AT_END && cusp < 1 - AT_END) {
                    cusps[count++] = cusp;
                }
                backwards = !backwards;
            }
            from = to;
        }
        return Arrays.copyOf(cusps, count);
    }

    private static double g(double[] square, double[] turn, double distance, double t) {
        double speed = Math.sqrt(Math.max(Polynomials.value(square, t), 0));
        return speed * speed * speed + distance * Polynomials.value(turn, t);
    }

    private static double change(
            double[] square, double[] turn, double distance, double from, double to, boolean backwards) {
        double low = from;
        double high = to;
        double middle = 0.5 * (low + high);
        while (middle > low && middle < high) {
            if (g(square, turn, distance, middle) < 0 == backwards) {
                low = middle;
            } else {
                high = middle;
            }
            middle = 0.5 * (low + high);
        }
        return high;
    }

    private static double[] hodograph(double c0, double c1, double c2, double c3) {
        return new double[] {3 * (c1 - c0), 3 * (c2 - c1), 3 * (c3 - c2)};
    }
}

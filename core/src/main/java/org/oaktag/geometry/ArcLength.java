package org.oaktag.geometry;

/**
 * The arc length of a cubic, to an accuracy, without allocation.
 *
 * <p><b>Formula.</b> The derivative of a cubic is a quadratic; over a stretch of it, with u from -1 to 1, it is written
 * {@code r'(u) = a + b u + c u²}, six numbers, and the length is the integral of |r'(u)|. Gauss-Legendre quadrature with 8, 16 or 24
 * nodes integrates it; nodes come in pairs +-u, which share {@code a + c u²}.
 *
 * <p><b>Order and error.</b> The length lies between the chord and the control polygon. Their difference, the excess, bounds every
 * error: half of it is the most the mean of the two can be wrong. Otherwise the nearness of a zero of r' to the interval, which is
 * what spoils the quadrature, is gauged by {@code est = integral of |r''|² / |r'|² du}, and the errors of orders 8, 16 and 24 by the
 * excess times {@code min(2.5e-6 est³, 3e-2)}, {@code min(1.5e-11 est⁶, 9e-3)} and {@code min(3.5e-16 est⁹, 3.5e-3)}. When none is
 * small enough the stretch is halved. The constants of the estimate are from R. Levien, "How long is that Bézier?" (2018).
 *
 * <p><b>Limits.</b> A cusp or a point makes the estimate not a number, which fails every comparison and so halves again; the excess
 * shrinks at least fourfold with each halving, and {@link #MAX_DEPTH} ends it in any case.
 */
final class ArcLength {
    private static final int MAX_DEPTH = 32;

    /** No accuracy below this share of the control polygon can be met in double arithmetic. */
    private static final double FLOOR = 4e-16;

    // Positive nodes and their weights; the negative nodes mirror them.
    private static final double[] U8 = {0.1834346424956498, 0.525532409916329, 0.7966664774136267, 0.9602898564975363};
    private static final double[] W8 = {0.362683783378362, 0.31370664587788727, 0.22238103445337448, 0.10122853629037626
    };
    private static final double[] U16 = {
        0.09501250983763744, 0.2816035507792589, 0.45801677765722737, 0.6178762444026438,
        0.755404408355003, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499
    };
    private static final double[] W16 = {
        0.1894506104550685, 0.18260341504492358, 0.16915651939500254, 0.14959598881657674,
        0.12462897125553388, 0.09515851168249279, 0.062253523938647894, 0.027152459411754096
    };
    private static final double[] U24 = {
        0.06405689286260563, 0.1911188674736163, 0.3150426796961634, 0.4337935076260451,
        0.5454214713888396, 0.6480936519369755, 0.7401241915785544, 0.820001985973903,
        0.8864155270044011, 0.9382745520027328, 0.9747285559713095, 0.9951872199970213
    };
    private static final double[] W24 = {
        0.12793819534675216, 0.1258374563468283, 0.12167047292780339, 0.1155056680537256,
        0.10744427011596563, 0.09761865210411388, 0.08619016153195327, 0.0733464814110803,
        0.05929858491543678, 0.04427743881741981, 0.028531388628933663, 0.0123412297999872
    };

    private ArcLength() {}

    /** Returns the length of the whole cubic. */
    static double of(Cubic cubic, double accuracy) {
        return between(cubic, 0, 1, accuracy);
    }

    /** Returns the length from t0 to t1; the parameters are taken as checked. */
    static double between(Cubic cubic, double t0, double t1, double accuracy) {
        double x1 = cubic.control1().x();
        double y1 = cubic.control1().y();
        double x2 = cubic.control2().x();
        double y2 = cubic.control2().y();
        // The hodograph's Bézier coefficients, then its Taylor coefficients about the middle of the stretch.
        double p0x = 3 * (x1 - cubic.start().x());
        double p0y = 3 * (y1 - cubic.start().y());
        double p1x = 3 * (x2 - x1);
        double p1y = 3 * (y2 - y1);
        double p2x = 3 * (cubic.end().x() - x2);
        double p2y = 3 * (cubic.end().y() - y2);
        double m = 0.5 * (t0 + t1);
        double h = 0.5 * (t1 - t0);
        double n = 1 - m;
        double ax = n * n * p0x + 2 * m * n * p1x + m * m * p2x;
        double ay = n * n * p0y + 2 * m * n * p1y + m * m * p2y;
        double bx = 2 * (n * (p1x - p0x) + m * (p2x - p1x));
        double by = 2 * (n * (p1y - p0y) + m * (p2y - p1y));
        double cx = p0x - 2 * p1x + p2x;
        double cy = p0y - 2 * p1y + p2y;
        return adaptive(h * ax, h * ay, h * h * bx, h * h * by, h * h * h * cx, h * h * h * cy, accuracy, MAX_DEPTH);
    }

    /** Returns the integral over u from -1 to 1 of |a + b u + c u²|. */
    private static double adaptive(
            double ax, double ay, double bx, double by, double cx, double cy, double accuracy, int depth) {
        double chord = 2 * norm(ax + cx / 3, ay + cy / 3);
        double polygon = 2.0
                / 3
                * (norm(ax - bx + cx, ay - by + cy) + norm(ax - cx, ay - cy) + norm(ax + bx + cx, ay + by + cy));
        double excess = polygon - chord;
        double wanted = Math.max(accuracy, FLOOR * polygon);
        if (0.5 * excess <= wanted) {
            return 0.5 * (chord + polygon);
        }
        double est = estimate(ax, ay, bx, by, cx, cy);
        double est3 = est * est * est;
        if (Math.min(2.5e-6 * est3, 3e-2) * excess < wanted) {
            return gauss(U8, W8, ax, ay, bx, by, cx, cy);
        }
        if (Math.min(1.5e-11 * est3 * est3, 9e-3) * excess < wanted) {
            return gauss(U16, W16, ax, ay, bx, by, cx, cy);
        }
        if (Math.min(3.5e-16 * est3 * est3 * est3, 3.5e-3) * excess < wanted || depth == 0) {
            return gauss(U24, W24, ax, ay, bx, by, cx, cy);
        }
        // u = (v - 1) / 2 and u = (v + 1) / 2; the factor du/dv = 1/2 is folded in.
        double half = 0.5 * wanted;
        return adaptive(
                        0.5 * (ax - 0.5 * bx + 0.25 * cx),
                        0.5 * (ay - 0.5 * by + 0.25 * cy),
                        0.25 * (bx - cx),
                        0.25 * (by - cy),
                        0.125 * cx,
                        0.125 * cy,
                        half,
                        depth - 1)
                + adaptive(
                        0.5 * (ax + 0.5 * bx + 0.25 * cx),
                        0.5 * (ay + 0.5 * by + 0.25 * cy),
                        0.25 * (bx + cx),
                        0.25 * (by + cy),
                        0.125 * cx,
                        0.125 * cy,
                        half,
                        depth - 1);
    }

    private static double estimate(double ax, double ay, double bx, double by, double cx, double cy) {
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            double u = U8[i];
            double ex = ax + cx * u * u;
            double ey = ay + cy * u * u;
            double ox = bx * u;
            double oy = by * u;
            double sx = 2 * cx * u;
            double sy = 2 * cy * u;
            sum += W8[i]
                    * (square(bx + sx, by + sy) / square(ex + ox, ey + oy)
                            + square(bx - sx, by - sy) / square(ex - ox, ey - oy));
        }
        return sum;
    }

    private static double gauss(
            double[] nodes, double[] weights, double ax, double ay, double bx, double by, double cx, double cy) {
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            double u = nodes[i];
            double ex = ax + cx * u * u;
            double ey = ay + cy * u * u;
            double ox = bx * u;
            double oy = by * u;
            sum += weights[i] * (norm(ex + ox, ey + oy) + norm(ex - ox, ey - oy));
        }
        return sum;
    }

    private static double norm(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }

    private static double square(double x, double y) {
        return x * x + y * y;
    }
}

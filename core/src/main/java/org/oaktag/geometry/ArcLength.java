package org.oaktag.geometry;

/**
 * The arc length of a cubic, to an accuracy, without allocation.
 *
 * <p><b>Formula.</b> Written as a complex number the derivative of a cubic is a quadratic, {@code h(t) = a + b t + c
 * t²}, and the length is the integral of |h|. Each stretch is integrated by Gauss-Legendre quadrature of the lowest
 * order that will do.
 *
 * <p><b>Error.</b> What limits the quadrature is where |h| stops being analytic: the two complex roots z of h and their
 * mirror images. On a stretch that is mapped to -1 to 1, with {@code r = |z + sqrt(z² - 1)|} the size of the ellipse
 * with foci -1 and 1 through z (Bernstein), n nodes leave an error that falls like {@code r^-(2n+1)} (Trefethen,
 * Approximation Theory and Approximation Practice, ch. 19; from memory). The factor before it follows from the branch
 * cut that leaves z: with {@code S² = |z² - 1|}, N = 2n + 1 and {@code g² = |h'(z)| |h(conj z) / (2 Im z)|} it is
 * {@code g (sqrt(8 pi |Im z| S³) N^-3/2 + 4 S² N^-2)}; the second term stands for the bend of |h| at the real part of z
 * and is left out where that lies outside the stretch. Both are taken at the lowest N, which errs on the safe side. The
 * factor is derived here; that every accuracy is kept is tested on closed forms, on commons-math3's integrator and on
 * curves by the thousand, hard ones among them.
 *
 * <p>So the order is known before the first node. A Pythagorean hodograph has a double root, h'(z) = 0, and takes the
 * lowest. If the highest does not do, the stretch is cut beside the root that is in the way: at its real part, so that
 * a cusp falls between two stretches and harms neither; or, if that lies near an end, between the two at the geometric
 * mean.
 *
 * <p><b>Limits.</b> A curve that stands still throughout has no roots, and length 0. Rounding leaves about 1e-15 of the
 * length of the control polygon.
 */
final class ArcLength {
    private static final int MAX_CUTS = 500;

    /** Each stretch may err by this share of the accuracy; there are hardly ever as many as would use it up. */
    private static final double SHARE = 0.125;

    /** No accuracy below this share of the curve's size can be met in double arithmetic. */
    private static final double FLOOR = 1e-16;

    private static final double LEAST_N = 2 * GaussLegendre.STEP + 1;
    private static final double BRANCH = Math.sqrt(8 * Math.PI) / Math.pow(LEAST_N, 1.5);
    private static final double BEND = 4 / (LEAST_N * LEAST_N);

    /** A root this near to the middle of -1 to 1 is cut at, one nearer to an end is cut off from it. */
    private static final double MIDDLE = 0.9;

    private ArcLength() {}

    /** Returns the length of the whole cubic. */
    static double of(Cubic cubic, double accuracy) {
        return between(cubic, 0, 1, accuracy);
    }

    /** Returns the length from t0 to t1; the parameters are taken as checked. */
    static double between(Cubic cubic, double t0, double t1, double accuracy) {
        double x1 = cubic.control1().x() - cubic.start().x();
        double y1 = cubic.control1().y() - cubic.start().y();
        double x2 = cubic.control2().x() - cubic.control1().x();
        double y2 = cubic.control2().y() - cubic.control1().y();
        double x3 = cubic.end().x() - cubic.control2().x();
        double y3 = cubic.end().y() - cubic.control2().y();
        double ax = 3 * x1;
        double ay = 3 * y1;
        double bx = 6 * (x2 - x1);
        double by = 6 * (y2 - y1);
        double cx = 3 * (x1 - 2 * x2 + x3);
        double cy = 3 * (y1 - 2 * y2 + y3);

        // The roots are q/c and a/q with q = -(b + d)/2, d = sqrt(b² - 4 a c) of the sign that adds to b.
        double ex = bx * bx - by * by - 4 * (ax * cx - ay * cy);
        double ey = 2 * bx * by - 4 * (ax * cy + ay * cx);
        double dd = norm(ex, ey);
        double greater = Math.sqrt(0.5 * (dd + Math.abs(ex)));
        double lesser = greater > 0 ? 0.5 * ey / greater : 0;
        double dx = ex >= 0 ? greater : lesser;
        double dy = ex >= 0 ? lesser : greater;
        double sign = bx * dx + by * dy >= 0 ? 1 : -1;
        dx *= sign;
        dy *= sign;
        double qx = -0.5 * (bx + dx);
        double qy = -0.5 * (by + dy);
        double perC = 1 / (cx * cx + cy * cy);
        double perQ = 1 / (qx * qx + qy * qy);
        double z1x = (qx * cx + qy * cy) * perC;
        double z1y = (qy * cx - qx * cy) * perC;
        double z2x = (ax * qx + ay * qy) * perQ;
        double z2y = (ay * qx - ax * qy) * perQ;
        // |h'(z)| = |d|, and h(conj z) / (2 Im z) is d + 2 i Im(z) c for the one root and d - 2 i Im(z) c for the
        // other.
        double d = Math.sqrt(dd);
        double g1 = Math.sqrt(d * norm(dx - 2 * z1y * cy, dy + 2 * z1y * cx));
        double g2 = Math.sqrt(d * norm(dx + 2 * z2y * cy, dy - 2 * z2y * cx));

        double size = Math.abs(ax) + Math.abs(ay) + Math.abs(bx) + Math.abs(by) + Math.abs(cx) + Math.abs(cy);
        double wanted = Math.max(SHARE * accuracy, FLOOR * size);
        double sum = 0;
        double from = t0;
        double to = t1;
        int cuts = 0;
        while (true) {
            double m = 0.5 * (from + to);
            double k = 0.5 * (to - from);
            double perK = 1 / k;
            double u1x = (z1x - m) * perK;
            double u1y = Math.abs(z1y) * perK;
            double u2x = (z2x - m) * perK;
            double u2y = Math.abs(z2y) * perK;
            double near1 = norm(u1x - 1, u1y);
            double near2 = norm(u2x - 1, u2y);
            double far1 = norm(u1x + 1, u1y);
            double far2 = norm(u2x + 1, u2y);
            double shrink1 = shrink(near1 + far1);
            double shrink2 = shrink(near2 + far2);
            double step1 = eighth(shrink1);
            double step2 = eighth(shrink2);
            double error1 = g1 * k * k * factor(u1x, u1y, near1, far1) * step1 * shrink1;
            double error2 = g2 * k * k * factor(u2x, u2y, near2, far2) * step2 * shrink2;
            // A root that there is not, at infinity or 0/0, does no harm.
            error1 = error1 >= 0 ? error1 : 0;
            error2 = error2 >= 0 ? error2 : 0;
            boolean firstIsWorse = error1 > error2;
            int order = GaussLegendre.STEP;
            while (error1 + error2 > wanted && order < GaussLegendre.MAX_ORDER) {
                order += GaussLegendre.STEP;
                error1 *= step1;
                error2 *= step2;
            }
            if (error1 + error2 > wanted && cuts < MAX_CUTS) {
                cuts++;
                to = m + k * (firstIsWorse ? cut(u1x, near1, far1) : cut(u2x, near2, far2));
                continue;
            }
            sum += k
                    * gauss(
                            GaussLegendre.pairs(order),
                            ax + m * (bx + m * cx),
                            ay + m * (by + m * cy),
                            k * (bx + 2 * m * cx),
                            k * (by + 2 * m * cy),
                            k * k * cx,
                            k * k * cy);
            if (to == t1) {
                return sum;
            }
            from = to;
            to = t1;
        }
    }

    /**
     * Returns the length from t0 to t1 for a stretch that is likely to be short: it lies between its chord and its
     * control polygon, whose mean is returned if they differ by no more than twice the accuracy.
     */
    static double ofShort(Cubic cubic, double t0, double t1, double accuracy) {
        double s0 = 1 - t0;
        double s1 = 1 - t1;
        double x1 = cubic.control1().x() - cubic.start().x();
        double y1 = cubic.control1().y() - cubic.start().y();
        double x2 = cubic.control2().x() - cubic.control1().x();
        double y2 = cubic.control2().y() - cubic.control1().y();
        double x3 = cubic.end().x() - cubic.control2().x();
        double y3 = cubic.end().y() - cubic.control2().y();
        double mixed = s0 * t1 + s1 * t0;
        double ax = s0 * s0 * x1 + 2 * s0 * t0 * x2 + t0 * t0 * x3;
        double ay = s0 * s0 * y1 + 2 * s0 * t0 * y2 + t0 * t0 * y3;
        double bx = s0 * s1 * x1 + mixed * x2 + t0 * t1 * x3;
        double by = s0 * s1 * y1 + mixed * y2 + t0 * t1 * y3;
        double cx = s1 * s1 * x1 + 2 * s1 * t1 * x2 + t1 * t1 * x3;
        double cy = s1 * s1 * y1 + 2 * s1 * t1 * y2 + t1 * t1 * y3;
        double polygon = (t1 - t0) * (norm(ax, ay) + norm(bx, by) + norm(cx, cy));
        double chord = (t1 - t0) * norm(ax + bx + cx, ay + by + cy);
        return polygon - chord <= 2 * accuracy ? 0.5 * (polygon + chord) : between(cubic, t0, t1, accuracy);
    }

    /**
     * Returns 1 / |z + sqrt(z² - 1)| from the sum of the distances of z from -1 and 1; 0 for a root that there is not.
     */
    static double shrink(double sum) {
        double mean = 0.5 * sum;
        double shrink = 1 / (mean + Math.sqrt(Math.max(mean * mean - 1, 0)));
        return shrink > 0 ? shrink : 0;
    }

    /**
     * Returns the factor before r^-N for g = 1. The mean of the distances stands for S where that is not worth a square
     * root.
     */
    private static double factor(double x, double y, double near, double far) {
        double square = near * far;
        double branch = BRANCH * Math.sqrt(y * square * 0.5 * (near + far));
        return Math.abs(x) < 1 ? branch + BEND * square : branch;
    }

    private static double eighth(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        return x4 * x4;
    }

    /** Returns where to cut -1 to 1 beside a root with this real part and these distances from 1 and -1. */
    static double cut(double x, double near, double far) {
        if (Math.abs(x) < MIDDLE) {
            return x;
        }
        // Between an end and a root at a small distance beyond it: as far from it as the geometric mean of the two
        // scales.
        double reach = Math.min(Math.sqrt(2 * Math.min(near, far)), 1);
        return x > 0 ? 1 - reach : reach - 1;
    }

    /** Returns the integral over u from -1 to 1 of |a + b u + c u²|; the nodes u and -u share a + c u². */
    private static double gauss(double[] pairs, double ax, double ay, double bx, double by, double cx, double cy) {
        double sum = 0;
        for (int i = 0; i < pairs.length; i += 2) {
            double u = pairs[i];
            double ex = ax + cx * u * u;
            double ey = ay + cy * u * u;
            double ox = bx * u;
            double oy = by * u;
            sum += pairs[i + 1] * (norm(ex + ox, ey + oy) + norm(ex - ox, ey - oy));
        }
        return sum;
    }

    private static double norm(double x, double y) {
        return Math.sqrt(x * x + y * y);
    }
}

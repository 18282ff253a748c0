package org.oaktag.bench;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Point;

/**
 * Lengths to measure errors by, of which none of those that are compared has a part: 20 nodes of commons-math on a
 * stretch and on its halves, halved again until they agree to 1e-13 of the curve's size.
 */
final class Reference {
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();
    private static final int NODES = 20;
    private static final int MAX_DEPTH = 45;

    private Reference() {}

    static double length(Cubic cubic, double from, double to) {
        Point a = cubic.start();
        Point b = cubic.control1();
        Point c = cubic.control2();
        double size = a.distanceTo(b) + b.distanceTo(c) + c.distanceTo(cubic.end());
        return halved(cubic, from, to, gauss(cubic, from, to), 1e-13 * size, MAX_DEPTH);
    }

    private static double halved(Cubic cubic, double from, double to, double whole, double enough, int depth) {
        double middle = 0.5 * (from + to);
        double first = gauss(cubic, from, middle);
        double second = gauss(cubic, middle, to);
        if (depth == 0 || Math.abs(first + second - whole) <= enough) {
            return first + second;
        }
        return halved(cubic, from, middle, first, enough, depth - 1)
                + halved(cubic, middle, to, second, enough, depth - 1);
    }

    private static double gauss(Cubic cubic, double from, double to) {
        if (from == to) {
            return 0;
        }
        return RULES.legendre(NODES, from, to).integrate(t -> {
            double s = 1 - t;
            double x = s * s * (cubic.control1().x() - cubic.start().x())
                    + 2 * s * t * (cubic.control2().x() - cubic.control1().x())
                    + t * t * (cubic.end().x() - cubic.control2().x());
            double y = s * s * (cubic.control1().y() - cubic.start().y())
                    + 2 * s * t * (cubic.control2().y() - cubic.control1().y())
                    + t * t * (cubic.end().y() - cubic.control2().y());
            return 3 * Math.hypot(x, y);
        });
    }
}

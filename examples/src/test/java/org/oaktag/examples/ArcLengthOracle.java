package org.oaktag.examples;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;

/** Measures a path with the Gauss-Legendre integrator of Apache Commons Math, to about 1e-8 mm. */
final class ArcLengthOracle {

    private static final IterativeLegendreGaussIntegrator INTEGRATOR =
            new IterativeLegendreGaussIntegrator(12, 1e-12, 1e-9, 2, 24);

    private ArcLengthOracle() {}

    static double length(Path2D shape) {
        double sum = 0;
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        for (PathIterator each = shape.getPathIterator(null); !each.isDone(); each.next()) {
            switch (each.currentSegment(p)) {
                case PathIterator.SEG_MOVETO -> {
                    x = p[0];
                    y = p[1];
                }
                case PathIterator.SEG_LINETO -> {
                    sum += Math.hypot(p[0] - x, p[1] - y);
                    x = p[0];
                    y = p[1];
                }
                case PathIterator.SEG_CUBICTO -> {
                    sum += cubic(x, y, p);
                    x = p[4];
                    y = p[5];
                }
                default -> throw new AssertionError("an edge must be an open run of lines and cubics");
            }
        }
        return sum;
    }

    private static double cubic(double x, double y, double[] p) {
        double[] c = p.clone();
        return INTEGRATOR.integrate(
                100_000,
                t -> {
                    double s = 1 - t;
                    double dx = 3 * (s * s * (c[0] - x) + 2 * s * t * (c[2] - c[0]) + t * t * (c[4] - c[2]));
                    double dy = 3 * (s * s * (c[1] - y) + 2 * s * t * (c[3] - c[1]) + t * t * (c[5] - c[3]));
                    return Math.hypot(dx, dy);
                },
                0,
                1);
    }
}

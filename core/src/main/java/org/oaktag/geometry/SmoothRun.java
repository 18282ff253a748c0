package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Fits a smooth curve by a run of cubics with common tangents at their joins (G1), as few as the tolerance allows.
 *
 * <p>The error of one fit falls with the sixth power of its stretch, so the error measured on one stretch tells how
 * many equal ones are needed for the rest. Each is fitted, measured, and shortened again if it misses the tolerance.
 */
final class SmoothRun {
    private static final double ORDER = 1.0 / 6;

    /** Between the normals the distance may exceed the greatest on them by a tenth. */
    static final double BETWEEN = 0.87;

    /** Aim a little lower still: the error is predicted to a few per cent only. */
    private static final double AIM = 0.9 * BETWEEN;

    /**
     * A stretch of this share of the end's parameter is not shortened further: a quarter of it is still some steps of a
     * double.
     */
    private static final double SHORTEST = 0x1p-48;

    private SmoothRun() {}

    static List<Curve> of(SmoothTarget target, double t0, double t1, double tolerance) {
        return ofFewer(Integer.MAX_VALUE, target, t0, t1, tolerance).orElseThrow();
    }

    /** Returns the run, or nothing as soon as it takes so many curves or more. */
    static Optional<List<Curve>> ofFewer(int most, SmoothTarget target, double t0, double t1, double tolerance) {
        HermiteFit fit = new HermiteFit(target);
        List<Curve> run = new ArrayList<>();
        double shortest = SHORTEST * t1;
        double from = t0;
        double stretch = t1 - t0;
        while (from < t1) {
            double rest = t1 - from;
            double count = Math.ceil(rest / stretch - 1e-6);
            double to = count <= 1 ? t1 : from + rest / count;
            double error = fit.fit(from, to);
            double factor = Math.pow(AIM * tolerance / error, ORDER);
            if (error > BETWEEN * tolerance && to - from > shortest) {
                stretch = (to - from) * Math.min(Math.max(factor, 0.25), 0.95);
                continue;
            }
            if (run.size() + 1 >= most) {
                return Optional.empty();
            }
            Point start =
                    run.isEmpty() ? fit.startPoint() : run.get(run.size() - 1).end();
            run.add(fit.cubic(start, fit.endPoint()));
            stretch = (to - from) * Math.min(Math.max(factor, 1), 4);
            from = to;
        }
        return Optional.of(run);
    }
}

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a curve: every point moved by the distance along the normal to the left of travel (to the right if it is negative).
 *
 * <p><b>Formula.</b> {@code r + d n} with n the left normal; its derivative is {@code r' (1 + curvature d)}, curvature clockwise
 * positive. Its length is {@code L + d turning} and the area between is {@code d L + d² turning / 2} as long as there is no cusp.
 *
 * <p><b>Method.</b> The curve is cut where the parallel has cusps (every root of {@code |r'|³ + d (r' x r'') = 0}) and where it has
 * cusps itself; each smooth stretch is fitted by cubics that keep the end directions, measured on 16 normals each, until the tolerance holds.
 * About a cusp of the curve itself the parallel is joined by an arc. A straight stretch gives one exact straight segment.
 *
 * <p><b>Error.</b> The distance from the exact parallel, measured along its normals, is at most the tolerance. The parallel is that of the
 * curve alone: where it folds back at cusps nothing is trimmed.
 */
public final class OffsetCurve {
    private static final double STRAIGHT = 1e-9;

    private OffsetCurve() {}

    /**
     * Returns the parallel of a curve.
     *
     * @param curve the curve
     * @param left distance to the left of travel, mm; negative to the right
     * @param tolerance greatest distance from the exact parallel, mm
     * @throws IllegalArgumentException if the curve is a single point, which has no sides, if the distance is not finite, or if the
     *     tolerance is not positive and finite
     */
    public static Path of(Curve curve, double left, double tolerance) {
        Plane.finite("offset distance", left);
        Plane.positive("tolerance", tolerance);
        if (curve.isPoint()) {
            throw new IllegalArgumentException(
                    "a curve that is the single point " + curve.start() + " has no parallel");
        }
        return Path.of(curves(curve, left, tolerance));
    }

    static List<Curve> curves(Curve curve, double left, double tolerance) {
        if (left == 0) {
            return List.of(curve);
        }
        if (curve instanceof Line line) {
            return List.of(straight(line.start(), line.end(), line.directionAt(0), left));
        }
        List<Curve> parallel = new ArrayList<>();
        for (Cubic smooth : SourceCusps.cut((Cubic) curve)) {
            List<Curve> run = ofSmooth(smooth, left, tolerance);
            if (!parallel.isEmpty()) {
                Point from = parallel.get(parallel.size() - 1).end();
                double half = Math.copySign(Math.PI, left);
                parallel.addAll(Arcs.of(smooth.start(), from, run.get(0).start(), half, tolerance));
            }
            parallel.addAll(run);
        }
        return parallel;
    }

    private static Line straight(Point start, Point end, Vector direction, double left) {
        Vector shift = direction.leftNormal().times(left);
        return new Line(start.plus(shift), end.plus(shift));
    }

    /** The parallel of a cubic whose derivative vanishes at its ends at most. */
    private static List<Curve> ofSmooth(Cubic cubic, double left, double tolerance) {
        if (new CubicPiece(cubic, 0, 1).isStraight(STRAIGHT)) {
            return List.of(straight(
                    cubic.start(), cubic.end(), cubic.end().minus(cubic.start()).unit(), left));
        }
        double[] cusps = OffsetCusps.of(cubic, left);
        List<Curve> parallel = new ArrayList<>();
        double from = 0;
        for (int i = 0; i <= cusps.length; i++) {
            double to = i < cusps.length ? cusps[i] : 1;
            boolean backwards = 1 + left * cubic.curvatureAt(0.5 * (from + to)) < 0;
            List<Curve> run = SmoothRun.of(new ParallelTarget(cubic, left, backwards), from, to, tolerance);
            parallel.addAll(
                    parallel.isEmpty()
                            ? run
                            : Joined.from(parallel.get(parallel.size() - 1).end(), run));
            from = to;
        }
        return parallel;
    }
}

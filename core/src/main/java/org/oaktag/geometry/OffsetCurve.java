package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The parallel of a curve: every point moved by the distance along the normal to the left of travel (to the right if it
 * is negative).
 *
 * <pre>{@code
 * Cubic crown = Cubic.of(Point.of(0, 0), Point.of(9, 12), Point.of(30, 15), Point.of(54, -3));
 * Path right = OffsetCurve.of(crown, -10, 1e-6);
 * right.length();   // = 75.70796
 * crown.length() - 10 * crown.turning();   // = 75.70796
 * }</pre>
 *
 * <p><b>Formula.</b> {@code r + d n} with n the left normal; its derivative is {@code r' (1 + curvature d)}, curvature
 * clockwise positive. Its length is {@code L + d turning} and the area between is {@code d L + d² turning / 2} as long
 * as there is no cusp.
 *
 * <p><b>Method.</b> The curve is cut where the parallel has cusps (every root of {@code |r'|³ + d (r' x r'') = 0}) and
 * where it has cusps itself; each smooth stretch is fitted by cubics that keep the end directions, measured on 16
 * normals each, until the tolerance holds. About a cusp of the curve itself the parallel goes round the outside in an
 * arc. A straight stretch gives one exact straight segment.
 *
 * <p><b>Error.</b> The distance from the exact parallel is at most the tolerance: it is measured along 16 normals of
 * each cubic and must stay under 0.87 of the tolerance there. What misses it on less than a thousand-millionth of a
 * stretch is let be, and a tolerance below 256 units in the last place of the coordinates counts as that. The number of
 * cubics grows with the sixth root of 1 / tolerance. The parallel is that of the curve alone: where it folds back at
 * cusps nothing is trimmed.
 *
 * <p><b>Sources.</b> For the parallel and its cusps R. T. Farouki, Pythagorean-Hodograph Curves (2008), whose curves
 * the tests hold it against; the fit is our own.
 */
public final class OffsetCurve {
    /** Sine of the greatest angle between two tangents of a straight run. */
    private static final double STRAIGHT = 1e-12;

    /** The least error that a fit can reach and tell, in units in the last place of the coordinates. */
    private static final double ROUNDING = 256;

    /** Ends nearer than this share of the tolerance are made to meet. */
    private static final double SNAP = 0.1;

    /**
     * Slower than this share of the hodograph's size at an end, a cubic turns so quickly there that its parallel is
     * fitted by another parameter.
     */
    private static final double SLOW = 0.01;

    private OffsetCurve() {}

    /**
     * Returns the parallel of a curve.
     *
     * @param curve the curve
     * @param left distance to the left of travel, mm; negative to the right
     * @param tolerance greatest distance from the exact parallel, mm
     * @throws IllegalArgumentException if the curve is a single point, which has no sides, if the distance is not
     *     finite or leads beyond the limits of a {@link Point}, or if the tolerance is not positive and finite
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

    static List<Curve> curves(Curve curve, double left, double wanted) {
        double tolerance = Math.max(wanted, attainable(curve, left));
        if (left == 0) {
            return List.of(curve);
        }
        if (curve instanceof Line line) {
            return List.of(straight(line.start(), line.end(), line.directionAt(0), left));
        }
        List<Curve> parallel = new ArrayList<>();
        List<Cubic> parts = SourceCusps.cut((Cubic) Dust.retracted(curve, tolerance));
        for (int i = 0; i < parts.size(); i++) {
            Cubic part = parts.get(i);
            List<Curve> run = ofSmooth(part, left, tolerance);
            if (i > 0) {
                Point from = parallel.get(parallel.size() - 1).end();
                Vector arriving = parts.get(i - 1).directionAt(1);
                Vector leaving = part.directionAt(0);
                if (arriving.dot(leaving) < 0) {
                    double half = Math.copySign(Math.PI, left);
                    parallel.addAll(Arcs.of(part.start(), from, run.get(0).start(), half, tolerance));
                } else if (from.isCloseTo(run.get(0).start(), SNAP * tolerance)) {
                    run = Joined.from(from, run);
                } else {
                    // So near to a cusp the coordinates do not hold the direction any better.
                    double rounding = arriving.angleTo(leaving);
                    parallel.addAll(Arcs.of(part.start(), from, run.get(0).start(), rounding, tolerance));
                }
            }
            parallel.addAll(run);
        }
        return parallel;
    }

    /** Returns what coordinates of this size hold at best, mm. */
    private static double attainable(Curve curve, double left) {
        Bounds hull = CurveContacts.hull(curve);
        double reach = Math.max(
                Math.max(Math.abs(hull.minX()), Math.abs(hull.maxX())),
                Math.max(Math.abs(hull.minY()), Math.abs(hull.maxY())));
        return ROUNDING * Math.ulp(reach + Math.abs(left));
    }

    /**
     * Returns the tolerance, or the least with which the parallels of all these edges can be fitted and told from what
     * is too near.
     */
    static double tolerance(List<Path> edges, double[] distances, double tolerance) {
        double least = tolerance;
        for (int i = 0; i < distances.length; i++) {
            double reach = edges.get(i).tree().reach() + Math.abs(distances[i]);
            least = Math.max(least, 4 * ROUNDING * Math.ulp(reach));
        }
        return least;
    }

    private static Line straight(Point start, Point end, Vector direction, double left) {
        Vector shift = direction.leftNormal().times(left);
        return new Line(start.plus(shift), end.plus(shift));
    }

    /** A control polygon whose sides all have the direction of the chord. */
    private static boolean runsStraight(Cubic cubic) {
        Vector chord = cubic.end().minus(cubic.start());
        return !chord.equals(Vector.ZERO)
                && isAlong(chord, cubic.control1().minus(cubic.start()))
                && isAlong(chord, cubic.control2().minus(cubic.control1()))
                && isAlong(chord, cubic.end().minus(cubic.control2()));
    }

    private static boolean isAlong(Vector chord, Vector side) {
        return chord.dot(side) >= 0 && Math.abs(chord.cross(side)) <= STRAIGHT * chord.length() * side.length();
    }

    /** The parallel of a cubic whose derivative vanishes at its ends at most. */
    private static List<Curve> ofSmooth(Cubic cubic, double left, double tolerance) {
        if (runsStraight(cubic)) {
            return List.of(straight(
                    cubic.start(), cubic.end(), cubic.end().minus(cubic.start()).unit(), left));
        }
        boolean slowStart = isSlow(cubic, 0);
        boolean slowEnd = isSlow(cubic, 1);
        if (slowStart && slowEnd) {
            List<Curve> parallel = new ArrayList<>(ofSmooth(cubic.sub(0, 0.5), left, tolerance));
            Point middle = parallel.get(parallel.size() - 1).end();
            parallel.addAll(Joined.from(middle, ofSmooth(cubic.sub(0.5, 1), left, tolerance)));
            return parallel;
        }
        if (slowEnd) {
            return reversed(ofSmooth(cubic.reversed(), -left, tolerance));
        }
        double[] cusps = OffsetCusps.of(cubic, left);
        List<Curve> parallel = new ArrayList<>();
        double from = 0;
        for (int i = 0; i <= cusps.length; i++) {
            double to = i < cusps.length ? cusps[i] : 1;
            boolean backwards = 1 + left * cubic.curvatureAt(0.5 * (from + to)) < 0;
            List<Curve> run = fitted(cubic, new ParallelTarget(cubic, left, backwards), from, to, slowStart, tolerance);
            parallel.addAll(
                    parallel.isEmpty()
                            ? run
                            : Joined.from(parallel.get(parallel.size() - 1).end(), run));
            from = to;
        }
        return parallel;
    }

    private static List<Curve> fitted(
            Cubic cubic, SmoothTarget parallel, double from, double to, boolean slowStart, double tolerance) {
        if (!slowStart) {
            return SmoothRun.of(parallel, from, to, tolerance);
        }
        SlowTarget slowed = SlowTarget.of(parallel, cubic, from, to);
        return SmoothRun.of(slowed, slowed.first(), slowed.last(), tolerance);
    }

    /** Tells whether the cubic all but stands still at an end, and turns there. */
    private static boolean isSlow(Cubic cubic, double t) {
        double speed = cubic.speedAt(t);
        double side = Math.max(
                cubic.start().distanceTo(cubic.control1()),
                Math.max(
                        cubic.control1().distanceTo(cubic.control2()),
                        cubic.control2().distanceTo(cubic.end())));
        return speed > 0 && speed <= 3 * SLOW * side && Math.abs(cubic.curvatureAt(t)) > 0;
    }

    private static List<Curve> reversed(List<Curve> run) {
        List<Curve> back = new ArrayList<>(run.size());
        for (int i = run.size() - 1; i >= 0; i--) {
            back.add(run.get(i).reversed());
        }
        return back;
    }
}

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Every run of the parallel of an open path that keeps its distance from it, and what of the path has none. Immutable.
 *
 * <pre>{@code
 * // Down and up a slot 30 mm wide: at 20 mm nothing runs in it.
 * Path slot = Path.polyline(Point.of(0, 0), Point.of(90, 0), Point.of(90, 80), Point.of(120, 80), Point.of(120, 0), Point.of(200, 0));
 * OffsetRuns runs = OffsetRuns.of(slot, 20, CornerStyle.round(), 0.01);
 * runs.runs().size();               // = 1
 * runs.leftOut().get(0).length();   // = 190.0
 * }</pre>
 *
 * <p>Method, error and cost are those of {@link OffsetPath}, which returns the longest run. In a pocket of the path a
 * run may close on itself. What two runs leave beyond their crossing, no more than thirty tolerances long and within
 * four of a longer run, is not told. Hooks, handles and curves of up to half the tolerance, are drawn in.
 *
 * @param runs in the order of the path; more than one where it comes too near to itself in between, none if it does all
 *     along
 * @param leftOut the stretches of the path beside which no run lies, in order
 */
public record OffsetRuns(List<Path> runs, List<Stretch> leftOut) {
    private static final int PLACES = 8;

    /** Copies the lists. */
    public OffsetRuns {
        runs = List.copyOf(runs);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * A part of the path, by the distances at which it begins and ends, mm.
     *
     * @param from from the start of the path to where it begins
     * @param to from the start of the path to where it ends
     */
    public record Stretch(double from, double to) {
        /** Returns how long it is, mm. */
        public double length() {
            return to - from;
        }
    }

    /**
     * Returns the runs of the parallel of a path; none where no point of it keeps its distance, which {@link
     * OffsetPath} refuses.
     *
     * @param path the path; points among its curves, and curves and handles of a millionth of its size, are left out
     * @param left distance to the left of travel, mm; negative to the right
     * @param corner how outer corners are joined
     * @param tolerance greatest distance from the exact parallel, mm
     * @throws IllegalArgumentException if the path is a single point, the distance is not finite, or the tolerance is
     *     not positive and finite
     */
    public static OffsetRuns of(Path path, double left, CornerStyle corner, double tolerance) {
        Plane.finite("offset distance", left);
        Plane.positive("tolerance", tolerance);
        if (path.withoutPointCurves().curves().get(0).isPoint()) {
            throw new IllegalArgumentException("a path that is the single point " + path.start() + " has no parallel");
        }
        if (left >= 0) {
            return leftOf(path, left, corner, tolerance);
        }
        OffsetRuns back = leftOf(path.reversed(), -left, corner, tolerance);
        double length = path.length();
        List<Path> runs = new ArrayList<>();
        back.runs().forEach(run -> runs.add(run.reversed()));
        List<Stretch> leftOut = new ArrayList<>();
        back.leftOut().forEach(each -> leftOut.add(new Stretch(Math.max(length - each.to(), 0), length - each.from())));
        Collections.reverse(runs);
        Collections.reverse(leftOut);
        return new OffsetRuns(runs, leftOut);
    }

    private static OffsetRuns leftOf(Path path, double left, CornerStyle corner, double wanted) {
        double tolerance = OffsetCurve.tolerance(List.of(path), new double[] {left}, wanted);
        OffsetSource drawn = OffsetSource.of(List.of(path), false, tolerance);
        OffsetSource unhooked = OffsetSource.unhooked(List.of(path), false, tolerance);
        // What drawing in hooks moves the path by is taken from what the parallel may be off.
        return unhooked.edges().equals(drawn.edges())
                ? leftOf(path, drawn, left, corner, tolerance, tolerance)
                : leftOf(path, unhooked, left, corner, (1 - Dust.UNHOOKED) * tolerance, tolerance);
    }

    private static OffsetRuns leftOf(
            Path path, OffsetSource source, double left, CornerStyle corner, double fine, double tolerance) {
        List<Path> edges = source.edges();
        double[] distances = {left};
        OffsetCorners corners = OffsetCorners.all(corner, 1);
        List<RawCurve> raw = new RawOffset(edges, distances, corners, fine).openRun();
        OffsetTrim.Open open = OffsetTrim.runs(
                raw, OffsetCutters.of(edges.get(0), left, fine), new Clearance(edges, distances, corners, false, fine));
        List<RawCurve> kept = new ArrayList<>(open.twins());
        open.runs().forEach(kept::addAll);
        List<Path> runs = open.runs().stream()
                .map(run -> Path.of(run.stream().map(RawCurve::curve).toList()))
                .toList();
        List<Stretch> leftOut =
                OffsetCover.of(edges.get(0), path, source.curves().get(0)::get, left, kept, fine)
                        .gaps(tolerance)
                        .stream()
                        .filter(gap -> !isPassed(path, gap, left, kept, tolerance))
                        .toList();
        return new OffsetRuns(runs, leftOut);
    }

    /**
     * Tells whether the runs pass all along a stretch after all: the parallel has a fold there within the tolerance.
     */
    private static boolean isPassed(Path path, Stretch gap, double left, List<RawCurve> kept, double tolerance) {
        for (int i = 0; i <= PLACES; i++) {
            double along = gap.from() + gap.length() * i / PLACES;
            Point parallel = path.pointAt(along)
                    .plus(path.directionAt(along).leftNormal().times(left));
            if (kept.stream().noneMatch(raw -> raw.curve().nearest(parallel).distance() <= tolerance)) {
                return false;
            }
        }
        return true;
    }
}

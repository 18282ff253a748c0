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
 * <p>Method, error and cost are those of {@link OffsetPath}, which returns the longest run. A run of no more than
 * thirty tolerances is not told where there is a longer one, and none is told that closes on itself in a pocket of the
 * path.
 *
 * @param runs in the order of the path; more than one where it comes too near to itself in between, none if it does all
 *     along
 * @param leftOut the stretches of the path beside which no run lies, in order
 */
public record OffsetRuns(List<Path> runs, List<Stretch> leftOut) {
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
        List<Path> edges = OffsetSource.of(List.of(path), false, tolerance).edges();
        double[] distances = {left};
        OffsetCorners corners = OffsetCorners.all(corner, 1);
        List<RawCurve> raw = new RawOffset(edges, distances, corners, tolerance).openRun();
        OffsetTrim.Open open = OffsetTrim.runs(
                raw,
                OffsetCutters.of(edges.get(0), left, tolerance),
                new Clearance(edges, distances, corners, false, tolerance));
        List<RawCurve> kept = new ArrayList<>(open.twins());
        open.runs().forEach(kept::addAll);
        return new OffsetRuns(
                open.runs().stream()
                        .map(run -> Path.of(run.stream().map(RawCurve::curve).toList()))
                        .toList(),
                OffsetCover.of(edges.get(0), left, kept, tolerance).gaps(tolerance));
    }
}

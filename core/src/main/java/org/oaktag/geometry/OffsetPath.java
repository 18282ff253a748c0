package org.oaktag.geometry;

import java.util.Optional;
import org.oaktag.PatternException;

/**
 * The parallel of an open path, joined round its outer corners and trimmed where it would come nearer to the path than
 * the distance.
 *
 * <pre>{@code
 * Path stitching = OffsetPath.of(hem.path(), 25, CornerStyle.round(), 0.01);
 * hem.path().nearest(stitching.pointAt(40)).distance();   // = 25.0
 * }</pre>
 *
 * <p>Method, error and cost are those of {@link OutlineOffset}. It starts and ends square to the ends of the path,
 * unless it is trimmed there: no point of it comes nearer to any point of the path than the distance, less the
 * tolerance, on either side and round the ends. Of several runs that are left the longest is returned; {@link
 * OffsetRuns} tells all of them, and what was left out.
 */
public final class OffsetPath {
    private OffsetPath() {}

    /**
     * Returns the parallel of a path.
     *
     * @param path the path; points among its curves, and curves and handles of a millionth of its size, are left out
     * @param left distance to the left of travel, mm; negative to the right
     * @param corner how outer corners are joined
     * @param tolerance greatest distance from the exact parallel, mm
     * @throws IllegalArgumentException if the path is a single point, the distance is not finite, or the tolerance is
     *     not positive and finite
     * @throws PatternException if no point of the parallel keeps its distance from the path; it names a distance that
     *     works
     */
    public static Path of(Path path, double left, CornerStyle corner, double tolerance) {
        OffsetRuns runs = OffsetRuns.of(path, left, corner, tolerance);
        return longest(runs).orElseThrow(() -> refused(path, left, corner, tolerance));
    }

    private static Optional<Path> longest(OffsetRuns runs) {
        return runs.runs().stream().reduce((a, b) -> b.length() > a.length() ? b : a);
    }

    private static PatternException refused(Path path, double left, CornerStyle corner, double tolerance) {
        double distance = Math.abs(left);
        return PatternException.of(
                "parallel of a path",
                "must keep its distance from the path somewhere",
                GreatestDistance.told(distance) + " to the " + (left < 0 ? "right" : "left"),
                GreatestDistance.remedy(
                        distance,
                        less -> !OffsetRuns.of(path, Math.copySign(less, left), corner, tolerance)
                                .runs()
                                .isEmpty()));
    }
}

package org.oaktag.geometry;

import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;

/**
 * The parallel of an open path, joined round its outer corners and trimmed where it would come nearer to the path than the distance.
 *
 * <pre>{@code
 * Path stitching = OffsetPath.of(hem.path(), 25, CornerStyle.round(), 0.01);
 * hem.path().nearest(stitching.pointAt(40)).distance();   // = 25.0
 * }</pre>
 *
 * <p>Method, error and cost are those of {@link OutlineOffset}. It starts and ends square to the ends of the path, unless it is trimmed
 * there. Of several runs that are left the longest is returned.
 */
public final class OffsetPath {
    private OffsetPath() {}

    /**
     * Returns the parallel of a path.
     *
     * @param path the path; points among its curves are left out
     * @param left distance to the left of travel, mm; negative to the right
     * @param corner how outer corners are joined
     * @param tolerance greatest distance from the exact parallel, mm
     * @throws IllegalArgumentException if the path is a single point, the distance is not finite, or the tolerance is not positive and
     *     finite
     * @throws PatternException if no point of the parallel keeps its distance from the path; it names a distance that works
     */
    public static Path of(Path path, double left, CornerStyle corner, double tolerance) {
        Plane.finite("offset distance", left);
        Plane.positive("tolerance", tolerance);
        if (path.withoutPointCurves().curves().get(0).isPoint()) {
            throw new IllegalArgumentException("a path that is the single point " + path.start() + " has no parallel");
        }
        Path run = left < 0 ? path.reversed() : path;
        double distance = Math.abs(left);
        Path parallel = longest(run, distance, corner, tolerance)
                .orElseThrow(() -> PatternException.of(
                        "parallel of a path",
                        "must keep its distance from the path somewhere",
                        distance + " mm to the " + (left < 0 ? "right" : "left"),
                        GreatestDistance.remedy(
                                distance,
                                less -> longest(run, less, corner, tolerance).isPresent())));
        return left < 0 ? parallel.reversed() : parallel;
    }

    private static Optional<Path> longest(Path path, double left, CornerStyle corner, double tolerance) {
        List<Path> edges = List.of(path);
        double[] distances = {left};
        OffsetCorners corners = OffsetCorners.all(corner, 1);
        List<RawCurve> raw = new RawOffset(edges, distances, corners, tolerance).openRun();
        return OffsetTrim.runs(raw, new Clearance(edges, distances, corners, false, tolerance)).stream()
                .map(run -> Path.of(run.stream().map(RawCurve::curve).toList()))
                .reduce((a, b) -> b.length() > a.length() ? b : a);
    }
}

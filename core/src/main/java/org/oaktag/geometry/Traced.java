package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;

/**
 * A smooth path with corners, found in many points that were digitised by hand. Immutable.
 *
 * <pre>{@code
 * List<Point> digitised = List.of(
 *         Point.of(0, 0.2), Point.of(40, -0.3), Point.of(80, 0.1),
 *         Point.of(120, 0), Point.of(120.2, 40), Point.of(119.9, 80));
 * Traced traced = Traced.open(digitised, 1, 50, Math.PI / 4);
 * traced.corners();                // = [3]
 * traced.path().curves().size();   // = 2
 * }</pre>
 *
 * <p><b>Corners.</b> At each point a line of least squares goes through the points of a window before it and one
 * through those of a window after it. Where they turn by more than an angle, and by more than anywhere within a window
 * of it, there is a corner; it is drawn at that point, or where the two lines meet if that is within the tolerance of
 * it. Corners nearer to each other than a window are found as one, and none is found within half a window of an end.
 *
 * <p><b>Curves.</b> Between corners the points are fitted by a cubic spline of least squares, with a knot more as long
 * as any point is further from it than the tolerance, and that by as few cubics as are found ({@link Fit#refit}); a row
 * of points within the tolerance of their chord becomes a segment. No point is further from the path than the
 * tolerance. The path passes between the points, so that noise evens out; a tolerance below the noise follows the
 * noise. An open path ends near its last points, not at them. Equal neighbours count once.
 *
 * <p><b>Cost.</b> Grows with the number of points and the square of the number of cubics.
 *
 * @param path the path; closed if the points are a ring
 * @param corners for each corner, in order, the index in the list of the point at which it was found
 */
public record Traced(Path path, List<Integer> corners) {
    /** What a tolerance is at the least, in units in the last place of the coordinates. */
    private static final double ROUNDING = 256;

    /** Refuses null, and copies the list. */
    public Traced {
        Objects.requireNonNull(path, "path");
        corners = List.copyOf(corners);
    }

    /**
     * Returns the path of an open row of points.
     *
     * @param points in order
     * @param tolerance greatest distance of a point from the path, mm
     * @param window how far to each side of a point its direction is taken, along the points, mm; some times their
     *     spacing, and their noise
     * @param angle the least turn at a corner, radians, of 0 to pi
     * @throws IllegalArgumentException if fewer than two points are distinct, if the tolerance is below 256 units in
     *     the last place of the greatest coordinate, or if an argument is not a positive number or beyond its range
     */
    public static Traced open(List<Point> points, double tolerance, double window, double angle) {
        return of(points, false, tolerance, window, angle);
    }

    /**
     * Returns the path of a ring of points, the last of which is followed by the first: closed, it starts at a corner
     * if there is one. The arguments and what is refused are those of {@link #open}, and three points must be distinct.
     *
     * @throws IllegalArgumentException as {@link #open} does
     */
    public static Traced closed(List<Point> points, double tolerance, double window, double angle) {
        return of(points, true, tolerance, window, angle);
    }

    private static Traced of(List<Point> given, boolean closed, double tolerance, double window, double angle) {
        Plane.positive("tolerance", tolerance);
        Plane.positive("window", window);
        if (!(angle > 0 && angle < Math.PI)) {
            throw new IllegalArgumentException("angle of a corner must be between 0 and pi, got " + angle);
        }
        List<Point> points = new ArrayList<>();
        List<Integer> sources = new ArrayList<>();
        double reach = 0;
        for (int i = 0; i < given.size(); i++) {
            Point point = given.get(i);
            reach = Math.max(reach, Math.max(Math.abs(point.x()), Math.abs(point.y())));
            boolean again = !points.isEmpty()
                    && (point.equals(points.get(points.size() - 1))
                            || (closed && i == given.size() - 1 && point.equals(points.get(0))));
            if (!again) {
                points.add(point);
                sources.add(i);
            }
        }
        int least = closed ? 3 : 2;
        long distinct = points.stream().distinct().count();
        if (distinct < least) {
            throw new IllegalArgumentException((closed ? "a ring" : "a path") + " needs at least " + least
                    + " distinct points, got " + distinct + " in " + given.size());
        }
        if (tolerance < ROUNDING * Math.ulp(reach)) {
            throw new IllegalArgumentException("tolerance must be at least " + ROUNDING * Math.ulp(reach)
                    + " mm, which coordinates of " + reach + " mm hold; got " + tolerance);
        }
        TracedCorners found = TracedCorners.of(points, closed, window, angle, tolerance);
        List<Integer> corners = found.indices();
        Path path =
                Path.of(closed && corners.isEmpty() ? ring(points, tolerance) : runs(points, closed, found, tolerance));
        return new Traced(path, corners.stream().map(sources::get).toList());
    }

    private static List<Curve> ring(List<Point> points, double tolerance) {
        List<Point> round = new ArrayList<>(points);
        round.add(points.get(0));
        return fewer(SplineFit.closed(round, tolerance), points, tolerance);
    }

    private static List<Curve> runs(List<Point> points, boolean closed, TracedCorners corners, double tolerance) {
        List<Point> moved = new ArrayList<>(points);
        List<Integer> at = new ArrayList<>(corners.indices());
        for (int i = 0; i < at.size(); i++) {
            moved.set(at.get(i), corners.places().get(i));
        }
        if (closed) {
            Collections.rotate(moved, -at.get(0));
            moved.add(moved.get(0));
            int first = at.get(0);
            at.replaceAll(i -> i - first);
            at.add(points.size());
        } else {
            at.add(0, 0);
            at.add(points.size() - 1);
        }
        List<Curve> curves = new ArrayList<>();
        for (int i = 1; i < at.size(); i++) {
            List<Point> row = moved.subList(at.get(i - 1), at.get(i) + 1);
            curves.addAll(run(row, closed || i > 1, closed || i + 1 < at.size(), tolerance));
        }
        return curves;
    }

    private static List<Curve> run(List<Point> row, boolean startFixed, boolean endFixed, double tolerance) {
        Line chord = new Line(row.get(0), row.get(row.size() - 1));
        if (!chord.isPoint() && isWithin(tolerance, List.of(chord), row)) {
            return List.of(chord);
        }
        return fewer(SplineFit.open(row, startFixed, endFixed, tolerance), row, tolerance);
    }

    /** Returns the run by fewer curves if that keeps the points within the tolerance, else the run. */
    private static List<Curve> fewer(List<Curve> run, List<Point> points, double tolerance) {
        for (double share = 1; share >= 0.125; share *= 0.5) {
            List<Curve> refit = Fit.refit(Path.of(run), share * tolerance).curves();
            if (refit.size() < run.size() && isWithin(tolerance, refit, points)) {
                return refit;
            }
        }
        return run;
    }

    private static boolean isWithin(double tolerance, List<Curve> run, List<Point> points) {
        Path path = Path.of(run);
        return points.stream().allMatch(point -> path.nearest(point).distance() <= tolerance);
    }
}

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A connected run of one or more curves: each starts at the very point where the one before it ended. Immutable and
 * thread-safe.
 *
 * <pre>{@code
 * Path side = Path.from(Point.of(235, 215)).lineTo(Point.of(228, 400)).lineTo(Point.of(240, 620)).build();
 * side.length();                                  // = 405.46
 * side.splitAt(185).after().start();              // where the waist notch goes
 * side.nearest(Point.of(228, 400)).distanceAlong();   // = 185.132
 * }</pre>
 *
 * <p>A place on a path is told by its distance from the start, along the path, in mm. A distance outside 0 to the
 * length (give or take {@link Curve#DEFAULT_ACCURACY}) is refused with an {@link IllegalArgumentException}.
 *
 * <p><b>Error.</b> Each of n curves is measured to {@code DEFAULT_ACCURACY / n}, so the distances of all joins and the
 * whole are within {@link Curve#DEFAULT_ACCURACY}; a place inside a curve adds the error of one inverse length and is
 * within twice that. Boxes and sweeps are exact to rounding.
 *
 * <p><b>Cost.</b> Lengths are measured on first use and kept, 8 bytes a curve; from then on finding a place takes O(log
 * n) and one inverse length, and of the curves only the one with the place is looked at. A part takes O(log n) and the
 * O(k) of its own k curves, which it shares with the path but for the two that are cut; it measures anew, so that equal
 * paths tell the same lengths to the last bit however they were made. A copy takes O(n). What concerns places in the
 * plane (the nearest place, crossings, containment) asks a tree of the curves' boxes, built on first use and kept, some
 * 96 bytes a curve, and looks at the curves near the place. Threads that race to be first make the same figures. Curves
 * that are single points are let be: they have no length, and directions look past them.
 */
public final class Path {
    private final List<Curve> curves;

    /**
     * Measured on first use. Racing threads measure the same figures; the holder's final field makes them visible
     * whole. Read once.
     */
    private @Nullable Lengths lengths;

    /** Built on first use, like the lengths; all its fields are final. Read once. */
    private @Nullable CurveTree tree;

    /** Found on first use, like the tree. */
    private @Nullable Bends bends;

    /** Found on first use, like the tree. */
    private @Nullable Vector leaving;

    /** Found on first use, like the tree. */
    private @Nullable Vector arriving;

    /** Takes over a list of connected curves that never changes. */
    Path(List<Curve> curves) {
        this.curves = curves;
    }

    /** Distances from the start of the path to the end of each curve. */
    private static final class Lengths {
        final double[] ends;

        Lengths(double[] ends) {
            this.ends = ends;
        }
    }

    /** How each curve bends. */
    private static final class Bends {
        final CurveBends[] all;

        Bends(CurveBends[] all) {
            this.all = all;
        }
    }

    /**
     * A curve of a path and a place on it.
     *
     * @param curve index of the curve, from 0
     * @param t parameter on it, 0 to 1
     */
    public record Location(int curve, double t) {}

    /**
     * The two parts of a path that was cut: the first ends exactly where the second starts.
     *
     * @param before from the start to the cut
     * @param after from the cut to the end
     */
    public record Split(Path before, Path after) {
        /** Refuses null. */
        public Split {
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(after, "after");
        }
    }

    /**
     * Returns the path of these curves.
     *
     * @throws IllegalArgumentException if there are none or they are not connected
     */
    public static Path of(Curve... curves) {
        return curves.length == 1 ? new Path(List.of(curves[0])) : of(Arrays.asList(curves));
    }

    /**
     * Returns the path of these curves.
     *
     * @throws IllegalArgumentException if there are none or they are not connected
     */
    public static Path of(List<? extends Curve> curves) {
        List<Curve> copy = List.copyOf(curves);
        if (copy.isEmpty()) {
            throw new IllegalArgumentException("a path needs at least one curve, got none");
        }
        for (int i = 1; i < copy.size(); i++) {
            Point end = copy.get(i - 1).end();
            if (!copy.get(i).start().equals(end)) {
                throw new IllegalArgumentException("curve " + i + " of a path must start where curve " + (i - 1)
                        + " ends, at " + end + ", got " + copy.get(i).start());
            }
        }
        return new Path(copy);
    }

    /** Returns a builder of a path that starts here. */
    public static PathBuilder from(Point start) {
        return new PathBuilder(start);
    }

    /**
     * Returns the straight segments from point to point.
     *
     * @throws IllegalArgumentException if there are fewer than two points
     */
    public static Path polyline(Point... points) {
        if (points.length < 2) {
            throw new IllegalArgumentException("a polyline needs at least two points, got " + points.length);
        }
        List<Curve> lines = new ArrayList<>(points.length - 1);
        for (int i = 1; i < points.length; i++) {
            lines.add(new Line(points[i - 1], points[i]));
        }
        return of(lines);
    }

    /** Returns the curves in order; the list cannot be changed. */
    public List<Curve> curves() {
        return curves;
    }

    public Point start() {
        return curves.get(0).start();
    }

    public Point end() {
        return curves.get(curves.size() - 1).end();
    }

    /** Returns the length, to {@link Curve#DEFAULT_ACCURACY}. */
    public double length() {
        double[] ends = ends();
        return ends[ends.length - 1];
    }

    /** Returns the straight distance from the start to the end, mm. */
    public double chord() {
        return start().distanceTo(end());
    }

    /**
     * Returns the length to the accuracy in mm.
     *
     * @throws IllegalArgumentException if that is not positive and finite
     */
    public double length(double accuracy) {
        if (Plane.positive("accuracy", accuracy) >= Curve.DEFAULT_ACCURACY) {
            return length();
        }
        double sum = 0;
        for (Curve curve : curves) {
            sum += curve.length(accuracy / curves.size());
        }
        return sum;
    }

    /**
     * Returns the curve and the parameter at this distance; at a join, the end of the earlier curve, at 0 the start of
     * the first.
     */
    public Location locate(double distance) {
        double[] ends = ends();
        double inside = Plane.distance(distance, ends[ends.length - 1], Curve.DEFAULT_ACCURACY);
        int found = Arrays.binarySearch(ends, inside);
        if (found >= 0) {
            return new Location(found, 1);
        }
        int curve = -found - 1;
        double before = curve == 0 ? 0 : ends[curve - 1];
        return new Location(curve, curves.get(curve).parameterAt(inside - before));
    }

    /**
     * Returns the distance from the start at this place.
     *
     * @throws IllegalArgumentException if there is no such curve or t
     */
    public double distanceAt(Location location) {
        if (location.curve() < 0 || location.curve() >= curves.size()) {
            throw new IllegalArgumentException(
                    "curve must lie within 0 to " + (curves.size() - 1) + ", got " + location.curve());
        }
        double[] ends = ends();
        int i = location.curve();
        if (location.t() == 1) {
            return ends[i];
        }
        double before = i == 0 ? 0 : ends[i - 1];
        return Math.min(before + curves.get(i).lengthBetween(0, location.t(), accuracyOfEach()), ends[i]);
    }

    /** Returns the point at this distance, exactly the start at 0 and exactly the end at the length. */
    public Point pointAt(double distance) {
        Location at = locate(distance);
        return curves.get(at.curve()).pointAt(at.t());
    }

    /**
     * Returns the unit tangent at this distance, at a join the arriving one.
     *
     * @throws IllegalStateException if that curve is a point
     */
    public Vector directionAt(double distance) {
        Location at = locate(distance);
        return curves.get(at.curve()).directionAt(at.t());
    }

    /**
     * Returns the signed curvature, 1/mm, clockwise positive, at this distance, at a join that of the arriving curve.
     */
    public double curvatureAt(double distance) {
        Location at = locate(distance);
        return curves.get(at.curve()).curvatureAt(at.t());
    }

    /**
     * Returns the unit tangent with which the path leaves its start.
     *
     * @throws IllegalStateException if the path is a point
     */
    public Vector startDirection() {
        Vector known = leaving;
        if (known == null) {
            known = direction(0, 1, 0);
            leaving = known;
        }
        return known;
    }

    /**
     * Returns the unit tangent with which the path arrives at its end.
     *
     * @throws IllegalStateException if the path is a point
     */
    public Vector endDirection() {
        Vector known = arriving;
        if (known == null) {
            known = direction(curves.size() - 1, -1, 1);
            arriving = known;
        }
        return known;
    }

    /** Returns the direction at t of the first curve, from one on and by so many each time, that is not a point. */
    private Vector direction(int first, int step, double t) {
        for (int i = first; i >= 0 && i < curves.size(); i += step) {
            if (!curves.get(i).isPoint()) {
                return curves.get(i).directionAt(t);
            }
        }
        throw new IllegalStateException("a path that is the single point " + start() + " has no direction");
    }

    /**
     * Returns the angle through which the tangent turns from start to end, radians, clockwise positive, the corners
     * between the curves included (each within half a turn), that from the end back to the start of a closed path not.
     */
    public double turning() {
        double sum = 0;
        @Nullable Vector arriving = null;
        for (Curve curve : curves) {
            if (curve.isPoint()) {
                continue;
            }
            if (arriving != null) {
                sum += arriving.angleTo(curve.directionAt(0));
            }
            sum += curve.turning();
            arriving = curve.directionAt(1);
        }
        return sum;
    }

    /**
     * Cuts the path. A cut within {@link Curve#DEFAULT_ACCURACY} of a join is made at the join, so that no sliver is
     * left.
     *
     * @throws IllegalArgumentException if the distance is not inside the path, off both its ends
     */
    public Split splitAt(double distance) {
        Location at = cut(distance);
        double length = length();
        return new Split(
                part(0, new Location(0, 0), distance, at),
                part(distance, at, length, new Location(curves.size() - 1, 1)));
    }

    /**
     * Returns the part between two distances, this path itself if that is all of it. Parts that meet at one distance
     * meet at the very same point.
     *
     * @throws IllegalArgumentException unless {@code from} is less than {@code to} by more than {@link
     *     Curve#DEFAULT_ACCURACY}, and both lie within 0 to the length
     */
    public Path sub(double from, double to) {
        return part(from, cut(from), to, cut(to));
    }

    private Path part(double from, Location first, double to, Location last) {
        if (to - from <= Curve.DEFAULT_ACCURACY || first.equals(last)) {
            throw new IllegalArgumentException("a part of a path must be longer than " + Curve.DEFAULT_ACCURACY
                    + " mm, got " + from + " to " + to + " mm");
        }
        if (first.curve() == 0 && first.t() == 0 && last.curve() == curves.size() - 1 && last.t() == 1) {
            return this;
        }
        List<Curve> part = new ArrayList<>(last.curve() - first.curve() + 1);
        for (int i = first.curve(); i <= last.curve(); i++) {
            double t0 = i == first.curve() ? first.t() : 0;
            double t1 = i == last.curve() ? last.t() : 1;
            if (t0 < 1 && t1 > 0) {
                part.add(t0 == 0 && t1 == 1 ? curves.get(i) : curves.get(i).sub(t0, t1));
            }
        }
        return of(part);
    }

    /** Like {@link #locate}, but onto a join that is nearer than the accuracy. */
    private Location cut(double distance) {
        double[] ends = ends();
        if (Math.abs(distance) <= Curve.DEFAULT_ACCURACY) {
            return new Location(0, 0);
        }
        if (Math.abs(distance - length()) <= Curve.DEFAULT_ACCURACY) {
            return new Location(curves.size() - 1, 1);
        }
        Location at = locate(distance);
        int i = at.curve();
        if (Math.abs(ends[i] - distance) <= Curve.DEFAULT_ACCURACY) {
            return new Location(i, 1);
        }
        if (i > 0 && Math.abs(distance - ends[i - 1]) <= Curve.DEFAULT_ACCURACY) {
            return new Location(i - 1, 1);
        }
        return at;
    }

    public Path reversed() {
        List<Curve> back = new ArrayList<>(curves.size());
        for (Curve curve : curves) {
            back.add(curve.reversed());
        }
        Collections.reverse(back);
        return of(back);
    }

    public Path transformed(Transform transform) {
        List<Curve> images = new ArrayList<>(curves.size());
        for (Curve curve : curves) {
            images.add(curve.transformed(transform));
        }
        return of(images);
    }

    /**
     * Returns this path with other ends, near its own: the first and the last handle move with them. For joining what
     * rounding has parted.
     */
    public Path withEnds(Point first, Point last) {
        if (start().equals(first) && end().equals(last)) {
            return this;
        }
        List<Curve> moved = new ArrayList<>(curves);
        int end = moved.size() - 1;
        moved.set(0, withEnds(moved.get(0), first, moved.get(0).end()));
        moved.set(end, withEnds(moved.get(end), moved.get(end).start(), last));
        return of(moved);
    }

    private static Curve withEnds(Curve curve, Point first, Point last) {
        return curve instanceof Cubic cubic
                ? Cubic.of(
                        first,
                        cubic.control1().plus(first.minus(cubic.start())),
                        cubic.control2().plus(last.minus(cubic.end())),
                        last)
                : new Line(first, last);
    }

    /**
     * Returns this path and then the next.
     *
     * @throws IllegalArgumentException if the next does not start where this one ends
     */
    public Path then(Path next) {
        List<Curve> joined = new ArrayList<>(curves);
        joined.addAll(next.curves);
        return of(joined);
    }

    /** Returns the tight box of the curves. */
    public Bounds bounds() {
        Bounds bounds = curves.get(0).bounds();
        for (Curve curve : curves) {
            bounds = bounds.union(curve.bounds());
        }
        return bounds;
    }

    /** Tells whether the path ends at the very point where it starts. */
    public boolean isClosed() {
        return start().equals(end());
    }

    /** Returns the sum of {@link Curve#sweep()}, mm²: for a closed path its signed area, clockwise positive. */
    public double sweep() {
        double sum = 0;
        for (Curve curve : curves) {
            sum += curve.sweep();
        }
        return sum;
    }

    /** Returns the place nearest to the point, the first along the path if several are equally near. */
    public PathNearest nearest(Point point) {
        if (curves.size() == 1) {
            Nearest only = curves.get(0).nearest(point);
            return new PathNearest(distanceAt(new Location(0, only.t())), only.point(), only.distance());
        }
        NearestCurve found = NearestCurve.of(this, point);
        Nearest best = found.place();
        return new PathNearest(distanceAt(new Location(found.index(), best.t())), best.point(), best.distance());
    }

    /**
     * Returns the path without the curves that are single points, itself if there are none; a path of nothing else
     * keeps one.
     */
    public Path withoutPointCurves() {
        List<Curve> kept = curves.stream().filter(curve -> !curve.isPoint()).toList();
        if (kept.size() == curves.size()) {
            return this;
        }
        return kept.isEmpty() ? of(curves.get(0)) : of(kept);
    }

    /** Returns the boxes of the curves. */
    CurveTree tree() {
        CurveTree known = tree;
        if (known == null) {
            known = CurveTree.of(curves);
            tree = known;
        }
        return known;
    }

    /** Returns how a curve bends. */
    CurveBends bends(int curve) {
        Bends known = bends;
        if (known == null) {
            CurveBends[] all = new CurveBends[curves.size()];
            for (int i = 0; i < all.length; i++) {
                all[i] = new CurveBends(curves.get(i));
            }
            known = new Bends(all);
            bends = known;
        }
        return known.all[curve];
    }

    private double accuracyOfEach() {
        return Curve.DEFAULT_ACCURACY / curves.size();
    }

    private double[] ends() {
        Lengths known = lengths;
        if (known == null) {
            double[] ends = new double[curves.size()];
            double sum = 0;
            for (int i = 0; i < ends.length; i++) {
                sum += curves.get(i).length(accuracyOfEach());
                ends[i] = sum;
            }
            known = new Lengths(ends);
            lengths = known;
        }
        return known.ends;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Path path && curves.equals(path.curves));
    }

    @Override
    public int hashCode() {
        return curves.hashCode();
    }

    @Override
    public String toString() {
        return "Path" + curves;
    }
}

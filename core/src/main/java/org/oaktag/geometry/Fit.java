package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Draws smooth runs of cubics: through points, in place of a run with more curves than it needs, between two paths,
 * and of a given length. {@link Traced} fits many points that are off by some noise.
 *
 * <pre>{@code
 * List<Point> traced = List.of(Point.of(0, 0), Point.of(30, 42), Point.of(75, 60), Point.of(120, 55));
 * Path drawn = Fit.through(traced, Vector.of(0, 1), Vector.of(1, 0));
 * drawn.curves().size();   // = 3
 * }</pre>
 *
 * <p>"Smooth" is a common tangent at every join (G1); where the curvature agrees as well it is said. Each method says
 * how exact it is.
 */
public final class Fit {
    /** Neighbouring curves whose directions differ by more than this, radians, meet in a corner and not smoothly. */
    static final double CORNER = 1e-3;

    private Fit() {}

    /**
     * Returns the smooth curve through the points, one cubic from each to the next, that leaves and arrives in the
     * given directions.
     *
     * <p>It is the clamped cubic spline over the chord lengths: the second derivative with respect to the chord length
     * is continuous, and so are direction and curvature at every point. The tangents solve a tridiagonal system (de
     * Boor, A Practical Guide to Splines, ch. 4).
     *
     * @throws IllegalArgumentException if there are fewer than two points, if neighbours coincide, or if a direction is
     *     the zero vector
     */
    public static Path through(List<Point> points, Vector startDirection, Vector endDirection) {
        return ClampedSpline.through(List.copyOf(points), startDirection, endDirection);
    }

    /**
     * Returns a path within the tolerance of the given one, with the same ends, corners and end directions, of fewer
     * cubics if that can be done; else the path itself.
     *
     * <p>Between corners (directions that differ by more than a thousandth of a radian) the path is fitted anew by as
     * few cubics as the tolerance allows, straight runs by one segment. The distance is measured both ways, at eight
     * places on every curve that is replaced and at sixteen on every new one; end directions are kept to a billionth of
     * a radian and new joins are as smooth. A run of which no such fit is found is left as it is.
     *
     * @param tolerance greatest distance from the path, mm
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public static Path refit(Path path, double tolerance) {
        Plane.positive("tolerance", tolerance);
        Path source = path.withoutPointCurves();
        List<Curve> fitted = new ArrayList<>();
        List<Curve> smooth = new ArrayList<>();
        for (Curve curve : source.curves()) {
            if (curve.isPoint()) {
                return path;
            }
            if (!smooth.isEmpty() && isCorner(smooth.get(smooth.size() - 1), curve)) {
                fitted.addAll(Refit.fewer(smooth, tolerance));
                smooth.clear();
            }
            smooth.add(curve);
        }
        fitted.addAll(Refit.fewer(smooth, tolerance));
        return fitted.size() < path.curves().size() ? Path.of(fitted) : path;
    }

    private static boolean isCorner(Curve arriving, Curve leaving) {
        return Math.abs(arriving.directionAt(1).angleTo(leaving.directionAt(0))) > CORNER;
    }

    /**
     * Returns the cubic that joins the end of one path to the start of another smoothly.
     *
     * <p>Its directions are those of the paths. Its handles a and b are those with which its curvatures are theirs too
     * (G2), {@code 3/2 k0 a² = T0 x D - b T0 x T1} and {@code 3/2 k1 b² = D x T1 - a T0 x T1} with D from end to start,
     * if Newton's method finds such handles from a third to three times those of a circular arc; else the arc's own
     * (G1).
     *
     * @throws IllegalArgumentException if the gap is zero
     * @throws IllegalStateException if a path is a single point
     */
    public static Cubic blend(Path before, Path after) {
        return Blend.between(before, after);
    }

    /**
     * Returns the cubic of a given length that leaves one end and arrives at the other in given directions.
     *
     * <p>Its handles are equally long, so that there is just one. It is smooth: it has no cusp and does not cross
     * itself; and its handles are from a hundredth of the distance of the ends to twice that distance. So there is a
     * least and a greatest length, and a length between straight ends in one line is the distance itself.
     *
     * @param length mm, met to a millionth
     * @throws IllegalArgumentException if no such cubic is that long, with the lengths that there are; if the ends are
     *     one point; or if a direction is the zero vector
     */
    public static Cubic ofLength(Point start, Vector startDirection, Point end, Vector endDirection, double length) {
        return new LengthFit(start, startDirection, end, endDirection).of(length);
    }
}

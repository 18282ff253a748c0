package org.oaktag.geometry;

import java.util.Objects;

/**
 * How near two paths come to each other, how far apart they are at most, and how far one strays from the other.
 *
 * <pre>{@code
 * Path seam = Path.polyline(Point.of(0, 0), Point.of(100, 0));
 * Path drawn = Path.polyline(Point.of(0, 3), Point.of(60, 5), Point.of(100, 4));
 * Distances.least(seam, drawn, 1e-6).distance();       // = 3.0
 * Distances.hausdorff(seam, drawn, 1e-6).distance();   // = 5.0
 * }</pre>
 *
 * <p><b>Error.</b> Every distance is one that two places of the paths have, so the least is never too small and the
 * others never too great; and none of them misses the true one by more than the tolerance. A tolerance below 1e-12 of
 * the greatest coordinate is taken as that.
 *
 * <p><b>Method.</b> Branch and bound on halves of the curves, with bounds from their control points that close in with
 * the square of a piece's length. Nothing is sampled.
 */
public final class Distances {
    private Distances() {}

    /**
     * A distance, and where the paths have it.
     *
     * @param distance mm
     * @param first the place on the first path
     * @param firstPoint where that is
     * @param second the place on the second path
     * @param secondPoint where that is
     */
    public record Apart(
            double distance, Path.Location first, Point firstPoint, Path.Location second, Point secondPoint) {
        /** Refuses null. */
        public Apart {
            Objects.requireNonNull(first, "first");
            Objects.requireNonNull(firstPoint, "firstPoint");
            Objects.requireNonNull(second, "second");
            Objects.requireNonNull(secondPoint, "secondPoint");
        }

        /** Returns a place of one path and the place nearest to it of another. */
        static Apart between(Path.Location at, Point point, Path other) {
            NearestCurve there = NearestCurve.of(other, point);
            return new Apart(
                    there.place().distance(),
                    at,
                    point,
                    there.location(),
                    there.place().point());
        }

        /** Returns the same distance, of the second path from the first. */
        public Apart swapped() {
            Path.Location here = second;
            Point herePoint = secondPoint;
            return new Apart(distance, here, herePoint, first, firstPoint);
        }
    }

    /**
     * Returns the least distance of a place on the one path from a place on the other, 0 if they meet.
     *
     * @param tolerance by how much it may be too great, mm
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public static Apart least(Path first, Path second, double tolerance) {
        return new LeastDistance(first, second, held(first, second, tolerance)).found();
    }

    /**
     * Returns the greatest distance of a place on the one path from a place on the other.
     *
     * @param tolerance by how much it may be too small, mm
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public static Apart greatest(Path first, Path second, double tolerance) {
        return new WidestDistance(first, second, held(first, second, tolerance)).found();
    }

    /**
     * Returns how far the first path strays from the second: the greatest distance of its places from that path, each
     * to the nearest place.
     *
     * @param tolerance by how much it may be too small, mm
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public static Apart straying(Path first, Path second, double tolerance) {
        return new StrayDistance(first, second, held(first, second, tolerance)).found();
    }

    /**
     * Returns the Hausdorff distance: the greater of how far each path strays from the other.
     *
     * @param tolerance by how much it may be too small, mm
     * @throws IllegalArgumentException if the tolerance is not positive and finite
     */
    public static Apart hausdorff(Path first, Path second, double tolerance) {
        Apart there = straying(first, second, tolerance);
        Apart back = straying(second, first, tolerance);
        return there.distance() >= back.distance() ? there : back.swapped();
    }

    private static double held(Path first, Path second, double tolerance) {
        Plane.positive("tolerance", tolerance);
        return Math.max(
                tolerance, 1e-12 * Math.max(first.tree().reach(), second.tree().reach()));
    }
}

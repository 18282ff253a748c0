package org.oaktag.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.oaktag.geometry.Point;

/**
 * A polygon cut into trapezoids by upright lines through all its corners, from left to right; exact, as the sides are
 * straight between those lines.
 */
final class Slabs {

    /** Corners nearer to one upright line than this, mm, are taken to lie on it. */
    private static final double SAME = 1e-9;

    private final List<Trapezoid> trapezoids;

    /** The part of a polygon between two upright lines and two of its sides. */
    record Trapezoid(
            double left, double right, double topLeft, double topRight, double bottomLeft, double bottomRight) {

        double topAt(double x) {
            return topLeft + (topRight - topLeft) * (x - left) / (right - left);
        }

        double bottomAt(double x) {
            return bottomLeft + (bottomRight - bottomLeft) * (x - left) / (right - left);
        }
    }

    private Slabs(List<Trapezoid> trapezoids) {
        this.trapezoids = List.copyOf(trapezoids);
    }

    /**
     * Cuts a closed polygon.
     *
     * @param corners the corners in order, the first not repeated
     */
    static Slabs of(List<Point> corners) {
        double[] lines = lines(corners);
        List<Trapezoid> trapezoids = new ArrayList<>();
        for (int i = 1; i < lines.length; i++) {
            add(trapezoids, corners, lines[i - 1], lines[i]);
        }
        return new Slabs(trapezoids);
    }

    List<Trapezoid> trapezoids() {
        return trapezoids;
    }

    double left() {
        return trapezoids.get(0).left;
    }

    double right() {
        return trapezoids.get(trapezoids.size() - 1).right;
    }

    private static double[] lines(List<Point> corners) {
        double[] lines = corners.stream().mapToDouble(Point::x).sorted().toArray();
        int count = 0;
        for (double x : lines) {
            if (count == 0 || x - lines[count - 1] > SAME) {
                lines[count++] = x;
            }
        }
        return Arrays.copyOf(lines, count);
    }

    /** The sides that span the slab, from top to bottom, bound the inside two by two. */
    private static void add(List<Trapezoid> trapezoids, List<Point> corners, double left, double right) {
        List<double[]> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            Point first = a.x() <= b.x() ? a : b;
            Point second = a.x() <= b.x() ? b : a;
            if (first.x() <= left + SAME && second.x() >= right - SAME && second.x() - first.x() > SAME) {
                double slope = (second.y() - first.y()) / (second.x() - first.x());
                sides.add(
                        new double[] {first.y() + slope * (left - first.x()), first.y() + slope * (right - first.x())});
            }
        }
        sides.sort(Comparator.comparingDouble(side -> side[0] + side[1]));
        for (int i = 1; i < sides.size(); i += 2) {
            double[] top = sides.get(i - 1);
            double[] bottom = sides.get(i);
            trapezoids.add(new Trapezoid(left, right, top[0], top[1], bottom[0], bottom[1]));
        }
    }
}

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What cuts a run of parallels and is never part of it: beside what the run crosses of itself, these are the places at
 * which it may begin to come too near.
 *
 * <p>Of an open path these are the parallel on its other side, and round its ends circles of the distance, a little
 * less. Of an outline they are found at the corners between two distances, where the lesser counts: a circle of that
 * one, and the normal at the end of the edge that keeps the greater, beside which that edge's own counts; and what the
 * corners have cut off the parallels, beyond which they are too near all the same.
 *
 * @param curves the parallel on the other side, or the normals and what is cut off
 * @param circles round the ends, or round the corners
 */
record OffsetCutters(List<Curve> curves, List<Circle> circles) {
    /**
     * The circles are smaller than the distance by this share of the tolerance, so that the parallel does not run along
     * them.
     */
    private static final double WITHIN = 0.75;

    /**
     * A path that turns less than this, radians, in all, does not come round to meet its own left side with its right.
     */
    private static final double HALF_ROUND = 0.9 * Math.PI;

    /**
     * A circle about a point.
     *
     * @param radius mm
     */
    record Circle(Point centre, double radius) {
        /** Tells whether a box has points both inside and outside. */
        boolean mayMeet(Bounds box) {
            double left = box.minX() - centre.x();
            double right = centre.x() - box.maxX();
            double above = box.minY() - centre.y();
            double below = centre.y() - box.maxY();
            double near = Math.hypot(Math.max(Math.max(left, right), 0), Math.max(Math.max(above, below), 0));
            double far = Math.hypot(Math.min(left, right), Math.min(above, below));
            return near <= radius && radius <= far;
        }
    }

    OffsetCutters {
        curves = List.copyOf(curves);
        circles = List.copyOf(circles);
    }

    /** Returns what cuts the parallel to the left of a path. */
    static OffsetCutters of(Path path, double left, double tolerance) {
        double radius = left - WITHIN * tolerance;
        if (radius <= 0) {
            return new OffsetCutters(List.of(), List.of());
        }
        List<Circle> ends = List.of(new Circle(path.start(), radius), new Circle(path.end(), radius));
        if (path.curves().stream().mapToDouble(OffsetCutters::bend).sum() + corners(path) < HALF_ROUND) {
            return new OffsetCutters(List.of(), ends);
        }
        List<Path> back = List.of(path.reversed());
        List<RawCurve> other = new RawOffset(
                        back, new double[] {left}, OffsetCorners.all(CornerStyle.round(), 1), tolerance)
                .openRun();
        return new OffsetCutters(
                other.stream().filter(raw -> !raw.link()).map(RawCurve::curve).toList(), ends);
    }

    /**
     * Returns what cuts the run of the edges of an outline, each with its own distance to the left.
     *
     * @param cutOff what the joins of the run have cut off the parallels
     */
    static OffsetCutters of(
            List<Path> edges, double[] distances, OffsetCorners corners, List<Curve> cutOff, double tolerance) {
        List<Curve> curves = new ArrayList<>(cutOff);
        List<Circle> circles = new ArrayList<>();
        for (int i = 0; i < distances.length; i++) {
            int next = (i + 1) % distances.length;
            Vector arriving = edges.get(i).endDirection();
            Vector leaving = edges.get(next).startDirection();
            if (distances[i] == distances[next] || corners.carries(arriving, leaving, distances[i], distances[next])) {
                continue;
            }
            double less = Math.min(distances[i], distances[next]) - WITHIN * tolerance;
            Vector normal = (distances[i] > distances[next] ? arriving : leaving).leftNormal();
            Point corner = edges.get(i).end();
            curves.add(new Line(
                    corner.plus(normal.times(Math.max(less, 0))),
                    corner.plus(normal.times(Math.max(distances[i], distances[next])))));
            if (less > 0) {
                circles.add(new Circle(corner, less));
            }
        }
        return new OffsetCutters(curves, circles);
    }

    /** Returns the turns of a control polygon, none less than those of the curve. */
    private static double bend(Curve curve) {
        if (!(curve instanceof Cubic cubic)) {
            return 0;
        }
        Vector h0 = cubic.control1().minus(cubic.start());
        Vector h1 = cubic.control2().minus(cubic.control1());
        Vector h2 = cubic.end().minus(cubic.control2());
        return h1.equals(Vector.ZERO) ? Math.abs(h0.angleTo(h2)) : Math.abs(h0.angleTo(h1)) + Math.abs(h1.angleTo(h2));
    }

    private static double corners(Path path) {
        double sum = 0;
        for (int i = 1; i < path.curves().size(); i++) {
            Vector arriving = path.curves().get(i - 1).directionAt(1);
            sum += Math.abs(arriving.angleTo(path.curves().get(i).directionAt(0)));
        }
        return sum;
    }

    /** Returns where a curve enters or leaves the circles. */
    double[] onCircles(Curve curve) {
        Bounds hull = CurveContacts.hull(curve);
        double[] all = {};
        for (Circle circle : circles) {
            if (!circle.mayMeet(hull)) {
                continue;
            }
            Cubic cubic = Cubic.from(curve);
            double[] x = new double[4];
            double[] y = new double[4];
            for (int i = 0; i < x.length; i++) {
                Vector arm = cubic.controls().get(i).minus(circle.centre());
                x[i] = arm.x();
                y[i] = arm.y();
            }
            double[] square = Bernstein.plus(Bernstein.product(x, x), Bernstein.product(y, y));
            for (int i = 0; i < square.length; i++) {
                square[i] -= circle.radius() * circle.radius();
            }
            double[] places = Polynomials.roots(square);
            double[] more = Arrays.copyOf(all, all.length + places.length);
            System.arraycopy(places, 0, more, all.length, places.length);
            all = more;
        }
        return all;
    }
}

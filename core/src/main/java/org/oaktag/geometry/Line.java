package org.oaktag.geometry;

import java.util.Objects;

/**
 * A straight segment, {@code r(t) = (1-t) start + t end}; it may be a single point. All that is said of a {@link Curve}
 * holds. Immutable and thread-safe.
 *
 * <pre>{@code
 * Line shoulder = Line.of(Point.of(72.5, 0), Point.of(199.4, 46.2));
 * shoulder.length();                           // = 135.05
 * shoulder.nearest(Point.of(130, 0)).point();  // the foot of the plumb line on it
 * }</pre>
 *
 * <p>Everything is a closed form, exact to rounding, and takes the same time whatever the accuracy. Its parameter is
 * even along it: {@code t = distance / length}.
 */
public record Line(Point start, Point end) implements Curve {
    /** Refuses null. */
    public Line {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(end, "end");
    }

    public static Line of(Point start, Point end) {
        return new Line(start, end);
    }

    @Override
    public Point pointAt(double t) {
        return start.lerp(end, Plane.parameter(t));
    }

    @Override
    public Vector derivativeAt(double t) {
        Plane.parameter(t);
        return end.minus(start);
    }

    @Override
    public Vector secondDerivativeAt(double t) {
        Plane.parameter(t);
        return Vector.ZERO;
    }

    @Override
    public Vector directionAt(double t) {
        Plane.parameter(t);
        if (isPoint()) {
            throw new IllegalStateException("a curve that is the single point " + start + " has no direction");
        }
        return end.minus(start).unit();
    }

    @Override
    public double curvatureAt(double t) {
        Plane.parameter(t);
        return 0;
    }

    @Override
    public double turning() {
        return 0;
    }

    @Override
    public double length() {
        return start.distanceTo(end);
    }

    @Override
    public double length(double accuracy) {
        Plane.positive("accuracy", accuracy);
        return length();
    }

    @Override
    public double lengthBetween(double t0, double t1, double accuracy) {
        Plane.interval(t0, t1);
        Plane.positive("accuracy", accuracy);
        return (t1 - t0) * length();
    }

    @Override
    public double parameterAt(double distance) {
        return parameterAt(distance, DEFAULT_ACCURACY);
    }

    @Override
    public double parameterAt(double distance, double accuracy) {
        Plane.positive("accuracy", accuracy);
        double length = length();
        double inside = Plane.distance(distance, length, accuracy);
        return inside == 0 ? 0 : inside / length;
    }

    @Override
    public Line sub(double t0, double t1) {
        Plane.interval(t0, t1);
        return new Line(pointAt(t0), pointAt(t1));
    }

    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Line transformed(Transform transform) {
        return new Line(transform.apply(start), transform.apply(end));
    }

    @Override
    public Bounds bounds() {
        return Bounds.of(start, end);
    }

    @Override
    public double sweep() {
        return 0.5 * (start.x() * (end.y() - start.y()) - start.y() * (end.x() - start.x()));
    }

    @Override
    public Nearest nearest(Point point) {
        Vector along = end.minus(start);
        double square = along.dot(along);
        double t = square == 0 ? 0 : Math.min(Math.max(point.minus(start).dot(along) / square, 0), 1);
        Point foot = pointAt(t);
        return new Nearest(t, foot, foot.distanceTo(point));
    }

    @Override
    public boolean isPoint() {
        return start.equals(end);
    }
}

package org.oaktag.geometry;

import java.util.List;
import java.util.Objects;

/**
 * A cubic Bézier, {@code r(t) = (1-t)³ start + 3 (1-t)² t control1 + 3 (1-t) t² control2 + t³ end}. Controls may
 * coincide, the curve may be straight, turn back on itself, loop, have a cusp or be a single point. All that is said of
 * a {@link Curve} holds. Immutable and thread-safe.
 *
 * <pre>{@code
 * // A Pythagorean hodograph: its speed is 45 + 45 t², so its length is 60.
 * Cubic crown = Cubic.of(Point.of(0, 0), Point.of(9, 12), Point.of(30, 15), Point.of(54, -3));
 * crown.length();                       // = 60.0
 * crown.lengthBetween(0, 0.5, 1e-9);    // = 24.375
 * crown.parameterAt(24.375);            // = 0.5
 * }</pre>
 *
 * <table>
 * <caption>How each is found, and how exactly</caption>
 * <tr><th>what</th><th>method</th><th>error</th></tr>
 * <tr><td>length</td><td>Gauss-Legendre quadrature of |r'|, its order and its cuts told by the roots of the
 * hodograph</td>
 *     <td>the accuracy</td></tr>
 * <tr><td>parameter at a distance</td><td>Halley's steps in a bracket, stopped on the residual in mm</td>
 *     <td>the accuracy, along the curve</td></tr>
 * <tr><td>box</td><td>the roots of two quadratics</td><td>rounding</td></tr>
 * <tr><td>sweep</td><td>Green's integral, a polynomial of the controls</td><td>rounding</td></tr>
 * <tr><td>turning</td><td>the hodograph halved until its controls lie within a right angle</td><td>rounding</td></tr>
 * <tr><td>nearest point</td><td>every root of the quintic {@code (r - p) . r'}, isolated between those of its
 * derivatives</td>
 *     <td>rounding of the distance</td></tr>
 * </table>
 *
 * <p>Nothing is flattened. Lengths and their inverse allocate nothing; what they take is measured in the benchmarks.
 *
 * @param start where it starts
 * @param control1 the end of the handle with which it leaves: {@code r'(0) = 3 (control1 - start)}
 * @param control2 the start of the handle with which it arrives: {@code r'(1) = 3 (end - control2)}
 * @param end where it ends
 */
public record Cubic(Point start, Point control1, Point control2, Point end) implements Curve {
    /** Refuses null. */
    public Cubic {
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(control1, "control1");
        Objects.requireNonNull(control2, "control2");
        Objects.requireNonNull(end, "end");
    }

    public static Cubic of(Point start, Point control1, Point control2, Point end) {
        return new Cubic(start, control1, control2, end);
    }

    /** Returns the straight segment as a cubic of even speed: its controls lie at the thirds. */
    public static Cubic from(Line line) {
        return new Cubic(
                line.start(),
                line.start().lerp(line.end(), 1.0 / 3),
                line.start().lerp(line.end(), 2.0 / 3),
                line.end());
    }

    /** Returns the curve itself if it is a cubic, else its straight segment as one. */
    public static Cubic from(Curve curve) {
        return curve instanceof Cubic cubic ? cubic : from((Line) curve);
    }

    /**
     * Returns the quadratic Bézier with this one control point as a cubic: the same curve, raised in degree, exact to
     * rounding.
     */
    public static Cubic ofQuadratic(Point start, Point control, Point end) {
        return new Cubic(start, start.lerp(control, 2.0 / 3), end.lerp(control, 2.0 / 3), end);
    }

    /**
     * Returns the cubic that leaves {@code a} along the handle {@code da} and arrives at {@code b} along {@code db}:
     * both handles point in the direction of travel, so that control1 = a + da and control2 = b - db.
     */
    public static Cubic hermite(Point a, Vector da, Point b, Vector db) {
        return new Cubic(a, a.plus(da), b.plus(db.negated()), b);
    }

    /**
     * Returns the cubic that leaves {@code a} in one direction and arrives at {@code b} in another, its handles a third
     * of the distance between them.
     *
     * @throws IllegalStateException if a direction is the zero vector
     */
    public static Cubic between(Point a, Vector leaving, Point b, Vector arriving) {
        double handle = a.distanceTo(b) / 3;
        return hermite(a, leaving.unit().times(handle), b, arriving.unit().times(handle));
    }

    @Override
    public Point pointAt(double t) {
        Plane.parameter(t);
        if (t == 0) {
            return start;
        }
        if (t == 1) {
            return end;
        }
        double s = 1 - t;
        double b0 = s * s * s;
        double b1 = 3 * s * s * t;
        double b2 = 3 * s * t * t;
        double b3 = t * t * t;
        return new Point(
                b0 * start.x() + b1 * control1.x() + b2 * control2.x() + b3 * end.x(),
                b0 * start.y() + b1 * control1.y() + b2 * control2.y() + b3 * end.y());
    }

    @Override
    public Vector derivativeAt(double t) {
        Plane.parameter(t);
        double s = 1 - t;
        double b0 = 3 * s * s;
        double b1 = 6 * s * t;
        double b2 = 3 * t * t;
        return new Vector(
                b0 * (control1.x() - start.x()) + b1 * (control2.x() - control1.x()) + b2 * (end.x() - control2.x()),
                b0 * (control1.y() - start.y()) + b1 * (control2.y() - control1.y()) + b2 * (end.y() - control2.y()));
    }

    /** Returns |r'(t)| without making a vector. */
    double speedAt(double t) {
        double s = 1 - t;
        double b0 = 3 * s * s;
        double b1 = 6 * s * t;
        double b2 = 3 * t * t;
        double x = b0 * (control1.x() - start.x()) + b1 * (control2.x() - control1.x()) + b2 * (end.x() - control2.x());
        double y = b0 * (control1.y() - start.y()) + b1 * (control2.y() - control1.y()) + b2 * (end.y() - control2.y());
        return Math.sqrt(x * x + y * y);
    }

    /**
     * Puts x and y of the point and of the unit tangent at t into the first four places, without making a point or a
     * vector.
     */
    void fillFrame(double t, double[] frame) {
        double s = 1 - t;
        double d0x = control1.x() - start.x();
        double d0y = control1.y() - start.y();
        double d1x = control2.x() - control1.x();
        double d1y = control2.y() - control1.y();
        double d2x = end.x() - control2.x();
        double d2y = end.y() - control2.y();
        double vx = s * s * d0x + 2 * s * t * d1x + t * t * d2x;
        double vy = s * s * d0y + 2 * s * t * d1y + t * t * d2y;
        double speed = Math.sqrt(vx * vx + vy * vy);
        frame[0] = s * s * (s * start.x() + 3 * t * control1.x()) + t * t * (3 * s * control2.x() + t * end.x());
        frame[1] = s * s * (s * start.y() + 3 * t * control1.y()) + t * t * (3 * s * control2.y() + t * end.y());
        double size = Math.abs(d0x) + Math.abs(d0y) + Math.abs(d1x) + Math.abs(d1y) + Math.abs(d2x) + Math.abs(d2y);
        if (speed > Tangents.STILL * size) {
            frame[2] = vx / speed;
            frame[3] = vy / speed;
        } else {
            Vector direction = Tangents.direction(this, t);
            frame[2] = direction.x();
            frame[3] = direction.y();
        }
    }

    @Override
    public Vector secondDerivativeAt(double t) {
        Plane.parameter(t);
        double s = 1 - t;
        return new Vector(
                6 * s * (control2.x() - 2 * control1.x() + start.x())
                        + 6 * t * (end.x() - 2 * control2.x() + control1.x()),
                6 * s * (control2.y() - 2 * control1.y() + start.y())
                        + 6 * t * (end.y() - 2 * control2.y() + control1.y()));
    }

    /** Returns d³r/dt³, which is the same everywhere. */
    Vector thirdDerivative() {
        return new Vector(
                6 * (end.x() - start.x() - 3 * (control2.x() - control1.x())),
                6 * (end.y() - start.y() - 3 * (control2.y() - control1.y())));
    }

    @Override
    public Vector directionAt(double t) {
        return Tangents.direction(this, Plane.parameter(t));
    }

    @Override
    public double curvatureAt(double t) {
        return Tangents.curvature(this, Plane.parameter(t));
    }

    @Override
    public double turning() {
        return Tangents.turning(this);
    }

    @Override
    public double length() {
        return ArcLength.of(this, DEFAULT_ACCURACY);
    }

    @Override
    public double length(double accuracy) {
        return ArcLength.of(this, Plane.positive("accuracy", accuracy));
    }

    @Override
    public double lengthBetween(double t0, double t1, double accuracy) {
        Plane.interval(t0, t1);
        return ArcLength.between(this, t0, t1, Plane.positive("accuracy", accuracy));
    }

    @Override
    public double parameterAt(double distance) {
        return parameterAt(distance, DEFAULT_ACCURACY);
    }

    @Override
    public double parameterAt(double distance, double accuracy) {
        return InverseLength.parameterAt(this, distance, Plane.positive("accuracy", accuracy));
    }

    @Override
    public Cubic sub(double t0, double t1) {
        Plane.interval(t0, t1);
        if (t0 == 0 && t1 == 1) {
            return this;
        }
        double third = (t1 - t0) / 3;
        Point from = pointAt(t0);
        Point to = pointAt(t1);
        return new Cubic(
                from,
                from.plus(derivativeAt(t0).times(third)),
                to.plus(derivativeAt(t1).times(-third)),
                to);
    }

    @Override
    public Cubic reversed() {
        return new Cubic(end, control2, control1, start);
    }

    @Override
    public Cubic transformed(Transform transform) {
        return new Cubic(
                transform.apply(start), transform.apply(control1), transform.apply(control2), transform.apply(end));
    }

    @Override
    public Bounds bounds() {
        Bounds bounds = Bounds.of(start, end);
        for (double t : Polynomials.quadraticRoots(
                control1.x() - start.x(), control2.x() - control1.x(), end.x() - control2.x())) {
            bounds = bounds.union(Bounds.of(pointAt(t)));
        }
        for (double t : Polynomials.quadraticRoots(
                control1.y() - start.y(), control2.y() - control1.y(), end.y() - control2.y())) {
            bounds = bounds.union(Bounds.of(pointAt(t)));
        }
        return bounds;
    }

    /** Returns the box of the control points: quick, and never smaller than {@link #bounds()}. */
    Bounds hull() {
        return Bounds.of(start, control1, control2, end);
    }

    /**
     * {@inheritDoc}
     *
     * <p>With q = control - start it is {@code (start x q3) / 2 + (3 q1 x q2 + 3 q1 x q3 + 6 q2 x q3) / 20}.
     */
    @Override
    public double sweep() {
        Vector q1 = control1.minus(start);
        Vector q2 = control2.minus(start);
        Vector q3 = end.minus(start);
        double segment = (3 * q1.cross(q2) + 3 * q1.cross(q3) + 6 * q2.cross(q3)) / 20;
        return 0.5 * (start.x() * q3.y() - start.y() * q3.x()) + segment;
    }

    @Override
    public Nearest nearest(Point point) {
        return NearestPoint.of(this, point);
    }

    @Override
    public boolean isPoint() {
        return start.equals(control1) && start.equals(control2) && start.equals(end);
    }

    List<Point> controls() {
        return List.of(start, control1, control2, end);
    }
}

package org.oaktag.geometry;

/**
 * An affine map of the plane, {@code x' = a x + c y + e} and {@code y' = b x + d y + f}, the six numbers of an SVG
 * matrix. Immutable and thread-safe.
 *
 * <pre>{@code
 * Transform toTheOtherSide = Transform.mirrorX(0).then(Transform.translation(300, 0));
 * toTheOtherSide.apply(Point.of(72.5, 10));   // = Point[x=227.5, y=10.0]
 * toTheOtherSide.isRigid();                   // = true
 * toTheOtherSide.reverses();                  // = true
 * }</pre>
 *
 * <p>Areas grow by the determinant {@code a d - b c}, negative for a map that mirrors: it turns a clockwise outline
 * into an anticlockwise one. A rigid map keeps lengths, a scaling multiplies them by its factor; any other map keeps
 * neither lengths nor their ratios. A Bézier curve is mapped by its controls, exactly to rounding. The image of a point
 * must lie within the limits of a {@link Point}.
 *
 * @param a what x adds to x'
 * @param b what x adds to y'
 * @param c what y adds to x'
 * @param d what y adds to y'
 * @param e what is added to every x', mm
 * @param f what is added to every y', mm
 */
public record Transform(double a, double b, double c, double d, double e, double f) {
    public static final Transform IDENTITY = new Transform(1, 0, 0, 1, 0, 0);

    private static final double RIGID = 1e-12;

    /** @throws IllegalArgumentException if a coefficient is not finite */
    public Transform {
        Plane.finite("a", a);
        Plane.finite("b", b);
        Plane.finite("c", c);
        Plane.finite("d", d);
        Plane.finite("e", e);
        Plane.finite("f", f);
    }

    public static Transform translation(Vector shift) {
        return translation(shift.x(), shift.y());
    }

    public static Transform translation(double dx, double dy) {
        return new Transform(1, 0, 0, 1, dx, dy);
    }

    /** Returns the turn by {@code radians}, clockwise on the table, about the point. */
    public static Transform rotation(double radians, Point about) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        return new Transform(
                cos,
                sin,
                -sin,
                cos,
                about.x() - cos * about.x() + sin * about.y(),
                about.y() - sin * about.x() - cos * about.y());
    }

    /** Returns the left-to-right mirror in the upright line {@code x = at}. */
    public static Transform mirrorX(double at) {
        return new Transform(-1, 0, 0, 1, 2 * at, 0);
    }

    /**
     * Returns the mirror in the line through two points.
     *
     * @throws IllegalArgumentException if they are the same
     */
    public static Transform mirror(Point a, Point b) {
        if (a.equals(b)) {
            throw new IllegalArgumentException("a mirror line needs two different points, got " + a + " twice");
        }
        Vector u = b.minus(a).unit();
        double cos2 = (u.x() - u.y()) * (u.x() + u.y());
        double sin2 = 2 * u.x() * u.y();
        return new Transform(
                cos2, sin2, sin2, -cos2, a.x() - cos2 * a.x() - sin2 * a.y(), a.y() - sin2 * a.x() + cos2 * a.y());
    }

    /**
     * Returns the scaling about the origin.
     *
     * @throws IllegalArgumentException if the factor is not positive and finite
     */
    public static Transform scale(double factor) {
        Plane.positive("scale", factor);
        return new Transform(factor, 0, 0, factor, 0, 0);
    }

    /** Returns the map that applies this one first and the other one to its result. */
    public Transform then(Transform next) {
        return new Transform(
                next.a * a + next.c * b,
                next.b * a + next.d * b,
                next.a * c + next.c * d,
                next.b * c + next.d * d,
                next.a * e + next.c * f + next.e,
                next.b * e + next.d * f + next.f);
    }

    /**
     * Returns the image of a point.
     *
     * @throws IllegalArgumentException if it lies beyond the limits of a {@link Point}
     */
    public Point apply(Point point) {
        return new Point(a * point.x() + c * point.y() + e, b * point.x() + d * point.y() + f);
    }

    /** Returns the image of a displacement, which a translation leaves as it is. */
    public Vector apply(Vector vector) {
        return new Vector(a * vector.x() + c * vector.y(), b * vector.x() + d * vector.y());
    }

    /** Returns the factor by which areas grow, negative if the map mirrors. */
    public double determinant() {
        return a * d - b * c;
    }

    /** Tells whether the map keeps lengths and angles, to 1e-12 of them. */
    public boolean isRigid() {
        return Math.abs(a * a + b * b - 1) <= RIGID
                && Math.abs(c * c + d * d - 1) <= RIGID
                && Math.abs(a * c + b * d) <= RIGID;
    }

    /** Tells whether the map turns clockwise into anticlockwise. */
    public boolean reverses() {
        return determinant() < 0;
    }
}

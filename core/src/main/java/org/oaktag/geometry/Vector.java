package org.oaktag.geometry;

/**
 * A displacement, direction or derivative in the plane: millimetres, x to the right and y down. Immutable and
 * thread-safe.
 *
 * <pre>{@code
 * Vector along = Vector.of(3, 4);
 * along.length();                          // = 5.0
 * along.leftNormal();                      // = Vector[x=4.0, y=-3.0]
 * Vector.of(1, 0).angleTo(along.unit());   // = 0.9273
 * }</pre>
 *
 * <p>With y down a positive angle turns <b>clockwise</b> as seen on the table, and {@code a.cross(b) > 0} when b points
 * clockwise of a: {@code a . b = |a| |b| cos w} and {@code a x b = |a| |b| sin w} for the angle w from a to b. {@link
 * #leftNormal()} is the side on the left hand of one who walks along the vector on the table.
 *
 * <p><b>Error.</b> Rounding alone. The square root of a sum of squares is good to two units in the last place as long
 * as the squares neither vanish nor overflow, for components of 1e-146 to 1e153; differences of points are far inside.
 * {@link #unit()} scales first and needs no such range. A component that is not finite is refused, whatever made it.
 *
 * @param x across, mm
 * @param y down, mm
 */
public record Vector(double x, double y) {
    public static final Vector ZERO = new Vector(0, 0);

    /** @throws IllegalArgumentException if a component is not finite */
    public Vector {
        x = Plane.finite("x", x) + 0.0;
        y = Plane.finite("y", y) + 0.0;
    }

    /**
     * Returns the vector (x, y).
     *
     * @throws IllegalArgumentException if a component is not finite
     */
    public static Vector of(double x, double y) {
        return new Vector(x, y);
    }

    /** Returns the vector of this length, turned clockwise by {@code radians} from the x axis. */
    public static Vector polar(double length, double radians) {
        return new Vector(length * Math.cos(radians), length * Math.sin(radians));
    }

    public Vector plus(Vector other) {
        return new Vector(x + other.x, y + other.y);
    }

    public Vector minus(Vector other) {
        return new Vector(x - other.x, y - other.y);
    }

    public Vector times(double factor) {
        return new Vector(x * factor, y * factor);
    }

    public Vector negated() {
        return new Vector(-x, -y);
    }

    /** Returns a.x b.x + a.y b.y. */
    public double dot(Vector other) {
        return x * other.x + y * other.y;
    }

    /** Returns a.x b.y - a.y b.x: positive when the other points clockwise of this, as seen on the table. */
    public double cross(Vector other) {
        return x * other.y - y * other.x;
    }

    /** Returns the length, mm; infinite where the square of a component overflows. */
    public double length() {
        return Math.sqrt(x * x + y * y);
    }

    /**
     * Returns the vector of length 1 in this direction.
     *
     * @throws IllegalStateException if this is the zero vector
     */
    public Vector unit() {
        // Scaled first, so that the squares of very small or very large components neither vanish nor overflow.
        double scale = Math.max(Math.abs(x), Math.abs(y));
        if (scale == 0) {
            throw new IllegalStateException("the zero vector has no direction");
        }
        double sx = x / scale;
        double sy = y / scale;
        double length = Math.sqrt(sx * sx + sy * sy);
        return new Vector(sx / length, sy / length);
    }

    /** Returns the angle from the x axis, clockwise on the table, within -pi to pi; 0 for the zero vector. */
    public double angle() {
        return Math.atan2(y, x);
    }

    /**
     * Returns the signed turn from this direction to the other, clockwise positive, within -pi to pi; 0 where either is
     * zero.
     */
    public double angleTo(Vector other) {
        // Adding zero: the product with a zero vector may be -0, to which the angle would be half a turn.
        return Math.atan2(cross(other), dot(other) + 0.0);
    }

    /** Returns this vector turned clockwise on the table by {@code radians}. */
    public Vector rotated(double radians) {
        double cos = Math.cos(radians);
        double sin = Math.sin(radians);
        return new Vector(x * cos - y * sin, x * sin + y * cos);
    }

    /** Returns this vector turned a quarter clockwise on the table, the same as {@link #rightNormal()}. */
    public Vector perpendicular() {
        return rightNormal();
    }

    /** Returns (y, -x): this vector turned a quarter anticlockwise on the table, to the walker's left. */
    public Vector leftNormal() {
        return new Vector(y, -x);
    }

    /** Returns (-y, x): this vector turned a quarter clockwise on the table, to the walker's right. */
    public Vector rightNormal() {
        return new Vector(-y, x);
    }

    /** Returns the image of this displacement: a translation leaves it as it is. */
    public Vector transformed(Transform transform) {
        return transform.apply(this);
    }
}

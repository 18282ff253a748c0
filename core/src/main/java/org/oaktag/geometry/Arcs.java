package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Circular and elliptical arcs as cubics, as near as is asked.
 *
 * <pre>{@code
 * Path quarter = Arcs.circular(Point.of(0, 0), Point.of(100, 0), Math.PI / 2, 0.01);
 * quarter.end();      // = Point[x=0.0, y=100.0]
 * quarter.length();   // = 157.08
 * }</pre>
 *
 * <p><b>Error.</b> The handle {@code 4/3 tan(angle/4) radius} puts the middle of a cubic on the circle; its greatest
 * radial error is 2.7253e-4 of the radius for a quarter and falls with the sixth power of the angle. So many cubics are
 * taken, evenly, none of them more than a quarter, that the error is within the tolerance; the cubic lies outside the
 * circle, never inside by more than rounding. An ellipse is the image of a circle, and its error at most that of a
 * circle of the greater radius.
 */
public final class Arcs {
    private static final double QUARTER_ERROR = 2.7254e-4;
    private static final double MOST = 1e5;

    private Arcs() {}

    /**
     * Returns the arc about a centre from a point on through an angle.
     *
     * @param angle radians, clockwise positive; more than a turn goes round again
     * @param tolerance greatest distance from the circle, mm
     * @throws IllegalArgumentException if the point is the centre, the angle zero or not finite, the tolerance not
     *     positive and finite, or if it would take more than a hundred thousand cubics
     */
    public static Path circular(Point center, Point from, double angle, double tolerance) {
        checked(angle, from.distanceTo(center), tolerance);
        return Path.of(of(center, from, center.plus(turned(from.minus(center), angle)), angle, tolerance));
    }

    /**
     * Returns the arc of an ellipse.
     *
     * @param center its centre
     * @param radiusX the radius along the axis that is turned by {@code tilt} from x, mm
     * @param radiusY the radius across that, mm
     * @param tilt radians, clockwise positive
     * @param start the angle at which it starts, of the circle that the ellipse is the image of, radians from the first
     *     axis
     * @param angle through which it runs there, clockwise positive
     * @param tolerance greatest distance from the ellipse, mm
     * @throws IllegalArgumentException if a radius or the tolerance is not positive and finite, an angle not finite or
     *     {@code angle} zero, or if it would take more than a hundred thousand cubics
     */
    public static Path elliptical(
            Point center, double radiusX, double radiusY, double tilt, double start, double angle, double tolerance) {
        Plane.positive("radius", radiusX);
        Plane.positive("radius", radiusY);
        Plane.finite("tilt", tilt);
        Plane.finite("start", start);
        double greater = Math.max(radiusX, radiusY);
        checked(angle, greater, tolerance);
        Vector arm = turned(Vector.of(1, 0), start);
        Point from = Point.ORIGIN.plus(arm);
        Point to = Point.ORIGIN.plus(turned(arm, angle));
        Vector x = turned(Vector.of(radiusX, 0), tilt);
        Vector y = turned(Vector.of(0, radiusY), tilt);
        Transform image = new Transform(x.x(), x.y(), y.x(), y.y(), center.x(), center.y());
        return Path.of(of(Point.ORIGIN, from, to, angle, tolerance / greater)).transformed(image);
    }

    /**
     * Returns the handle of the cubic next to a circular arc, {@code 4/3 tan(turn/4) radius}; a third of the chord of a
     * straight one.
     *
     * @param chord between its ends, mm
     * @param turn by how much it turns, radians
     */
    public static double handle(double chord, double turn) {
        double cos = Math.cos(turn / 4);
        return chord / (3 * cos * cos);
    }

    private static void checked(double angle, double radius, double tolerance) {
        Plane.positive("radius", radius);
        Plane.positive("tolerance", tolerance);
        if (Plane.finite("angle", angle) == 0) {
            throw new IllegalArgumentException("angle of an arc must not be zero");
        }
        double count = needed(angle, radius, tolerance);
        if (count > MOST) {
            throw new IllegalArgumentException("arc of " + angle + " radians at a radius of " + radius + " mm to "
                    + tolerance + " mm must take at most " + (int) MOST + " cubics, got " + count);
        }
    }

    /** Returns the vector turned; exactly, if it is by quarters. */
    private static Vector turned(Vector vector, double angle) {
        double quarters = angle / (Math.PI / 2);
        if (quarters != Math.rint(quarters)) {
            return vector.rotated(angle);
        }
        Vector turned = vector;
        for (int i = (int) (((quarters % 4) + 4) % 4); i > 0; i--) {
            turned = turned.perpendicular();
        }
        return turned;
    }

    private static double needed(double angle, double radius, double tolerance) {
        double quarters = Math.abs(angle) / (Math.PI / 2);
        double needed = quarters * Math.pow(QUARTER_ERROR * radius / tolerance, 1.0 / 6);
        return Math.max(1, Math.ceil(Math.max(needed, quarters - 1e-9)));
    }

    /**
     * Returns the arc about a centre that turns by the angle (clockwise positive) from one point to another, as near as
     * the tolerance.
     */
    static List<Curve> of(Point center, Point from, Point to, double angle, double tolerance) {
        Vector arm = from.minus(center);
        double attainable = Math.ulp(Math.abs(center.x()) + Math.abs(center.y()) + arm.length());
        int count = (int) needed(angle, arm.length(), Math.max(tolerance, attainable));
        double step = angle / count;
        double handle = 4.0 / 3 * Math.tan(step / 4);
        List<Curve> arc = new ArrayList<>(count);
        Point pen = from;
        for (int i = 1; i <= count; i++) {
            Vector next = arm.rotated(step);
            Point end = i == count ? to : center.plus(next);
            arc.add(new Cubic(
                    pen,
                    pen.plus(arm.perpendicular().times(handle)),
                    end.plus(next.perpendicular().times(-handle)),
                    end));
            pen = end;
            arm = next;
        }
        return arc;
    }
}

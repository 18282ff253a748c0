package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Circular arcs as cubics. The handle {@code 4/3 tan(angle/4) radius} puts the middle of the cubic on the circle; the greatest radial
 * error is 2.7253e-4 of the radius for a quarter and falls with the sixth power of the angle.
 */
final class Arcs {
    private static final double QUARTER_ERROR = 2.7254e-4;

    private Arcs() {}

    /** Returns the arc about a centre that turns by the angle (clockwise positive) from one point to another, as near as the tolerance. */
    static List<Curve> of(Point center, Point from, Point to, double angle, double tolerance) {
        Vector arm = from.minus(center);
        double quarters = Math.abs(angle) / (Math.PI / 2);
        double attainable = Math.ulp(Math.abs(center.x()) + Math.abs(center.y()) + arm.length());
        double error = Math.max(tolerance, attainable);
        double needed = quarters * Math.pow(QUARTER_ERROR * arm.length() / error, 1.0 / 6);
        int count = (int) Math.max(1, Math.ceil(Math.max(needed, quarters - 1e-9)));
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

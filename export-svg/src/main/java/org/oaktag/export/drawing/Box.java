package org.oaktag.export.drawing;

import java.util.List;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * A rectangle that may be turned, such as the room that a label takes. Immutable.
 *
 * <pre>{@code
 * Box label = new Box(Point.of(50, 20), 60, 8, 0);
 * label.overlaps(Box.from(Bounds.of(Point.of(0, 0), Point.of(30, 30))));   // = true
 * }</pre>
 *
 * @param center its middle
 * @param width its size along its own direction, mm
 * @param height its size across, mm
 * @param angle its turn, radians, clockwise on paper
 */
public record Box(Point center, double width, double height, double angle) {

    private static final double STEEPEST = Math.toRadians(75);

    /** Returns the upright box that fills the bounds. */
    public static Box from(Bounds bounds) {
        return new Box(bounds.center(), bounds.width(), bounds.height(), 0);
    }

    /**
     * Returns the turn of a text that runs along a line in either direction, so that it is read from the bottom or from
     * the right of the sheet (ISO 129-1): more than 75 degrees clockwise would be read from the left.
     */
    public static double readable(Vector along) {
        double angle = along.angle();
        boolean turned = angle > STEEPEST || angle <= STEEPEST - Math.PI;
        return turned ? along.negated().angle() : angle;
    }

    /** Returns the box grown by a margin on each side. */
    public Box expanded(double margin) {
        return new Box(center, width + 2 * margin, height + 2 * margin, angle);
    }

    /** Returns the four corners, clockwise from the top left as its text is read. */
    public List<Point> corners() {
        Vector along = Vector.polar(width / 2, angle);
        Vector down = Vector.polar(height / 2, angle).rightNormal();
        return List.of(
                center.plus(along.negated()).plus(down.negated()),
                center.plus(along).plus(down.negated()),
                center.plus(along).plus(down),
                center.plus(along.negated()).plus(down));
    }

    /** Returns the smallest upright box round this one. */
    public Bounds bounds() {
        Vector along = Vector.polar(width / 2, angle);
        Vector down = Vector.polar(height / 2, angle).rightNormal();
        double reachX = Math.abs(along.x()) + Math.abs(down.x());
        double reachY = Math.abs(along.y()) + Math.abs(down.y());
        return new Bounds(center.x() - reachX, center.y() - reachY, center.x() + reachX, center.y() + reachY);
    }

    /** Tells whether the two boxes share some area. */
    public boolean overlaps(Box other) {
        double reach = (Math.hypot(width, height) + Math.hypot(other.width, other.height)) / 2;
        return center.distanceTo(other.center) < reach && !isParted(this, other) && !isParted(other, this);
    }

    /** Tells whether the straight segment runs through the box or touches it. */
    public boolean meets(Point from, Point to) {
        return meets(List.of(from, to));
    }

    /** Tells whether a line of straight segments from corner to corner runs through the box or touches it. */
    public boolean meets(List<Point> corners) {
        double cos = Math.cos(-angle);
        double sin = Math.sin(-angle);
        double fromX = 0;
        double fromY = 0;
        for (int i = 0; i < corners.size(); i++) {
            // The corner as seen from the box: its middle at the origin, its direction along x.
            double dx = corners.get(i).x() - center.x();
            double dy = corners.get(i).y() - center.y();
            double x = dx * cos - dy * sin;
            double y = dx * sin + dy * cos;
            if (i > 0 && isCut(fromX, fromY, x, y)) {
                return true;
            }
            fromX = x;
            fromY = y;
        }
        return false;
    }

    /** Clips a segment against the four sides in turn (Liang and Barsky, 1984). */
    private boolean isCut(double fromX, double fromY, double toX, double toY) {
        double[] range = {0, 1};
        return clip(fromX, toX - fromX, width / 2, range) && clip(fromY, toY - fromY, height / 2, range);
    }

    private static boolean clip(double start, double run, double half, double[] range) {
        if (run == 0) {
            return Math.abs(start) <= half;
        }
        double t0 = (-half - start) / run;
        double t1 = (half - start) / run;
        range[0] = Math.max(range[0], Math.min(t0, t1));
        range[1] = Math.min(range[1], Math.max(t0, t1));
        return range[0] <= range[1];
    }

    /** Returns the point as seen from the box: its middle at the origin, its direction along x. */
    private Point local(Point point) {
        Vector turned = point.minus(center).rotated(-angle);
        return Point.of(turned.x(), turned.y());
    }

    /** Tells whether a side of the first box parts it from the second (separating axis). */
    private static boolean isParted(Box first, Box second) {
        double minX = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (Point corner : second.corners()) {
            Point seen = first.local(corner);
            minX = Math.min(minX, seen.x());
            maxX = Math.max(maxX, seen.x());
            minY = Math.min(minY, seen.y());
            maxY = Math.max(maxY, seen.y());
        }
        return minX >= first.width / 2
                || maxX <= -first.width / 2
                || minY >= first.height / 2
                || maxY <= -first.height / 2;
    }
}

package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Draws a line anew between other ends, so that it leaves and arrives in the same directions.
 *
 * <p>A straight line stays straight. Each handle of a cubic keeps its direction and grows with the distance between the
 * ends: with a chord c that becomes c', a handle h becomes h c'/c. Redrawing back to the old ends therefore gives the
 * old line.
 */
public final class Redraw {

    /** By how much the cosine of two directions along one straight line may fall short of 1. */
    private static final double PARALLEL = 1e-14;

    private Redraw() {}

    /**
     * Returns the path between other ends. Where it is made of several curves, only the first and the last are redrawn, and
     * those between stay as they are, unless all are parts of one straight line.
     *
     * @param path the path as it is
     * @param start where it shall begin
     * @param end where it shall end
     */
    public static Path between(Path path, Point start, Point end) {
        if (isStraight(path)) {
            return Path.of(new Line(start, end));
        }
        List<Curve> curves = new ArrayList<>(path.curves());
        int last = curves.size() - 1;
        if (last == 0) {
            curves.set(0, curve(curves.get(0), start, end));
        } else {
            curves.set(0, curve(curves.get(0), start, curves.get(0).end()));
            curves.set(last, curve(curves.get(last), curves.get(last).start(), end));
        }
        return Path.of(curves);
    }

    private static boolean isStraight(Path path) {
        Vector along = path.startDirection();
        for (Curve curve : path.curves()) {
            if (!(curve instanceof Line) || curve.directionAt(0).dot(along) < 1 - PARALLEL) {
                return false;
            }
        }
        return path.curves().size() > 1;
    }

    private static Curve curve(Curve curve, Point start, Point end) {
        if (curve.start().equals(start) && curve.end().equals(end)) {
            return curve;
        }
        if (!(curve instanceof Cubic cubic)) {
            return new Line(start, end);
        }
        double growth = start.distanceTo(end) / cubic.start().distanceTo(cubic.end());
        return new Cubic(
                start,
                start.plus(cubic.control1().minus(cubic.start()).times(growth)),
                end.plus(cubic.control2().minus(cubic.end()).times(growth)),
                end);
    }
}

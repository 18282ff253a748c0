package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * Draws a line anew between other ends, so that it leaves and arrives in the same directions.
 *
 * <p>A straight line stays straight. Each handle of a cubic keeps its direction and grows with the distance between the
 * ends: with a chord c that becomes c', a handle h becomes h c'/c. Redrawing back to the old ends therefore gives the
 * old line.
 */
public final class Redraw {

    private Redraw() {}

    /**
     * Returns the path between other ends. Where it is made of several curves, only the first and the last are redrawn,
     * and those between stay as they are.
     *
     * @param path the path as it is
     * @param start where it shall begin
     * @param end where it shall end
     */
    public static Path between(Path path, Point start, Point end) {
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

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
 * <pre>{@code
 * Path side = front.path(SIDE);
 * Path moved = Redraw.between(side, side.start().plus(Vector.of(8, 0)), side.end());
 * Redraw.between(moved, side.start(), side.end()).end().equals(side.end());   // = true
 * }</pre>
 *
 * <p>A straight line stays straight. Each handle of a cubic keeps its direction and grows with the distance between the
 * ends: with a chord c that becomes c', a handle h becomes h c'/c. Redrawing back to the old ends therefore gives the
 * old line.
 *
 * <p>Of a path of several curves as few as can carry the change are redrawn at either end: one, unless it is shorter
 * than the way its end goes and that way leads aside, when it would be blown up or folded over; then so many that
 * together they reach as far, each joint between them going a share of the way.
 */
public final class Redraw {

    /** By how much the cosine of two directions along one straight line may fall short of 1. */
    private static final double PARALLEL = 1e-14;

    /** The cosine of 30 degrees: an end that goes on within as much from where its curve pointed prolongs it. */
    private static final double ONWARD = Math.sqrt(0.75);

    private Redraw() {}

    /**
     * Returns the path between other ends. Where it is made of several curves, those in the middle stay as they are,
     * unless all are parts of one straight line.
     *
     * @param path the path as it is
     * @param start where it shall begin
     * @param end where it shall end
     */
    public static Path between(Path path, Point start, Point end) {
        if (isStraight(path)) {
            return Path.of(new Line(start, end));
        }
        List<Curve> curves = path.curves();
        double[] along = chords(curves);
        int last = curves.size();
        Vector startWay = start.minus(path.start());
        Vector endWay = end.minus(path.end());
        int head = 1;
        while (head < last && !carries(curves.get(head - 1).end(), path.start(), start)) {
            head++;
        }
        int tail = last - 1;
        while (tail > 0 && !carries(curves.get(tail).start(), path.end(), end)) {
            tail--;
        }
        List<Curve> redrawn = new ArrayList<>();
        Point from = start;
        for (int i = 1; i <= last; i++) {
            Point to = end;
            if (i < last) {
                double ofStart = Math.max(0, 1 - along[i] / along[head]);
                double ofEnd = Math.max(0, (along[i] - along[tail]) / (along[last] - along[tail]));
                to = curves.get(i - 1).end().plus(startWay.times(ofStart)).plus(endWay.times(ofEnd));
            }
            redrawn.add(curve(curves.get(i - 1), from, to));
            from = to;
        }
        return Path.of(redrawn);
    }

    /** Tells whether what lies between a joint and an end can be redrawn with the joint kept. */
    private static boolean carries(Point joint, Point end, Point moved) {
        Vector was = end.minus(joint);
        Vector is = moved.minus(joint);
        return end.distanceTo(moved) <= was.length() || was.dot(is) >= ONWARD * was.length() * is.length();
    }

    /** Returns how far along the chords of the curves each joint lies, both ends included. */
    private static double[] chords(List<Curve> curves) {
        double[] along = new double[curves.size() + 1];
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            along[i + 1] = along[i] + curve.start().distanceTo(curve.end());
        }
        return along;
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

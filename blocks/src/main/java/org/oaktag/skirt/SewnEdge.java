package org.oaktag.skirt;

import java.util.List;
import java.util.function.DoubleFunction;
import org.oaktag.draft.DartedEdge;
import org.oaktag.draft.DartedEdge.Wedge;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * An edge from the centre, which it leaves level, to the side, one smooth line when its darts are sewn.
 *
 * @param drawn how it is drawn to an end at which it arrives
 * @param darts the darts of such an edge of a length
 */
record SewnEdge(Drawn drawn, DoubleFunction<List<Wedge>> darts) {

    /** Nearer than this, mm, it ends at the side. */
    private static final double NEAR = 1e-9;

    private static final int MOST_STEPS = 100;

    /** How an edge is drawn. */
    interface Drawn {

        /**
         * Returns the edge.
         *
         * @param end where it ends
         * @param rise by how much it turns up until it arrives there, radians
         */
        Path to(Point end, double rise);
    }

    /**
     * Draws it sewn, so that opened at its darts it ends at the side. Opening turns its end and scarcely bends it, so a
     * secant step on the plane of complex numbers, which turns too, comes near in a few trials.
     *
     * @param side where it ends, its darts open
     * @param rise by how much it turns up until it arrives there, radians
     */
    Path sewn(Point side, double rise) {
        Path flat = drawn.to(side, rise);
        double turned =
                darts.apply(flat.length()).stream().mapToDouble(Wedge::angle).sum();
        if (turned == 0) {
            return flat;
        }
        Point end = side;
        Path sewn = drawn.to(end, rise + turned);
        Vector missed = missed(sewn, side);
        Vector step = missed.rotated(-turned);
        for (int i = 0; i < MOST_STEPS && missed.length() > NEAR; i++) {
            end = end.plus(step);
            sewn = drawn.to(end, rise + turned);
            Vector now = missed(sewn, side);
            step = over(times(now, step), missed.minus(now));
            missed = now;
        }
        return sewn;
    }

    /** Draws it with its darts open. */
    DartedEdge opened(Name name, Point side, double rise) {
        Path sewn = sewn(side, rise);
        return DartedEdge.open(name, sewn, darts.apply(sewn.length())).endingAt(side);
    }

    private Vector missed(Path sewn, Point side) {
        return side.minus(DartedEdge.endOf(sewn, darts.apply(sewn.length())));
    }

    /** The product as of complex numbers. */
    private static Vector times(Vector a, Vector b) {
        return Vector.of(a.x() * b.x() - a.y() * b.y(), a.x() * b.y() + a.y() * b.x());
    }

    /** The quotient as of complex numbers. */
    private static Vector over(Vector a, Vector b) {
        return times(a, Vector.of(b.x(), -b.y())).times(1 / b.dot(b));
    }
}

package org.oaktag.skirt;

import java.util.List;
import java.util.function.DoubleFunction;
import org.oaktag.draft.DartedEdge;
import org.oaktag.draft.DartedEdge.Wedge;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** An edge from the centre, which it leaves level, to the side, one smooth line when its darts are sewn. */
final class SewnEdge {

    private static final Vector RIGHT = Vector.of(1, 0);
    private static final Vector DOWN = Vector.of(0, 1);
    private static final double NEAR = 1e-10;
    private static final int MOST_STEPS = 100;

    private SewnEdge() {}

    /**
     * Draws it so that opened at its darts it ends at the side: each trial is moved by what the last one missed.
     *
     * @param from where it leaves the centre
     * @param side where it ends, its darts open
     * @param rise by how much it turns up until it arrives there, radians
     * @param darts the darts of an edge of that length
     */
    static DartedEdge opened(Name name, Point from, Point side, double rise, DoubleFunction<List<Wedge>> darts) {
        Point end = side;
        DartedEdge opened = trial(name, from, end, rise, darts);
        for (int i = 0; i < MOST_STEPS && opened.end().distanceTo(side) > NEAR; i++) {
            end = end.plus(side.minus(opened.end()).rotated(-opened.turned()));
            opened = trial(name, from, end, rise, darts);
        }
        return opened.endingAt(side);
    }

    private static DartedEdge trial(Name name, Point from, Point end, double rise, DoubleFunction<List<Wedge>> darts) {
        List<Wedge> wedges = darts.apply(sewn(from, end, rise).length());
        double turned = wedges.stream().mapToDouble(Wedge::angle).sum();
        Path sewn = sewn(from, end, rise + turned);
        return DartedEdge.open(name, sewn, darts.apply(sewn.length()));
    }

    /** Level and then one arc, as a hem is; where none meets both ends, one curve. */
    private static Path sewn(Point from, Point end, double rise) {
        HalfHem arc = new HalfHem(end, DOWN.rotated(-rise), from, DOWN.negated());
        if (arc.isFair()) {
            return arc.drawn().reversed();
        }
        double handle = from.distanceTo(end) * 2 / 3 / (1 + Math.cos(rise / 2));
        return Path.of(Cubic.hermite(
                from, RIGHT.times(handle), end, RIGHT.rotated(-rise).times(handle)));
    }
}

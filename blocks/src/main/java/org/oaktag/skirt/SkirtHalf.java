package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.draft.DartedEdge;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The front or the back of a straight skirt, drawn as its half.
 *
 * @param waist the waist, its darts open
 * @param side from the waist down to the hem
 * @param length from the waist to the hem at the centre, mm
 * @param hipDepth how far the hip lies below the waist of the centre, mm
 */
record SkirtHalf(DartedEdge waist, Path side, double length, double hipDepth) {

    private static final Vector RIGHT = Vector.of(1, 0);
    private static final Vector DOWN = Vector.of(0, 1);

    /** How far the waist is raised at the side, mm, where the side is taken in by as much as usual. */
    private static final double RAISE = 12;

    private static final double RAISED_FULLY_AT = 30;

    /**
     * Draws a half.
     *
     * @param half the front or the back
     * @param plan the darts
     * @param hip how wide it is at the hip, mm
     * @param quarter a quarter of the hip girth, mm, by which both halves are raised alike
     * @param in how far the side is taken in at the waist, mm
     */
    static SkirtHalf of(
            Name half, DartPlan plan, double hip, double quarter, double in, double hipDepth, double length) {
        Point sideWaist = Point.of(hip - in, -raise(quarter, in, hipDepth));
        Path side = side(sideWaist, Point.of(hip, hipDepth), length);
        DartedEdge waist = waist(half, plan, hipDepth).opened(SkirtNames.WAIST, sideWaist, square(side));
        return new SkirtHalf(waist, side, length, hipDepth);
    }

    /** Returns how long the waist of a half is when its darts are sewn, mm, without drawing it. */
    static double sewnWaist(
            Name half, DartPlan plan, double hip, double quarter, double in, double hipDepth, double length) {
        Point sideWaist = Point.of(hip - in, -raise(quarter, in, hipDepth));
        Path side = side(sideWaist, Point.of(hip, hipDepth), length);
        return waist(half, plan, hipDepth).sewn(sideWaist, square(side)).length();
    }

    /** A side that leans outwards is that of a cone upside down, whose upper edge lies lower at its sides. */
    private static double raise(double quarter, double in, double hipDepth) {
        return in >= 0 ? RAISE * Math.min(in / RAISED_FULLY_AT, 1) : (quarter - in) * in / hipDepth;
    }

    private static Path side(Point waist, Point hip, double length) {
        return Path.of(HipCurve.between(waist, hip)).then(Path.polyline(hip, Point.of(hip.x(), length)));
    }

    /** By how much the waist turns up to be square to the side, radians. */
    private static double square(Path side) {
        return side.startDirection().angleTo(DOWN);
    }

    private static SewnEdge waist(Name half, DartPlan plan, double hipDepth) {
        return new SewnEdge(SkirtHalf::sewn, length -> plan.wedges(half, length, hipDepth));
    }

    private static Path sewn(Point end, double arriving) {
        double handle = Arcs.handle(Point.ORIGIN.distanceTo(end), arriving);
        return Path.of(Cubic.hermite(
                Point.ORIGIN, RIGHT.times(handle), end, RIGHT.rotated(-arriving).times(handle)));
    }

    /** Returns the piece, cut on the fold of its centre. */
    Piece piece(Name name, Cloth cloth) {
        Point hemSide = side.end();
        Point hemCentre = Point.of(0, length);
        List<Edge> edges = new ArrayList<>(waist.edges());
        edges.add(new Edge(EdgeNames.SIDE, side));
        edges.add(Edge.straight(EdgeNames.HEM, hemSide, hemCentre).withFinish(EdgeFinish.TURNED_BACK));
        edges.add(Edge.straight(EdgeNames.CENTRE, hemCentre, Point.of(0, 0)));
        double middle = hemSide.x() / 2;
        Grainline grain = new Grainline(
                Point.of(middle, hipDepth + 0.15 * (length - hipDepth)),
                Point.of(middle, length - 0.15 * (length - hipDepth)));
        Piece bare = Piece.of(name, edges, grain, Cut.onFold(EdgeNames.CENTRE), cloth)
                .withAspect(SkirtBody.aspect(name))
                .withNotch(SkirtBody.hipNotch(side.curves().get(0).length()));
        return Shell.withFolds(bare);
    }
}

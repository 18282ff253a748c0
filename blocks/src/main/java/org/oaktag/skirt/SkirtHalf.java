package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.draft.DartedEdge;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.FoldedDart;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
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

    /** The handle at the hip is longer, so that the hip curve eases out into the straight side. */
    private static final double EASED_OUT = 1.25;

    /** Nearer than this, mm, the waist ends at the side. */
    private static final double NEAR = 1e-9;

    private static final int MOST_STEPS = 60;

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
        Path sewn = sewn(half, plan, side, hipDepth);
        DartedEdge waist = DartedEdge.open(SkirtNames.WAIST, sewn, plan.wedges(half, sewn.length(), hipDepth));
        return new SkirtHalf(waist.endingAt(sideWaist), side, length, hipDepth);
    }

    /** Returns how long the waist of a half is when its darts are sewn, mm, without drawing it. */
    static double sewnWaist(
            Name half, DartPlan plan, double hip, double quarter, double in, double hipDepth, double length) {
        Point sideWaist = Point.of(hip - in, -raise(quarter, in, hipDepth));
        return sewn(half, plan, side(sideWaist, Point.of(hip, hipDepth), length), hipDepth)
                .length();
    }

    /** A side that leans outwards is that of a cone upside down, whose upper edge lies lower at its sides. */
    private static double raise(double quarter, double in, double hipDepth) {
        return in >= 0 ? RAISE * Math.min(in / RAISED_FULLY_AT, 1) : (quarter - in) * in / hipDepth;
    }

    private static Path side(Point waist, Point hip, double length) {
        double lean = 2 * Math.atan((hip.x() - waist.x()) / (hip.y() - waist.y()));
        double handle = arcHandle(waist.distanceTo(hip), lean);
        Cubic curve = Cubic.hermite(waist, DOWN.rotated(-lean).times(handle), hip, DOWN.times(handle * EASED_OUT));
        return Path.of(curve).then(Path.polyline(hip, Point.of(hip.x(), length)));
    }

    /**
     * Draws the waist sewn, level at the centre and square to the side, so that opened at its darts it ends at the
     * side. Opening turns its end and scarcely bends it, so a secant step on the plane of complex numbers, which turns
     * too, comes near in a few trials.
     */
    private static Path sewn(Name half, DartPlan plan, Path side, double hipDepth) {
        Point target = side.start();
        double darts = plan.angle(half, hipDepth);
        double arriving = side.startDirection().angleTo(DOWN) + darts;
        Point end = target;
        Path sewn = sewn(end, arriving);
        if (darts == 0) {
            return sewn;
        }
        Vector missed = missed(half, plan, sewn, target, hipDepth);
        Vector step = missed.rotated(-darts);
        for (int i = 0; i < MOST_STEPS && missed.length() > NEAR; i++) {
            end = end.plus(step);
            sewn = sewn(end, arriving);
            Vector now = missed(half, plan, sewn, target, hipDepth);
            Vector gained = missed.minus(now);
            step = over(times(now, step), gained);
            missed = now;
        }
        return sewn;
    }

    private static Vector missed(Name half, DartPlan plan, Path sewn, Point target, double hipDepth) {
        return target.minus(DartedEdge.endOf(sewn, plan.wedges(half, sewn.length(), hipDepth)));
    }

    /** The product as of complex numbers. */
    private static Vector times(Vector a, Vector b) {
        return Vector.of(a.x() * b.x() - a.y() * b.y(), a.x() * b.y() + a.y() * b.x());
    }

    /** The quotient as of complex numbers. */
    private static Vector over(Vector a, Vector b) {
        return times(a, Vector.of(b.x(), -b.y())).times(1 / b.dot(b));
    }

    private static Path sewn(Point end, double arriving) {
        double handle = arcHandle(Point.of(0, 0).distanceTo(end), arriving);
        return Path.of(Cubic.hermite(
                Point.of(0, 0),
                RIGHT.times(handle),
                end,
                RIGHT.rotated(-arriving).times(handle)));
    }

    /**
     * The handle of an arc over a chord that turns by an angle; two thirds of half the chord where it turns by none.
     */
    private static double arcHandle(double chord, double turn) {
        return chord * 2 / 3 / (1 + Math.cos(turn / 2));
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
                .withNotch(Notch.single(
                        SkirtNames.HIP_NOTCH,
                        EdgeNames.SIDE,
                        End.START,
                        side.curves().get(0).length()));
        List<InnerLine> folds = new ArrayList<>();
        for (Dart dart : Dart.all(bare)) {
            FoldedDart folded = FoldedDart.of(bare, dart, End.START);
            folds.add(new InnerLine(FoldedDart.foldLine(dart.name()), InnerLine.Use.FOLD, folded.fold()));
            folds.add(new InnerLine(FoldedDart.peakLine(dart.name()), InnerLine.Use.PLACEMENT, folded.peak()));
        }
        return bare.withLines(folds);
    }
}

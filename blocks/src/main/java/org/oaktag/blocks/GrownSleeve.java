package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Half a sleeve grown on to a front or a back. Its upper edge runs on from the shoulder, bent smoothly to the arm; its
 * hem is square to that; its underarm edge leaves the hem square, runs towards the old underarm point and turns into
 * the side seam, in a curve or at a slash for a gusset. Immutable.
 *
 * <pre>{@code
 * GrownSleeve half = new GrownSleeve(front, 500, Math.toRadians(20), 120, Optional.empty());
 * Piece kimono = half.drawn(new GrownSleeve.HalfHem(120, 0));
 * }</pre>
 *
 * @param piece the front or the back
 * @param length from the end of the shoulder to the hem, along the edge, in millimetres
 * @param bend how far the arm turns down from the shoulder, in radians
 * @param below how far below the old underarm point the curve has run into the side seam, along the seam
 * @param gusset the side of a gusset, or empty for a curve
 */
public record GrownSleeve(Piece piece, double length, double bend, double below, Optional<Double> gusset) {

    /** How far on either side of the bend its curve reaches, in millimetres. */
    /** Where the underarm edge bends, from the hem, as a share of its length. */
    private static final double UNDERARM_BEND = 0.25;

    private static final double TO_BEND = 2.0 / 3;
    private static final double BEND_REACH = 60;

    private static final double BEND_HANDLE = 1.0;
    private static final double TURN_HANDLE = 0.6;

    /** The share of the straight underarm that a curve takes up at the most. */
    private static final double MOST_TURN = 0.8;

    /** How far from the corner the slash for a gusset begins: room for two seam allowances at its point. */
    private static final double SLASH_MOUTH = 6;

    /** Refuses null. */
    public GrownSleeve {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(gusset, "gusset");
    }

    /**
     * Half the hem: how long it is across the arm, and how far its underarm end lies further down the arm than its
     * upper end; in millimetres.
     */
    public record HalfHem(double across, double slant) {}

    /**
     * Returns how far the end of the shoulder lies above the old underarm point, square to the arm; negative as a rule.
     */
    public double fromUnderarm() {
        Vector arm = overArm().endDirection();
        Point corner = piece.corner(EdgeNames.SIDE, End.START);
        return arm.rightNormal().dot(overArm().end().minus(corner));
    }

    /** Returns the length of the underarm edge, and of the side seam below it where no gusset parts them. */
    public double seam(HalfHem halfHem) {
        Path underarm = underarm(halfHem);
        return gusset.isPresent() ? underarm.length(1e-9) : underarm.length(1e-9) + side().length(1e-9);
    }

    /** Draws the piece with its sleeve. */
    public Piece drawn(HalfHem halfHem) {
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(TopEdges.ARMHOLE)) {
                Path over = overArm();
                Path underarm = underarm(halfHem);
                edges.add(new Edge(TopEdges.OVER_ARM, over));
                edges.add(Edge.straight(TopEdges.SLEEVE_HEM, over.end(), underarm.start())
                        .withFinish(EdgeFinish.TURNED_BACK));
                edges.add(new Edge(TopEdges.UNDERARM, underarm));
                gusset.ifPresent(side -> {
                    Point point = slash(underarm.end(), side().start(), side);
                    edges.add(Edge.straight(TopEdges.GUSSET_UPPER, underarm.end(), point)
                            .withFinish(EdgeFinish.SLASHED));
                    edges.add(Edge.straight(TopEdges.GUSSET_LOWER, point, side().start())
                            .withFinish(EdgeFinish.SLASHED));
                });
            } else if (edge.name().equals(EdgeNames.SIDE)) {
                edges.add(new Edge(EdgeNames.SIDE, side()));
            } else {
                edges.add(edge);
            }
        }
        return piece.withoutNotchesOn(TopEdges.ARMHOLE).withEdges(edges);
    }

    private Path overArm() {
        Path shoulder = piece.path(TopEdges.SHOULDER);
        Point start = shoulder.end();
        Vector on = shoulder.endDirection();
        if (bend == 0) {
            return Path.of(new Line(start, start.plus(on.times(length))));
        }
        Vector arm = on.rotated(bend);
        Point turned = start.plus(on.times(BEND_REACH)).plus(arm.times(BEND_REACH));
        Cubic curve = Cubic.hermite(
                start, on.times(BEND_REACH * BEND_HANDLE * 2 / 3), turned, arm.times(BEND_REACH * BEND_HANDLE * 2 / 3));
        return Path.of(curve, new Line(turned, turned.plus(arm.times(length - curve.length(1e-9)))));
    }

    private Path side() {
        return piece.path(EdgeNames.SIDE)
                .splitAt(gusset.isPresent() ? SLASH_MOUTH : below)
                .after();
    }

    private Path underarm(HalfHem halfHem) {
        Path over = overArm();
        Vector arm = over.endDirection();
        Point hem = over.end().plus(arm.rightNormal().times(halfHem.across())).plus(arm.times(halfHem.slant()));
        Point corner = piece.corner(EdgeNames.SIDE, End.START);
        double straight = hem.distanceTo(corner);
        Point bend = hem.plus(arm.times(-UNDERARM_BEND * straight));
        Vector in = corner.minus(bend).unit();
        if (gusset.isPresent()) {
            Point mouth = corner.plus(in.times(-SLASH_MOUTH));
            return Path.of(bent(hem, bend, mouth));
        }
        Path side = side();
        double turn = Math.min(below, MOST_TURN * straight);
        Point leaving = corner.plus(in.times(-turn));
        return Path.of(
                bent(hem, bend, leaving),
                Cubic.hermite(
                        leaving,
                        in.times(TURN_HANDLE * turn),
                        side.start(),
                        side.startDirection().times(TURN_HANDLE * below)));
    }

    /** A line that leaves the hem square to it and, after one bend, comes straight to the underarm. */
    private static Cubic bent(Point hem, Point bend, Point to) {
        return new Cubic(hem, hem.lerp(bend, TO_BEND), to.lerp(bend, TO_BEND), to);
    }

    /** The point of the slash, as far from either side of its mouth as the gusset's side is long. */
    private static Point slash(Point upper, Point lower, double side) {
        Vector mouth = lower.minus(upper);
        double half = mouth.length() / 2;
        return upper.midpoint(lower).plus(mouth.unit().rightNormal().times(Math.sqrt(side * side - half * half)));
    }
}

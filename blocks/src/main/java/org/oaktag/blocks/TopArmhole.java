package org.oaktag.blocks;

import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The armhole of a front or a back, redrawn when the shoulder or the side seam that it meets has moved.
 *
 * <pre>{@code
 * Path deeper = TopArmhole.scooped(front, 8);   // 8 mm further in, its ends as they were
 * }</pre>
 */
public final class TopArmhole {

    /**
     * The least run from the pitch point to the underarm point, as a share of the width there: 30 mm on most bodies.
     */
    private static final double LEAST_RUN = 0.12;

    private TopArmhole() {}

    /**
     * Returns the armhole below the pitch point drawn to the start of another side seam, square to it; above the pitch
     * point nothing moves.
     *
     * @param piece a front or a back
     * @param side the side seam, from the underarm point down
     */
    public static Path withUnderarm(Piece piece, Path side) {
        return ArmholeShape.withUnderarm(piece.path(TopEdges.ARMHOLE), side.start(), side.startDirection());
    }

    /**
     * Returns the whole armhole drawn from the end of another shoulder seam, square to it. The pitch point moves
     * sideways by as much as the shoulder point, but keeps its least run to the underarm point.
     *
     * @param piece a front or a back
     * @param shoulder the shoulder seam, from the side neck point outwards
     */
    public static Path withShoulder(Piece piece, Path shoulder) {
        Path side = piece.path(EdgeNames.SIDE);
        Point old = ArmholeShape.pitch(piece.path(TopEdges.ARMHOLE));
        double out = shoulder.end().x() - piece.path(TopEdges.SHOULDER).end().x();
        double most = Math.max(old.x(), (1 - LEAST_RUN) * side.start().x());
        Point pitch = Point.of(Math.min(old.x() + out, most), old.y());
        return ArmholeShape.draw(shoulder.end(), shoulder.endDirection(), pitch, side.start(), side.startDirection());
    }

    /**
     * Returns the armhole scooped out: the pitch point moves towards the centre, and the line leaves the shoulder and
     * reaches the side seam as it did.
     *
     * @param piece a front or a back
     * @param by how far the pitch point moves in, in millimetres; negative to fill the armhole
     */
    public static Path scooped(Piece piece, double by) {
        Path armhole = piece.path(TopEdges.ARMHOLE);
        Point pitch = ArmholeShape.pitch(armhole);
        Path side = piece.path(EdgeNames.SIDE);
        return ArmholeShape.withPitch(
                armhole, Point.of(pitch.x() - by, pitch.y()), side.start(), side.startDirection());
    }

    /** Returns the armhole drawn through a pitch point that lies lower, its ends where they are. */
    static Path withPitchLowered(Piece piece, double by) {
        Path armhole = piece.path(TopEdges.ARMHOLE);
        Point pitch = ArmholeShape.pitch(armhole);
        Path side = piece.path(EdgeNames.SIDE);
        return ArmholeShape.withPitch(
                armhole, Point.of(pitch.x(), pitch.y() + by), side.start(), side.startDirection());
    }

    /** Returns by how much the pitch point can move out until the armhole is no hollow any more, in millimetres. */
    public static double mostFilling(Piece piece) {
        Path armhole = piece.path(TopEdges.ARMHOLE);
        Point pitch = ArmholeShape.pitch(armhole);
        double inside = ArmholeShape.LEAST_INSIDE * (pitch.y() - armhole.start().y());
        double most = Math.min(armhole.start().x() - inside, armhole.end().x() - ArmholeShape.LEAST_RUN);
        return Math.max(0, most - pitch.x());
    }

    /** Returns by how much the pitch point can move in until the armhole is no hollow any more, in millimetres. */
    public static double mostScooping(Piece piece) {
        Path armhole = piece.path(TopEdges.ARMHOLE);
        Point pitch = ArmholeShape.pitch(armhole);
        Vector along = piece.path(TopEdges.SHOULDER).endDirection();
        double inside =
                ArmholeShape.mostInside(along) * (pitch.y() - armhole.start().y());
        return Math.max(0, pitch.x() - armhole.start().x() + inside);
    }
}

package org.oaktag.blocks;

import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * The armhole of a front or a back, redrawn when the shoulder or the side seam that it meets has moved.
 *
 * <pre>{@code
 * Path deeper = TopArmhole.scooped(front, 8);   // 8 mm further in, its ends as they were
 * }</pre>
 */
public final class TopArmhole {

    /** How far inside the underarm point the pitch point stays, as a share of the width there: some 40 mm on most bodies. */
    private static final double LEAST_SCOOP = 0.17;

    private TopArmhole() {}

    /**
     * Returns the armhole below the pitch point drawn to the start of another side seam, square to it; above the pitch
     * point nothing moves.
     *
     * @param piece a front or a back
     * @param side the side seam, from the underarm point down
     */
    public static Path withUnderarm(Piece piece, Path side) {
        return ArmholeShape.withUnderarm(
                BodyHalf.of(piece), piece.path(EdgeNames.ARMHOLE), side.start(), side.startDirection());
    }

    /**
     * Returns the whole armhole drawn from the end of another shoulder seam, square to it. The pitch point moves
     * sideways by as much as the shoulder point, but stays inside the underarm point by 17 % of the width from there to the
     * centre line, so that the armhole keeps its scoop.
     *
     * @param piece a front or a back
     * @param shoulder the shoulder seam, from the side neck point outwards
     */
    public static Path withShoulder(Piece piece, Path shoulder) {
        Path side = piece.path(EdgeNames.SIDE);
        Point old = ArmholeShape.pitch(piece.path(EdgeNames.ARMHOLE));
        double out = shoulder.end().x() - piece.path(EdgeNames.SHOULDER).end().x();
        double most = Math.max(old.x(), (1 - LEAST_SCOOP) * side.start().x());
        Point pitch = Point.of(Math.min(old.x() + out, most), old.y());
        return ArmholeShape.draw(
                BodyHalf.of(piece),
                shoulder.end(),
                shoulder.endDirection(),
                pitch,
                side.start(),
                side.startDirection());
    }

    /**
     * Returns the armhole scooped out: the pitch point moves towards the centre, and the line leaves the shoulder and
     * reaches the side seam as it did.
     *
     * @param piece a front or a back
     * @param by how far the pitch point moves in, in millimetres; negative to fill the armhole
     */
    public static Path scooped(Piece piece, double by) {
        Path armhole = piece.path(EdgeNames.ARMHOLE);
        Point pitch = ArmholeShape.pitch(armhole);
        Path side = piece.path(EdgeNames.SIDE);
        return ArmholeShape.withPitch(
                BodyHalf.of(piece), armhole, Point.of(pitch.x() - by, pitch.y()), side.start(), side.startDirection());
    }

    /** Returns the armhole drawn through a pitch point that lies lower, its ends where they are. */
    static Path withPitchLowered(Piece piece, double by) {
        Path armhole = piece.path(EdgeNames.ARMHOLE);
        Point pitch = ArmholeShape.pitch(armhole);
        Path side = piece.path(EdgeNames.SIDE);
        return ArmholeShape.withPitch(
                BodyHalf.of(piece), armhole, Point.of(pitch.x(), pitch.y() + by), side.start(), side.startDirection());
    }

    /** Returns by how much the pitch point can move out before the armhole bulges, in millimetres. */
    public static double mostFilling(Piece piece) {
        Path armhole = piece.path(EdgeNames.ARMHOLE);
        double most = Math.min(
                armhole.start().x() - ArmholeShape.INSIDE_SHOULDER,
                armhole.end().x() - ArmholeShape.INSIDE_UNDERARM);
        return Math.max(0, most - ArmholeShape.pitch(armhole).x());
    }
}

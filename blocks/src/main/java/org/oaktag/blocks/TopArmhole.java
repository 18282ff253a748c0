package org.oaktag.blocks;

import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** The armhole of a front or a back, redrawn when the shoulder or the side seam that it meets has moved. */
public final class TopArmhole {

    private static final double LEAST_SCOOP = 40;

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
                half(piece), piece.path(EdgeNames.ARMHOLE), side.start(), side.startDirection());
    }

    /**
     * Returns the whole armhole drawn from the end of another shoulder seam, square to it. The pitch point moves
     * sideways by as much as the shoulder point, but stays 40 mm inside the underarm point, so that the armhole keeps its scoop.
     *
     * @param piece a front or a back
     * @param shoulder the shoulder seam, from the side neck point outwards
     */
    public static Path withShoulder(Piece piece, Path shoulder) {
        Path side = piece.path(EdgeNames.SIDE);
        Point old = ArmholeShape.pitch(piece.path(EdgeNames.ARMHOLE));
        double out = shoulder.end().x() - piece.path(EdgeNames.SHOULDER).end().x();
        double most = Math.max(old.x(), side.start().x() - LEAST_SCOOP);
        Point pitch = Point.of(Math.min(old.x() + out, most), old.y());
        return ArmholeShape.draw(
                half(piece), shoulder.end(), shoulder.endDirection(), pitch, side.start(), side.startDirection());
    }

    private static BodyHalf half(Piece piece) {
        return piece.name().equals(TopNames.BACK) ? BodyHalf.BACK : BodyHalf.FRONT;
    }
}

package org.oaktag.adjust;

import org.oaktag.PatternException;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;

/** Sees to it that what lies on the fold of the cloth, or is to be folded, is straight. */
final class StraightFold {

    private static final double STRAIGHT = 1e-9;

    private StraightFold() {}

    /** Refuses a piece cut on the fold of an edge that a step has bent. */
    static void require(Piece piece) {
        if (piece.cut() instanceof Cut.OnFold fold) {
            require(piece, fold.edge(), "as it lies on the fold of the cloth");
        }
    }

    static void require(Piece piece, Name edge, String why) {
        Path path = piece.path(edge);
        Vector along = path.end().minus(path.start()).unit();
        for (Curve curve : path.curves()) {
            if (Math.abs(along.cross(curve.directionAt(0))) > STRAIGHT
                    || Math.abs(along.cross(curve.directionAt(1))) > STRAIGHT
                    || Math.abs(along.cross(curve.start().minus(path.start()))) > STRAIGHT * path.length()) {
                throw PatternException.of(
                        "edge '" + edge + "' of piece '" + piece.name() + "'",
                        "must be straight, " + why,
                        "an edge that is bent",
                        "work on another edge, or along and square to this one");
            }
        }
    }
}

package org.oaktag.adjustments;

import static org.oaktag.blocks.TopNames.BACK;
import static org.oaktag.blocks.TopNames.FRONT;
import static org.oaktag.blocks.TopNames.SLEEVE_BACK;
import static org.oaktag.blocks.TopNames.SLEEVE_FRONT;

import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamSide;

/**
 * One half of the opening for the neck, from centre front over the shoulder to centre back: the necklines of front and
 * back, and of a raglan those of its sleeves between them.
 *
 * @param front how far it is from centre front to the shoulder, in millimetres
 * @param back how far it is from there to centre back, in millimetres
 * @param side its edges in order
 */
record NeckOpening(double front, double back, SeamSide side) {

    static NeckOpening of(Garment garment) {
        SeamSide front = SeamSide.along(FRONT, EdgeNames.NECKLINE);
        SeamSide back = SeamSide.against(BACK, EdgeNames.NECKLINE);
        double onFront = length(TopPieces.body(garment, FRONT, EdgeNames.NECKLINE));
        double onBack = length(TopPieces.body(garment, BACK, EdgeNames.NECKLINE));
        if (!isRaglan(garment)) {
            return new NeckOpening(onFront, onBack, front.then(back));
        }
        return new NeckOpening(
                onFront + length(garment.piece(SLEEVE_FRONT)),
                onBack + length(garment.piece(SLEEVE_BACK)),
                front.then(SeamSide.against(SLEEVE_FRONT, EdgeNames.NECKLINE))
                        .then(SeamSide.along(SLEEVE_BACK, EdgeNames.NECKLINE))
                        .then(back));
    }

    /** Tells whether the sleeves reach up to the neck. */
    static boolean isRaglan(Garment garment) {
        return garment.findPiece(SLEEVE_FRONT)
                .filter(half -> half.hasEdge(EdgeNames.NECKLINE))
                .isPresent();
    }

    private static double length(Piece piece) {
        return piece.path(EdgeNames.NECKLINE).length();
    }

    double half() {
        return front + back;
    }
}

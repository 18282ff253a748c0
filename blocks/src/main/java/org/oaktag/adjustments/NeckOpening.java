package org.oaktag.adjustments;

import static org.oaktag.blocks.TopNames.BACK;
import static org.oaktag.blocks.TopNames.FRONT;
import static org.oaktag.blocks.TopNames.SLEEVE_BACK;
import static org.oaktag.blocks.TopNames.SLEEVE_FRONT;

import java.util.List;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * One half of the opening for the neck, from centre front over the shoulder to centre back: the necklines of front and
 * back, and of a raglan those of its sleeves between them. Whatever is sewn to a neckline is sewn to this.
 *
 * @param front how far it is from centre front to the shoulder, in millimetres
 * @param back how far it is from there to centre back, in millimetres
 * @param side its edges in order
 * @param joints where its edges meet, from front to back
 */
record NeckOpening(double front, double back, SeamSide side, List<Joint> joints) {

    /**
     * Where two pieces meet at the neck: a seam ends there, and what is sewn on has a notch there.
     *
     * @param notch the name of that notch
     * @param cuts how many cuts it has
     * @param fromFront how far it is from centre front, in millimetres
     */
    record Joint(Name notch, int cuts, double fromFront) {}

    NeckOpening {
        joints = List.copyOf(joints);
    }

    static NeckOpening of(Garment garment) {
        SeamSide front = SeamSide.along(FRONT, TopEdges.NECKLINE);
        SeamSide back = SeamSide.against(BACK, TopEdges.NECKLINE);
        double onFront = length(TopPieces.body(garment, FRONT, TopEdges.NECKLINE));
        double onBack = length(TopPieces.body(garment, BACK, TopEdges.NECKLINE));
        if (!isRaglan(garment)) {
            return new NeckOpening(onFront, onBack, front.then(back), List.of(shoulder(onFront)));
        }
        double toShoulder = onFront + length(garment.piece(SLEEVE_FRONT));
        double toBackLine = toShoulder + length(garment.piece(SLEEVE_BACK));
        return new NeckOpening(
                toShoulder,
                toBackLine - toShoulder + onBack,
                front.then(SeamSide.against(SLEEVE_FRONT, TopEdges.NECKLINE))
                        .then(SeamSide.along(SLEEVE_BACK, TopEdges.NECKLINE))
                        .then(back),
                List.of(
                        new Joint(TopNames.FRONT_RAGLAN_NOTCH, 1, onFront),
                        shoulder(toShoulder),
                        new Joint(TopNames.BACK_RAGLAN_NOTCH, 2, toBackLine)));
    }

    private static Joint shoulder(double fromFront) {
        return new Joint(TopNames.SHOULDER_NOTCH, 1, fromFront);
    }

    /** Tells whether the sleeves reach up to the neck. */
    private static boolean isRaglan(Garment garment) {
        return garment.findPiece(SLEEVE_FRONT)
                .filter(half -> half.hasEdge(TopEdges.NECKLINE))
                .isPresent();
    }

    private static double length(Piece piece) {
        return piece.path(TopEdges.NECKLINE).length();
    }

    double half() {
        return front + back;
    }

    Length toShoulder() {
        return Length.mm(front);
    }

    Length fromShoulder() {
        return Length.mm(back);
    }
}

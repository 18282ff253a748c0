package org.oaktag.adjustments;

import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.SleeveCap;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/** Puts another cap on the sleeve and the notches that match it on front and back. */
final class NewCap {

    private NewCap() {}

    static Garment on(Garment garment, CapFit fit, CapFit.Solved solved) {
        Piece front = garment.piece(TopNames.FRONT)
                .withNotch(Notch.single(
                        TopNames.FRONT_NOTCH,
                        TopEdges.ARMHOLE,
                        End.END,
                        fit.front().notchFromUnderarm()));
        Piece back = garment.piece(TopNames.BACK)
                .withNotch(Notch.paired(
                        TopNames.BACK_NOTCH,
                        TopEdges.ARMHOLE,
                        End.END,
                        fit.back().notchFromUnderarm()));
        Piece sleeve = SleeveCap.of(TopPieces.sleeveWithCap(garment)).fitted(fit, solved);
        return garment.withPiece(front).withPiece(back).withPiece(sleeve);
    }

    /** Returns a cap prepared so that each half keeps the length that it has. */
    static CapFit ofItsLength(Garment garment) {
        CapFit fit = CapFit.of(
                TopPieces.withArmhole(garment, TopNames.FRONT).path(TopEdges.ARMHOLE),
                TopPieces.withArmhole(garment, TopNames.BACK).path(TopEdges.ARMHOLE),
                Length.ZERO);
        Piece sleeve = TopPieces.sleeveWithCap(garment);
        return new CapFit(
                fit.front(),
                fit.back(),
                sleeve.path(TopEdges.CAP_FRONT).length(1e-9),
                sleeve.path(TopEdges.CAP_BACK).length(1e-9));
    }

    static Dimension width(Garment garment, CapFit.Solved solved) {
        Piece sleeve = garment.piece(TopNames.SLEEVE);
        return new Dimension(
                TopNames.SLEEVE,
                sleeve.corner(TopEdges.CAP_BACK, End.START),
                sleeve.corner(TopEdges.CAP_FRONT, End.END),
                Length.mm(solved.width()).text());
    }
}

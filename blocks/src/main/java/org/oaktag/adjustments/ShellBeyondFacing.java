package org.oaktag.adjustments;

import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.blocks.Redraw;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;

/** The part of a front or a back that its neck facing leaves to be lined; all of it where there is no facing. */
record ShellBeyondFacing(Piece rest) {

    /** How far off the shoulder the end of a facing may lie through rounding, in millimetres. */
    private static final double ON_SHOULDER = 1e-6;

    static ShellBeyondFacing of(Garment garment, Name shell, Name facing) {
        Piece whole = TopPieces.half(
                        garment,
                        shell,
                        EdgeNames.CENTRE,
                        TopEdges.NECKLINE,
                        TopEdges.SHOULDER,
                        TopEdges.ARMHOLE,
                        EdgeNames.SIDE)
                .withLines(List.of())
                .withMarks(List.of());
        return new ShellBeyondFacing(
                garment.findPiece(facing).map(given -> less(whole, given)).orElse(whole));
    }

    Piece piece(Name name, Cloth cloth) {
        return rest.renamed(name).withCloth(cloth);
    }

    private static Piece less(Piece whole, Piece facing) {
        Path neckline = facing.path(FaceNeckline.INNER).reversed();
        Path shoulder = whole.path(TopEdges.SHOULDER);
        if (!facing.path(TopEdges.NECKLINE).equals(whole.path(TopEdges.NECKLINE))
                || shoulder.nearest(neckline.end()).distance() > ON_SHOULDER) {
            throw PatternException.of(
                    "lining of the " + whole.name(),
                    "needs a neck facing of the neckline as it is",
                    "a facing of an earlier one",
                    "face the neckline again first");
        }
        Path centre = whole.path(EdgeNames.CENTRE);
        Path left = shoulder.sub(facing.path(TopEdges.SHOULDER).length(), shoulder.length());
        return whole.withoutNotchesOn(TopEdges.NECKLINE)
                .withoutNotchesOn(TopEdges.SHOULDER)
                .redrawn(Map.of(
                        TopEdges.NECKLINE,
                        neckline,
                        TopEdges.SHOULDER,
                        Redraw.between(left, neckline.end(), shoulder.end()),
                        EdgeNames.CENTRE,
                        Redraw.between(centre, centre.start(), neckline.start())));
    }
}

package org.oaktag.adjustments;

import java.util.List;
import java.util.Map;
import org.oaktag.blocks.Redraw;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;

/** The part of a front or a back that its neck facing leaves to be lined; all of it where there is no facing. */
record ShellBeyondFacing(Piece rest) {

    static ShellBeyondFacing of(Garment garment, Name shell, Name facing) {
        Piece whole = garment.piece(shell).withLines(List.of()).withMarks(List.of());
        return new ShellBeyondFacing(
                garment.findPiece(facing).map(given -> less(whole, given)).orElse(whole));
    }

    Piece piece(Name name, Cloth cloth) {
        return rest.renamed(name).withCloth(cloth);
    }

    private static Piece less(Piece whole, Piece facing) {
        Path neckline = facing.path(FaceNeckline.INNER).reversed();
        Path shoulder = whole.path(EdgeNames.SHOULDER);
        Path centre = whole.path(EdgeNames.CENTRE);
        Path left = shoulder.sub(facing.path(EdgeNames.SHOULDER).length(), shoulder.length());
        return whole.withoutNotchesOn(EdgeNames.NECKLINE)
                .withoutNotchesOn(EdgeNames.SHOULDER)
                .redrawn(Map.of(
                        EdgeNames.NECKLINE,
                        neckline,
                        EdgeNames.SHOULDER,
                        Redraw.between(left, neckline.end(), shoulder.end()),
                        EdgeNames.CENTRE,
                        Redraw.between(centre, centre.start(), neckline.start())));
    }
}

package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/** The halves of a body, front and back, of which a step may work on one. */
final class Halves {

    private Halves() {}

    /**
     * Returns the front and the back as their halves, each with these edges one right after the other.
     *
     * @throws PatternException if one is not so; the message names the step to come before
     */
    static List<Piece> of(Garment garment, Name... run) {
        return List.of(TopPieces.half(garment, TopNames.FRONT, run), TopPieces.half(garment, TopNames.BACK, run));
    }

    /**
     * Returns the front and the back as their halves, each with a whole armhole.
     *
     * @throws PatternException if one is not so; the message names the step to come before
     */
    static List<Piece> withArmholes(Garment garment) {
        return List.of(TopPieces.withArmhole(garment, TopNames.FRONT), TopPieces.withArmhole(garment, TopNames.BACK));
    }

    /**
     * Checks that a piece is one of them.
     *
     * @throws PatternException if it is neither
     */
    static void check(String thing, Name piece) {
        if (!TopBody.HALVES.contains(piece)) {
            throw PatternException.of(thing, "must be that of the front or the back", "'" + piece + "'", "");
        }
    }
}

package org.oaktag.adjust;

import org.oaktag.PatternException;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Outline;

/** What every step leaves behind, whatever it did: outlines that can be cut. */
final class SoundOutlines {

    private SoundOutlines() {}

    /**
     * Checks the pieces whose outlines a step has drawn anew.
     *
     * @throws PatternException if one crosses itself; the message names the piece and the step
     */
    static void require(String step, Garment before, Garment after) {
        for (Piece piece : after.pieces()) {
            if (!Comparison.hasEdgesOf(before.findPiece(piece.name()), piece) && crossesItself(piece.outline())) {
                throw PatternException.of(
                        "outline of the " + piece.name(),
                        "must not cross itself after a step",
                        "one that does after '" + step + "'",
                        "take a smaller amount, or take the step before those that made the piece so narrow there");
            }
        }
    }

    /** Two darts that share an apex touch there, which can be cut. */
    private static boolean crossesItself(Outline outline) {
        return outline.meetsItself()
                && outline.selfCrossings().stream().anyMatch(each -> each.kind() != Crossing.Kind.TOUCH);
    }
}

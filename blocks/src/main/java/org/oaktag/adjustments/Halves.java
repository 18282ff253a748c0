package org.oaktag.adjustments;

import org.oaktag.PatternException;
import org.oaktag.blocks.TopBody;
import org.oaktag.garment.Name;

/** The halves of a body, front and back, of which a step may work on one. */
final class Halves {

    private Halves() {}

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

package org.oaktag.adjust;

import org.oaktag.PatternException;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;

/** Sees to it that an edge that is to become a fold, or is one, is part of no seam. */
final class NotSewn {

    private NotSewn() {}

    static void require(Garment garment, EdgeRef edge, String what) {
        garment.seams().stream().filter(seam -> seam.has(edge)).findFirst().ifPresent(seam -> {
            throw PatternException.of(
                    "edge '" + edge + "'",
                    "must be part of no seam, as " + what + " is not sewn",
                    "seam '" + seam.name() + "'",
                    "take the seam out first, or choose another edge");
        });
    }
}

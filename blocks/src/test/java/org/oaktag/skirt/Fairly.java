package org.oaktag.skirt;

import org.oaktag.garment.Fairness;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/** How fair an edge is, in degrees and millimetres. */
final class Fairly {

    private Fairly() {}

    /** The greatest turn at a joint, degrees. */
    static double corner(Piece piece, Name edge) {
        return Fairness.of(piece, edge).greatestCorner().degrees();
    }
}

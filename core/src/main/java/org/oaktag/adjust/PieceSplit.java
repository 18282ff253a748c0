package org.oaktag.adjust;

import java.util.Objects;
import org.oaktag.garment.Piece;

/**
 * The two parts of a piece that was split along a line: both new edges are the same line. Immutable.
 *
 * <pre>{@code
 * SplitPiece yoke = splitPiece(
 *         FRONT,
 *         LineAcross.straight(Place.share(ARMHOLE, 0.5), Place.share(CENTRE, 0.8)),
 *         Part.of(Name.of("yoke"), Name.of("yoke seam")),
 *         Part.of(FRONT, Name.of("yoke seam")),
 *         Name.of("yoke"));
 * PieceSplit parts = yoke.split(front);
 * double whole = parts.left().outline().area() + parts.right().outline().area();
 * }</pre>
 *
 * @param left the part on the left of the line, as it runs
 * @param right the part on its right
 */
public record PieceSplit(Piece left, Piece right) {
    /** Refuses null. */
    public PieceSplit {
        Objects.requireNonNull(left, "left");
        Objects.requireNonNull(right, "right");
    }
}

package org.oaktag.adjust;

import org.oaktag.garment.Piece;

/**
 * A step that needs to see one piece alone, so that it can be tried on a piece without a garment.
 *
 * <pre>{@code
 * Piece longer = extendEdge(EdgeRef.of(FRONT, HEM), mm(30)).on(front);
 * }</pre>
 */
public interface PieceStep extends Step {

    /**
     * Returns the piece as the step makes it.
     *
     * @throws org.oaktag.PatternException if it cannot be done; the message says what would work
     */
    Piece on(Piece piece);
}

package org.oaktag.adjust;

import org.oaktag.garment.Piece;

/**
 * The two parts of a piece that was split along a line: both new edges are the same line. Immutable.
 *
 * @param left the part on the left of the line, as it runs
 * @param right the part on its right
 */
public record PieceSplit(Piece left, Piece right) {}

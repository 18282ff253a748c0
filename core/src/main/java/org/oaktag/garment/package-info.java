/**
 * The model: what a piece, a seam and a garment are, and how a seam is walked.
 *
 * <p>Everything here is an immutable value. A {@link org.oaktag.garment.Piece} is a closed outline made of named edges;
 * the outline is always the <em>seam line</em>, and the cut line is derived from it. A
 * {@link org.oaktag.garment.Seam} joins two runs of edges by a {@link org.oaktag.garment.SeamRule}; walking it says
 * whether it is true. A {@link org.oaktag.garment.Garment} holds the pieces, the seams, the finished measures and the
 * history of what made them.
 *
 * <p>Outlines run clockwise as seen on paper (x to the right, y down), so that the inside of a piece lies to the right
 * of an edge that is followed from its start to its end.
 *
 * <p>No particular block and no body measure is known here, and nothing is read or written.
 */
@NullMarked
package org.oaktag.garment;

import org.jspecify.annotations.NullMarked;

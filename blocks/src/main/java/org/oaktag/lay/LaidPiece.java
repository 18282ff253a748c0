package org.oaktag.lay;

import org.oaktag.garment.CutList;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Transform;

/**
 * A piece in its place on the cloth. Immutable.
 *
 * <pre>{@code
 * Lay lay = Lay.of(
 *         CutList.of(top), shell, KnitTop.allowances(top), Spread.folded(cm(150)), Effort.tries(40));
 * for (LaidPiece laid : lay.pieces()) {
 *     String line = laid.item().piece().name() + (laid.isTurned() ? ", turned" : "");
 * }
 * }</pre>
 *
 * @param item which piece
 * @param through which layers it is cut through
 * @param motion the rigid motion from the piece's own millimetres to the cloth; where it reverses, the upper layer gets
 *     the other hand of the piece, or the other half of one that is drawn as its half
 * @param outline the cut line on the cloth: x from the left selvage or the fold, y along the cloth, mm
 */
public record LaidPiece(CutList.Item item, Through through, Transform motion, Outline outline) {

    /** Which layers a piece is cut through. */
    public enum Through {
        /** The only layer, or the upper one of two: one copy, as it lies. */
        ONE_LAYER,
        /** Both layers: one copy of either hand. */
        BOTH_LAYERS,
        /** Both layers, joined at the fold of the cloth: one copy, both halves of it. */
        ON_FOLD
    }

    /** Returns how many copies of the piece are cut here. */
    public int copies() {
        return through == Through.BOTH_LAYERS ? 2 : 1;
    }

    /** Returns the area of cloth that it uses up, both layers counted, mm². */
    public double area() {
        return through == Through.ONE_LAYER ? outline.area() : 2 * outline.area();
    }

    /** Tells whether it lies with its top towards the end of the cloth instead of its beginning. */
    public boolean isTurned() {
        var grain = item.piece().grainline();
        return motion.apply(grain.top().minus(grain.bottom())).y() > 0;
    }
}

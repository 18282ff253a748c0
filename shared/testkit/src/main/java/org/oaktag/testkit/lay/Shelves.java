package org.oaktag.testkit.lay;

import java.util.Comparator;
import java.util.List;
import org.oaktag.lay.LaidPiece;
import org.oaktag.lay.Lay;

/**
 * Packs boxes on shelves, the tallest first, each on the last shelf or on a new one: "next fit decreasing height" of
 * Coffman, Garey, Johnson and Tarjan, "Performance bounds for level-oriented two-dimensional packing algorithms", SIAM
 * Journal on Computing 9 (1980), 808 to 826. Written apart from the shelves of the library, to judge it by.
 */
public final class Shelves {

    private Shelves() {}

    /**
     * The box round a shape.
     *
     * @param width across the cloth, mm
     * @param height along the cloth, mm
     * @param onFold whether it has to lie on the fold, and so begins a shelf
     */
    public record Box(double width, double height, boolean onFold) {}

    /** Returns the length of cloth, mm, that the boxes round the pieces of a lay take on the same cloth. */
    public static double length(Lay lay) {
        List<Box> boxes = lay.pieces().stream()
                .map(piece -> new Box(
                        piece.outline().bounds().width(),
                        piece.outline().bounds().height(),
                        piece.through() == LaidPiece.Through.ON_FOLD))
                .toList();
        return length(boxes, lay.spread().tableWidth().mm(), lay.spread().gap().mm());
    }

    /**
     * Returns the length of cloth, mm, that boxes take.
     *
     * @param width the width of the cloth, mm, at least that of every box
     * @param gap the room between boxes, mm
     */
    public static double length(List<Box> boxes, double width, double gap) {
        double ended = 0;
        double tallest = 0;
        double used = Double.POSITIVE_INFINITY;
        for (Box box : boxes.stream()
                .sorted(Comparator.comparingDouble(Box::height).reversed())
                .toList()) {
            if (box.onFold() || used + gap + box.width() > width) {
                ended += tallest == 0 ? 0 : tallest + gap;
                tallest = box.height();
                used = box.width();
            } else {
                used += gap + box.width();
            }
        }
        return ended + tallest;
    }
}

package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Transform;

/**
 * How a garment lies on a table, as the block that made it says: a value, so that two garments that lie alike are
 * equal. Whoever draws it need know no garment.
 *
 * <pre>{@code
 * List<FlatShape> front = block.laidFlat(Aspect.FRONT);
 * Garment spread = block.withFlat(FlatLay.IN_A_ROW);
 * }</pre>
 */
public interface FlatLay {

    /**
     * Returns what is seen of the garment with one side up, what lies below first, in millimetres of the garment, its
     * middle at x = 0 as a rule.
     *
     * @throws org.oaktag.PatternException if the garment lacks what is to be seen
     */
    List<FlatShape> shapes(Garment garment, Aspect seen);

    /**
     * Every piece as it is cut, one beside the other and unfolded where it is cut on the fold: how a garment lies of
     * which nobody said more. Both sides show the same.
     */
    FlatLay IN_A_ROW = new InARow();

    /** The pieces in a row. */
    record InARow() implements FlatLay {

        /** Between two pieces, mm. */
        private static final double GAP = 30;

        @Override
        public List<FlatShape> shapes(Garment garment, Aspect seen) {
            Objects.requireNonNull(seen, "seen");
            List<FlatShape> shapes = new ArrayList<>();
            double right = 0;
            for (Piece piece : garment.pieces()) {
                Path outline = FlatShape.unfolded(piece);
                Bounds box = outline.bounds();
                shapes.add(FlatShape.outside(outline, piece.cloth())
                        .transformed(Transform.translation(right - box.minX(), -box.minY())));
                right += box.width() + GAP;
            }
            Transform toTheMiddle = Transform.translation((GAP - right) / 2, 0);
            return shapes.stream().map(shape -> shape.transformed(toTheMiddle)).toList();
        }
    }
}

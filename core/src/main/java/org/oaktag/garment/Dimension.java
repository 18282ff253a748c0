package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.geometry.Point;

/**
 * Where an amount of a step shows on a piece: a dimension line between two points. Immutable.
 *
 * <pre>{@code
 * Change change = block.adjust(lowerArmhole(mm(12))).history().get(1);
 * for (Dimension shown : change.dimensions()) {
 *     String drawn = shown.text() + " on the " + shown.piece();
 * }
 * }</pre>
 *
 * @param piece the piece on which it is drawn, as it is after the step
 * @param from one end, in the piece's own millimetres
 * @param to the other end
 * @param text what is written on it, such as {@code "10.0 mm"}
 */
public record Dimension(Name piece, Point from, Point to, String text) {
    /** Refuses null. */
    public Dimension {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(text, "text");
    }
}

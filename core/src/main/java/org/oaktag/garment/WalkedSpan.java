package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.measure.Length;

/**
 * The part of a walked seam between two matching notches, or between a notch and an end. Immutable.
 *
 * <pre>{@code
 * for (WalkedSpan span : block.walkSeams().seam(FRONT_ARMHOLE_SEAM).spans()) {
 *     String line = span.from() + " to " + span.to() + ": " + span.difference().text();
 * }
 * }</pre>
 *
 * @param from where it begins: a notch's name, or {@code "start"}
 * @param to where it ends: a notch's name, or {@code "end"}
 * @param lengthA the length of side a there
 * @param lengthB the length of side b there
 * @param eased whether ease may lie here
 * @param isTrue whether the part obeys the rule of the seam
 */
public record WalkedSpan(String from, String to, Length lengthA, Length lengthB, boolean eased, boolean isTrue) {
    /** Refuses null. */
    public WalkedSpan {
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        Objects.requireNonNull(lengthA, "lengthA");
        Objects.requireNonNull(lengthB, "lengthB");
    }

    /** Returns by how much side b is longer than side a here. */
    public Length difference() {
        return lengthB.minus(lengthA);
    }
}

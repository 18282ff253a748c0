package org.oaktag.garment;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.measure.Length;

/**
 * A quantity that a step changed. Immutable.
 *
 * <pre>{@code
 * for (Moved moved : block.adjust(widenNeckline(mm(8))).history().get(1).moved()) {
 *     String line = moved.watched() + " by " + moved.by().map(Length::text).orElse("a new measure");
 * }
 * }</pre>
 *
 * @param watched what it is: the length of an edge, a finished measure or the error of a seam
 * @param before its value before the step, or empty where it did not exist
 * @param after its value after the step, or empty where it no longer exists
 */
public record Moved(Watched watched, Optional<Length> before, Optional<Length> after) {
    /** Refuses null. */
    public Moved {
        Objects.requireNonNull(watched, "watched");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }

    /** Returns by how much it grew, or empty where there is nothing to compare. */
    public Optional<Length> by() {
        return before.flatMap(old -> after.map(now -> now.minus(old)));
    }

    @Override
    public String toString() {
        return watched + ": "
                + before.map(Length::text).orElse("none") + " to "
                + after.map(Length::text).orElse("none");
    }
}

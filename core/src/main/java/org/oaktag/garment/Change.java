package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What one step did to a garment: an entry of its history. Immutable.
 *
 * <pre>{@code
 * Change change = block.adjust(widenNeckline(mm(8))).history().get(1);
 * change.step();      // = widen the neckline
 * change.amounts();   // what it was asked for
 * change.moved();     // what it moved, before and after
 * }</pre>
 *
 * @param step the step as a phrase, such as {@code "widen the neckline"}
 * @param amounts the amounts that it was asked for
 * @param notes the rules it followed, what it did beyond what was asked, and its cautions
 * @param dimensions where its amounts show on the pieces
 * @param moved every edge, finished measure and seam error that is not what it was
 * @param pieces the pieces that are new or not what they were
 * @param untrue the seams that are not true after it, each with what mends it
 */
public record Change(
        String step,
        List<Amount> amounts,
        List<Note> notes,
        List<Dimension> dimensions,
        List<Moved> moved,
        List<Name> pieces,
        List<String> untrue) {

    /** Copies the lists. */
    public Change {
        Objects.requireNonNull(step, "step");
        amounts = List.copyOf(amounts);
        notes = List.copyOf(notes);
        dimensions = List.copyOf(dimensions);
        moved = List.copyOf(moved);
        pieces = List.copyOf(pieces);
        untrue = List.copyOf(untrue);
    }

    /** Returns the step with its amounts on one line: {@code "widen the neckline: along the shoulder 10.0 mm"}. */
    public String title() {
        return amounts.isEmpty()
                ? step
                : step + ": " + amounts.stream().map(Amount::toString).collect(Collectors.joining(", "));
    }

    @Override
    public String toString() {
        return title() + " (" + moved.size() + " quantities moved)";
    }
}

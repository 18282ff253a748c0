package org.oaktag.adjust;

import java.util.List;
import java.util.Objects;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;

/**
 * What a step made, and what it has to say of it. Immutable.
 *
 * <pre>{@code
 * Step blunt = Pieces.cutFrom(SLEEVE, contrast);
 * Reshaped made = blunt.reshape(block);
 * made.garment().piece(SLEEVE).cloth().equals(contrast);   // = true
 * made.notes();                                            // what it has to say of it
 * }</pre>
 *
 * @param garment the garment after the step, its history as it was before
 * @param notes rules, deeds and cautions, in the order in which they are to be read
 * @param dimensions where the amounts of the step show
 */
public record Reshaped(Garment garment, List<Note> notes, List<Dimension> dimensions) {

    /** Copies the lists. */
    public Reshaped {
        Objects.requireNonNull(garment, "garment");
        notes = List.copyOf(notes);
        dimensions = List.copyOf(dimensions);
    }

    /** Returns a reshaped garment with what there is to say of it beyond what can be measured, if anything. */
    public static Reshaped of(Garment garment, Note... notes) {
        return new Reshaped(garment, List.of(notes), List.of());
    }
}

package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.garment.Change;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Note;
import org.oaktag.garment.Spelling;
import org.oaktag.garment.Watched;
import org.oaktag.measure.Length;

/**
 * What a garment can tell of how it was made: what a step changed, what changed in all since the block, and why.
 *
 * <pre>{@code
 * History history = History.of(top);
 * history.change("lower the armhole").moved();
 * history.sinceTheBlock();
 * history.why();
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param changes what made the garment, the draft of the block first
 */
public record History(List<Change> changes) {

    /** A smaller movement than this is rounding. */
    private static final Length MOVED = Length.mm(1e-6);

    /**
     * A rule by which a step found an amount.
     *
     * @param step the step's phrase
     * @param sentence the rule in one sentence, its numbers filled in
     */
    public record Reason(String step, String sentence) {
        /** Refuses null. */
        public Reason {
            Objects.requireNonNull(step, "step");
            Objects.requireNonNull(sentence, "sentence");
        }
    }

    /** Copies the list. */
    public History {
        changes = List.copyOf(changes);
    }

    /** Returns the history of a garment. */
    public static History of(Garment garment) {
        return new History(garment.history());
    }

    /**
     * Returns what a step did.
     *
     * @param step the step's phrase, and which of them where there are several: {@code "fit a hood (2)"}
     * @throws PatternException if there is no such step; the message lists those that exist
     */
    public Change change(String step) {
        List<String> phrases = Phrases.told(changes.stream().map(Change::step).toList());
        int place = phrases.indexOf(step);
        if (place < 0) {
            throw Spelling.unknown("step of the history", step, phrases);
        }
        return changes.get(place);
    }

    /**
     * Returns every quantity that is not what it was in the block, in the order in which they first moved; one that
     * came and went again is left out.
     */
    public List<Moved> sinceTheBlock() {
        return changes.isEmpty() ? List.of() : total(changes.subList(1, changes.size()));
    }

    /** Returns the rules by which the steps found their amounts, in order. */
    public List<Reason> why() {
        List<Reason> reasons = new ArrayList<>();
        for (Change change : changes) {
            for (Note note : change.notes()) {
                if (note.kind() == Note.Kind.RULE) {
                    reasons.add(new Reason(change.step(), note.text()));
                }
            }
        }
        return List.copyOf(reasons);
    }

    private static List<Moved> total(List<Change> changes) {
        Map<Watched, Moved> total = new LinkedHashMap<>();
        for (Change change : changes) {
            for (Moved moved : change.moved()) {
                total.merge(
                        moved.watched(),
                        moved,
                        (first, next) -> new Moved(first.watched(), first.before(), next.after()));
            }
        }
        return total.values().stream().filter(History::isMoved).toList();
    }

    private static boolean isMoved(Moved moved) {
        Optional<Length> by = moved.by();
        return by.map(length -> !length.isCloseTo(Length.ZERO, MOVED))
                .orElse(moved.before().isPresent() || moved.after().isPresent());
    }
}

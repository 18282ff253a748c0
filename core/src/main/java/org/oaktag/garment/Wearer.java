package org.oaktag.garment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * For whom a garment is drafted: the body measures by name, as later steps ask for them.
 *
 * <pre>{@code
 * Wearer wearer = block.wearer();
 * wearer.name();    // = Mira
 * wearer.child();   // = false
 * }</pre>
 *
 * <p>Which measures there are is for the drafts to say; this is only where the garment remembers them, and which of
 * them nobody took. Immutable.
 *
 * @param name who it is; free text
 * @param child whether the rules for children's garments apply
 * @param measures the body measures, in alphabetical order
 * @param derived which of them were not taken but derived from others, in alphabetical order
 */
public record Wearer(String name, boolean child, SortedMap<Name, Length> measures, SortedSet<Name> derived) {

    /**
     * Copies the measures.
     *
     * @throws PatternException if one is said to be derived that is not there
     */
    public Wearer {
        Objects.requireNonNull(name, "name");
        measures = Collections.unmodifiableSortedMap(new TreeMap<>(measures));
        derived = Collections.unmodifiableSortedSet(new TreeSet<>(derived));
        for (Name each : derived) {
            if (!measures.containsKey(each)) {
                throw Name.unknown(
                        "derived measure of '" + name + "'",
                        each,
                        measures.keySet().stream().toList());
            }
        }
    }

    /** Returns a wearer with these measures, all of them taken. */
    public static Wearer of(String name, boolean child, Map<Name, Length> measures) {
        return new Wearer(name, child, new TreeMap<>(measures), new TreeSet<>());
    }

    /** Returns this wearer, these measures said to be derived. */
    public Wearer withDerived(Set<Name> notTaken) {
        return new Wearer(name, child, measures, new TreeSet<>(notTaken));
    }

    /** Tells whether a measure was not taken but derived, so that whatever shows it can mark it. */
    public boolean isDerived(Name measure) {
        return derived.contains(measure);
    }

    /**
     * Returns which of these measures nobody took, as the end of a sentence that rests on them:
     * {@code "; waist girth and hip girth are derived, not taken"}, or an empty text where all were taken.
     */
    public String saysDerived(Name... measures) {
        List<String> notTaken = new ArrayList<>();
        for (Name measure : measures) {
            if (isDerived(measure)) {
                notTaken.add(measure.value());
            }
        }
        if (notTaken.isEmpty()) {
            return "";
        }
        String last = notTaken.remove(notTaken.size() - 1);
        return notTaken.isEmpty()
                ? "; the " + last + " is derived, not taken"
                : "; " + String.join(", ", notTaken) + " and " + last + " are derived, not taken";
    }

    /**
     * Returns a measure of the body.
     *
     * @throws PatternException if it was not taken; the message lists those that were
     */
    public Length measure(Name wanted) {
        Length found = measures.get(wanted);
        if (found == null) {
            throw Name.unknown(
                    "measure of '" + name + "'",
                    wanted,
                    measures.keySet().stream().toList());
        }
        return found;
    }
}

package org.oaktag.garment;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
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
 * <p>Which measures there are is for the drafts to say; this is only where the garment remembers them. Immutable.
 *
 * @param name who it is; free text
 * @param child whether the rules for children's garments apply
 * @param measures the body measures, in alphabetical order
 */
public record Wearer(String name, boolean child, SortedMap<Name, Length> measures) {

    /** Copies the measures. */
    public Wearer {
        Objects.requireNonNull(name, "name");
        measures = Collections.unmodifiableSortedMap(new TreeMap<>(measures));
    }

    /** Returns a wearer with these measures. */
    public static Wearer of(String name, boolean child, Map<Name, Length> measures) {
        return new Wearer(name, child, new TreeMap<>(measures));
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

package org.oaktag.body;

import java.util.Objects;
import org.oaktag.measure.Length;

/**
 * A measure that was not taken but derived from others: a fallback, and to be shown as such. Immutable.
 *
 * <pre>{@code
 * for (Derived derived : mira.derived()) {
 *     String line = derived.measure().label() + ": " + derived.rule();   // to be shown as not taken
 * }
 * }</pre>
 *
 * @param measure what was derived
 * @param value what it came to
 * @param rule how, with the numbers filled in: {@code "0.1565 x bust girth 940.0 mm + 223.0 mm"}
 * @param spread the standard deviation of real bodies about the rule: two of three lie within it, one of twenty beyond
 *     twice as much. It grows with a body larger than the mean
 */
public record Derived(BodyMeasure measure, Length value, String rule, Length spread) {

    /** Where every rule comes from. */
    public static final String SOURCE = "computed from the published means, standard deviations and correlations of the"
            + " 2012 US Army survey (Gordon et al., NATICK/TR-15/007), whose bodies are soldiers'; the waist moved from the"
            + " navel to the natural waist by the 1988 survey (NATICK/TR-89/044)";

    /** Refuses null. */
    public Derived {
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(rule, "rule");
        Objects.requireNonNull(spread, "spread");
    }

    /** Returns the whole of it in one line. */
    public String text() {
        return measure.label() + " " + value.text() + " = " + rule + ", give or take " + spread.text();
    }
}

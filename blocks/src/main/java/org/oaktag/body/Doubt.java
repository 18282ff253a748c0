package org.oaktag.body;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.measure.Length;

/**
 * A measure about which its maker is asked before anything is drafted from it. Immutable.
 *
 * <pre>{@code
 * BodyBuilder typed = mira.toBuilder().waistGirth(cm(44));
 * typed.doubts().get(0).measure();   // = WAIST_GIRTH
 * typed.waistGirth(cm(76)).doubts(); // = []
 * }</pre>
 *
 * <p>Either it was taken and lies more than {@value #SPREADS} standard deviations from what the other measures lead to
 * expect, as where half a girth was written down; or it was not taken though what would be derived is not good enough.
 * Whoever means what they gave says so by {@link BodyBuilder#confirmed}.
 *
 * @param measure what is asked about
 * @param taken what was taken, or empty where it was not and would be derived
 * @param expected what the other measures lead to expect
 */
public record Doubt(BodyMeasure measure, Optional<Length> taken, Derived expected) {

    /** How many standard deviations from what is expected a measure may lie without a question. */
    public static final int SPREADS = 4;

    /** Refuses null. */
    public Doubt {
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(taken, "taken");
        Objects.requireNonNull(expected, "expected");
    }

    /**
     * Returns the values that would be taken without a question. A bust girth has none too large: a body can be stout
     * and no taller than another.
     */
    public PlausibleRange unasked() {
        Length most = expected.spread().times(SPREADS);
        Length greatest = measure == BodyMeasure.BUST_GIRTH
                ? PlausibleRange.of(measure, Figure.WOMAN).greatest()
                : expected.value().plus(most);
        return new PlausibleRange(expected.value().minus(most), greatest);
    }

    /** Returns the whole of it in one line, without a question mark. */
    public String text() {
        return measure.label() + " " + taken.map(Length::text).orElse("not taken") + ", expected "
                + unasked().text(LengthUnit.MM) + " about " + expected.value().text() + " = " + expected.rule();
    }
}

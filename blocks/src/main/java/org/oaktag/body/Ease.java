package org.oaktag.body;

import java.util.Collections;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import org.oaktag.measure.Length;

/**
 * How much larger a garment is than the body, measure by measure. Where an ease says nothing there is none. What is
 * usual, and at which measures, is for each family of blocks to say.
 *
 * <pre>{@code
 * Ease overShirts = TopEase.of(EaseCategory.LOOSE).with(BodyMeasure.WRIST_GIRTH, mm(40));
 * overShirts.at(BodyMeasure.WRIST_GIRTH).text();   // = 40.0 mm
 * Ease.none().at(BodyMeasure.HIP_GIRTH).text();    // = 0.0 mm
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param amounts the amounts, in the order of {@link BodyMeasure}; negative where the garment is smaller than the body
 */
public record Ease(SortedMap<BodyMeasure, Length> amounts) {

    /** Copies the amounts. */
    public Ease {
        SortedMap<BodyMeasure, Length> copy = new TreeMap<>(amounts);
        copy.values().forEach(amount -> Objects.requireNonNull(amount, "amount"));
        amounts = Collections.unmodifiableSortedMap(copy);
    }

    /** Returns no ease at any measure. */
    public static Ease none() {
        return new Ease(new TreeMap<>());
    }

    /** Returns this ease with another amount at a measure. */
    public Ease with(BodyMeasure measure, Length amount) {
        SortedMap<BodyMeasure, Length> all = new TreeMap<>(amounts);
        all.put(Objects.requireNonNull(measure, "measure"), Objects.requireNonNull(amount, "amount"));
        return new Ease(all);
    }

    /** Returns the amount at a measure, 0 mm where there is none. */
    public Length at(BodyMeasure measure) {
        return amounts.getOrDefault(Objects.requireNonNull(measure, "measure"), Length.ZERO);
    }
}

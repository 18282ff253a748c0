package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.oaktag.measure.Length;

/**
 * A finished measure and what it comes to. Immutable.
 *
 * <pre>{@code
 * for (TakenMeasure taken : block.takeMeasures()) {
 *     String line = taken.measure().name() + ": " + taken.length().map(Length::text).orElse("nothing to measure");
 * }
 * }</pre>
 *
 * @param measure the measure
 * @param length its length, or empty where the garment has nothing to measure there
 */
public record TakenMeasure(FinishedMeasure measure, Optional<Length> length) {
    /** Refuses null. */
    public TakenMeasure {
        Objects.requireNonNull(measure, "measure");
        Objects.requireNonNull(length, "length");
    }

    static List<TakenMeasure> of(Garment garment) {
        List<TakenMeasure> all = new ArrayList<>();
        for (FinishedMeasure measure : garment.measures()) {
            all.add(of(measure, garment));
        }
        return List.copyOf(all);
    }

    /**
     * Takes the measures of a garment that was made from an earlier one. One that is the same as before, on edges that
     * are the same, need not be taken again.
     */
    static List<TakenMeasure> since(Garment earlier, Garment garment) {
        Kept kept = garment.keptOf(earlier);
        List<TakenMeasure> before = earlier.takeMeasures();
        List<FinishedMeasure> measures = garment.measures();
        List<TakenMeasure> all = new ArrayList<>(measures.size());
        for (int i = 0; i < measures.size(); i++) {
            FinishedMeasure measure = measures.get(i);
            @Nullable
            TakenMeasure known =
                    i < before.size() && before.get(i).measure.equals(measure) ? before.get(i) : find(before, measure);
            all.add(known != null && kept.has(measure) ? known : of(measure, garment));
        }
        return List.copyOf(all);
    }

    private static @Nullable TakenMeasure find(List<TakenMeasure> all, FinishedMeasure measure) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).measure.equals(measure)) {
                return all.get(i);
            }
        }
        return null;
    }

    private static TakenMeasure of(FinishedMeasure measure, Garment garment) {
        return new TakenMeasure(measure, measure.taken(garment));
    }
}

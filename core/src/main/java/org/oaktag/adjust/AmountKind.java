package org.oaktag.adjust;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.adjust.data.AmountField.Sort;

/**
 * An amount that a kind of step takes. Immutable.
 *
 * <pre>{@code
 * AmountKind along = KnownSteps.catalogue().kind("widen neckline").amount("along");
 * along.unit();    // = mm
 * along.field();   // = along_mm
 * }</pre>
 *
 * @param name its name in words, {@code "above hem"}
 * @param field the name of its field where a step is written as data, {@code "above_hem_mm"}
 * @param unit its unit, {@code "mm"}, {@code "degrees"} or {@code "percent"}, or nothing where it has none
 * @param sort what sort of value it is
 * @param optional whether it may be left out
 * @param usual what is usual for it where it is a number: for a slider, or a draw by chance. What a garment allows, the
 *     step itself says
 * @param choices what it may be where it is a word, or nothing where any will do
 */
public record AmountKind(
        String name,
        String field,
        String unit,
        Sort sort,
        boolean optional,
        Optional<Usual> usual,
        List<String> choices) {

    /**
     * The usual range of an amount in its unit, its ends included.
     *
     * @param least the least that is usual
     * @param most the most
     */
    public record Usual(double least, double most) {
        /**
         * Checks the ends.
         *
         * @throws IllegalArgumentException if the least is not less than the most
         */
        public Usual {
            if (!(least < most)) {
                throw new IllegalArgumentException("least must be less than the most, " + most + ", got " + least);
            }
        }
    }

    /** Copies the choices. */
    public AmountKind {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(sort, "sort");
        Objects.requireNonNull(usual, "usual");
        choices = List.copyOf(choices);
    }

    AmountKind usually(double least, double most) {
        return new AmountKind(name, field, unit, sort, optional, Optional.of(new Usual(least, most)), choices);
    }

    AmountKind among(List<String> some) {
        return new AmountKind(name, field, unit, sort, optional, usual, some);
    }
}

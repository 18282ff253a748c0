package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * A measure of the finished garment, as it is taken with a tape on the table: a sum of quantities, each taken so many
 * times. The girth of a piece drawn as its half counts that half twice. Immutable.
 *
 * <pre>{@code
 * FinishedMeasure hemGirth = FinishedMeasure.of(
 *         Name.of("front hem"), FinishedMeasure.times(2, Quantity.lengthOf(FRONT, HEM)));
 * hemGirth.of(block).minus(front.edge(HEM).length().times(2));   // = 0.0 mm
 * }</pre>
 *
 * @param name what is measured, such as {@code "chest girth"}
 * @param terms what is added up
 * @param body the measure of the body with which it is compared, or empty where there is none
 */
public record FinishedMeasure(Name name, List<Term> terms, Optional<Name> body) {

    /**
     * A quantity and how many times it counts.
     *
     * @param times the factor
     * @param quantity what is measured
     */
    public record Term(double times, Quantity quantity) {
        /** Refuses null. */
        public Term {
            Objects.requireNonNull(quantity, "quantity");
        }
    }

    /**
     * Copies the terms.
     *
     * @throws PatternException if there is none
     */
    public FinishedMeasure {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(body, "body");
        terms = List.copyOf(terms);
        if (terms.isEmpty()) {
            throw PatternException.of("finished measure '" + name + "'", "must measure something", "no terms", "");
        }
    }

    /** Returns a measure that is compared with no measure of the body. */
    public static FinishedMeasure of(Name name, Term... terms) {
        return new FinishedMeasure(name, List.of(terms), Optional.empty());
    }

    /** Returns a measure of one quantity, counted once. */
    public static FinishedMeasure of(Name name, Quantity quantity) {
        return of(name, times(1, quantity));
    }

    /** Returns this measure, compared with that of the body. */
    public FinishedMeasure against(Name bodyMeasure) {
        return new FinishedMeasure(name, terms, Optional.of(bodyMeasure));
    }

    /** Returns this measure with each quantity taken in another way. */
    public FinishedMeasure taking(UnaryOperator<Quantity> other) {
        Objects.requireNonNull(other, "other");
        return new FinishedMeasure(
                name,
                terms.stream()
                        .map(term -> times(term.times(), other.apply(term.quantity())))
                        .toList(),
                body);
    }

    /**
     * Takes the measure.
     *
     * @throws PatternException if the garment lacks a piece or an edge, or has nothing to measure there
     */
    public Length of(Garment garment) {
        double sum = 0;
        for (Term term : terms) {
            sum += term.times() * term.quantity().of(garment);
        }
        return Length.mm(sum);
    }

    /**
     * Takes the measure where there is something to measure: a cropped top has no waist girth.
     *
     * @throws PatternException if the garment lacks a piece or an edge
     */
    public Optional<Length> taken(Garment garment) {
        double sum = 0;
        for (Term term : terms) {
            OptionalDouble taken = term.quantity().taken(garment);
            if (taken.isEmpty()) {
                return Optional.empty();
            }
            sum += term.times() * taken.getAsDouble();
        }
        return Optional.of(Length.mm(sum));
    }

    /** Returns a quantity that counts so many times. */
    public static Term times(double factor, Quantity quantity) {
        return new Term(factor, quantity);
    }
}

package org.oaktag.body;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.oaktag.measure.Length;

/**
 * A weighted sum of measures, in mm, and the spread of real bodies about it.
 *
 * @param terms what is added up
 * @param constant what is added to it
 * @param spread the standard deviation of bodies about the rule, at the mean body of the survey
 */
record DerivationRule(List<Term> terms, double constant, double spread) {

    /**
     * A measure and what it is multiplied by.
     *
     * @param factor the factor
     * @param measure the measure
     * @param aboveMm what is left out of it: only what lies above counts
     */
    record Term(double factor, BodyMeasure measure, double aboveMm) {

        private double of(double mm) {
            return factor * Math.max(0, mm - aboveMm);
        }

        private String words(Length value) {
            return String.format(Locale.ROOT, "%.4f x ", factor)
                    + (aboveMm == 0
                            ? measure.label() + " " + value.text()
                            : "the " + value.minus(Length.mm(aboveMm)).text() + " of " + measure.label() + " above "
                                    + Length.mm(aboveMm).text());
        }
    }

    /** Copies the terms. */
    DerivationRule {
        terms = List.copyOf(terms);
    }

    /** Returns the measures on which the rule rests. */
    Set<BodyMeasure> predictors() {
        Set<BodyMeasure> predictors = EnumSet.noneOf(BodyMeasure.class);
        terms.forEach(term -> predictors.add(term.measure()));
        return predictors;
    }

    /** Tells whether all is known on which the rule rests. */
    boolean isMet(Map<BodyMeasure, Length> known) {
        return terms.stream().allMatch(term -> known.containsKey(term.measure()));
    }

    /**
     * Returns by how many spreads a measure lies above what the rule makes of the others, or below if negative.
     *
     * @param derived those of the others that were not taken
     */
    double spreadsOff(Length value, Figure figure, Map<BodyMeasure, Length> known, Map<BodyMeasure, Derived> derived) {
        double expected = sum(known);
        return (value.mm() - expected) / spreadAbout(expected, figure, derived);
    }

    /**
     * Derives a measure, in words too.
     *
     * @param derived those of the others that were not taken
     */
    Derived apply(
            BodyMeasure wanted, Figure figure, Map<BodyMeasure, Length> known, Map<BodyMeasure, Derived> derived) {
        double sum = sum(known);
        return new Derived(wanted, Length.mm(sum), words(known), Length.mm(spreadAbout(sum, figure, derived)));
    }

    private double sum(Map<BodyMeasure, Length> known) {
        double sum = constant;
        for (Term term : terms) {
            sum += term.of(known(term, known).mm());
        }
        return sum;
    }

    /** A larger body varies more, a smaller one not much less; and what was derived itself adds its own spread. */
    private double spreadAbout(double expected, Figure figure, Map<BodyMeasure, Derived> derived) {
        double mean = constant;
        double added = 0;
        for (Term term : terms) {
            mean += term.of(mean(term.measure(), figure));
            Derived rests = derived.get(term.measure());
            added = Math.hypot(
                    added, rests == null ? 0 : term.factor() * rests.spread().mm());
        }
        return Math.hypot(spread * Math.max(1, expected / mean), added);
    }

    private String words(Map<BodyMeasure, Length> known) {
        List<String> words = new ArrayList<>();
        Set<String> beyond = new LinkedHashSet<>();
        for (Term term : terms) {
            Length value = known(term, known);
            if (value.mm() > term.aboveMm()) {
                words.add(term.words(value));
            }
            PlausibleRange surveyed = PlausibleRange.surveyed(term.measure());
            if (!surveyed.includes(value)) {
                beyond.add(" (beyond the surveyed " + term.measure().label() + " of " + surveyed.text(LengthUnit.MM)
                        + ")");
            }
        }
        String added = constant == 0
                ? ""
                : (constant < 0 ? " - " : " + ") + Length.mm(Math.abs(constant)).text();
        return String.join(" + ", words) + added + String.join("", beyond);
    }

    private static Length known(Term term, Map<BodyMeasure, Length> known) {
        Length value = known.get(term.measure());
        if (value == null) {
            throw new IllegalStateException("a rule needs " + term.measure() + ", which comes later");
        }
        return value;
    }

    /** The mean of a measure from which others are derived, in mm (2012 US Army survey, NATICK/TR-15/007). */
    private static double mean(BodyMeasure predictor, Figure figure) {
        boolean woman = figure == Figure.WOMAN;
        return switch (predictor) {
            case BUST_GIRTH -> woman ? 946.9 : 1058.7;
            case HEIGHT -> woman ? 1628.5 : 1756.2;
            case WRIST_GIRTH -> woman ? 154.8 : 175.9;
            default -> throw new IllegalStateException("nothing is derived from " + predictor);
        };
    }
}

package org.oaktag.body;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.garment.Wearer;
import org.oaktag.measure.Length;

/**
 * The measures of one body.
 *
 * <pre>{@code
 * BodyMeasurements body = BodyMeasurements.builder().name("Mira").figure(Figure.WOMAN)
 *         .bustGirth(cm(94)).height(cm(168)).neckBaseGirth(cm(37.5)).build();
 * body.neckBaseGirth();   // 375.0 mm, as taken
 * body.armLength();       // 562.3 mm, and derived() says so and how
 * }</pre>
 *
 * <p>A body has the measures that were taken, and a grown one all that can be derived from them: every measure where
 * bust girth and height are among those. No rule derives a child's. A garment needs only what its block asks for.
 * Immutable and safe to share between threads.
 */
public final class BodyMeasurements {

    /** Under this age the rules for children's garments apply (EN 14682 covers children under 14). */
    static final int ADULT_FROM = 14;

    private static final int CHILD_BELOW = 18;

    private final String name;
    private final Figure figure;
    private final OptionalInt ageYears;
    private final Map<BodyMeasure, Length> measures;
    private final List<Derived> derived;
    private final List<Doubt> doubts;

    /** Checks what was taken and derives what was not. */
    BodyMeasurements(String name, Figure figure, OptionalInt ageYears, Map<BodyMeasure, Length> taken) {
        this.name = name;
        this.figure = figure;
        this.ageYears = ageYears;
        checkAge();
        EnumMap<BodyMeasure, Length> known = new EnumMap<>(BodyMeasure.class);
        taken.forEach((measure, length) -> known.put(
                measure, PlausibleRange.of(measure, figure).check(measure.label() + " of '" + name + "'", length)));
        Map<BodyMeasure, Derived> rules = new EnumMap<>(BodyMeasure.class);
        for (BodyMeasure measure : BodyMeasure.values()) {
            if (!known.containsKey(measure)) {
                Derivations.rule(measure, figure)
                        .filter(rule -> rule.isMet(known))
                        .ifPresent(rule -> {
                            Derived value = rule.apply(measure, figure, known, rules);
                            checkDerived(value);
                            known.put(measure, value.value());
                            rules.put(measure, value);
                        });
            }
        }
        this.measures = Collections.unmodifiableMap(known);
        this.derived = List.copyOf(rules.values());
        this.doubts = Doubts.of(figure, measures, rules);
    }

    private void checkAge() {
        ageYears.ifPresent(age -> {
            boolean fits = figure.isChild() ? age >= 0 && age < CHILD_BELOW : age >= ADULT_FROM && age <= 120;
            if (!fits) {
                throw PatternException.of(
                        "age of '" + name + "'",
                        figure.isChild()
                                ? "a " + figure.label() + " must be 0 to " + (CHILD_BELOW - 1) + " years"
                                : "a " + figure.label() + " must be " + ADULT_FROM + " to 120 years",
                        age + " years",
                        figure.isChild() || age < 0 || age > 120 ? "" : "name the figure girl or boy");
            }
        });
    }

    private void checkDerived(Derived rule) {
        PlausibleRange range = PlausibleRange.of(rule.measure(), figure);
        if (!range.includes(rule.value())) {
            throw PatternException.of(
                    rule.measure().label() + " of '" + name + "'",
                    "a derived measure must be " + range.text(LengthUnit.MM),
                    rule.value().text() + " = " + rule.rule(),
                    "take this measure with a tape");
        }
    }

    /** Returns a builder with nothing filled in. */
    public static BodyBuilder builder() {
        return new BodyBuilder();
    }

    /** Returns who it is; free text. */
    public String name() {
        return name;
    }

    /** Returns whose body it is. */
    public Figure figure() {
        return figure;
    }

    /** Returns the age in whole years, where it was given. */
    public OptionalInt ageYears() {
        return ageYears;
    }

    /** Tells whether the rules for children's garments apply. */
    public boolean isChild() {
        return figure.isChild();
    }

    /**
     * Returns a measure, taken or derived.
     *
     * @throws PatternException if it was not taken, and no rule derives it from what was; the message says from what
     *     one would
     */
    public Length measure(BodyMeasure wanted) {
        return find(wanted)
                .orElseThrow(() -> PatternException.of(
                        wanted.label() + " of '" + name + "'",
                        mustBeTaken(wanted),
                        "only "
                                + measures.keySet().stream()
                                        .map(BodyMeasure::label)
                                        .collect(Collectors.joining(", ")),
                        "measure " + wanted.definition()));
    }

    private String mustBeTaken(BodyMeasure wanted) {
        if (isChild()) {
            return "must be taken: no rule derives it for a " + figure.label();
        }
        return wanted.derivedFrom().isEmpty()
                ? "must be taken: nothing derives it"
                : "must be taken, or derived from "
                        + wanted.derivedFrom().stream().map(BodyMeasure::label).collect(Collectors.joining(" and "));
    }

    /** Returns a measure, or empty where it was neither taken nor derived. */
    public Optional<Length> find(BodyMeasure wanted) {
        return Optional.ofNullable(measures.get(Objects.requireNonNull(wanted, "wanted")));
    }

    /** Returns every measure that is known, in the order of {@link BodyMeasure}. */
    public Map<BodyMeasure, Length> measures() {
        return measures;
    }

    /** Returns what was derived and how, in the order of {@link BodyMeasure}; empty where every measure was taken. */
    public List<Derived> derived() {
        return derived;
    }

    /**
     * Returns what was asked about when the body was built, in the order of {@link BodyMeasure}, and confirmed:
     * measures that are far from what the others lead to expect, and a derived hip of a large bust. Empty for most
     * bodies.
     */
    public List<Doubt> confirmed() {
        return doubts;
    }

    /** Returns the body as the wearer of a garment, with every measure that is known and which of them are derived. */
    public Wearer wearer() {
        Map<Name, Length> named = new TreeMap<>();
        measures.forEach((measure, length) -> named.put(measure.asName(), length));
        return Wearer.of(name, isChild(), named)
                .withDerived(
                        derived.stream().map(rule -> rule.measure().asName()).collect(Collectors.toSet()));
    }

    /** Returns the measures that were taken, in the order of {@link BodyMeasure}. */
    public Map<BodyMeasure, Length> taken() {
        EnumMap<BodyMeasure, Length> taken = new EnumMap<>(measures);
        derived.forEach(rule -> taken.remove(rule.measure()));
        return Collections.unmodifiableMap(taken);
    }

    /**
     * Returns a builder filled with what was taken and confirmed, so that one measure can be changed and the rest
     * derived anew.
     */
    public BodyBuilder toBuilder() {
        BodyBuilder builder = builder().name(name).figure(figure);
        ageYears.ifPresent(builder::ageYears);
        taken().forEach(builder::measure);
        doubts.forEach(doubt -> builder.confirmed(doubt.measure()));
        return builder;
    }

    /** Returns {@link BodyMeasure#BUST_GIRTH}. */
    public Length bustGirth() {
        return measure(BodyMeasure.BUST_GIRTH);
    }

    /** Returns {@link BodyMeasure#WAIST_GIRTH}. */
    public Length waistGirth() {
        return measure(BodyMeasure.WAIST_GIRTH);
    }

    /** Returns {@link BodyMeasure#HIP_GIRTH}. */
    public Length hipGirth() {
        return measure(BodyMeasure.HIP_GIRTH);
    }

    /** Returns {@link BodyMeasure#NECK_BASE_GIRTH}. */
    public Length neckBaseGirth() {
        return measure(BodyMeasure.NECK_BASE_GIRTH);
    }

    /** Returns {@link BodyMeasure#UPPER_ARM_GIRTH}. */
    public Length upperArmGirth() {
        return measure(BodyMeasure.UPPER_ARM_GIRTH);
    }

    /** Returns {@link BodyMeasure#WRIST_GIRTH}. */
    public Length wristGirth() {
        return measure(BodyMeasure.WRIST_GIRTH);
    }

    /** Returns {@link BodyMeasure#HAND_GIRTH}. */
    public Length handGirth() {
        return measure(BodyMeasure.HAND_GIRTH);
    }

    /** Returns {@link BodyMeasure#HAND_GIRTH_WITH_THUMB}. */
    public Length handGirthWithThumb() {
        return measure(BodyMeasure.HAND_GIRTH_WITH_THUMB);
    }

    /** Returns {@link BodyMeasure#HEAD_GIRTH}. */
    public Length headGirth() {
        return measure(BodyMeasure.HEAD_GIRTH);
    }

    /** Returns {@link BodyMeasure#SHOULDER_LENGTH}. */
    public Length shoulderLength() {
        return measure(BodyMeasure.SHOULDER_LENGTH);
    }

    /** Returns {@link BodyMeasure#ACROSS_BACK}. */
    public Length acrossBack() {
        return measure(BodyMeasure.ACROSS_BACK);
    }

    /** Returns {@link BodyMeasure#BACK_WAIST_LENGTH}. */
    public Length backWaistLength() {
        return measure(BodyMeasure.BACK_WAIST_LENGTH);
    }

    /** Returns {@link BodyMeasure#WAIST_TO_HIP}. */
    public Length waistToHip() {
        return measure(BodyMeasure.WAIST_TO_HIP);
    }

    /** Returns {@link BodyMeasure#NAPE_TO_ARMPIT}. */
    public Length napeToArmpit() {
        return measure(BodyMeasure.NAPE_TO_ARMPIT);
    }

    /** Returns {@link BodyMeasure#ARM_LENGTH}. */
    public Length armLength() {
        return measure(BodyMeasure.ARM_LENGTH);
    }

    /** Returns {@link BodyMeasure#HEIGHT}. */
    public Length height() {
        return measure(BodyMeasure.HEIGHT);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BodyMeasurements that
                && name.equals(that.name)
                && figure == that.figure
                && ageYears.equals(that.ageYears)
                && measures.equals(that.measures)
                && derived.equals(that.derived);
    }

    @Override
    public int hashCode() {
        return Objects.hash(name, figure, ageYears, measures);
    }

    @Override
    public String toString() {
        return name + " (" + figure.label() + ") " + measures;
    }
}

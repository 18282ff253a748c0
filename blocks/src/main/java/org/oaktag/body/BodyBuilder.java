package org.oaktag.body;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * Gathers the measures of a body. Nothing is checked before {@link #build()}, so the order does not matter; a measure
 * given twice keeps the last value. Not for sharing between threads.
 *
 * <pre>{@code
 * BodyMeasurements teo = BodyMeasurements.builder()
 *         .name("Teo")
 *         .figure(Figure.MAN)
 *         .bustGirth(cm(99))
 *         .height(cm(179))
 *         .measure(BodyMeasure.ARM_LENGTH, cm(63))
 *         .build();
 * }</pre>
 */
public final class BodyBuilder {

    private String name = "";
    private Optional<Figure> figure = Optional.empty();
    private OptionalInt ageYears = OptionalInt.empty();
    private final EnumMap<BodyMeasure, Length> taken = new EnumMap<>(BodyMeasure.class);
    private final EnumSet<BodyMeasure> confirmed = EnumSet.noneOf(BodyMeasure.class);

    BodyBuilder() {}

    /** Names the body; free text that is not blank. Required. */
    public BodyBuilder name(String free) {
        name = free.strip();
        return this;
    }

    /** Says whose body it is. Required. */
    public BodyBuilder figure(Figure whose) {
        figure = Optional.of(whose);
        return this;
    }

    /** Gives the age in whole years. */
    public BodyBuilder ageYears(int years) {
        ageYears = OptionalInt.of(years);
        return this;
    }

    /** Gives any measure. */
    public BodyBuilder measure(BodyMeasure measure, Length length) {
        taken.put(measure, Objects.requireNonNull(length, "length"));
        return this;
    }

    /**
     * Says that a measure is meant as it is, so that {@link #build()} does not ask about it: a value that lies far from
     * what the others lead to expect, or a measure that was not taken and is to be derived all the same. Changes
     * nothing where there is no {@link Doubt}, and a value out of its {@link PlausibleRange} is refused whatever is
     * confirmed.
     *
     * <pre>{@code
     * BodyBuilder narrow = mira.toBuilder().waistGirth(cm(50));
     * narrow.doubts().size();                                          // = 1
     * narrow.confirmed(BodyMeasure.WAIST_GIRTH).build().waistGirth();  // = 500.0 mm
     * }</pre>
     */
    public BodyBuilder confirmed(BodyMeasure measure) {
        confirmed.add(Objects.requireNonNull(measure, "measure"));
        return this;
    }

    /** Gives {@link BodyMeasure#BUST_GIRTH}, from which others are derived. */
    public BodyBuilder bustGirth(Length length) {
        return measure(BodyMeasure.BUST_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#WAIST_GIRTH}. */
    public BodyBuilder waistGirth(Length length) {
        return measure(BodyMeasure.WAIST_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#HIP_GIRTH}. */
    public BodyBuilder hipGirth(Length length) {
        return measure(BodyMeasure.HIP_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#NECK_BASE_GIRTH}. */
    public BodyBuilder neckBaseGirth(Length length) {
        return measure(BodyMeasure.NECK_BASE_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#UPPER_ARM_GIRTH}. */
    public BodyBuilder upperArmGirth(Length length) {
        return measure(BodyMeasure.UPPER_ARM_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#WRIST_GIRTH}. */
    public BodyBuilder wristGirth(Length length) {
        return measure(BodyMeasure.WRIST_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#HAND_GIRTH}. */
    public BodyBuilder handGirth(Length length) {
        return measure(BodyMeasure.HAND_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#HAND_GIRTH_WITH_THUMB}. */
    public BodyBuilder handGirthWithThumb(Length length) {
        return measure(BodyMeasure.HAND_GIRTH_WITH_THUMB, length);
    }

    /** Gives {@link BodyMeasure#HEAD_GIRTH}. */
    public BodyBuilder headGirth(Length length) {
        return measure(BodyMeasure.HEAD_GIRTH, length);
    }

    /** Gives {@link BodyMeasure#SHOULDER_LENGTH}. */
    public BodyBuilder shoulderLength(Length length) {
        return measure(BodyMeasure.SHOULDER_LENGTH, length);
    }

    /** Gives {@link BodyMeasure#ACROSS_BACK}. */
    public BodyBuilder acrossBack(Length length) {
        return measure(BodyMeasure.ACROSS_BACK, length);
    }

    /** Gives {@link BodyMeasure#BACK_WAIST_LENGTH}. */
    public BodyBuilder backWaistLength(Length length) {
        return measure(BodyMeasure.BACK_WAIST_LENGTH, length);
    }

    /** Gives {@link BodyMeasure#WAIST_TO_HIP}. */
    public BodyBuilder waistToHip(Length length) {
        return measure(BodyMeasure.WAIST_TO_HIP, length);
    }

    /** Gives {@link BodyMeasure#NAPE_TO_ARMPIT}. */
    public BodyBuilder napeToArmpit(Length length) {
        return measure(BodyMeasure.NAPE_TO_ARMPIT, length);
    }

    /** Gives {@link BodyMeasure#ARM_LENGTH}. */
    public BodyBuilder armLength(Length length) {
        return measure(BodyMeasure.ARM_LENGTH, length);
    }

    /** Gives {@link BodyMeasure#HEIGHT}, from which others are derived. */
    public BodyBuilder height(Length length) {
        return measure(BodyMeasure.HEIGHT, length);
    }

    /**
     * Checks every measure and derives those of a grown body that were not given, as far as what they are derived from
     * was.
     *
     * @throws PatternException if the name, the figure or every measure is missing; if a measure lies outside its
     *     {@link PlausibleRange}; if the age does not go with the figure; if a derived measure is no measure of a body;
     * or if there are {@link #doubts()}: the message names each, what it is, what was expected and why, the slip that
     * explains it where there is one, and what to confirm
     */
    public BodyMeasurements build() {
        BodyMeasurements body = gathered();
        List<Doubt> doubts = unconfirmed(body);
        if (!doubts.isEmpty()) {
            throw Doubts.question(name, body.figure(), doubts);
        }
        return body;
    }

    /**
     * Returns what {@link #build()} would ask about, in the order of {@link BodyMeasure}: a service shows each to
     * whoever typed it, and lets them mend or {@linkplain #confirmed confirm} it.
     *
     * @throws PatternException as {@link #build()}, doubts apart
     */
    public List<Doubt> doubts() {
        return unconfirmed(gathered());
    }

    private List<Doubt> unconfirmed(BodyMeasurements body) {
        return body.confirmed().stream()
                .filter(doubt -> !confirmed.contains(doubt.measure()))
                .toList();
    }

    private BodyMeasurements gathered() {
        if (name.isEmpty()) {
            throw PatternException.of("body", "must have a name", "none", "");
        }
        Figure whose = figure.orElseThrow(() -> PatternException.of(
                "figure of '" + name + "'",
                "must be one of "
                        + Arrays.stream(Figure.values()).map(Figure::label).toList(),
                "none",
                ""));
        if (taken.isEmpty()) {
            throw PatternException.of(
                    "body '" + name + "'",
                    "must come with the measures that its garment needs, or with bust girth and height, from which they are"
                            + " derived",
                    "no measure",
                    "");
        }
        return new BodyMeasurements(name, whose, ageYears, taken);
    }
}

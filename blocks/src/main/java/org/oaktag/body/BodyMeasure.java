package org.oaktag.body;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.oaktag.garment.Name;

/**
 * A measure of the body, under the term of ISO 8559-1:2017 where the standard has one.
 *
 * <pre>{@code
 * mira.measure(BodyMeasure.HEAD_GIRTH);                          // taken or derived
 * BodyMeasure.named(Name.of("stature"));                         // = Optional[HEIGHT]
 * BodyMeasure.SHOULDER_LENGTH.definition();                      // where the tape runs
 * }</pre>
 *
 * <p>Two measures have no term there and carry words made from its own: {@link #NAPE_TO_ARMPIT} and
 * {@link #HAND_GIRTH_WITH_THUMB}. From {@link #BUST_GIRTH} and {@link #HEIGHT} every other measure of a grown body can
 * be derived, though never as well as a tape does it.
 */
public enum BodyMeasure {
    /** Round the fullest part of the chest. */
    BUST_GIRTH("bust girth", "horizontal girth of the trunk at the fullest part of the bust or chest", "chest girth"),
    /** Round the natural waist. */
    WAIST_GIRTH("waist girth", "horizontal girth midway between the lowest rib and the top of the hip bone"),
    /** Round the seat. */
    HIP_GIRTH("hip girth", "horizontal girth of the trunk at the fullest part of the seat"),
    /** Round the root of the neck. */
    NECK_BASE_GIRTH("neck base girth", "girth of the neck at its root, over back, side and front neck points"),
    /** Round the upper arm. */
    UPPER_ARM_GIRTH("upper arm girth", "girth of the arm midway between shoulder point and elbow"),
    /** Round the wrist. */
    WRIST_GIRTH("wrist girth", "girth of the arm over the wrist bones"),
    /** Round the knuckles. */
    HAND_GIRTH("hand girth", "girth of the hand over the knuckles, without the thumb"),
    /** Round the hand as it slips through a cuff. */
    HAND_GIRTH_WITH_THUMB(
            "hand girth with thumb", "girth of the hand at its widest with the thumb laid in, as it slips into a cuff"),
    /** Round the head. */
    HEAD_GIRTH("head girth", "greatest girth of the head above the ears"),
    /** Along one shoulder. */
    SHOULDER_LENGTH("shoulder length", "from the side neck point to the shoulder point"),
    /** Across the back from arm to arm. */
    ACROSS_BACK("across back", "across the back from arm crease to arm crease, midway down the armhole", "back width"),
    /** Down the back to the natural waist. */
    BACK_WAIST_LENGTH(
            "back waist length",
            "from the back neck point down the back to the natural waist",
            "back neck point to waist"),
    /** From the waist down to the seat. */
    WAIST_TO_HIP("waist to hip", "vertical drop from the natural waist to the fullest part of the seat"),
    /**
     * How far the armpit lies below the back neck point. The standard's scye depth is taken down the back to a rule
     * held under the arm, and is longer.
     */
    NAPE_TO_ARMPIT("nape to armpit", "vertical drop from the back neck point to the armpit"),
    /** Down the arm from the shoulder point to the wrist. */
    ARM_LENGTH(
            "arm length", "from the shoulder point down the outside of the arm to the wrist bone", "outer arm length"),
    /** From the floor to the top of the head. */
    HEIGHT("height", "from the floor to the top of the head, without shoes", "stature");

    private final String label;
    private final String definition;
    private final Optional<String> otherName;

    BodyMeasure(String label, String definition) {
        this.label = label;
        this.definition = definition;
        this.otherName = Optional.empty();
    }

    BodyMeasure(String label, String definition, String otherName) {
        this.label = label;
        this.definition = definition;
        this.otherName = Optional.of(otherName);
    }

    /** Returns the term, in lower-case words, such as {@code "neck base girth"}. */
    public String label() {
        return label;
    }

    /** Returns the term as a name, by which a garment's wearer knows the measure. */
    public Name asName() {
        return Name.of(label);
    }

    /** Returns where the tape goes, in one phrase. */
    public String definition() {
        return definition;
    }

    /** Returns another term in use for the same measure, where there is one. */
    public Optional<Name> otherName() {
        return otherName.map(Name::of);
    }

    /**
     * Returns the measures from which a rule derives this one for a grown body that has them all; empty where no rule
     * does, as for bust girth and height, which must be taken where they are needed. For a child nothing is derived.
     */
    public Set<BodyMeasure> derivedFrom() {
        return Derivations.rule(this, Figure.WOMAN)
                .map(DerivationRule::predictors)
                .orElse(Set.of());
    }

    /** Returns the measure that goes by this term or by another in use, or empty where there is none. */
    public static Optional<BodyMeasure> named(Name term) {
        return Arrays.stream(values())
                .filter(measure ->
                        measure.label.equals(term.value()) || measure.otherName.equals(Optional.of(term.value())))
                .findFirst();
    }
}

package org.oaktag.body;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * What a measure of a body can be at all. Outside lies a slip of the pen or of the unit.
 *
 * <pre>{@code
 * PlausibleRange chest = PlausibleRange.of(BodyMeasure.BUST_GIRTH, Figure.WOMAN);
 * chest.includes(cm(94));     // = true
 * chest.includes(inches(94)); // = false
 * }</pre>
 *
 * <p>The ranges rest on the least and the greatest value among the 1,986 women and 4,082 men of the 2012 US Army survey
 * (Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel, NATICK/TR-15/007): a grown body may have 0.70 of
 * the least to 1.20 times the greatest, which admits chests of 50 to 170 cm, and 1.35 times the greatest where an army
 * looks hardest, at waist and hip; a child's may have 0.50 of the least up to the greatest itself. These factors are
 * common practice, chosen so that no real body is refused. What is plausible by itself and not beside the other
 * measures of the body, such as half a girth, is a {@link Doubt}.
 *
 * <p>Where the survey's tables print no extremes, four standard deviations about the means stand in: the drop from nape
 * to armpit (cervicale height less axilla height) and from waist to hip (waist height less buttock height). Its waist
 * is at the navel; both lengths to the waist are moved to the natural waist as the rules that derive them are. The hand
 * with its thumb is {@value Derivations#THUMBED_HAND_IN_WRISTS} times the wrist. Immutable.
 *
 * @param least the least that is accepted
 * @param greatest the greatest that is accepted
 */
public record PlausibleRange(Length least, Length greatest) {

    /** The units in which a measure may have been read whose unit is not known. */
    static final List<LengthUnit> READ_AS = List.of(LengthUnit.MM, LengthUnit.CM, LengthUnit.INCH);

    private static final double ADULT_LEAST = 0.70;
    private static final double ADULT_GREATEST = 1.20;
    private static final double ADULT_GREATEST_AT_WAIST_AND_HIP = 1.35;
    private static final double CHILD_LEAST = 0.50;
    private static final double CHILD_GREATEST = 1.00;

    /** Refuses null. */
    public PlausibleRange {
        Objects.requireNonNull(least, "least");
        Objects.requireNonNull(greatest, "greatest");
    }

    /** Returns the range of a measure for a figure. */
    public static PlausibleRange of(BodyMeasure measure, Figure figure) {
        PlausibleRange surveyed = surveyed(measure);
        if (figure.isChild()) {
            return surveyed.widened(CHILD_LEAST, CHILD_GREATEST);
        }
        boolean waistOrHip = measure == BodyMeasure.WAIST_GIRTH || measure == BodyMeasure.HIP_GIRTH;
        return surveyed.widened(ADULT_LEAST, waistOrHip ? ADULT_GREATEST_AT_WAIST_AND_HIP : ADULT_GREATEST);
    }

    /** Returns the least and the greatest value of a measure in the survey, both sexes together. */
    static PlausibleRange surveyed(BodyMeasure measure) {
        return switch (measure) {
            case BUST_GIRTH -> between(695, 1469);
            case WAIST_GIRTH -> between(611, 1379);
            case HIP_GIRTH -> between(737, 1341);
            case NECK_BASE_GIRTH -> between(302, 545);
            case UPPER_ARM_GIRTH -> between(216, 490);
            case WRIST_GIRTH -> between(124, 216);
            case HAND_GIRTH -> between(152, 248);
            case HAND_GIRTH_WITH_THUMB -> between(182, 317);
            case HEAD_GIRTH -> between(500, 635);
            case SHOULDER_LENGTH -> between(107, 185);
            case ACROSS_BACK -> between(306, 577);
            case BACK_WAIST_LENGTH -> between(291, 541);
            case WAIST_TO_HIP -> between(119, 345);
            case NAPE_TO_ARMPIT -> between(99, 246);
            case ARM_LENGTH -> between(410, 709);
            case HEIGHT -> between(1409, 1993);
        };
    }

    /** Tells whether a length lies in the range, its ends included. */
    public boolean includes(Length length) {
        return length.compareTo(least) >= 0 && length.compareTo(greatest) <= 0;
    }

    /**
     * Returns the length if it lies in the range.
     *
     * @param thing what is measured and on whom, for the message
     * @param length the length to check
     * @throws PatternException if it lies outside; the message names the range and, where one explains the value, the
     *     slip of the unit
     */
    public Length check(String thing, Length length) {
        return check(thing, length, LengthUnit.MM, READ_AS);
    }

    /**
     * Returns the length if it lies in the range, where the unit in which it was read is known: the message then speaks
     * in that unit.
     *
     * @param thing what is measured and on whom, for the message
     * @param length the length to check
     * @param readAs the unit in which it was read
     * @throws PatternException as {@link #check(String, Length)}
     */
    public Length check(String thing, Length length, LengthUnit readAs) {
        return check(thing, length, readAs, List.of(readAs));
    }

    private Length check(String thing, Length length, LengthUnit spoken, List<LengthUnit> readAs) {
        Objects.requireNonNull(thing, "thing");
        if (!includes(length)) {
            throw PatternException.of(
                    thing,
                    "must be " + text(spoken),
                    spoken.text(length),
                    Slip.likeliest(Slip.ofUnit(length, readAs), this));
        }
        return length;
    }

    /** Returns both ends in a unit: {@code "486.0 to 1763.0 mm"}. */
    public String text(LengthUnit unit) {
        return unit.text(least).replace(" " + unit.symbol(), "") + " to " + unit.text(greatest);
    }

    /** Returns the range with its ends scaled and rounded to whole millimetres. */
    private PlausibleRange widened(double below, double above) {
        return between(Math.floor(least.mm() * below), Math.ceil(greatest.mm() * above));
    }

    private static PlausibleRange between(double leastMm, double greatestMm) {
        return new PlausibleRange(Length.mm(leastMm), Length.mm(greatestMm));
    }
}

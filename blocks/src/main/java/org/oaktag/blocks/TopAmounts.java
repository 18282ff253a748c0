package org.oaktag.blocks;

import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

/**
 * How much larger a knit top is than the body, each amount in its range. Only a very close garment may be smaller than
 * the body, by a tenth of the girth at most, and only in a cloth that stretches so far: {@link #check}. Immutable.
 *
 * @param bust ease at the bust girth; -170 to 600 mm, and what the category is named by
 * @param waist ease at the waist girth; -170 to 600 mm
 * @param hip ease at the hip girth; -170 to 600 mm
 * @param upperArm ease at the upper arm girth; -60 to 300 mm
 * @param wrist ease at the wrist girth; -30 to 200 mm
 * @param neckline ease of the finished neckline over the neck base girth; -20 to 150 mm
 * @param scyeDepth how far the armhole lies below the armpit; 0 to 200 mm
 */
record TopAmounts(
        Length bust, Length waist, Length hip, Length upperArm, Length wrist, Length neckline, Length scyeDepth) {

    /** The most that a very close garment may lack, as a share of the girth. */
    private static final double MOST_NEGATIVE = 0.10;

    /**
     * Checks each amount against its range.
     *
     * @throws PatternException if an amount lies outside
     */
    TopAmounts {
        within("bust", bust, -170, 600);
        within("waist", waist, -170, 600);
        within("hip", hip, -170, 600);
        within("upper arm", upperArm, -60, 300);
        within("wrist", wrist, -30, 200);
        within("neckline", neckline, -20, 150);
        within("scye depth", scyeDepth, 0, 200);
    }

    /**
     * Reads them off an ease; where it says nothing there is none.
     *
     * @throws PatternException if it speaks of a measure at which a knit top has no ease, or an amount lies outside its
     *     range
     */
    static TopAmounts of(Ease ease) {
        Set<BodyMeasure> known = TopEase.standard().amounts().keySet();
        ease.amounts().forEach((measure, amount) -> {
            if (!known.contains(measure)) {
                throw PatternException.of(
                        "ease at the " + measure.label(),
                        "a knit top has ease at "
                                + known.stream().map(BodyMeasure::label).collect(Collectors.joining(", ")),
                        amount.text(),
                        "leave it out");
            }
        });
        return new TopAmounts(
                ease.at(BodyMeasure.BUST_GIRTH),
                ease.at(BodyMeasure.WAIST_GIRTH),
                ease.at(BodyMeasure.HIP_GIRTH),
                ease.at(BodyMeasure.UPPER_ARM_GIRTH),
                ease.at(BodyMeasure.WRIST_GIRTH),
                ease.at(BodyMeasure.NECK_BASE_GIRTH),
                ease.at(BodyMeasure.NAPE_TO_ARMPIT));
    }

    /** Returns the category by which this ease goes, after its amount at the bust. */
    EaseCategory category() {
        return EaseCategory.of(bust);
    }

    /**
     * Returns this ease if it can be worn by a body in a cloth.
     *
     * <p>Where the garment is smaller than the body, the cloth has to stretch over it: by -ease / (girth + ease) of the
     * garment's own girth.
     *
     * @throws PatternException if a girth has less ease than nothing and the garment is not {@link
     *     EaseCategory#VERY_CLOSE}, or lacks more than a tenth of the body's girth, or more than the cloth stretches
     */
    TopAmounts check(BodyMeasurements body, Cloth cloth) {
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(cloth, "cloth");
        checkGirth(BodyMeasure.BUST_GIRTH, bust, body, cloth);
        checkGirth(BodyMeasure.WAIST_GIRTH, waist, body, cloth);
        checkGirth(BodyMeasure.HIP_GIRTH, hip, body, cloth);
        checkGirth(BodyMeasure.UPPER_ARM_GIRTH, upperArm, body, cloth);
        checkGirth(BodyMeasure.WRIST_GIRTH, wrist, body, cloth);
        return this;
    }

    private void checkGirth(BodyMeasure measure, Length ease, BodyMeasurements body, Cloth cloth) {
        if (ease.mm() >= 0) {
            return;
        }
        String thing = "ease at the " + measure.label() + " of '" + body.name() + "'";
        if (category() != EaseCategory.VERY_CLOSE) {
            throw PatternException.of(
                    thing,
                    "must not be negative in a " + category().label() + " garment",
                    ease.text(),
                    "give 0 mm or more, or make the garment very close: at most 0 mm at the bust");
        }
        double girth = body.measure(measure).mm();
        Length least = Length.mm(-MOST_NEGATIVE * girth);
        if (ease.compareTo(least) < 0) {
            throw PatternException.of(
                    thing,
                    "must be no less than a tenth of the girth below it (" + least.text() + ")",
                    ease.text(),
                    "");
        }
        double needed = -ease.mm() / (girth + ease.mm());
        if (needed > cloth.stretch().fraction()) {
            throw PatternException.of(
                    thing,
                    String.format(
                            Locale.ROOT,
                            "takes a cloth that stretches by %.1f %% at least",
                            Math.ceil(needed * 1000) / 10),
                    ease.text() + " in '" + cloth.description() + "', which stretches by "
                            + cloth.stretch().text(),
                    String.format(
                            Locale.ROOT,
                            "give %.1f mm or more, or take a cloth with more stretch",
                            -girth
                                    * cloth.stretch().fraction()
                                    / (1 + cloth.stretch().fraction())));
        }
    }

    private static void within(String where, Length amount, double leastMm, double greatestMm) {
        if (amount.mm() < leastMm || amount.mm() > greatestMm) {
            throw PatternException.of(
                    where + " ease",
                    String.format(Locale.ROOT, "must be %.0f to %.0f mm", leastMm, greatestMm),
                    amount.text(),
                    "");
        }
    }
}

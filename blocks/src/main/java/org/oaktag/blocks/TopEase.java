package org.oaktag.blocks;

import org.oaktag.body.BodyMeasure;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.measure.Length;

/**
 * The ease of knit tops: over bust, waist, hip, upper arm and wrist girth, over the neck base girth for the neckline,
 * and over the drop from nape to armpit for the depth of the armhole.
 *
 * <pre>{@code
 * Ease standard = TopEase.standard();
 * standard.at(BodyMeasure.BUST_GIRTH).text();   // = 80.0 mm
 * TopEase.category(standard);                   // = STANDARD
 * }</pre>
 *
 * <p>The amounts of the five categories are common practice: those at the bust lie in the category's band, the rest go
 * with them. Ranges: -170 to 600 mm at bust, waist and hip, -60 to 300 at the upper arm, -30 to 200 at the wrist, -20
 * to 150 at the neckline, 0 to 200 for the depth; the draft refuses another, and one that cannot be worn in its cloth.
 */
public final class TopEase {

    private TopEase() {}

    /** Returns the ease of a top that is neither close nor loose: 80 mm at the bust. */
    public static Ease standard() {
        return of(EaseCategory.STANDARD);
    }

    /** Returns the ease that goes with a category. */
    public static Ease of(EaseCategory category) {
        return switch (category) {
            case VERY_CLOSE -> inMm(0, 0, 0, 0, 10, 0, 30);
            case CLOSE -> inMm(40, 40, 30, 25, 30, 5, 45);
            case STANDARD -> inMm(80, 80, 60, 50, 50, 10, 57);
            case LOOSE -> inMm(120, 120, 100, 80, 70, 15, 70);
            case OVERSIZED -> inMm(200, 200, 180, 120, 90, 20, 80);
        };
    }

    /** Returns the category by which an ease goes, after its amount at the bust. */
    public static EaseCategory category(Ease ease) {
        return EaseCategory.of(ease.at(BodyMeasure.BUST_GIRTH));
    }

    private static Ease inMm(
            double bust, double waist, double hip, double upperArm, double wrist, double neckline, double scyeDepth) {
        return Ease.none()
                .with(BodyMeasure.BUST_GIRTH, Length.mm(bust))
                .with(BodyMeasure.WAIST_GIRTH, Length.mm(waist))
                .with(BodyMeasure.HIP_GIRTH, Length.mm(hip))
                .with(BodyMeasure.UPPER_ARM_GIRTH, Length.mm(upperArm))
                .with(BodyMeasure.WRIST_GIRTH, Length.mm(wrist))
                .with(BodyMeasure.NECK_BASE_GIRTH, Length.mm(neckline))
                .with(BodyMeasure.NAPE_TO_ARMPIT, Length.mm(scyeDepth));
    }
}

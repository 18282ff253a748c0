package org.oaktag.laws.published;

import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import java.util.function.ToDoubleFunction;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.body.StandardSize;
import org.oaktag.measure.Length;

/**
 * A figure that somebody published, the measure of the block that stands beside it, and the band in which that must
 * lie. A band is as wide as two sources differ, as the source rounds, or as the measure spreads among the people of a
 * survey; each says which. All in millimetres but where said.
 */
enum PublishedFigure {

    /**
     * Rosenfeld, The Practical Designer (1911), chest 36 in: half the back is 7 1/4 to 7 1/2 in broad. Beside the women
     * of 1988, whose mean chest that nearly is.
     */
    ROSENFELDS_HALF_BACK(
            Drafted::halfBack,
            Survey1988.WOMEN.body(),
            EaseCategory.VERY_CLOSE,
            Band.between(inches(7.25), inches(7.5))),

    /** Rosenfeld (1911), chest 36 in: shoulder 6 in. The band is the standard deviation of 1988. */
    ROSENFELDS_SHOULDER(
            Drafted::shoulder,
            Survey1988.WOMEN.body(),
            EaseCategory.VERY_CLOSE,
            Band.around(inches(6), Survey1988.WOMEN.shoulder().sd())),

    /** Rosenfeld (1911), chest 36 in: the back neck rises 1 in. He writes eighths of an inch. */
    ROSENFELDS_BACK_NECK_RISE(
            Drafted::backNeckRise,
            chestOf(inches(36)),
            EaseCategory.STANDARD,
            Band.around(inches(1), inches(0.125).mm())),

    /**
     * Rosenfeld (1911), chest 36 in: 15 1/2 in from nape to waist. The natural waist of the women of 1988 is higher,
     * 367.3 mm down the back (Gordon et al., NATICK/TR-89/044): the block's lies between.
     */
    ROSENFELDS_NAPE_TO_WAIST(
            Drafted::napeToWaist, chestOf(inches(36)), EaseCategory.STANDARD, Band.between(mm(367.3), inches(15.5))),

    /** Baldt, Clothing for Women (1916): front neck half-width N/6 + 3/8 in. She writes eighths of an inch. */
    BALDTS_FRONT_NECK_WIDTH(
            Drafted::frontNeckHalfWidth,
            neckOf(inches(15)),
            EaseCategory.STANDARD,
            Band.around(inches(15 / 6.0 + 0.375), inches(0.125).mm())),

    /**
     * Baldt (1916): front neck depth N/6. Burton, School Sewing (1916): N/4 - 1 in. Both go round the neck without
     * ease, as a very close neckline does.
     */
    BALDTS_AND_BURTONS_FRONT_NECK_DEPTH(
            Drafted::frontNeckDepth,
            neckOf(inches(15)),
            EaseCategory.VERY_CLOSE,
            Band.between(inches(15 / 6.0), inches(15 / 4.0 - 1))),

    /** Baldt (1916): the back neck rises 3/4 in. Rosenfeld (1911): 1 in. */
    BALDTS_AND_ROSENFELDS_BACK_NECK_RISE(
            Drafted::backNeckRise, neckOf(inches(15)), EaseCategory.STANDARD, Band.between(inches(0.75), inches(1))),

    /**
     * The Japanese block of 2000, from memory: back neck half-width B/24 + 3.6 cm. The band is how far that spreads
     * from a fifth of the neck over the women of NATICK/TR-15/007: 3.1 mm.
     */
    JAPANESE_BACK_NECK_WIDTH(
            Drafted::backNeckHalfWidth, bustOf83(), EaseCategory.STANDARD, Band.around(cm(83 / 24.0 + 3.6), 3.1)),

    /** The Japanese block of 2000, from memory: the shoulders fall by 18 degrees behind and 22 in front. In degrees. */
    JAPANESE_SHOULDER_SLOPES(Drafted::shoulderSlope, bustOf83(), EaseCategory.STANDARD, new Band(18, 22)),

    /**
     * The scye lies B/12 + 13.7 cm below the nape on one block, B/6 + 7.5 cm on another: Peng, "Research on the Three
     * Famous Pattern Blocks in China", AEBMR 21 (2017), as quoted elsewhere.
     */
    SCYE_DEPTHS_OF_BLOCKS_IN_USE(
            Drafted::scyeDepth,
            bustOf83(),
            EaseCategory.STANDARD,
            Band.between(cm(83 / 12.0 + 13.7), cm(83 / 6.0 + 7.5))),

    /** Scye depth of women near 88 cm: about a chest/8 + 10 cm (common practice); about is half a centimetre. */
    TODAYS_SCYE_DEPTH(Drafted::scyeDepth, chestOf(cm(88)), EaseCategory.STANDARD, Band.around(cm(88 / 8.0 + 10), 5)),

    /**
     * The across back that is derived from chest and height, beside the Interscye II of the women of 1988: within its
     * standard deviation.
     */
    ACROSS_BACK_DERIVED(
            top -> 2 * top.halfBack(),
            Survey1988.WOMEN.chestAndHeight(),
            EaseCategory.VERY_CLOSE,
            Survey1988.WOMEN.interscyeII().band()),

    /**
     * The scye girth of the women of 1988, with everything but chest and height derived: within its standard deviation.
     */
    SCYE_GIRTH_DERIVED(
            Drafted::armhole,
            Survey1988.WOMEN.chestAndHeight(),
            EaseCategory.VERY_CLOSE,
            Survey1988.WOMEN.scyeGirth().band()),

    /** The scye depth of the women of 1988, likewise. */
    SCYE_DEPTH_OF_WOMEN_DERIVED(
            Drafted::scyeDepth,
            Survey1988.WOMEN.chestAndHeight(),
            EaseCategory.VERY_CLOSE,
            Survey1988.WOMEN.scyeDepth().band()),

    /** The scye depth of the men of 1988, likewise. */
    SCYE_DEPTH_OF_MEN_DERIVED(
            Drafted::scyeDepth,
            Survey1988.MEN.chestAndHeight(),
            EaseCategory.VERY_CLOSE,
            Survey1988.MEN.scyeDepth().band()),

    /** Rosenfeld, The Practical Designer (1918), lesson 68: a one-piece sleeve's cap is an eighth of the size high. */
    ROSENFELDS_CAP_HEIGHT(
            Drafted::capHeight,
            Survey1988.WOMEN.body(),
            EaseCategory.STANDARD,
            Band.around(mm(907.1 / 8), inches(0.25).mm())),

    /** The cap of a casual shirt is 0.6 to 0.7 of the depth of its armhole (common practice). A share. */
    CASUAL_CAP_SHARE_OF_WOMEN(Drafted::capShare, Survey1988.WOMEN.body(), EaseCategory.STANDARD, new Band(0.6, 0.7)),

    /** The same for the men. A share. */
    CASUAL_CAP_SHARE_OF_MEN(Drafted::capShare, Survey1988.MEN.body(), EaseCategory.STANDARD, new Band(0.6, 0.7)),

    /**
     * How far the back armhole stays off the corner below its pitch: 2.25 to 2.5 cm in the middle sizes of a British
     * block, from memory.
     */
    BRITISH_ARMHOLE_HOLLOW(
            Drafted::backHollow, Survey1988.WOMEN.body(), EaseCategory.STANDARD, Band.between(cm(2.25), cm(2.5))),

    /** The front notch of a woman's armhole lies 6 to 8 cm up along the seam (common practice). */
    FRONT_NOTCH(Drafted::frontNotch, Survey1988.WOMEN.body(), EaseCategory.STANDARD, Band.between(cm(6), cm(8))),

    /** The back notch of a woman's armhole lies 7.5 to 9 cm up along the seam (common practice). */
    BACK_NOTCH(Drafted::backNotch, Survey1988.WOMEN.body(), EaseCategory.STANDARD, Band.between(cm(7.5), cm(9)));

    @SuppressWarnings("ImmutableEnumChecker") // a function without state
    private final ToDoubleFunction<Drafted> measure;

    @SuppressWarnings("ImmutableEnumChecker") // a record of immutable values
    private final BodyMeasurements body;

    private final EaseCategory category;

    @SuppressWarnings("ImmutableEnumChecker") // a record of two numbers
    private final Band band;

    PublishedFigure(ToDoubleFunction<Drafted> measure, BodyMeasurements body, EaseCategory category, Band band) {
        this.measure = measure;
        this.body = body;
        this.category = category;
        this.band = band;
    }

    /** The least and the greatest that the source lets pass. */
    record Band(double least, double most) {

        static Band between(Length least, Length most) {
            return new Band(least.mm(), most.mm());
        }

        static Band around(Length middle, double either) {
            return new Band(middle.mm() - either, middle.mm() + either);
        }
    }

    double ofTheBlock() {
        return measure.applyAsDouble(Drafted.top(body, category));
    }

    Band band() {
        return band;
    }

    private static BodyMeasurements chestOf(Length chest) {
        return BodyMeasurements.builder()
                .name("chest " + chest.text())
                .figure(Figure.WOMAN)
                .bustGirth(chest)
                .height(mm(1630))
                .build();
    }

    private static BodyMeasurements neckOf(Length neck) {
        return chestOf(inches(36)).toBuilder().neckBaseGirth(neck).build();
    }

    /** JIS L 4005, size 9AR: bust 83, hip 91, height 158 cm. */
    private static BodyMeasurements bustOf83() {
        return StandardSize.JIS_L_4005_9AR.builder().build();
    }
}

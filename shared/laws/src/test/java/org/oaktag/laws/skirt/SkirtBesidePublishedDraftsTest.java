package org.oaktag.laws.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.laws.skirt.StraightSkirtLawsTest.body;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.skirt.SkirtChecks;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.SkirtLength;
import org.oaktag.skirt.SkirtNames;
import org.oaktag.skirt.StraightSkirt;
import org.oaktag.skirt.Stride;
import org.oaktag.testkit.lines.LineTable;

/** The skirt beside drafts that were published, and beside the means of two body surveys. */
class SkirtBesidePublishedDraftsTest {

    private static final Cloth WOVEN = Cloth.woven("tweed, moss");

    /**
     * The mean woman of the 1988 US Army survey (Gordon et al., NATICK/TR-89/044): natural waist 725.5, hip 966.9 mm,
     * the one 218 mm above the other.
     */
    private static final BodyMeasurements MEAN_WOMAN = body(725.5, 966.9, 218, 1629);

    private static Garment skirt(BodyMeasurements body) {
        return StraightSkirt.BLOCK.draft(body, SkirtEase.standard(), WOVEN);
    }

    static List<BodyMeasurements> adults() {
        return LineTable.adults(30);
    }

    /** WikiEducator, "Handout for drafting skirt block": the half back is wider than the half front by 1.5 cm. */
    @Test
    void the_back_is_15_mm_wider_at_the_hip_than_the_front() {
        Garment skirt = skirt(MEAN_WOMAN);
        assertThat(hip(skirt.piece(SkirtNames.BACK)) - hip(skirt.piece(SkirtNames.FRONT)))
                .isCloseTo(15, within(1e-9));
        // For H 96.69 cm the handout has 26.17 and 24.67 cm with 5 cm of ease; the standard ease here is 5.5 cm.
        assertThat(hip(skirt.piece(SkirtNames.BACK))).isCloseTo(261.7 + 5.0 / 4, within(0.3));
        assertThat(hip(skirt.piece(SkirtNames.FRONT))).isCloseTo(246.7 + 5.0 / 4, within(0.3));
    }

    private static double hip(Piece half) {
        return half.path(EdgeNames.SIDE).end().x();
    }

    /**
     * Central Washington University, costume text, ch. 16: 1/2 to 3/4 in at the waist of a skirt, 2 to 2 3/4 in at the
     * hip.
     */
    @Test
    void the_standard_ease_is_that_of_a_teaching_text() {
        assertThat(SkirtEase.standard().at(BodyMeasure.WAIST_GIRTH)).isBetween(inches(0.5), inches(0.75));
        assertThat(SkirtEase.standard().at(BodyMeasure.HIP_GIRTH)).isBetween(inches(2), inches(2.75));
    }

    /**
     * Of the difference of hip and waist the side takes seven tenths in the handout of WikiEducator, 54 % in a British
     * textbook (from memory), a third in a Japanese basic (from memory).
     */
    @ParameterizedTest
    @MethodSource("adults")
    void the_side_takes_a_share_between_those_of_three_drafts(BodyMeasurements body) {
        Garment skirt = skirt(body);
        double all = skirt.finished(SkirtNames.HIP_GIRTH)
                        .minus(skirt.finished(SkirtNames.WAIST_GIRTH))
                        .mm()
                / 4;
        Piece back = skirt.piece(SkirtNames.BACK);
        double side = hip(back) - back.path(EdgeNames.SIDE).start().x();
        if (all > 15) {
            assertThat(side / all).isBetween(1.0 / 3, 0.70);
        }
    }

    /** Li Lisha and Guo Sida, Design of women's wear: one dart is at most 3.5 cm wide. */
    @ParameterizedTest
    @MethodSource("adults")
    void no_dart_is_wider_than_35_mm(BodyMeasurements body) {
        assertThat(skirt(body).pieces().stream().flatMap(half -> Dart.all(half).stream()))
                .allMatch(dart -> dart.width().mm() <= 35);
    }

    /**
     * Front darts 8 to 10 cm, back darts 11 to 14 cm (common practice; 10 and 12 cm in the handout of WikiEducator).
     */
    @Test
    void the_darts_of_the_mean_woman_are_as_deep_as_is_usual() {
        Garment skirt = skirt(MEAN_WOMAN);
        assertThat(Dart.all(skirt.piece(SkirtNames.FRONT)))
                .hasSize(1)
                .allSatisfy(dart -> assertThat(depth(dart)).isBetween(80.0, 100.5));
        assertThat(Dart.all(skirt.piece(SkirtNames.BACK)))
                .hasSize(2)
                .allSatisfy(dart -> assertThat(depth(dart)).isBetween(110.0, 140.0));
    }

    private static double depth(Dart dart) {
        return dart.mouthA().midpoint(dart.mouthB()).distanceTo(dart.apex());
    }

    /**
     * The darts of the handout, 2 cm wide and 12 and 10 cm deep, have half angles of 4.76 and 5.71 degrees; the widest
     * there may be, 3.5 cm by 14, has 7.13 (plain trigonometry).
     */
    @ParameterizedTest
    @MethodSource("adults")
    void a_dart_is_about_as_blunt_as_those_of_published_drafts(BodyMeasurements body) {
        assertThat(skirt(body).pieces().stream().flatMap(half -> Dart.all(half).stream()))
                .allSatisfy(dart -> assertThat(dart.angle().degrees() / 2).isBetween(2.0, 9.0));
    }

    /**
     * The back has the greater part of the darts: two of 2 cm beside one of 2 cm in a British textbook, two thirds
     * (from memory), as much as the front in the handout of WikiEducator.
     */
    @ParameterizedTest
    @MethodSource("adults")
    void the_back_has_half_to_two_thirds_of_the_darts_or_all_where_they_are_small(BodyMeasurements body) {
        Garment skirt = skirt(body);
        double front = taken(skirt.piece(SkirtNames.FRONT));
        double back = taken(skirt.piece(SkirtNames.BACK));
        if (front > 0) {
            assertThat(back / (front + back)).isBetween(0.5, 0.67);
        } else {
            assertThat(back).isLessThan(22);
        }
    }

    private static double taken(Piece half) {
        return Dart.all(half).stream().mapToDouble(dart -> dart.width().mm()).sum();
    }

    /** The side is raised 1 cm in the handout of WikiEducator, 1.25 in a British textbook (from memory). */
    @Test
    void the_waist_of_the_mean_woman_is_raised_at_the_side_by_10_to_12_5_mm() {
        Piece front = skirt(MEAN_WOMAN).piece(SkirtNames.FRONT);
        assertThat(-front.path(EdgeNames.SIDE).start().y()).isBetween(10.0, 12.5);
    }

    /**
     * Rosenfeld, The Practical Designer, 1911, lesson 73: a skirt of 41 in at the front has a side of 43 in; lesson 84,
     * of a stout body, 44 and 40, so it may be either. Here the side is longer by its raise and its curve.
     */
    @Test
    void the_side_of_the_mean_woman_is_longer_than_her_front_but_by_less_than_two_inches() {
        Garment skirt = skirt(MEAN_WOMAN);
        assertThat(skirt.finished(SkirtNames.SIDE_LENGTH).minus(skirt.finished(SkirtNames.LENGTH)))
                .isBetween(mm(10), inches(2));
    }

    /**
     * The waist of the mean woman of 1988 is 1056.5 mm high, the middle of her knee 450 (2012 survey): 606.5 mm apart.
     */
    @Test
    void a_skirt_to_the_knee_hangs_from_the_waist_to_the_knee_of_the_survey() {
        assertThat(skirt(MEAN_WOMAN).finished(SkirtNames.LENGTH).mm()).isCloseTo(606.5, within(2.0));
    }

    /**
     * The girths that a full step needs, computed from the means of the 2012 survey with the measured girths of the
     * legs and trochanter heights: women and men, 7 cm above the middle of the knee, there, at the calf and at the
     * ankle.
     */
    @ParameterizedTest
    @CsvSource({
        "1629, 1021, 520,  976",
        "1629, 1021, 450, 1013",
        "1629, 1021, 310, 1205",
        "1756, 1024, 555, 1017",
        "1756, 1024, 485, 1060",
        "1756, 1024, 333, 1259",
    })
    void a_step_needs_what_the_surveyed_legs_need(double height, double hip, double level, double needed) {
        assertThat(Stride.of(mm(height), mm(hip)).girthAt(mm(level)).mm()).isCloseTo(needed, within(0.04 * needed));
    }

    /** A straight skirt of hip 1021 + 50 mm frees a full step down to about 41 cm above the floor (2012 survey). */
    @Test
    void a_straight_skirt_frees_a_full_step_down_to_just_below_the_knee() {
        Stride stride = Stride.of(mm(1629), mm(1021));
        assertThat(stride.freeFrom(mm(838), mm(1071), mm(100), mm(1071)).mm()).isCloseTo(410, within(15.0));
    }

    /** Common practice: a straight skirt to the knee is walked in, one to the calf needs a vent. */
    @Test
    void a_longer_skirt_asks_for_a_vent_and_says_from_where() {
        assertThat(stride(SkirtLength.KNEE).isCaution()).isFalse();
        Fit midi = stride(SkirtLength.MIDI);
        assertThat(midi.verdict()).isEqualTo(Fit.Verdict.STRAINS);
        assertThat(midi.text()).contains("a vent or pleat must open from");
        assertThat(stride(SkirtLength.MAXI).isCaution()).isTrue();
    }

    private static Fit stride(SkirtLength length) {
        return new StraightSkirt(length)
                .draft(MEAN_WOMAN, SkirtEase.standard(), WOVEN).fit().stream()
                        .filter(fit -> fit.check().equals(SkirtChecks.STRIDE))
                        .findFirst()
                        .orElseThrow();
    }

    /**
     * Baldt, Clothing for Women, 1916, and Conover, A Complete Course in Dressmaking, 1921: the hip lies 5 to 7 in
     * below the waist, which is the high hip; the fullest seat of the mean women of 1988 lies 218 mm below it, and so
     * does the notch.
     */
    @Test
    void the_notch_of_the_hip_lies_at_the_fullest_seat() {
        Piece front = skirt(MEAN_WOMAN).piece(SkirtNames.FRONT);
        assertThat(front.pointOf(front.notch(EdgeNames.SIDE, SkirtNames.HIP_NOTCH)
                                .orElseThrow())
                        .y())
                .isCloseTo(218, within(1e-6));
    }

    /**
     * Gupta and Zakaria, Anthropometry, Apparel Sizing and Design: the ease of a waist is about half a size's interval.
     */
    @Test
    void the_ease_of_the_waist_is_less_than_half_the_step_of_a_size() {
        assertThat(SkirtEase.standard().at(BodyMeasure.WAIST_GIRTH)).isBetween(mm(10), mm(20));
    }
}

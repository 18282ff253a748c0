package org.oaktag.laws.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.body.SizeRange;
import org.oaktag.body.StandardSize;

class PublishedDraftsTest {

    /** The definition of the tape alone moves a scye girth by about 9 % (1988 against other surveys). */
    private static final double TAPE = 0.09;

    /**
     * Gordon et al., NATICK/TR-89/044: scye girth of women 371.3 (23.0), of men 445.5 (27.1) mm. The tape lies on the
     * body, as a very close top does.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void the_armhole_of_a_very_close_top_is_the_scye_of_its_body(Survey1988 survey) {
        assertThat(Drafted.top(survey.body(), EaseCategory.VERY_CLOSE).armhole())
                .isCloseTo(survey.scyeGirth().mm(), within(survey.scyeGirth().sd()));
    }

    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void the_armhole_of_a_standard_top_goes_round_the_scye_and_no_more_than_a_size_beyond(Survey1988 survey) {
        assertThat(Drafted.top(survey.body(), EaseCategory.STANDARD).armhole())
                .isBetween(
                        survey.scyeGirth().mm(),
                        survey.scyeGirth().mm() * (1 + TAPE)
                                + survey.scyeGirth().sd());
    }

    /** Gordon et al., NATICK/TR-89/044: scye depth of women 185.7 (14.4), of men 212.7 (15.5) mm. */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void the_depth_of_a_very_close_scye_is_that_of_its_body_and_a_closes_is_deeper(Survey1988 survey) {
        double body = survey.scyeDepth().mm();
        assertThat(Drafted.top(survey.body(), EaseCategory.VERY_CLOSE).scyeDepth())
                .isCloseTo(body, within(survey.scyeDepth().sd()));
        assertThat(Drafted.top(survey.body(), EaseCategory.CLOSE).scyeDepth()).isGreaterThan(body);
    }

    /**
     * Rosenfeld, The Practical Designer (1911), chest 36 in: scye depth 7 in, back neck half-width chest/12 = 3 in. His
     * depth is that of a body: it is within a standard deviation of that of the women of 1988.
     */
    @Test
    void scye_depth_and_back_neck_of_a_chest_of_36_inches_are_near_rosenfelds() {
        Drafted top = Drafted.top(woman(36), EaseCategory.VERY_CLOSE);
        assertThat(top.scyeDepth())
                .isCloseTo(inches(7).mm(), within(Survey1988.WOMEN.scyeDepth().sd()));
        assertThat(top.backNeckHalfWidth())
                .isCloseTo(inches(3).mm(), within(inches(0.25).mm()));
    }

    /**
     * Baldt, Clothing for Women (1916): back neck half-width N/6, 2 1/2 in for a neck of 15. Vincent, The Cutter's
     * Practical Guide: N/6 + 1/4 in. N there goes round the neck, here round its base, which is larger.
     */
    @Test
    void the_back_neck_is_between_vincents_and_half_an_inch_wider() {
        Drafted top = Drafted.top(withNeckOf15Inches(), EaseCategory.STANDARD);
        double vincent = inches(15.0 / 6 + 0.25).mm();
        assertThat(top.backNeckHalfWidth())
                .isBetween(vincent, vincent + inches(0.5).mm());
    }

    /**
     * Baldt (1916): front neck depth N/6 = 2 1/2 in for a neck of 15. Burton, School Sewing (1916): N/4 - 1 in = 2 3/4
     * in. Common practice today: back neck half-width + 10 mm.
     */
    @Test
    void the_front_neck_is_deeper_than_the_old_books_and_no_deeper_than_todays_practice() {
        Drafted top = Drafted.top(withNeckOf15Inches(), EaseCategory.STANDARD);
        assertThat(top.frontNeckDepth()).isBetween(inches(2.75).mm(), top.backNeckHalfWidth() + 10);
    }

    /** Baldt (1916): the shoulder seam meets the neck a third of the half neckline from centre back. */
    @ParameterizedTest
    @EnumSource(EaseCategory.class)
    void the_back_has_a_third_of_the_neckline_or_somewhat_more_but_less_than_the_front(EaseCategory category) {
        assertThat(Drafted.top(withNeckOf15Inches(), category).backShareOfNeckline())
                .isBetween(1 / 3.0, 0.45);
    }

    /** Burton, School Sewing (1916): the shoulder drops by 16.7 to 18.4 degrees, 24 if sloping. */
    @Test
    void the_shoulder_falls_as_steeply_as_burtons() {
        assertThat(Drafted.top(woman(36), EaseCategory.STANDARD).shoulderSlope())
                .isBetween(16.7, 24.0);
    }

    /**
     * Baldt (1916): a shirt sleeve's cap is a quarter of the armhole high, 4 1/2 in for 18. A fitted sleeve's is a
     * third (common practice); one set in into a knit is higher than the shirt's and nearer to it than to the fitted
     * one's.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void the_cap_of_a_standard_sleeve_is_a_quarter_of_the_armhole_high_or_somewhat_more(Survey1988 survey) {
        Drafted top = Drafted.top(survey.body(), EaseCategory.STANDARD);
        assertThat(top.capHeight() / top.armhole()).isBetween(1 / 4.0, (1 / 4.0 + 1 / 3.0) / 2);
    }

    /** JIS L 4005 size 9AR and ASTM D5585-11 misses' size 8. */
    @Test
    void the_sizes_of_standards_draft_true() {
        List.of(
                        StandardSize.JIS_L_4005_9AR.builder().build(),
                        StandardSize.ASTM_D5585_MISSES_8
                                .builder()
                                .height(cm(165))
                                .build())
                .forEach(body -> assertThat(Drafted.top(body, EaseCategory.STANDARD)
                                .block()
                                .walkSeams()
                                .isTrue())
                        .as(body.name())
                        .isTrue());
    }

    /** EN 13402-3: women's busts from 74 to 131 cm. */
    @ParameterizedTest
    @EnumSource(EaseCategory.class)
    void every_bust_of_en_13402_drafts_true(EaseCategory category) {
        assertThat(SizeRange.en13402WomensBusts(cm(168)))
                .allSatisfy(body -> assertThat(
                                Drafted.top(body, category).block().walkSeams().isTrue())
                        .as(body.name())
                        .isTrue());
    }

    /** EN 13402-3, from the size on whose chest has room for its back: see {@link #assertGrows}. */
    @ParameterizedTest
    @EnumSource(EaseCategory.class)
    void the_armhole_grows_with_the_busts_of_en_13402(EaseCategory category) {
        assertGrows(SizeRange.en13402WomensBusts(cm(168)), category, 8);
    }

    /** GB/T 1335: height by 5 cm, chest by 4 cm. */
    @ParameterizedTest
    @CsvSource({"WOMAN, 84, 160", "MAN, 88, 170"})
    void every_size_of_gb_t_1335_drafts_true_and_the_armhole_grows_with_it(Figure figure, double bust, double height) {
        BodyMeasurements middle = BodyMeasurements.builder()
                .name("middle")
                .figure(figure)
                .bustGirth(cm(bust))
                .height(cm(height))
                .build();
        assertGrows(SizeRange.GB_T_1335.around(middle, 3, 4), EaseCategory.STANDARD, 4);
    }

    /**
     * Every size drafts true. In the smallest, whose back is broad beside their chest, the chest sets the pitch points,
     * which lean the farther in below a shoulder of the same length the smaller the chest; from there on the armhole
     * grows from size to size. It gets no less deep by more than 1/16 in, what is let pass on paper (common practice):
     * the depth is also what brings the cap into its band.
     */
    private static void assertGrows(List<BodyMeasurements> sizes, EaseCategory category, int atLeast) {
        List<Drafted> tops =
                sizes.stream().map(body -> Drafted.top(body, category)).toList();
        assertThat(tops).allMatch(top -> top.block().walkSeams().isTrue());
        List<Drafted> roomy = tops.stream().filter(Drafted::hasRoomForItsBack).toList();
        assertThat(roomy)
                .hasSizeGreaterThanOrEqualTo(atLeast)
                .isEqualTo(tops.subList(tops.size() - roomy.size(), tops.size()));
        assertThat(roomy).extracting(Drafted::armhole).isSorted().doesNotHaveDuplicates();
        for (int i = 1; i < roomy.size(); i++) {
            assertThat(roomy.get(i).scyeDepth())
                    .isGreaterThan(
                            roomy.get(i - 1).scyeDepth() - inches(1 / 16.0).mm());
        }
    }

    private static BodyMeasurements withNeckOf15Inches() {
        return woman(36).toBuilder().neckBaseGirth(inches(15)).build();
    }

    private static BodyMeasurements woman(double bustInches) {
        return BodyMeasurements.builder()
                .name("chest " + bustInches)
                .figure(Figure.WOMAN)
                .bustGirth(inches(bustInches))
                .height(mm(1630))
                .build();
    }
}

package org.oaktag.laws.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.inches;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.testkit.bodies.SurveyMeasure;

/**
 * The block beside drafts that were published and beside the means of two body surveys.
 *
 * <p>Bodies and not drafts are what a very close block is held to, as it adds nothing to them. The across back of the
 * men of 1988 is no check here: the rule from the survey of 2012 makes it 29 mm broader on a man of their chest and
 * height.
 */
class BlockBesidePublishedDraftsTest {

    @ParameterizedTest
    @EnumSource
    void the_block_lies_where_others_published_that_it_does(PublishedFigure figure) {
        assertThat(figure.ofTheBlock())
                .isBetween(figure.band().least(), figure.band().most());
    }

    /** Gordon et al., NATICK/TR-15/007: the mean Interscye II of women is 395.7, of men 450.2 mm. */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Surveyed2012#both")
    void a_very_close_back_is_as_broad_as_the_mean_body_of_2012(Surveyed2012 survey) {
        assertThat(2 * Drafted.top(survey.body(), EaseCategory.VERY_CLOSE).halfBack())
                .isCloseTo(survey.mean(SurveyMeasure.INTERSCYE_II), within(1e-6));
    }

    /**
     * A knit shoulder is drawn up to 20 mm beyond the bone (common practice). Gordon et al., NATICK/TR-15/007: shoulder
     * length of women 135.4, of men 149.8 mm.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Surveyed2012#both")
    void a_close_shoulder_ends_at_the_bone_or_a_little_beyond(Surveyed2012 survey) {
        double bone = survey.mean(SurveyMeasure.SHOULDER_LENGTH);
        assertThat(Drafted.top(survey.body(), EaseCategory.CLOSE).shoulder()).isBetween(bone, bone + 20);
    }

    /**
     * Over 1,000 men's suit blocks (Gupta and Zakaria, Anthropometry, Apparel Sizing and Design, 2014): of the ease at
     * the bust the back has 17 to 42 %, the armhole 14 to 60 %. Usual teaching (common practice): back 25 to 30, front
     * 15 to 25, armhole 45 to 60 %.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void the_ease_is_shared_as_it_is_taught(Survey1988 survey) {
        Drafted body = Drafted.top(survey.body(), EaseCategory.VERY_CLOSE);
        Drafted loose = Drafted.top(survey.body(), EaseCategory.LOOSE);
        double half = TopEase.of(EaseCategory.LOOSE).at(BodyMeasure.BUST_GIRTH).mm() / 2;
        assertThat((loose.halfBack() - body.halfBack()) / half).isBetween(0.25, 0.30);
        assertThat((loose.halfFront() - body.halfFront()) / half).isBetween(0.15, 0.25);
        assertThat((loose.armholeWidth() - body.armholeWidth()) / half).isBetween(0.45, 0.60);
    }

    /**
     * The back is broader than the front by 1 cm on each side in a British block (34.4 and 32.4 cm at a bust of 88) and
     * by 1.2 cm in the Japanese one of 2000 (B/8 + 7.4 and B/8 + 6.2 cm), both from memory. The latter has 12 cm of
     * ease, as a loose knit.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void across_front_is_as_much_less_than_across_back_as_in_two_drafts(Survey1988 survey) {
        Drafted top = Drafted.top(survey.body(), EaseCategory.LOOSE);
        assertThat(top.halfBack() - top.halfFront()).isBetween(10.0, 12.0);
    }

    /**
     * An armhole is as wide as the arm that goes through it, its upper arm girth over pi; the Japanese block of 2000
     * makes it B/4 - 7.6 cm, from memory, which is known to be wide. That has 12 cm of ease, as a loose knit. Gordon et
     * al., NATICK/TR-15/007: upper arm girth of women 305.6, of men 358.1 mm.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Surveyed2012#both")
    void a_loose_armhole_is_as_wide_as_the_arm_and_no_wider_than_a_wide_drafts(Surveyed2012 survey) {
        double arm = survey.mean(SurveyMeasure.BICEPS_CIRCUMFERENCE_FLEXED) / Math.PI;
        double wide = survey.mean(SurveyMeasure.CHEST_CIRCUMFERENCE) / 4 - 76;
        assertThat(Drafted.top(survey.body(), EaseCategory.LOOSE).armholeWidth())
                .isBetween(arm, wide);
    }

    /**
     * A sleeve of a woven is at least 2 in wider than the upper arm (the magazine Threads); a loose knit's is as well.
     */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Surveyed2012#both")
    void a_loose_sleeve_is_two_inches_wider_than_the_arm(Surveyed2012 survey) {
        BodyMeasurements body = survey.body();
        assertThat(Drafted.top(body, EaseCategory.LOOSE).sleeveWidth())
                .isGreaterThan(body.upperArmGirth().mm() + inches(2).mm());
    }
}

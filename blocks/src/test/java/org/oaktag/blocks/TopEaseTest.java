package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

class TopEaseTest {

    private static final Cloth JERSEY = Cloth.knit("jersey", percent(30));
    private static final BodyMeasurements BODY = BodyMeasurements.builder()
            .name("Nell")
            .figure(Figure.WOMAN)
            .bustGirth(cm(94))
            .height(cm(168))
            .build();

    /** Ease at the bust of knits, common practice: very close 0, close 25-50, standard 50-100, loose 100-150 mm. */
    @ParameterizedTest
    @EnumSource(EaseCategory.class)
    void the_ease_of_a_category_lies_in_its_band(EaseCategory category) {
        Ease ease = TopEase.of(category);
        TopAmounts amounts = TopAmounts.of(ease);
        assertThat(TopEase.category(ease)).isEqualTo(category).isEqualTo(amounts.category());
        assertThat(ease.at(BodyMeasure.BUST_GIRTH)).isBetween(category.least(), category.greatest());
        assertThat(amounts.check(BODY, Cloth.knit("stable", percent(0)))).isEqualTo(amounts);
    }

    @Test
    void a_looser_category_is_looser_everywhere() {
        assertThat(TopEase.standard().amounts()).hasSize(7);
        for (BodyMeasure measure : TopEase.standard().amounts().keySet()) {
            assertThat(Arrays.stream(EaseCategory.values()).map(TopEase::of).map(ease -> ease.at(measure)))
                    .isSorted()
                    .doesNotHaveDuplicates();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "-94, VERY_CLOSE",
        "0, VERY_CLOSE",
        "0.1, CLOSE",
        "50, CLOSE",
        "50.1, STANDARD",
        "100, STANDARD",
        "150, LOOSE",
        "150.1, OVERSIZED",
        "700, OVERSIZED"
    })
    void the_category_follows_the_bust(double mm, EaseCategory category) {
        assertThat(EaseCategory.of(mm(mm))).isEqualTo(category);
    }

    @Test
    void one_amount_is_replaced_at_a_time() {
        Ease ease = TopEase.standard().with(BodyMeasure.WRIST_GIRTH, mm(5));
        assertThat(ease.at(BodyMeasure.WRIST_GIRTH)).isEqualTo(mm(5));
        assertThat(ease.with(BodyMeasure.WRIST_GIRTH, mm(50))).isEqualTo(TopEase.standard());
        assertThat(TopAmounts.of(ease)).isEqualTo(with("wrist", mm(5)));
    }

    @Test
    void an_ease_at_a_measure_that_a_top_does_not_know_is_refused() {
        assertThatThrownBy(() -> TopAmounts.of(TopEase.standard().with(BodyMeasure.HEAD_GIRTH, mm(10))))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "ease at the head girth: a knit top has ease at bust girth, waist girth, hip girth, neck base"
                                + " girth, upper arm girth, wrist girth, nape to armpit; got 10.0 mm; leave it out");
    }

    @ParameterizedTest
    @CsvSource({
        "bust, -170, 600",
        "waist, -170, 600",
        "hip, -170, 600",
        "upper arm, -60, 300",
        "wrist, -30, 200",
        "neckline, -20, 150",
        "scye depth, 0, 200"
    })
    void an_amount_out_of_its_range_is_refused(String where, double least, double greatest) {
        assertThat(List.of(with(where, mm(least)), with(where, mm(greatest)))).doesNotHaveDuplicates();
        for (double beyond : List.of(least - 0.5, greatest + 0.5)) {
            assertThatThrownBy(() -> with(where, mm(beyond)))
                    .isInstanceOf(PatternException.class)
                    .hasMessage(
                            "%s ease: must be %.0f to %.0f mm; got %s",
                            where, least, greatest, mm(beyond).text());
        }
    }

    private static TopAmounts with(String where, Length amount) {
        BodyMeasure measure = switch (where) {
            case "bust" -> BodyMeasure.BUST_GIRTH;
            case "waist" -> BodyMeasure.WAIST_GIRTH;
            case "hip" -> BodyMeasure.HIP_GIRTH;
            case "upper arm" -> BodyMeasure.UPPER_ARM_GIRTH;
            case "wrist" -> BodyMeasure.WRIST_GIRTH;
            case "neckline" -> BodyMeasure.NECK_BASE_GIRTH;
            case "scye depth" -> BodyMeasure.NAPE_TO_ARMPIT;
            default -> throw new IllegalArgumentException(where);
        };
        return TopAmounts.of(TopEase.standard().with(measure, amount));
    }

    private static TopAmounts veryClose(double bust) {
        return TopAmounts.of(TopEase.of(EaseCategory.VERY_CLOSE).with(BodyMeasure.BUST_GIRTH, mm(bust)));
    }

    @ParameterizedTest
    @CsvSource({"waist, waist girth", "hip, hip girth", "upper arm, upper arm girth", "wrist, wrist girth"})
    void no_girth_may_be_smaller_than_the_body_unless_the_garment_is_very_close(String where, String girth) {
        assertThatThrownBy(() -> with(where, mm(-1)).check(BODY, JERSEY))
                .isInstanceOf(PatternException.class)
                .hasMessageStartingWith("ease at the " + girth + " of 'Nell': must not be negative");
        assertThat(with(where, mm(0)).check(BODY, JERSEY)).isEqualTo(with(where, mm(0)));
    }

    @Test
    void the_refusal_of_a_negative_ease_says_what_would_do() {
        assertThatThrownBy(() -> with("upper arm", mm(-5)).check(BODY, JERSEY))
                .isInstanceOf(PatternException.class)
                .hasMessage("ease at the upper arm girth of 'Nell': must not be negative in a standard garment;"
                        + " got -5.0 mm; give 0 mm or more, or make the garment very close: at most 0 mm at the bust");
    }

    @Test
    void a_very_close_garment_lacks_a_tenth_of_the_girth_at_most() {
        assertThat(veryClose(-94).check(BODY, JERSEY).bust()).isEqualTo(mm(-94));
        assertThatThrownBy(() -> veryClose(-94.1).check(BODY, JERSEY))
                .isInstanceOf(PatternException.class)
                .hasMessage("ease at the bust girth of 'Nell': must be no less than a tenth of the girth below it"
                        + " (-94.0 mm); got -94.1 mm");
    }

    /** 94 mm less on 940 leaves 846, which must stretch by 94 / 846 = 11.1 % to go round. */
    @Test
    void a_cloth_must_stretch_as_far_as_the_garment_is_small() {
        TopAmounts close = veryClose(-94);
        assertThat(close.check(BODY, Cloth.knit("just enough", percent(11.2)))).isEqualTo(close);
        assertThatThrownBy(() -> close.check(BODY, Cloth.knit("stable knit", percent(11))))
                .isInstanceOf(PatternException.class)
                .hasMessage("ease at the bust girth of 'Nell': takes a cloth that stretches by 11.2 % at least;"
                        + " got -94.0 mm in 'stable knit', which stretches by 11.0 %;"
                        + " give -93.2 mm or more, or take a cloth with more stretch");
    }

    @Test
    void the_remedy_of_a_refusal_works() {
        TopAmounts close = veryClose(-93.1);
        assertThat(close.check(BODY, Cloth.knit("stable knit", percent(11)))).isEqualTo(close);
    }
}

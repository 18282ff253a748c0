package org.oaktag.laws.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Derived;
import org.oaktag.body.Figure;
import org.oaktag.body.StandardSize;
import org.oaktag.testkit.bodies.SurveyPopulation;

class PublishedBodiesTest {

    /** Gordon et al., NATICK/TR-89/044: another survey than the one that the rules come from. */
    @ParameterizedTest
    @MethodSource("org.oaktag.laws.published.Survey1988#both")
    void what_is_derived_for_the_mean_of_1988_lies_among_its_people(Survey1988 survey) {
        BodyMeasurements body = survey.chestAndHeight();
        assertThat(body.neckBaseGirth().mm())
                .isCloseTo(
                        survey.neckBase().mm(), within(1.25 * survey.neckBase().sd()));
        assertThat(body.shoulderLength().mm())
                .isCloseTo(survey.shoulder().mm(), within(survey.shoulder().sd()));
        assertThat(body.acrossBack().mm())
                .isCloseTo(
                        survey.interscyeII().mm(),
                        within(1.25 * survey.interscyeII().sd()));
    }

    /**
     * ASTM D5585-11, misses' size 8: bust 36 1/4 in, neck base 14 5/8 in, head 21 3/4 in; the height is a common one.
     */
    @Test
    void what_is_derived_from_the_bust_of_astm_size_8_is_near_its_table() {
        BodyMeasurements derived = BodyMeasurements.builder()
                .name("size 8")
                .figure(Figure.WOMAN)
                .bustGirth(inches(36.25))
                .height(cm(165))
                .build();
        BodyMeasurements table =
                StandardSize.ASTM_D5585_MISSES_8.builder().height(cm(165)).build();
        assertWithinItsSpread(derived, BodyMeasure.NECK_BASE_GIRTH, table);
        assertWithinItsSpread(derived, BodyMeasure.HEAD_GIRTH, table);
        // The derived waist is the one at the navel, the table's the natural one: 28 in.
        assertThat(derived.waistGirth()).isGreaterThan(table.waistGirth());
    }

    /** JIS L 4005, size 9AR: bust 83, hip 91, height 158 cm. */
    @Test
    void what_is_derived_from_the_bust_of_jis_9ar_is_near_its_table() {
        BodyMeasurements table = StandardSize.JIS_L_4005_9AR.builder().build();
        BodyMeasurements derived = BodyMeasurements.builder()
                .name("9AR")
                .figure(Figure.WOMAN)
                .bustGirth(table.bustGirth())
                .height(table.height())
                .build();
        assertWithinItsSpread(derived, BodyMeasure.HIP_GIRTH, table);
    }

    /** Rosenfeld, The Practical Designer (1911), chest 36 in: half back 7 1/4 to 7 1/2 in, shoulder 6 in. */
    @Test
    void what_is_derived_from_a_chest_of_36_inches_is_near_rosenfelds() {
        BodyMeasurements woman = BodyMeasurements.builder()
                .name("chest 36")
                .figure(Figure.WOMAN)
                .bustGirth(inches(36))
                .height(cm(163))
                .build();
        Derived back = rule(woman, BodyMeasure.ACROSS_BACK);
        assertThat(back.value().mm())
                .isCloseTo(
                        2 * inches(7.375).mm(),
                        within(back.spread().mm() + inches(0.25).mm()));
        Derived shoulder = rule(woman, BodyMeasure.SHOULDER_LENGTH);
        assertThat(shoulder.value().mm())
                .isCloseTo(inches(6).mm(), within(2 * shoulder.spread().mm()));
    }

    /** NMSU guide C-228: 3 to 4 in of ease at the bust of a woven. */
    @Test
    void standard_ease_is_what_a_woven_is_given() {
        assertThat(TopEase.standard().at(BodyMeasure.BUST_GIRTH)).isBetween(inches(3), inches(4));
    }

    /**
     * Percentiles 1, 50 and 99 of what one measure has to do with another, computed on the single people of the 2012
     * survey (Gordon et al., NATICK/TR-15/007). The people drawn are normal, the real ones lean to the large side:
     * hence the tolerances.
     */
    @ParameterizedTest
    @CsvSource({
        "WOMAN, hip less bust,                     -68, 74,    209,   12",
        "MAN,   hip less bust,                    -161, -39,    71,   12",
        "WOMAN, head over neck base,              1.34, 1.515, 1.70, 0.02",
        "MAN,   head over neck base,              1.16, 1.325, 1.49, 0.02",
        "WOMAN, shoulder point beyond across back, -27, 1,      29,    6",
        "MAN,   shoulder point beyond across back, -27, 1,      29,    6"
    })
    void the_people_drawn_are_proportioned_like_the_surveyed(
            Figure figure, String proportion, double p1, double p50, double p99, double tolerance) {
        DescriptiveStatistics drawn = new DescriptiveStatistics(SurveyPopulation.of(figure)
                .draw(11)
                .limit(10_000)
                .map(person -> person.measuredAs("drawn"))
                .mapToDouble(proportion(proportion))
                .toArray());
        assertThat(List.of(drawn.getPercentile(1), drawn.getPercentile(50), drawn.getPercentile(99)))
                .usingElementComparator((a, b) -> Math.abs(a - b) <= tolerance ? 0 : Double.compare(a, b))
                .containsExactly(p1, p50, p99);
    }

    private static ToDoubleFunction<BodyMeasurements> proportion(String words) {
        return switch (words) {
            case "hip less bust" ->
                body -> body.hipGirth().minus(body.bustGirth()).mm();
            case "head over neck base" ->
                body -> body.headGirth().mm() / body.neckBaseGirth().mm();
            // A draft with a neck half-width of N/5 - 2 mm and shoulders that fall by 20 degrees.
            case "shoulder point beyond across back" ->
                body -> body.neckBaseGirth().mm() / 5
                        - 2
                        + body.shoulderLength().mm() * Math.cos(Math.toRadians(20))
                        - body.acrossBack().mm() / 2;
            default -> throw new IllegalArgumentException(words);
        };
    }

    private static void assertWithinItsSpread(BodyMeasurements derived, BodyMeasure measure, BodyMeasurements table) {
        Derived rule = rule(derived, measure);
        assertThat(rule.value().mm())
                .as(measure.label())
                .isCloseTo(table.measure(measure).mm(), within(rule.spread().mm()));
    }

    private static Derived rule(BodyMeasurements body, BodyMeasure measure) {
        return body.derived().stream()
                .filter(rule -> rule.measure() == measure)
                .findFirst()
                .orElseThrow();
    }
}

package org.oaktag.testkit.bodies;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.List;
import org.apache.commons.math3.stat.correlation.PearsonsCorrelation;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;

/**
 * The drawn people against the published tables of the 2012 US Army survey (Gordon et al., NATICK/TR-15/007).
 *
 * <p>The tolerances are five standard errors at the number drawn, plus what throwing away the draws beyond the surveyed
 * extremes does by itself: among a million draws it moved no mean by more than 0.024 standard deviations, narrowed none
 * of these by more than 0.029 of itself and moved no correlation by more than 0.018. At 20,000 the standard error of a
 * mean is sd / 141, of a standard deviation sd / 200, of a correlation (1 - r<sup>2</sup>) / 141.
 */
class SurveyPopulationTest {

    private static final int DRAWN = 20_000;
    private static final double STANDARD_ERRORS = 5;
    private static final double TRUNCATION = 0.03;

    @ParameterizedTest
    @EnumSource(
            value = Figure.class,
            names = {"WOMAN", "MAN"})
    void the_drawn_people_have_the_surveyed_means_deviations_and_correlations(Figure figure) {
        SurveyTable table = SurveyTable.of(figure);
        List<SurveyedBody> people =
                SurveyPopulation.of(figure).draw(1).limit(DRAWN).toList();
        for (SurveyMeasure measure : SurveyMeasure.values()) {
            DescriptiveStatistics drawn = new DescriptiveStatistics(values(people, measure));
            SurveyTable.Summary surveyed = table.summary(measure);
            assertThat(drawn.getMean())
                    .as("mean %s", measure)
                    .isCloseTo(
                            surveyed.mean(), within(surveyed.sd() * (STANDARD_ERRORS / Math.sqrt(DRAWN) + TRUNCATION)));
            assertThat(drawn.getStandardDeviation())
                    .as("sd %s", measure)
                    .isCloseTo(
                            surveyed.sd(),
                            within(surveyed.sd() * (STANDARD_ERRORS / Math.sqrt(2.0 * DRAWN) + TRUNCATION)));
            assertThat(drawn.getMin()).as("least %s", measure).isGreaterThanOrEqualTo(surveyed.min());
            assertThat(drawn.getMax()).as("greatest %s", measure).isLessThanOrEqualTo(surveyed.max());
            for (SurveyMeasure other : EnumSet.complementOf(EnumSet.of(measure))) {
                double r = table.correlation(measure, other);
                assertThat(new PearsonsCorrelation().correlation(values(people, measure), values(people, other)))
                        .as("correlation of %s and %s", measure, other)
                        .isCloseTo(r, within(STANDARD_ERRORS * (1 - r * r) / Math.sqrt(DRAWN) + TRUNCATION));
            }
        }
    }

    @Test
    void the_surveyed_people_are_as_many_as_the_report_says() {
        assertThat(SurveyTable.of(Figure.WOMAN).summary(SurveyMeasure.STATURE).people())
                .isEqualTo(1986);
        assertThat(SurveyTable.of(Figure.MAN).summary(SurveyMeasure.STATURE).people())
                .isEqualTo(4082);
    }

    @Test
    void the_same_seed_draws_the_same_people_and_another_seed_others() {
        SurveyPopulation women = SurveyPopulation.of(Figure.WOMAN);
        assertThat(women.draw(7).limit(20).toList())
                .isEqualTo(SurveyPopulation.of(Figure.WOMAN).draw(7).limit(20).toList())
                .isNotEqualTo(women.draw(8).limit(20).toList());
    }

    @ParameterizedTest
    @EnumSource(
            value = Figure.class,
            names = {"WOMAN", "MAN"})
    void every_drawn_or_extreme_person_is_a_plausible_body(Figure figure) {
        SurveyPopulation population = SurveyPopulation.of(figure);
        assertThat(population.extremes()).hasSize(2 * SurveyMeasure.values().length);
        assertThat(population.extremes())
                .allSatisfy(person ->
                        assertThat(person.measuredAs("edge").isChild()).isFalse());
        assertThat(population.draw(2).limit(2_000))
                .map(person -> person.measuredAs("drawn"))
                .allSatisfy(body -> assertThat(body.derived()).hasSize(1));
    }

    @Test
    void a_body_of_the_survey_carries_its_measures_over() {
        SurveyedBody mean = SurveyPopulation.of(Figure.MAN).at(new double[SurveyPopulation.dimensions()]);
        BodyMeasurements body = mean.measuredAs("mean man");
        assertThat(body.bustGirth().mm()).isEqualTo(1058.7);
        assertThat(body.napeToArmpit().mm()).isCloseTo(1517.3 - 1329.1, within(1e-9));
        assertThat(body.armLength().mm()).isEqualTo(593.1);
        assertThat(body.acrossBack().mm()).isEqualTo(450.2);
        // 1988 men (Gordon et al., NATICK/TR-89/044): 412.0 mm down the back to the natural waist, 839.9 mm round it
        // and
        // 240 mm from it to the seat; their chests are 67 mm smaller, which counts for 8 mm of length and 65 of girth.
        assertThat(body.backWaistLength().mm()).isCloseTo(412.0 + 8, within(1.0));
        assertThat(body.waistGirth().mm()).isCloseTo(839.9 + 65, within(3.0));
        assertThat(body.waistToHip().mm()).isCloseTo(240, within(1.0));
    }

    @Test
    void the_survey_measured_no_child() {
        assertThatThrownBy(() -> SurveyPopulation.of(Figure.GIRL))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the survey measured no girl");
    }

    private static double[] values(List<SurveyedBody> people, SurveyMeasure measure) {
        return people.stream().mapToDouble(person -> person.mm(measure)).toArray();
    }
}

package org.oaktag.body;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;
import org.oaktag.testkit.bodies.SurveyPopulation;
import org.oaktag.testkit.bodies.SurveyedBody;

/** How often the question about a measure is put in vain, and how often a slip goes unasked, on generated adults. */
class DoubtsOnSurveyedBodiesTest {

    private static final int BODIES = 5_000;
    private static final long SEED = 20121988;

    private static final Set<BodyMeasure> GIRTHS = EnumSet.of(
            BodyMeasure.BUST_GIRTH,
            BodyMeasure.WAIST_GIRTH,
            BodyMeasure.HIP_GIRTH,
            BodyMeasure.NECK_BASE_GIRTH,
            BodyMeasure.UPPER_ARM_GIRTH,
            BodyMeasure.WRIST_GIRTH,
            BodyMeasure.HAND_GIRTH,
            BodyMeasure.HEAD_GIRTH);

    @Test
    void at_most_two_real_bodies_of_a_thousand_are_asked_about() {
        long asked = adults().filter(adult -> !adult.measured("adult").doubts().isEmpty())
                .count();
        assertThat(asked).isLessThanOrEqualTo(2 * BODIES * 2 / 1000);
    }

    @ParameterizedTest
    @EnumSource(BodyMeasure.class)
    void a_halved_girth_is_refused_or_asked_about(BodyMeasure measure) {
        if (GIRTHS.contains(measure)) {
            assertThat(shareNoticed(measure, length -> length.times(0.5))).isGreaterThan(0.999);
        }
    }

    /** The hand with its thumb is left out: the survey did not take it. */
    @ParameterizedTest
    @EnumSource(value = BodyMeasure.class, mode = EnumSource.Mode.EXCLUDE, names = "HAND_GIRTH_WITH_THUMB")
    void inches_in_a_column_of_centimetres_are_refused_or_asked_about(BodyMeasure measure) {
        assertThat(shareNoticed(measure, length -> length.times(1 / 2.54))).isGreaterThan(0.999);
    }

    @ParameterizedTest
    @EnumSource(value = BodyMeasure.class, mode = EnumSource.Mode.EXCLUDE, names = "HAND_GIRTH_WITH_THUMB")
    void centimetres_in_a_column_of_inches_are_refused_or_asked_about(BodyMeasure measure) {
        assertThat(shareNoticed(measure, length -> length.times(2.54))).isGreaterThan(0.999);
    }

    /** A bust that was halved and nothing else known: only the height can tell. */
    @Test
    void a_halved_bust_is_noticed_by_the_height_alone() {
        List<SurveyedBody> adults = adults().toList();
        long noticed = adults.stream()
                .map(adult -> adult.measuredAs("adult"))
                .filter(adult -> isNoticed(BodyMeasurements.builder()
                        .name("adult")
                        .figure(adult.figure())
                        .bustGirth(adult.bustGirth().times(0.5))
                        .height(adult.height())))
                .count();
        assertThat((double) noticed / adults.size()).isGreaterThan(0.99);
    }

    private static double shareNoticed(BodyMeasure measure, UnaryOperator<Length> slip) {
        List<SurveyedBody> adults = adults().toList();
        long noticed = adults.stream()
                .filter(adult -> {
                    BodyBuilder typed = adult.measured("adult");
                    Length right = adult.measuredAs("adult").measure(measure);
                    return isNoticed(typed.measure(measure, slip.apply(right)));
                })
                .count();
        return (double) noticed / adults.size();
    }

    private static boolean isNoticed(BodyBuilder typed) {
        try {
            return !typed.doubts().isEmpty();
        } catch (PatternException refused) {
            return true;
        }
    }

    private static Stream<SurveyedBody> adults() {
        return Arrays.stream(new Figure[] {Figure.WOMAN, Figure.MAN})
                .flatMap(figure -> SurveyPopulation.of(figure).draw(SEED).limit(BODIES));
    }
}

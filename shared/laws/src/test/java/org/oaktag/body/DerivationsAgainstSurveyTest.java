package org.oaktag.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.testkit.bodies.SurveyMeasure;
import org.oaktag.testkit.bodies.SurveyTable;

/**
 * The rules that derive measures, against regressions worked out anew from the published tables of the 2012 US Army
 * survey (Gordon et al., NATICK/TR-15/007).
 *
 * <p>A rule is read off the library from outside: its factors are the differences that one millimetre more of a predictor
 * makes, so the check holds whatever the library's own numbers are.
 */
class DerivationsAgainstSurveyTest {

    /** Constants of the rules are given to a tenth of a millimetre and factors to four decimals. */
    private static final double FACTOR_ROUNDING = 0.00006;

    private static final double CONSTANT_ROUNDING = 0.06;

    /** The natural waist above the navel among the 1988 men (NATICK/TR-89/044), 478.5 - 412.0 mm, rounded. */
    private static final double NAVEL_TO_NATURAL_WAIST = 66;

    /** A weighted sum of surveyed measures and a shift in mm. */
    record Combination(Map<SurveyMeasure, Double> weights, double shift) {

        static Combination of(SurveyMeasure measure) {
            return new Combination(Map.of(measure, 1.0), 0);
        }

        static Combination drop(SurveyMeasure upper, SurveyMeasure lower) {
            return new Combination(Map.of(upper, 1.0, lower, -1.0), 0);
        }

        Combination shifted(double by) {
            return new Combination(weights, shift + by);
        }

        double mean(SurveyTable table) {
            return shift
                    + weights.entrySet().stream()
                            .mapToDouble(term -> term.getValue()
                                    * table.summary(term.getKey()).mean())
                            .sum();
        }

        double covariance(Combination other, SurveyTable table) {
            return weights.entrySet().stream()
                    .flatMapToDouble(mine -> other.weights.entrySet().stream()
                            .mapToDouble(theirs -> mine.getValue()
                                    * theirs.getValue()
                                    * table.covariance(mine.getKey(), theirs.getKey())))
                    .sum();
        }
    }

    /** How the survey took a measure. */
    private static Combination surveyed(BodyMeasure measure) {
        return switch (measure) {
            case BUST_GIRTH -> Combination.of(SurveyMeasure.CHEST_CIRCUMFERENCE);
            case HEIGHT -> Combination.of(SurveyMeasure.STATURE);
            case WAIST_GIRTH -> Combination.of(SurveyMeasure.WAIST_CIRCUMFERENCE);
            case HIP_GIRTH -> Combination.of(SurveyMeasure.BUTTOCK_CIRCUMFERENCE);
            case NECK_BASE_GIRTH -> Combination.of(SurveyMeasure.NECK_CIRCUMFERENCE_BASE);
            case UPPER_ARM_GIRTH -> Combination.of(SurveyMeasure.BICEPS_CIRCUMFERENCE_FLEXED);
            case WRIST_GIRTH -> Combination.of(SurveyMeasure.WRIST_CIRCUMFERENCE);
            case HAND_GIRTH -> Combination.of(SurveyMeasure.HAND_CIRCUMFERENCE);
            case HEAD_GIRTH -> Combination.of(SurveyMeasure.HEAD_CIRCUMFERENCE);
            case SHOULDER_LENGTH -> Combination.of(SurveyMeasure.SHOULDER_LENGTH);
            case ACROSS_BACK -> Combination.of(SurveyMeasure.INTERSCYE_II);
            case BACK_WAIST_LENGTH ->
                Combination.of(SurveyMeasure.WAIST_BACK_LENGTH).shifted(-NAVEL_TO_NATURAL_WAIST);
            case WAIST_TO_HIP ->
                Combination.drop(SurveyMeasure.WAIST_HEIGHT_OMPHALION, SurveyMeasure.BUTTOCK_HEIGHT)
                        .shifted(NAVEL_TO_NATURAL_WAIST);
            case NAPE_TO_ARMPIT -> Combination.drop(SurveyMeasure.CERVICALE_HEIGHT, SurveyMeasure.AXILLA_HEIGHT);
            case ARM_LENGTH -> Combination.of(SurveyMeasure.SLEEVE_OUTSEAM);
            case HAND_GIRTH_WITH_THUMB -> throw new AssertionError("not taken by the survey");
        };
    }

    @ParameterizedTest
    @EnumSource(
            value = Figure.class,
            names = {"WOMAN", "MAN"})
    void every_derived_measure_follows_the_regression_of_the_survey(Figure figure) {
        SurveyTable table = SurveyTable.of(figure);
        BodyMeasurements mean = meanBody(figure, table).build();
        assertThat(mean.derived()).hasSize(BodyMeasure.values().length - 2);
        for (Derived derived : mean.derived()) {
            if (derived.measure() != BodyMeasure.HAND_GIRTH_WITH_THUMB) {
                checkAgainstRegression(derived, mean, table);
            }
        }
    }

    private static void checkAgainstRegression(Derived derived, BodyMeasurements mean, SurveyTable table) {
        Map<BodyMeasure, Double> factors = factors(derived.measure(), mean);
        List<BodyMeasure> predictors = factors.keySet().stream().sorted().toList();
        Combination wanted = surveyed(derived.measure());
        int size = predictors.size();
        RealMatrix among = new Array2DRowRealMatrix(size, size);
        RealVector with = new ArrayRealVector(size);
        for (int i = 0; i < size; i++) {
            Combination predictor = surveyed(predictors.get(i));
            with.setEntry(i, predictor.covariance(wanted, table));
            for (int j = 0; j < size; j++) {
                among.setEntry(i, j, predictor.covariance(surveyed(predictors.get(j)), table));
            }
        }
        RealVector expected = new LUDecomposition(among).getSolver().solve(with);
        double rounding = CONSTANT_ROUNDING;
        for (int i = 0; i < size; i++) {
            assertThat(factors.get(predictors.get(i)))
                    .as("factor of %s in %s of a %s", predictors.get(i), derived.measure(), mean.figure())
                    .isCloseTo(expected.getEntry(i), within(FACTOR_ROUNDING));
            rounding += FACTOR_ROUNDING * mean.measure(predictors.get(i)).mm();
        }
        // A regression passes through the means; the wrist, from which the hand follows, is itself rounded.
        assertThat(derived.value().mm())
                .as("mean %s of a %s", derived.measure(), mean.figure())
                .isCloseTo(wanted.mean(table), within(rounding + 0.25));
        double residual = Math.sqrt(wanted.covariance(wanted, table) - expected.dotProduct(with));
        assertThat(derived.spread().mm())
                .as("spread of %s of a %s", derived.measure(), mean.figure())
                .isCloseTo(residual, within(CONSTANT_ROUNDING));
    }

    /** What a millimetre more of each other measure does to a derived one; those that do nothing are left out. */
    private static Map<BodyMeasure, Double> factors(BodyMeasure wanted, BodyMeasurements mean) {
        Map<BodyMeasure, Double> factors = new HashMap<>();
        Stream.of(BodyMeasure.BUST_GIRTH, BodyMeasure.HEIGHT, BodyMeasure.WRIST_GIRTH)
                .filter(predictor -> predictor != wanted)
                .forEach(predictor -> {
                    // The wrist is held, or bust girth and height would act on the hand through it.
                    BodyMeasurements held = wanted == BodyMeasure.WRIST_GIRTH
                            ? mean
                            : mean.toBuilder().wristGirth(mean.wristGirth()).build();
                    BodyMeasurements more = held.toBuilder()
                            .measure(predictor, held.measure(predictor).plus(mm(1)))
                            .build();
                    double change =
                            more.measure(wanted).minus(held.measure(wanted)).mm();
                    if (Math.abs(change) > 1e-9) {
                        factors.put(predictor, change);
                    }
                });
        return factors;
    }

    private static BodyBuilder meanBody(Figure figure, SurveyTable table) {
        return BodyMeasurements.builder()
                .name("mean")
                .figure(figure)
                .bustGirth(mm(table.summary(SurveyMeasure.CHEST_CIRCUMFERENCE).mean()))
                .height(mm(table.summary(SurveyMeasure.STATURE).mean()));
    }
}

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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.testkit.bodies.NaturalWaist;
import org.oaktag.testkit.bodies.SurveyMeasure;
import org.oaktag.testkit.bodies.SurveyTable;

/**
 * The rules that derive measures, against regressions worked out anew from the published tables of the 2012 US Army
 * survey (Gordon et al., NATICK/TR-15/007).
 *
 * <p>A rule is read off the library from outside: its factors are the differences that one millimetre more of a
 * predictor makes, so the check holds whatever the library's own numbers are.
 */
class DerivationsAgainstSurveyTest {

    /** Constants of the rules are given to a tenth of a millimetre and factors to four decimals. */
    private static final double FACTOR_ROUNDING = 0.00006;

    private static final double CONSTANT_ROUNDING = 0.06;

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
    private static Combination surveyed(BodyMeasure measure, Figure figure) {
        NaturalWaist waist = NaturalWaist.of(figure);
        return switch (measure) {
            case BUST_GIRTH -> Combination.of(SurveyMeasure.CHEST_CIRCUMFERENCE);
            case HEIGHT -> Combination.of(SurveyMeasure.STATURE);
            case WAIST_GIRTH ->
                new Combination(
                        Map.of(SurveyMeasure.WAIST_CIRCUMFERENCE, waist.girthSd() / waist.navelGirthSd()),
                        waist.girthOf(0));
            case HIP_GIRTH -> Combination.of(SurveyMeasure.BUTTOCK_CIRCUMFERENCE);
            case NECK_BASE_GIRTH -> Combination.of(SurveyMeasure.NECK_CIRCUMFERENCE_BASE);
            case UPPER_ARM_GIRTH -> Combination.of(SurveyMeasure.BICEPS_CIRCUMFERENCE_FLEXED);
            case WRIST_GIRTH -> Combination.of(SurveyMeasure.WRIST_CIRCUMFERENCE);
            case HAND_GIRTH -> Combination.of(SurveyMeasure.HAND_CIRCUMFERENCE);
            case HEAD_GIRTH -> Combination.of(SurveyMeasure.HEAD_CIRCUMFERENCE);
            case SHOULDER_LENGTH -> Combination.of(SurveyMeasure.SHOULDER_LENGTH);
            case ACROSS_BACK -> Combination.of(SurveyMeasure.INTERSCYE_II);
            case BACK_WAIST_LENGTH ->
                Combination.of(SurveyMeasure.WAIST_BACK_LENGTH).shifted(-waist.shorterBack());
            case WAIST_TO_HIP ->
                Combination.drop(SurveyMeasure.WAIST_HEIGHT_OMPHALION, SurveyMeasure.BUTTOCK_HEIGHT)
                        .shifted(waist.aboveNavel());
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

    /**
     * The height of the tenth rib in the 2012 survey, 1056.3 and 1120.7 mm, of the navel's waist 980.1 and 1056.5 mm,
     * and of the seat 833.7 and 887.9 mm (NATICK/TR-15/007); the natural waist of 1988 is 12 mm above the tenth rib in
     * women and 6 mm in men (differences of the means in NATICK/TR-89/044). The two surveys need not agree, only within
     * the spread.
     */
    @ParameterizedTest
    @CsvSource({"WOMAN, 1056.3, 12, 833.7", "MAN, 1120.7, 6, 887.9"})
    void the_natural_waist_lies_where_the_tenth_rib_puts_it(Figure figure, double rib, double above, double seat) {
        BodyMeasurements mean = meanBody(figure, SurveyTable.of(figure)).build();
        Derived drop = rule(mean, BodyMeasure.WAIST_TO_HIP);
        assertThat(drop.value().mm())
                .isCloseTo(rib + above - seat, within(drop.spread().mm()));
    }

    /**
     * Natural waists beside bust girths: of the 1988 survey's means (NATICK/TR-89/044), of ASTM D5585-11's misses size
     * 8 (36 1/4 and 28 in), of EN 13402-3's women's sizes 84 and 92 (from memory), and of the survey's men.
     */
    @ParameterizedTest
    @CsvSource({"WOMAN, 907.1, 725.5", "WOMAN, 920.8, 711.2", "WOMAN, 840, 680", "WOMAN, 920, 760", "MAN, 991.4, 839.9"
    })
    void a_derived_waist_is_that_of_published_natural_waists(Figure figure, double bust, double waist) {
        BodyMeasurements body =
                meanBody(figure, SurveyTable.of(figure)).bustGirth(mm(bust)).build();
        double spread = body.derived().get(0).spread().mm();
        assertThat(body.derived().get(0).measure()).isEqualTo(BodyMeasure.WAIST_GIRTH);
        assertThat(body.waistGirth().mm()).isCloseTo(waist, within(1.2 * spread));
    }

    private static void checkAgainstRegression(Derived derived, BodyMeasurements mean, SurveyTable table) {
        Map<BodyMeasure, Double> factors = factors(derived.measure(), mean);
        List<BodyMeasure> predictors = factors.keySet().stream().sorted().toList();
        Combination wanted = surveyed(derived.measure(), mean.figure());
        int size = predictors.size();
        RealMatrix among = new Array2DRowRealMatrix(size, size);
        RealVector with = new ArrayRealVector(size);
        for (int i = 0; i < size; i++) {
            Combination predictor = surveyed(predictors.get(i), mean.figure());
            with.setEntry(i, predictor.covariance(wanted, table));
            for (int j = 0; j < size; j++) {
                among.setEntry(i, j, predictor.covariance(surveyed(predictors.get(j), mean.figure()), table));
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
        // The wrist is taken here: where it is derived too, the hand has the spread of both.
        BodyMeasurements held = mean.toBuilder().wristGirth(mean.wristGirth()).build();
        Derived alone = derived.measure() == BodyMeasure.WRIST_GIRTH ? derived : rule(held, derived.measure());
        assertThat(alone.spread().mm())
                .as("spread of %s of a %s", derived.measure(), mean.figure())
                .isCloseTo(residual, within(CONSTANT_ROUNDING));
    }

    private static Derived rule(BodyMeasurements body, BodyMeasure measure) {
        return body.derived().stream()
                .filter(each -> each.measure() == measure)
                .findFirst()
                .orElseThrow();
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
                .confirmed(BodyMeasure.HIP_GIRTH)
                .name("mean")
                .figure(figure)
                .bustGirth(mm(table.summary(SurveyMeasure.CHEST_CIRCUMFERENCE).mean()))
                .height(mm(table.summary(SurveyMeasure.STATURE).mean()));
    }
}

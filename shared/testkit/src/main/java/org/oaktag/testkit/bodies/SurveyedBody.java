package org.oaktag.testkit.bodies;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.measure.Length;

/**
 * A body in the survey's own measures, in millimetres. Immutable.
 *
 * @param figure whose body it is
 * @param measures every {@link SurveyMeasure}
 */
public record SurveyedBody(Figure figure, Map<SurveyMeasure, Double> measures) {

    /**
     * How far the natural waist lies above the navel, where the survey has its waist: the difference of the waist back
     * lengths to either among the men of 1988, 478.5 - 412.0 mm (Gordon et al., NATICK/TR-89/044), rounded.
     */
    private static final double NATURAL_WAIST_ABOVE_NAVEL = 66;

    /** Copies the measures. */
    public SurveyedBody {
        measures = Collections.unmodifiableMap(new EnumMap<>(measures));
    }

    /** Returns a measure in mm. */
    public double mm(SurveyMeasure measure) {
        return Objects.requireNonNull(measures.get(measure), measure::column);
    }

    /** Tells whether every measure lies between the least and the greatest that the survey met. */
    public boolean isWithinSurvey() {
        SurveyTable table = SurveyTable.of(figure);
        return measures.entrySet().stream()
                .allMatch(entry -> entry.getValue()
                                >= table.summary(entry.getKey()).min()
                        && entry.getValue() <= table.summary(entry.getKey()).max());
    }

    /**
     * Returns the body in the measures of the trade.
     *
     * <p>The waist girth stays the one at the navel, as the survey has no other; the two lengths that end at the waist are
     * moved to the natural waist. The hand with its thumb, which the survey did not take, is left to be derived.
     */
    public BodyMeasurements measuredAs(String name) {
        return BodyMeasurements.builder()
                .name(name)
                .figure(figure)
                .bustGirth(length(SurveyMeasure.CHEST_CIRCUMFERENCE))
                .waistGirth(length(SurveyMeasure.WAIST_CIRCUMFERENCE))
                .hipGirth(length(SurveyMeasure.BUTTOCK_CIRCUMFERENCE))
                .neckBaseGirth(length(SurveyMeasure.NECK_CIRCUMFERENCE_BASE))
                .upperArmGirth(length(SurveyMeasure.BICEPS_CIRCUMFERENCE_FLEXED))
                .wristGirth(length(SurveyMeasure.WRIST_CIRCUMFERENCE))
                .handGirth(length(SurveyMeasure.HAND_CIRCUMFERENCE))
                .headGirth(length(SurveyMeasure.HEAD_CIRCUMFERENCE))
                .shoulderLength(length(SurveyMeasure.SHOULDER_LENGTH))
                .acrossBack(length(SurveyMeasure.INTERSCYE_II))
                .backWaistLength(length(SurveyMeasure.WAIST_BACK_LENGTH).minus(Length.mm(NATURAL_WAIST_ABOVE_NAVEL)))
                .waistToHip(drop(SurveyMeasure.WAIST_HEIGHT_OMPHALION, SurveyMeasure.BUTTOCK_HEIGHT)
                        .plus(Length.mm(NATURAL_WAIST_ABOVE_NAVEL)))
                .napeToArmpit(drop(SurveyMeasure.CERVICALE_HEIGHT, SurveyMeasure.AXILLA_HEIGHT))
                .armLength(length(SurveyMeasure.SLEEVE_OUTSEAM))
                .height(length(SurveyMeasure.STATURE))
                .build();
    }

    private Length length(SurveyMeasure measure) {
        return Length.mm(mm(measure));
    }

    private Length drop(SurveyMeasure upper, SurveyMeasure lower) {
        return Length.mm(mm(upper) - mm(lower));
    }
}

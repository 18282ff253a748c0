package org.oaktag.testkit.bodies;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.oaktag.body.BodyBuilder;
import org.oaktag.body.BodyMeasure;
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
     * <p>The waist, which the survey took at the navel, is moved to the {@link NaturalWaist}. The hand with its thumb,
     * which the survey did not take, is left to be derived. Whatever is far from what the rest leads to expect is
     * confirmed: it was drawn so.
     */
    public BodyMeasurements measuredAs(String name) {
        BodyBuilder measured = measured(name);
        Stream.of(BodyMeasure.values()).forEach(measured::confirmed);
        return measured.build();
    }

    /** Returns the same measures as somebody would type them in, so that what is doubtful among them is asked about. */
    public BodyBuilder measured(String name) {
        NaturalWaist waist = NaturalWaist.of(figure);
        return BodyMeasurements.builder()
                .name(name)
                .figure(figure)
                .bustGirth(length(SurveyMeasure.CHEST_CIRCUMFERENCE))
                .waistGirth(Length.mm(waist.girthOf(mm(SurveyMeasure.WAIST_CIRCUMFERENCE))))
                .hipGirth(length(SurveyMeasure.BUTTOCK_CIRCUMFERENCE))
                .neckBaseGirth(length(SurveyMeasure.NECK_CIRCUMFERENCE_BASE))
                .upperArmGirth(length(SurveyMeasure.BICEPS_CIRCUMFERENCE_FLEXED))
                .wristGirth(length(SurveyMeasure.WRIST_CIRCUMFERENCE))
                .handGirth(length(SurveyMeasure.HAND_CIRCUMFERENCE))
                .headGirth(length(SurveyMeasure.HEAD_CIRCUMFERENCE))
                .shoulderLength(length(SurveyMeasure.SHOULDER_LENGTH))
                .acrossBack(length(SurveyMeasure.INTERSCYE_II))
                .backWaistLength(length(SurveyMeasure.WAIST_BACK_LENGTH).minus(Length.mm(waist.shorterBack())))
                .waistToHip(drop(SurveyMeasure.WAIST_HEIGHT_OMPHALION, SurveyMeasure.BUTTOCK_HEIGHT)
                        .plus(Length.mm(waist.aboveNavel())))
                .napeToArmpit(drop(SurveyMeasure.CERVICALE_HEIGHT, SurveyMeasure.AXILLA_HEIGHT))
                .armLength(length(SurveyMeasure.SLEEVE_OUTSEAM))
                .height(length(SurveyMeasure.STATURE));
    }

    private Length length(SurveyMeasure measure) {
        return Length.mm(mm(measure));
    }

    private Length drop(SurveyMeasure upper, SurveyMeasure lower) {
        return Length.mm(mm(upper) - mm(lower));
    }
}

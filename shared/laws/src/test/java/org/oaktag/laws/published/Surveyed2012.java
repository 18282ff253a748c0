package org.oaktag.laws.published;

import java.util.EnumMap;
import java.util.Map;
import java.util.stream.Stream;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.testkit.bodies.SurveyMeasure;
import org.oaktag.testkit.bodies.SurveyTable;
import org.oaktag.testkit.bodies.SurveyedBody;

/**
 * The means of the 2012 Anthropometric Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-15/007): a body that has
 * each of them taken.
 */
record Surveyed2012(Figure figure) {

    static Stream<Surveyed2012> both() {
        return Stream.of(new Surveyed2012(Figure.WOMAN), new Surveyed2012(Figure.MAN));
    }

    double mean(SurveyMeasure measure) {
        return SurveyTable.of(figure).summary(measure).mean();
    }

    BodyMeasurements body() {
        Map<SurveyMeasure, Double> means = new EnumMap<>(SurveyMeasure.class);
        for (SurveyMeasure measure : SurveyMeasure.values()) {
            means.put(measure, mean(measure));
        }
        return new SurveyedBody(figure, means).measuredAs("mean of 2012");
    }
}

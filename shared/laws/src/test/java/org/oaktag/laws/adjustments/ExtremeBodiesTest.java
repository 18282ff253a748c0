package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Percent;
import org.oaktag.testkit.bodies.SurveyPopulation;
import org.oaktag.testkit.bodies.SurveyedBody;

/** The bodies that have the least or the greatest value of a measure among all who were surveyed. */
class ExtremeBodiesTest {

    @ParameterizedTest
    @EnumSource(EaseCategory.class)
    void every_extreme_body_drafts_true(EaseCategory category) {
        Stream<SurveyedBody> people =
                Stream.of(Figure.WOMAN, Figure.MAN).flatMap(figure -> SurveyPopulation.of(figure).extremes().stream());
        assertThat(people)
                .hasSize(68)
                .allSatisfy(person -> assertThat(KnitTop.draft(
                                        person.measuredAs("extreme"),
                                        TopEase.of(category),
                                        Cloth.knit("sweatshirt knit", Percent.percent(25)))
                                .walkSeams()
                                .untrue())
                        .isEmpty());
    }
}

package org.oaktag.testkit.bodies;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.domains.DomainContextBase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;

/**
 * Grown bodies of either sex for property tests: {@code @Domain(Adults.class)} and {@code @ForAll BodyMeasurements}.
 *
 * <p>They are drawn as {@link SurveyPopulation} draws them. A failing body shrinks towards the mean body of its sex.
 */
public final class Adults extends DomainContextBase {

    private static final double FARTHEST = 4;

    /** For jqwik. */
    public Adults() {}

    /** Returns women and men, as many of the one as of the other. */
    @Provide
    public static Arbitrary<BodyMeasurements> adults() {
        return Arbitraries.oneOf(of(Figure.WOMAN), of(Figure.MAN));
    }

    /** Returns women only or men only. */
    public static Arbitrary<BodyMeasurements> of(Figure figure) {
        SurveyPopulation population = SurveyPopulation.of(figure);
        return Arbitraries.doubles()
                .between(-FARTHEST, FARTHEST)
                .ofScale(3)
                .withDistribution(RandomDistribution.gaussian(FARTHEST))
                .array(double[].class)
                .ofSize(SurveyPopulation.dimensions())
                .map(population::at)
                .filter(SurveyedBody::isWithinSurvey)
                .map(body -> body.measuredAs("drawn " + figure.label()))
                .withoutEdgeCases();
    }
}

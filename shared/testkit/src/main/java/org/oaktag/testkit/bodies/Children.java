package org.oaktag.testkit.bodies;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.measure.Length;

/**
 * Invented children of 2 to 13 years for property tests: {@code @Domain(Children.class)} and
 * {@code @ForAll BodyMeasurements}.
 *
 * <p>Unlike {@link Adults} they rest on no survey: every number here is made up, so that the proportions look like
 * those of children and grow with the age. Good for what must hold for any child, worthless as statistics.
 */
public final class Children extends DomainContextBase {

    /** For jqwik. */
    public Children() {}

    /** Returns girls and boys, every measure taken. */
    @Provide
    public static Arbitrary<BodyMeasurements> children() {
        return Combinators.combine(
                        Arbitraries.of(Figure.GIRL, Figure.BOY),
                        Arbitraries.integers().between(2, 13),
                        Arbitraries.doubles().between(0.94, 1.06).ofScale(3),
                        Arbitraries.doubles().between(0.92, 1.12).ofScale(3))
                .as(Children::invented);
    }

    /** Returns one such child; tall scales its lengths, stout its girths. */
    private static BodyMeasurements invented(Figure figure, int years, double tall, double stout) {
        return BodyMeasurements.builder()
                .name("invented " + figure.label() + " of " + years)
                .figure(figure)
                .ageYears(years)
                .height(grown(760, 62, years, tall))
                .bustGirth(grown(455, 24, years, stout))
                .waistGirth(grown(450, 16, years, stout))
                .hipGirth(grown(450, 27, years, stout))
                .neckBaseGirth(grown(245, 7, years, stout))
                .upperArmGirth(grown(145, 7, years, stout))
                .wristGirth(grown(105, 3, years, stout))
                .handGirth(grown(120, 5, years, stout))
                .handGirthWithThumb(grown(145, 6, years, stout))
                .headGirth(grown(470, 5, years, 1))
                .shoulderLength(grown(58, 4.2, years, tall))
                .acrossBack(grown(190, 10, years, stout))
                .backWaistLength(grown(185, 13.5, years, tall))
                .waistToHip(grown(85, 7, years, tall))
                .napeToArmpit(grown(85, 5, years, tall))
                .armLength(grown(240, 24, years, tall))
                .build();
    }

    private static Length grown(double atBirth, double aYear, int years, double factor) {
        return Length.mm((atBirth + aYear * years) * factor);
    }
}

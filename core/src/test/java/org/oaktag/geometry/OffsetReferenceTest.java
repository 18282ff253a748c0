package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Parallels against values in closed form, and lengths integrated with 50 digits.
 *
 * <p>The speed of a Pythagorean-hodograph curve is a polynomial, and so its parallel is rational (Farouki and Sakkalis,
 * IBM Journal of Research and Development 34, 1990): that of {@link #PYTHAGOREAN} is 45 + 45 t². The curve turns by a
 * right angle, so its parallel at d is longer by d pi / 2.
 */
class OffsetReferenceTest {
    private static final double FINE = 1e-7;

    /** Drawn with y up it is (0, 0), (9, 12), (30, 15), (54, -3); here y runs down. */
    private static final Cubic PYTHAGOREAN =
            Cubic.of(Point.of(0, 0), Point.of(9, -12), Point.of(30, -15), Point.of(54, 3));

    private static final Cubic GENERAL =
            Cubic.of(Point.of(0, 0), Point.of(30, -180), Point.of(120, -240), Point.of(260, -250));

    @Test
    void left_parallel_of_a_pythagorean_curve_passes_three_known_points() {
        Path parallel = OffsetCurve.of(PYTHAGOREAN, 10, FINE);
        assertThat(parallel.start().distanceTo(Point.of(-8, -6))).isLessThan(1e-12);
        assertThat(parallel.nearest(Point.of(21.375, -19.75)).distance()).isLessThan(FINE);
        assertThat(parallel.end().distanceTo(Point.of(60, -5))).isLessThan(1e-12);
    }

    @Test
    void parallels_of_a_pythagorean_curve_are_longer_and_shorter_by_five_pi() {
        assertThat(OffsetCurve.of(PYTHAGOREAN, 10, FINE).length(1e-9)).isCloseTo(75.70796326794897, within(1e-6));
        assertThat(OffsetCurve.of(PYTHAGOREAN, -10, FINE).length(1e-9)).isCloseTo(60 - 5 * Math.PI, within(1e-6));
    }

    /** The radius of curvature at the start is 22.5 mm: 45³ / (r' x r'') there. */
    @Test
    void cusps_begin_where_the_distance_is_the_least_radius() {
        Vector way = PYTHAGOREAN.directionAt(0);
        assertThat(OffsetCurve.of(PYTHAGOREAN, -22.4, FINE).startDirection().dot(way))
                .isCloseTo(1, within(1e-9));
        assertThat(OffsetCurve.of(PYTHAGOREAN, -22.6, FINE).startDirection().dot(way))
                .isCloseTo(-1, within(1e-9));
        assertThat(OffsetCurve.of(PYTHAGOREAN, -22.4, FINE).length(1e-9))
                .isCloseTo(60 - 22.4 * Math.PI / 2, within(1e-6));
    }

    @Test
    void parallels_of_a_general_cubic_have_the_lengths_integrated_with_fifty_digits() {
        assertThat(OffsetCurve.of(GENERAL, 10, FINE).length(1e-9)).isCloseTo(411.30914355916576, within(1e-6));
        assertThat(OffsetCurve.of(GENERAL, -10, FINE).length(1e-9)).isCloseTo(384.6223398672662, within(1e-6));
    }

    /** No more than the best fit known: 2 at a hundredth and a thousandth, 4 at a ten thousandth, 8 at a millionth. */
    @Test
    void parallel_of_a_general_cubic_takes_few_cubics() {
        assertThat(OffsetCurve.of(GENERAL, 10, 1e-2).curves()).hasSizeLessThanOrEqualTo(2);
        assertThat(OffsetCurve.of(GENERAL, 10, 1e-3).curves()).hasSizeLessThanOrEqualTo(2);
        assertThat(OffsetCurve.of(GENERAL, 10, 1e-4).curves()).hasSizeLessThanOrEqualTo(4);
        assertThat(OffsetCurve.of(GENERAL, 10, 1e-6).curves()).hasSizeLessThanOrEqualTo(8);
    }

    /**
     * An S 100 mm wide and high. The best fit known to us, of another library, takes 3, 6, 8 and 18 cubics; as the S is
     * symmetrical, its two parallels are the same curve run from either end.
     */
    @Test
    void parallel_of_an_s_takes_about_as_few_cubics_as_the_best_fit_known() {
        Cubic s = CubicTest.cubic(0, 0, 100, 0, 0, 100, 100, 100);
        double[] tolerances = {1e-2, 1e-3, 1e-4, 1e-6};
        int[] most = {4, 6, 8, 18};
        for (double d : new double[] {-10, 10}) {
            for (int i = 0; i < most.length; i++) {
                Path parallel = OffsetCurve.of(s, d, tolerances[i]);
                assertThat(parallel.curves()).hasSizeLessThanOrEqualTo(most[i]);
                for (int k = 0; k <= 2000; k++) {
                    double t = k / 2000.0;
                    Point exact =
                            s.pointAt(t).plus(s.directionAt(t).leftNormal().times(d));
                    assertThat(parallel.nearest(exact).distance()).isLessThanOrEqualTo(tolerances[i]);
                }
                for (Curve curve : parallel.curves()) {
                    for (int k = 0; k <= 100; k++) {
                        double distance = s.nearest(curve.pointAt(k / 100.0)).distance();
                        assertThat(distance).isCloseTo(Math.abs(d), within(tolerances[i]));
                    }
                }
            }
        }
    }
}

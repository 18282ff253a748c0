package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TangentsTest {
    /** It stands still at 1/2, coming up along y and going down again. */
    private static final Cubic CUSP = CubicTest.cubic(0, 0, 1, 1, 0, 1, 1, 0);

    /** r' x r'' / |r'|² off the cusp, from the derivatives. */
    private static double rate(Cubic cubic, double t) {
        Vector first = cubic.derivativeAt(t);
        return first.cross(cubic.secondDerivativeAt(t)) / first.dot(first);
    }

    @Test
    void tangent_turns_through_a_cusp_at_the_rate_of_its_neighbourhood() {
        double h = 1e-4;
        double beside = (rate(CUSP, 0.5 - h) + rate(CUSP, 0.5 + h)) / 2;
        assertThat(Tangents.turningRate(CUSP, 0.5)).isCloseTo(beside, within(1e-4 * Math.abs(beside)));
        // Closed form: r' = 3 (t - 1/2) (4 (t - 1/2), -2) up to the sign, of which the angle turns at 2 rad/1.
        assertThat(Math.abs(Tangents.turningRate(CUSP, 0.5))).isCloseTo(2, within(1e-12));
        assertThat(Tangents.turningRate(CUSP.reversed(), 0.5))
                .isCloseTo(-Tangents.turningRate(CUSP, 0.5), within(1e-12));
        assertThat(Tangents.turningRate(CUSP, 0.25)).isCloseTo(rate(CUSP, 0.25), within(1e-12));
    }

    @Test
    void rate_and_curvature_of_a_tiny_or_huge_curve_are_those_of_its_image() {
        Cubic plain = CubicTest.cubic(0, 0, 1, 2, 3, 2, 4, 0);
        for (double scale : new double[] {1e-8, 1e8}) {
            Cubic scaled = plain.transformed(Transform.scale(scale));
            for (double t : new double[] {0, 0.3, 1}) {
                double rate = rate(plain, t);
                assertThat(Tangents.turningRate(scaled, t)).isCloseTo(rate, within(1e-12 * Math.abs(rate)));
                double curvature = plain.curvatureAt(t);
                assertThat(scaled.curvatureAt(t) * scale).isCloseTo(curvature, within(1e-12 * Math.abs(curvature)));
                assertThat(scaled.directionAt(t).minus(plain.directionAt(t)).length())
                        .isLessThan(1e-14);
            }
        }
    }

    @Test
    void rate_is_zero_where_two_derivatives_vanish() {
        // r(t) = (t³, 0)
        Cubic thrice = CubicTest.cubic(0, 0, 0, 0, 0, 0, 1, 0);
        assertThat(Tangents.turningRate(thrice, 0)).isZero();
        assertThat(Tangents.direction(thrice, 0)).isEqualTo(Vector.of(1, 0));
    }

    @Test
    void curvature_of_a_cusp_is_infinite_with_the_sign_of_its_neighbourhood() {
        double beside = CUSP.curvatureAt(0.5 + 1e-3);
        assertThat(Math.abs(beside)).isGreaterThan(100);
        assertThat(CUSP.curvatureAt(0.5)).isEqualTo(Math.copySign(Double.POSITIVE_INFINITY, beside));
        assertThat(CUSP.reversed().curvatureAt(0.5)).isEqualTo(Math.copySign(Double.POSITIVE_INFINITY, -beside));
    }

    @Test
    void turning_of_doubled_controls_is_that_between_the_sides_that_are_left() {
        assertThat(CubicTest.cubic(0, 0, 0, 0, 1, 0, 1, 1).turning()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(CubicTest.cubic(0, 0, 1, 0, 1, 1, 1, 1).turning()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(CubicTest.cubic(0, 0, 1, 0, 1, 0, 1, 1).turning()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(CubicTest.cubic(0, 0, 0, 0, 0, 0, 1, 1).turning()).isZero();
        assertThat(CubicTest.cubic(0, 0, 0, 0, 1, 1, 1, 1).turning()).isZero();
        assertThat(CubicTest.cubic(0, 0, 1, 1, 1, 1, 1, 1).turning()).isZero();
    }

    /**
     * The quarter turn into the cusp, half a turn at it and what follows: three quarters, as of the loop that shrinks
     * to the cusp.
     */
    @Test
    void turning_of_a_cusp_is_that_of_the_loop_that_shrinks_to_it() {
        Cubic loop = CubicTest.cubic(0, 0, 1 + 1e-3, 1, -1e-3, 1, 1, 0);
        assertThat(Math.abs(loop.turning())).isCloseTo(1.5 * Math.PI, within(2e-3));
        assertThat(CUSP.turning()).isCloseTo(loop.turning(), within(2e-3));
        assertThat(CUSP.reversed().turning()).isCloseTo(-CUSP.turning(), within(1e-9));
    }
}

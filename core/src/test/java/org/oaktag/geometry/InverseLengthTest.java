package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The guess and the step, by what they are known to do: a worse one would lead to the same places, only later. */
class InverseLengthTest {
    private static final Cubic BEND = CubicTest.cubic(10, 20, 40, 200, 130, 260, 270, 270);
    private static final Cubic S = CubicTest.cubic(0, 0, 60, 120, 110, -80, 190, 30);

    /** Straight, x = 40 (3 a t + b t² + c t³) / 3, so the speed is 40 (a + 2/3 b t + c t²). */
    private static Cubic straight(double a, double b, double c) {
        double x1 = 40 * a / 3;
        double x2 = 40 * (2 * a + b / 3) / 3;
        double x3 = 40 * (3 * a + b + c) / 3;
        return CubicTest.cubic(0, 0, 0.6 * x1, 0.8 * x1, 0.6 * x2, 0.8 * x2, 0.6 * x3, 0.8 * x3);
    }

    @Test
    void guess_is_right_where_the_speed_is_linear() {
        for (Cubic cubic :
                new Cubic[] {straight(1, 0, 0), straight(1, 1.5, 0), straight(3, -3, 0), straight(0, 3, 0)}) {
            double length = cubic.start().distanceTo(cubic.end());
            for (double t = 0.0625; t < 1; t += 0.0625) {
                double distance = cubic.start().distanceTo(cubic.pointAt(t));
                assertThat(InverseLength.guess(cubic, distance, length)).isCloseTo(t, within(1e-12));
                // Without the length its sum by the same rule stands in, which is exact here.
                assertThat(InverseLength.guess(cubic, distance, Double.NaN)).isCloseTo(t, within(1e-12));
            }
        }
    }

    /**
     * The rule for the quarters takes the speed for a parabola in each, so at their ends the guess is right if it is
     * one.
     */
    @Test
    void guess_is_right_at_the_quarters_where_the_speed_is_quadratic() {
        for (Cubic cubic : new Cubic[] {straight(1, -2, 3), straight(3, -3, 2), straight(1, 6, -4)}) {
            double length = cubic.start().distanceTo(cubic.end());
            for (double t = 0.25; t < 1; t += 0.25) {
                double distance = cubic.start().distanceTo(cubic.pointAt(t));
                assertThat(InverseLength.guess(cubic, distance, length)).isCloseTo(t, within(1e-12));
            }
            // Within a quarter it takes the speed for linear, which is off by little.
            for (double t = 0.05; t < 1; t += 0.05) {
                double distance = cubic.start().distanceTo(cubic.pointAt(t));
                assertThat(InverseLength.guess(cubic, distance, length)).isCloseTo(t, within(0.02));
            }
        }
    }

    @Test
    void guess_stays_on_the_curve() {
        for (Cubic cubic : new Cubic[] {BEND, S, CubicTest.cubic(0, 0, 100, 100, 0, 100, 100, 0)}) {
            double length = cubic.length();
            for (double share : new double[] {1e-9, 0.001, 0.1, 0.5, 0.9, 0.999, 1}) {
                double t = InverseLength.guess(cubic, share * length, length);
                assertThat(t).isBetween(0.0, 1.0);
                assertThat(cubic.lengthBetween(0, t, 1e-9)).isCloseTo(share * length, within(0.05 * length));
            }
            // More than the rule makes the whole: the end.
            assertThat(InverseLength.guess(cubic, 2 * length, Double.NaN)).isEqualTo(1);
        }
        assertThat(InverseLength.guess(straight(1, -2, 1), 0, 1)).isZero();
    }

    /** Halley's step converges cubically: half the distance from the place leaves an eighth of the error. */
    @Test
    void step_leaves_an_error_of_the_third_order() {
        for (Cubic cubic : new Cubic[] {BEND, S}) {
            for (double place : new double[] {0.2, 0.45, 0.8}) {
                for (double sign : new double[] {-1, 1}) {
                    double far = Math.abs(errorAfterStep(cubic, place, sign * 0.04));
                    double near = Math.abs(errorAfterStep(cubic, place, sign * 0.02));
                    assertThat(far).as("%s at %s", cubic, place).isLessThan(2e-3);
                    assertThat(far / near).as("%s at %s", cubic, place).isBetween(5.5, 11.0);
                }
            }
        }
    }

    private static double errorAfterStep(Cubic cubic, double place, double off) {
        double t = place + off;
        double residual = off > 0 ? cubic.lengthBetween(place, t, 1e-12) : -cubic.lengthBetween(t, place, 1e-12);
        return InverseLength.halley(cubic, t, residual) - place;
    }

    /** Where the speed is the same throughout there is nothing left of the error. */
    @Test
    void step_on_uniform_speed_is_exact() {
        Cubic even = straight(1, 0, 0);
        for (double t : new double[] {0.1, 0.5, 0.9}) {
            assertThat(InverseLength.halley(even, t, 40 * (t - 0.3))).isCloseTo(0.3, within(1e-14));
        }
    }
}

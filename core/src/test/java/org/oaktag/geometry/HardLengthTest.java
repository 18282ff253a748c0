package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Lengths and inverse lengths where a quadrature has to be careful, against 20 nodes of commons-math on ever shorter
 * halves.
 */
class HardLengthTest {
    private static final GaussIntegratorFactory RULES = new GaussIntegratorFactory();

    static Stream<Cubic> hard() {
        return Stream.of(
                CubicTest.cubic(0, 0, 100, 100, 0, 100, 100, 0),
                CubicTest.cubic(0, 0, 100.1, 100, -0.1, 100, 100, 0),
                CubicTest.cubic(0, 0, 101, 100, -1, 100, 100, 0),
                CubicTest.cubic(0, 0, 99, 100, 1, 100, 100, 0),
                CubicTest.cubic(0, 0, 200, 200, -100, 200, 100, 0),
                CubicTest.cubic(0, 0, 0, 0, 90, 0, 270, 270),
                CubicTest.cubic(0, 0, 1e-3, 0, 90, 0, 270, 270),
                CubicTest.cubic(0, 0, 90, 0, 270, 270, 270, 270),
                CubicTest.cubic(0, 0, 0, 0, 30, 40, 30, 40),
                CubicTest.cubic(0, 0, 10, 20, 10, 20, 30, 0),
                CubicTest.cubic(0, 0, 100, 0, -100, 0, 200, 0),
                CubicTest.cubic(0, 0, 100, 0, -100, 1e-4, 200, 0),
                CubicTest.cubic(0, 0, 300, 1, -200, 2, 100, 3),
                CubicTest.cubic(0, 0, 30, 180, 120, 240, 260, 250),
                CubicTest.cubic(5, 5, 5, 5, 5, 5, 6, 7));
    }

    private static double exact(Cubic cubic, double from, double to) {
        return from == to ? 0 : halved(cubic, from, to, gauss(cubic, from, to), 40);
    }

    private static double halved(Cubic cubic, double from, double to, double whole, int depth) {
        double middle = 0.5 * (from + to);
        double first = gauss(cubic, from, middle);
        double second = gauss(cubic, middle, to);
        if (depth == 0 || Math.abs(first + second - whole) <= 1e-12) {
            return first + second;
        }
        return halved(cubic, from, middle, first, depth - 1) + halved(cubic, middle, to, second, depth - 1);
    }

    private static double gauss(Cubic cubic, double from, double to) {
        return RULES.legendre(20, from, to).integrate(t -> cubic.derivativeAt(t).length());
    }

    @ParameterizedTest
    @MethodSource("hard")
    void length_keeps_every_accuracy(Cubic cubic) {
        double exact = exact(cubic, 0, 1);
        for (double accuracy : new double[] {1, 1e-3, 1e-6, 1e-9}) {
            assertThat(cubic.length(accuracy)).isCloseTo(exact, within(accuracy + 1e-11));
            assertThat(cubic.lengthBetween(0.2, 0.7, accuracy))
                    .isCloseTo(exact(cubic, 0.2, 0.7), within(accuracy + 1e-11));
            assertThat(cubic.lengthBetween(0.5, 1, accuracy)).isCloseTo(exact(cubic, 0.5, 1), within(accuracy + 1e-11));
        }
        assertThat(cubic.lengthBetween(0.3, 0.3, 1e-6)).isZero();
    }

    @ParameterizedTest
    @MethodSource("hard")
    void inverse_length_leaves_no_more_than_the_accuracy(Cubic cubic) {
        double length = exact(cubic, 0, 1);
        for (double accuracy : new double[] {1e-2, 1e-6, 1e-9}) {
            for (int i = 0; i <= 20; i++) {
                double wanted = length * i / 20;
                double t = cubic.parameterAt(wanted, accuracy);
                assertThat(exact(cubic, 0, t))
                        .as("at %s to %s", wanted, accuracy)
                        .isCloseTo(wanted, within(accuracy + 1e-10));
            }
        }
        assertThat(cubic.parameterAt(0)).isZero();
        assertThat(cubic.parameterAt(length)).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("hard")
    void short_stretch_is_measured_as_well_as_a_long_one(Cubic cubic) {
        for (double width : new double[] {1e-6, 1e-3, 0.1}) {
            for (double from = 0; from + width < 1; from += 0.17) {
                assertThat(ArcLength.ofShort(cubic, from, from + width, 1e-7))
                        .isCloseTo(exact(cubic, from, from + width), within(1.1e-7));
            }
        }
    }

    /** What the estimate of the error is worth shows on many curves only: here 500, none of them chosen. */
    @Test
    void curves_drawn_by_lot_keep_every_accuracy() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 500; i++) {
            double[] c = random.doubles(8, 0, 300).toArray();
            Cubic cubic = CubicTest.cubic(c);
            double exact = exact(cubic, 0, 1);
            for (double accuracy : new double[] {0.1, 1e-4, 1e-8}) {
                assertThat(cubic.length(accuracy)).isCloseTo(exact, within(accuracy + 1e-11));
            }
            double t = cubic.parameterAt(0.37 * exact, 1e-6);
            assertThat(exact(cubic, 0, t)).isCloseTo(0.37 * exact, within(1e-6));
        }
    }

    @Test
    void distances_off_the_curve_are_refused() {
        Cubic cubic = CubicTest.cubic(0, 0, 30, 180, 120, 240, 260, 250);
        double length = cubic.length(1e-9);
        assertThat(cubic.parameterAt(-5e-7)).isZero();
        assertThat(cubic.parameterAt(length + 5e-7)).isEqualTo(1);
        assertThatThrownBy(() -> cubic.parameterAt(-2e-6))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("distance must lie within 0 to");
        assertThatThrownBy(() -> cubic.parameterAt(length + 2e-6)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> cubic.parameterAt(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}

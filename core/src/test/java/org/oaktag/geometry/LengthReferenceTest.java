package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Lengths that are known in closed form, or were computed with 50 digits, swept over the accuracies a caller may ask
 * for.
 */
class LengthReferenceTest {
    private static final Cubic PYTHAGOREAN = cubic(0, 0, 9, 12, 30, 15, 54, -3);
    private static final Cubic SEMICUBICAL = cubic(0, 0, 0, 0, 9, 0, 27, 27);

    private static Cubic cubic(double... c) {
        return new Cubic(new Point(c[0], c[1]), new Point(c[2], c[3]), new Point(c[4], c[5]), new Point(c[6], c[7]));
    }

    private static void assertLength(Cubic cubic, double expected, double accuracy) {
        assertThat(cubic.length(accuracy))
                .as("length at accuracy %s", accuracy)
                .isCloseTo(expected, within(accuracy + 4e-15 * expected));
    }

    /** A Pythagorean hodograph of speed 45 + 45 t², so that s(t) = 45 t + 15 t³ (Farouki and Sakkalis, 1990). */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1e-3, 1e-6, 1e-9, 1e-12})
    void pythagorean_hodograph_has_a_polynomial_length(double accuracy) {
        assertLength(PYTHAGOREAN, 60, accuracy);
        assertThat(PYTHAGOREAN.lengthBetween(0, 0.5, accuracy)).isCloseTo(24.375, within(accuracy));
        assertThat(PYTHAGOREAN.parameterAt(24.375, accuracy)).isCloseTo(0.5, within(accuracy / 45));
    }

    /** Computed with 50 digits. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1e-3, 1e-6, 1e-9, 1e-12})
    void general_cubic_agrees_with_50_digits(double accuracy) {
        Cubic cubic = cubic(0, 0, 30, 180, 120, 240, 260, 250);
        assertLength(cubic, 397.96574171321595, accuracy);
        assertThat(cubic.parameterAt(397.96574171321595 / 2, accuracy))
                .isCloseTo(0.4611108794495712, within(accuracy / 300 + 1e-15));
    }

    /** The parabola y = x² from 0 to 1: sqrt(5)/2 + asinh(2)/4. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1e-3, 1e-6, 1e-9, 1e-12})
    void parabola_agrees_with_its_closed_form(double accuracy) {
        assertLength(cubic(0, 0, 1.0 / 3, 0, 2.0 / 3, 1.0 / 3, 1, 1), 1.4789428575445975, accuracy);
    }

    /** The semicubical parabola: s(t) = (4 + 9 t²)^(3/2) - 8 (Neile, 1657). */
    @ParameterizedTest
    @ValueSource(doubles = {1, 1e-3, 1e-6, 1e-9, 1e-12})
    void semicubical_parabola_agrees_with_its_closed_form(double accuracy) {
        assertLength(SEMICUBICAL, 13 * Math.sqrt(13) - 8, accuracy);
        for (double t = 0.1; t < 1; t += 0.1) {
            double s = Math.pow(4 + 9 * t * t, 1.5) - 8;
            assertThat(SEMICUBICAL.lengthBetween(0, t, accuracy)).isCloseTo(s, within(accuracy + 1e-13));
            double found = SEMICUBICAL.parameterAt(s, accuracy);
            assertThat(Math.pow(4 + 9 * found * found, 1.5) - 8).isCloseTo(s, within(accuracy + 1e-13));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 1e-3, 1e-6, 1e-9, 1e-12})
    void degenerate_cubics_have_their_plain_lengths(double accuracy) {
        assertLength(cubic(0, 0, 1, 1, 0, 1, 1, 0), 2 * Math.sqrt(2) - 1, accuracy);
        assertLength(cubic(0, 0, 10, 0, -10, 0, 20, 0), 21.25, accuracy);
        assertLength(cubic(0, 0, 0, 0, 3, 4, 3, 4), 5, accuracy);
        assertThat(cubic(7, 7, 7, 7, 7, 7, 7, 7).length(accuracy)).isZero();
    }

    /** Quarter circle with handles 4 (sqrt(2) - 1) / 3, computed with 50 digits. */
    @Test
    void quarter_circle_agrees_with_50_digits() {
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        Cubic quarter = cubic(1, 0, 1, k, k, 1, 0, 1);
        assertThat(quarter.length(1e-12)).isCloseTo(1.5710166980738556, within(1e-12));
        assertThat(quarter.sweep()).isCloseTo(0.7856180831641267, within(1e-15));
        assertThat(quarter.turning()).isCloseTo(Math.PI / 2, within(1e-15));
        double worst = 0;
        for (int i = 0; i <= 10_000; i++) {
            worst = Math.max(worst, Math.abs(quarter.pointAt(i / 10_000.0).distanceTo(Point.ORIGIN) - 1));
        }
        assertThat(worst).isCloseTo(2.725300074e-4, within(1e-11));
    }

    @Test
    void path_measures_what_its_curves_measure() {
        Path path = Path.of(PYTHAGOREAN, new Line(new Point(54, -3), new Point(54, 7)));
        assertThat(path.length()).isCloseTo(70, within(1e-6));
        assertThat(path.pointAt(65).distanceTo(new Point(54, 2))).isLessThan(1e-9);
        Path.Split split = path.splitAt(24.375);
        assertThat(split.before().end()).isEqualTo(split.after().start());
        assertThat(split.before().length() + split.after().length()).isCloseTo(70, within(2e-6));
        assertThat(path.splitAt(60).after().curves()).hasSize(1);
        Outline square = Outline.of(Path.from(Point.of(0, 0))
                .lineTo(Point.of(2, 0))
                .lineTo(Point.of(2, 2))
                .lineTo(Point.of(0, 2))
                .close()
                .build());
        assertThat(square.signedArea()).isEqualTo(4);
        assertThat(square.centroid()).isEqualTo(Point.of(1, 1));
        assertThat(square.contains(Point.of(1, 1))).isTrue();
        assertThat(square.windingNumber(Point.of(1, 1))).isEqualTo(1);
        assertThat(square.contains(Point.of(3, 1))).isFalse();
        assertThat(square.contains(Point.of(2, 1))).isTrue();
        assertThat(PYTHAGOREAN.nearest(PYTHAGOREAN.pointAt(0.3)).distance()).isLessThan(1e-13);
    }

    /**
     * The hodograph (u² - v², 2 u v) of linear u and v has the speed u² + v², whose integral is a polynomial (Farouki
     * and Sakkalis, 1990). What is left at the finest accuracy is rounding.
     */
    @Test
    void rounding_leaves_a_few_units_in_the_last_place_of_the_control_polygon() {
        Random random = new Random(5);
        for (int i = 0; i < 20_000; i++) {
            double u0 = random.nextGaussian();
            double u1 = random.nextGaussian();
            double v0 = random.nextGaussian();
            double v1 = random.nextGaussian();
            Point start = Point.ORIGIN;
            Point control1 = start.plus(new Vector(u0 * u0 - v0 * v0, 2 * u0 * v0));
            Point control2 = control1.plus(new Vector(u0 * u1 - v0 * v1, u0 * v1 + u1 * v0));
            Point end = control2.plus(new Vector(u1 * u1 - v1 * v1, 2 * u1 * v1));
            double exact = u0 * u0 + v0 * v0 + u0 * u1 + v0 * v1 + u1 * u1 + v1 * v1;
            double polygon = start.distanceTo(control1) + control1.distanceTo(control2) + control2.distanceTo(end);
            assertThat(new Cubic(start, control1, control2, end).length(1e-15))
                    .isCloseTo(exact, within(1e-15 + 2e-15 * polygon));
        }
    }
}

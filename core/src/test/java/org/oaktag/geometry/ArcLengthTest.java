package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.complex.Complex;
import org.junit.jupiter.api.Test;

/**
 * The parts of the estimate, which decide how much work is done; that every accuracy is kept {@link HardLengthTest}
 * shows.
 */
class ArcLengthTest {

    /** Against |z - sqrt(z² - 1)| in the complex arithmetic of commons-math, of the two roots the lesser. */
    @Test
    void shrink_is_the_size_of_the_ellipse_through_the_root() {
        for (Complex z : new Complex[] {
            new Complex(0, 0.3),
            new Complex(0.5, 0.01),
            new Complex(1.2, 0),
            new Complex(-3, 4),
            new Complex(0.999, 1e-4)
        }) {
            Complex root = z.multiply(z).subtract(1).sqrt();
            double expected = Math.min(z.subtract(root).abs(), z.add(root).abs());
            double sum = z.subtract(1).abs() + z.add(1).abs();
            assertThat(ArcLength.shrink(sum)).as("%s", z).isCloseTo(expected, within(1e-9));
        }
        assertThat(ArcLength.shrink(2)).isEqualTo(1);
        assertThat(ArcLength.shrink(Double.POSITIVE_INFINITY)).isZero();
        assertThat(ArcLength.shrink(Double.NaN)).isZero();
    }

    @Test
    void cut_is_made_at_a_root_over_the_middle_and_beside_one_near_an_end() {
        assertThat(cut(0.3, 0.1)).isEqualTo(0.3);
        assertThat(cut(-0.89, 0.1)).isEqualTo(-0.89);
        // Between the end and a root 0.02 beyond it: sqrt(2 * 0.02) of the half stretch from that end.
        assertThat(cut(1.02, 0)).isCloseTo(0.8, within(1e-12));
        assertThat(cut(-1.02, 0)).isCloseTo(-0.8, within(1e-12));
        assertThat(cut(0.98, 0)).isCloseTo(0.8, within(1e-12));
        // One that is far beyond both ends halves the stretch.
        assertThat(cut(5, 1)).isZero();
        assertThat(cut(-5, 1)).isZero();
    }

    private static double cut(double x, double y) {
        return ArcLength.cut(x, Math.hypot(x - 1, y), Math.hypot(x + 1, y));
    }

    /** The control polygon of this quarter turn is 2, its chord the root of 2. */
    @Test
    void short_stretch_is_the_mean_of_its_bounds_where_they_leave_no_more_than_the_accuracy() {
        Cubic turn = CubicTest.cubic(0, 0, 1, 0, 1, 0, 1, 1);
        double mean = (2 + Math.sqrt(2)) / 2;
        double half = (2 - Math.sqrt(2)) / 2;
        assertThat(ArcLength.ofShort(turn, 0, 1, 1.001 * half)).isCloseTo(mean, within(1e-15));
        double length = turn.length(1e-12);
        assertThat(Math.abs(length - mean)).isGreaterThan(0.01);
        assertThat(ArcLength.ofShort(turn, 0, 1, 0.999 * half)).isCloseTo(length, within(0.1 * half));
        // The bounds of a part are those of its own control polygon.
        Cubic part = turn.sub(0.2, 0.6);
        double polygon = part.start().distanceTo(part.control1())
                + part.control1().distanceTo(part.control2())
                + part.control2().distanceTo(part.end());
        double chord = part.start().distanceTo(part.end());
        assertThat(ArcLength.ofShort(turn, 0.2, 0.6, 1.001 * (polygon - chord) / 2))
                .isCloseTo((polygon + chord) / 2, within(1e-15));
    }
}

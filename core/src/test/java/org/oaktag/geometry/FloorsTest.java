package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** What is asked below the least that a double can hold comes to an end, with a sound answer. */
@Timeout(20)
class FloorsTest {
    private static final double[] SMALL = {1e-6, 1e-18, Double.MIN_VALUE};
    private static final double[] SIZES = {Double.MIN_VALUE, 1e-200, 1e-100, 1e-61, 1e-50, 1e-12, 1, 1e9, 3e11};

    private static Cubic cubic(double size, double far) {
        return CubicTest.cubic(
                far, far, far + 0.3 * size, far + 0.6 * size, far + 0.6 * size, far - 0.4 * size, far + size, far);
    }

    @Test
    void a_refit_to_less_than_the_coordinates_hold_leaves_the_path() {
        for (double size : new double[] {1e-12, 1, 1e9, 3e11}) {
            Cubic cubic = cubic(size, size < 1e3 ? 1e9 * size : 0);
            Cubic first = cubic.sub(0, 0.3);
            Path path = Path.of(first, Joined.withEnds(cubic.sub(0.3, 1), first.end(), cubic.end()));
            for (double tolerance : SMALL) {
                Path refit = Fit.refit(path, tolerance);
                assertThat(refit.curves()).hasSizeLessThanOrEqualTo(2);
                for (double t = 0; t <= 1; t += 0.125) {
                    assertThat(refit.nearest(cubic.pointAt(t)).distance()).isLessThanOrEqualTo(tolerance + 1e-3 * size);
                }
            }
        }
    }

    @Test
    void a_length_and_its_inverse_keep_to_what_rounding_leaves() {
        for (double size : SIZES) {
            Cubic cubic = cubic(size, 0);
            double length = cubic.length(1e-9 * Math.max(size, 1e-60));
            for (double accuracy : SMALL) {
                assertThat(cubic.length(accuracy)).isCloseTo(length, within(accuracy + 1e-8 * size));
                double t = cubic.parameterAt(0.4 * length, accuracy);
                assertThat(cubic.lengthBetween(0, t, accuracy)).isCloseTo(0.4 * length, within(accuracy + 1e-8 * size));
            }
        }
    }

    /** Below 1e-60 mm it is a point; above it turns as its big sisters do: by symmetry, there and back. */
    @Test
    void a_curve_next_to_nothing_is_a_point_and_answers_every_question() {
        double turning = cubic(1, 0).turning();
        for (double size : SIZES) {
            Cubic cubic = cubic(size, 0);
            assertThat(cubic.isPoint()).isEqualTo(size < 1e-60);
            assertThat(cubic.turning()).isCloseTo(size < 1e-60 ? 0 : turning, within(1e-9));
            Path path = Path.of(cubic, new Line(cubic.start(), cubic.end()).reversed());
            Outline outline = Outline.of(path);
            assertThat(outline.contains(cubic.start())).isTrue();
            assertThat(outline.contains(cubic.start().plus(Vector.of(-1 - size, 0))))
                    .isFalse();
            assertThat(outline.area()).isBetween(0.0, size * size);
            assertThat(path.nearest(cubic.start()).distance()).isZero();
            assertThat(Curvature.of(path).turns(1e-3)).hasSizeLessThanOrEqualTo(3);
            assertThat(Curvature.of(path).leastRadius().radius()).isPositive();
            assertThat(Fit.refit(path, 1e-3).start()).isEqualTo(path.start());
            List<Crossing> met = Crossings.between(cubic, cubic.reversed());
            assertThat(met).hasSize(1);
        }
    }
}

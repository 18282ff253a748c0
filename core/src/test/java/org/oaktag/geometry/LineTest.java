package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LineTest {
    private static final Line LINE = Line.of(Point.of(1, 2), Point.of(4, 6));
    private static final Line POINT = Line.of(Point.of(1, 2), Point.of(1, 2));

    @Test
    void places_and_derivatives_are_linear() {
        assertThat(LINE.pointAt(0.5)).isEqualTo(Point.of(2.5, 4));
        assertThat(LINE.derivativeAt(0.3)).isEqualTo(Vector.of(3, 4));
        assertThat(LINE.secondDerivativeAt(0.3)).isEqualTo(Vector.ZERO);
        assertThat(LINE.directionAt(1)).isEqualTo(Vector.of(0.6, 0.8));
        assertThat(LINE.curvatureAt(0)).isZero();
        assertThat(LINE.turning()).isZero();
    }

    @Test
    void length_is_that_of_the_chord() {
        assertThat(LINE.length()).isEqualTo(5);
        assertThat(LINE.length(1e-3)).isEqualTo(5);
        assertThat(LINE.lengthBetween(0.25, 0.75, 1e-3)).isEqualTo(2.5);
        assertThat(LINE.parameterAt(2)).isEqualTo(0.4);
        assertThat(LINE.parameterAt(2, 1)).isEqualTo(0.4);
        assertThat(LINE.parameterAt(5.5, 1)).isEqualTo(1);
        assertThat(LINE.parameterAt(-0.5, 1)).isZero();
        assertThat(POINT.parameterAt(0)).isZero();
    }

    @Test
    void parts_and_images_are_segments() {
        assertThat(LINE.sub(0, 0.5)).isEqualTo(Line.of(Point.of(1, 2), Point.of(2.5, 4)));
        assertThat(LINE.reversed()).isEqualTo(Line.of(Point.of(4, 6), Point.of(1, 2)));
        assertThat(LINE.transformed(Transform.translation(1, 1))).isEqualTo(Line.of(Point.of(2, 3), Point.of(5, 7)));
        assertThat(LINE.bounds()).isEqualTo(new Bounds(1, 2, 4, 6));
    }

    /** The triangle with the origin: half of (1, 2) x (4, 6). */
    @Test
    void sweep_is_the_triangle_with_the_origin() {
        assertThat(LINE.sweep()).isEqualTo(0.5 * (1 * 6 - 2 * 4));
    }

    @Test
    void nearest_point_is_the_foot_or_an_end() {
        // (2.5, 4) + 5 (-4, 3) / 5.
        Nearest foot = LINE.nearest(Point.of(-1.5, 7));
        assertThat(foot.t()).isCloseTo(0.5, within(1e-15));
        assertThat(foot.distance()).isCloseTo(5, within(1e-14));
        assertThat(LINE.nearest(Point.of(0, 0)).t()).isZero();
        assertThat(LINE.nearest(Point.of(0, 0)).distance()).isEqualTo(Math.sqrt(5));
        assertThat(LINE.nearest(Point.of(9, 9)).t()).isEqualTo(1);
        assertThat(POINT.nearest(Point.of(1, 5))).isEqualTo(new Nearest(0, Point.of(1, 2), 3));
    }

    @Test
    void point_has_no_direction() {
        assertThat(POINT.isPoint()).isTrue();
        assertThat(LINE.isPoint()).isFalse();
        assertThatThrownBy(() -> POINT.directionAt(0))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("has no direction");
    }

    @Test
    void arguments_out_of_range_are_refused() {
        for (double bad : new double[] {-1e-12, 1.0000001, Double.NaN}) {
            assertThatThrownBy(() -> LINE.pointAt(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("t must lie within 0 to 1, got " + bad);
            assertThatThrownBy(() -> LINE.derivativeAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LINE.secondDerivativeAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LINE.directionAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LINE.curvatureAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LINE.sub(bad, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LINE.sub(0, bad)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> LINE.lengthBetween(0.6, 0.5, 1e-6))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("t0 must not exceed t1");
        assertThat(LINE.lengthBetween(0.5, 0.5, 1e-6)).isZero();
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> LINE.length(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("accuracy must be positive and finite, got " + bad);
            assertThatThrownBy(() -> LINE.lengthBetween(0, 1, bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> LINE.parameterAt(1, bad)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> LINE.parameterAt(5.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("distance must lie within 0 to 5.0 mm (the length), got 5.1");
        assertThatThrownBy(() -> LINE.parameterAt(-0.1)).isInstanceOf(IllegalArgumentException.class);
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class PointTest {
    private static final Point P = Point.of(1, 2);
    private static final Point Q = Point.of(4, -2);

    @Test
    void points_differ_by_a_vector() {
        assertThat(Q.minus(P)).isEqualTo(Vector.of(3, -4));
        assertThat(P.plus(Vector.of(3, -4))).isEqualTo(Q);
        assertThat(P.distanceTo(Q)).isEqualTo(5);
    }

    @Test
    void points_between_are_weighted_means() {
        assertThat(P.midpoint(Q)).isEqualTo(Point.of(2.5, 0));
        assertThat(P.lerp(Q, 0.25)).isEqualTo(Point.of(1.75, 1));
        assertThat(P.lerp(Q, 0)).isEqualTo(P);
        assertThat(P.lerp(Q, -1)).isEqualTo(Point.of(-2, 6));
    }

    @Test
    void share_of_one_is_exactly_the_other_point() {
        Point far = Point.of(0.1, 0.3);
        assertThat(Point.of(1e9, 1e9).lerp(far, 1)).isSameAs(far);
    }

    @Test
    void closeness_includes_the_tolerance() {
        assertThat(P.isCloseTo(Q, 5)).isTrue();
        assertThat(P.isCloseTo(Q, Math.nextDown(5.0))).isFalse();
    }

    @Test
    void image_is_that_of_the_map() {
        assertThat(P.transformed(Transform.translation(10, 20))).isEqualTo(Point.of(11, 22));
    }

    @Test
    void negative_zero_is_zero() {
        assertThat(Point.of(-0.0, -0.0)).isEqualTo(Point.ORIGIN);
    }

    @Test
    void plane_ends_at_a_thousand_million_kilometres_squared() {
        assertThat(Point.of(1e12, -1e12).x()).isEqualTo(1e12);
        assertThatThrownBy(() -> Point.of(Math.nextUp(1e12), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("x must lie within -1e12 to 1e12 mm");
        assertThatThrownBy(() -> Point.of(0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("y must lie within -1e12 to 1e12 mm, got NaN");
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VectorTest {
    private static final Vector A = Vector.of(3, -4);
    private static final Vector B = Vector.of(5, 12);

    @Test
    void sums_and_products_are_those_of_the_components() {
        assertThat(A.plus(B)).isEqualTo(Vector.of(8, 8));
        assertThat(A.minus(B)).isEqualTo(Vector.of(-2, -16));
        assertThat(A.times(2)).isEqualTo(Vector.of(6, -8));
        assertThat(A.negated()).isEqualTo(Vector.of(-3, 4));
        assertThat(A.dot(B)).isEqualTo(15 - 48);
        assertThat(A.cross(B)).isEqualTo(36 + 20);
        assertThat(A.length()).isEqualTo(5);
        assertThat(B.length()).isEqualTo(13);
    }

    @Test
    void negative_zero_is_zero() {
        assertThat(Vector.of(-0.0, -0.0)).isEqualTo(Vector.ZERO);
        assertThat(Vector.ZERO.negated()).isEqualTo(Vector.ZERO);
    }

    @Test
    void unit_vector_keeps_the_direction_at_any_size() {
        for (double size : new double[] {1e-300, 1, 1e300}) {
            Vector unit = Vector.of(3 * size, -4 * size).unit();
            assertThat(unit.x()).isCloseTo(0.6, within(1e-15));
            assertThat(unit.y()).isCloseTo(-0.8, within(1e-15));
        }
        assertThat(Vector.of(0, -7).unit()).isEqualTo(Vector.of(0, -1));
        assertThat(Vector.of(-7, 0).unit()).isEqualTo(Vector.of(-1, 0));
        assertThatThrownBy(Vector.ZERO::unit)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("zero vector");
    }

    /** With y down the table's clockwise is from x to y. */
    @Test
    void angles_are_clockwise_positive() {
        assertThat(Vector.of(0, 2).angle()).isEqualTo(Math.PI / 2);
        assertThat(Vector.ZERO.angle()).isZero();
        assertThat(Vector.of(1, 0).angleTo(Vector.of(0, 1))).isEqualTo(Math.PI / 2);
        assertThat(Vector.of(0, 1).angleTo(Vector.of(1, 0))).isEqualTo(-Math.PI / 2);
        assertThat(Vector.of(1, 1).angleTo(Vector.of(-1, 1))).isCloseTo(Math.PI / 2, within(1e-15));
    }

    @Test
    void turned_vectors_keep_their_length() {
        Vector turned = A.rotated(Math.PI / 6);
        assertThat(turned.x()).isCloseTo(3 * Math.sqrt(0.75) + 2, within(1e-14));
        assertThat(turned.y()).isCloseTo(1.5 - 4 * Math.sqrt(0.75), within(1e-14));
        Vector polar = Vector.polar(2, Math.PI / 6);
        assertThat(polar.x()).isCloseTo(Math.sqrt(3), within(1e-15));
        assertThat(polar.y()).isCloseTo(1, within(1e-15));
    }

    @Test
    void normals_lie_to_the_left_and_right_of_the_walker() {
        assertThat(A.leftNormal()).isEqualTo(Vector.of(-4, -3));
        assertThat(A.rightNormal()).isEqualTo(Vector.of(4, 3));
        assertThat(A.perpendicular()).isEqualTo(A.rightNormal());
    }

    @Test
    void displacement_is_turned_but_not_moved() {
        Transform map = Transform.rotation(Math.PI / 2, Point.of(7, 9)).then(Transform.translation(1, 2));
        Vector image = A.transformed(map);
        assertThat(image.x()).isCloseTo(4, within(1e-15));
        assertThat(image.y()).isCloseTo(3, within(1e-15));
    }

    @Test
    void components_must_be_finite() {
        assertThatThrownBy(() -> Vector.of(Double.NaN, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("x must be finite, got NaN");
        assertThatThrownBy(() -> Vector.of(0, Double.NEGATIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("y must be finite, got -Infinity");
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TransformTest {
    private static void assertImage(Transform map, Point of, double x, double y) {
        Point image = map.apply(of);
        assertThat(image.x()).isCloseTo(x, within(1e-12));
        assertThat(image.y()).isCloseTo(y, within(1e-12));
    }

    @Test
    void rotation_turns_clockwise_about_its_point() {
        Transform quarter = Transform.rotation(Math.PI / 2, Point.of(10, 20));
        assertImage(quarter, Point.of(11, 20), 10, 21);
        assertImage(quarter, Point.of(10, 21), 9, 20);
        assertImage(quarter, Point.of(10, 20), 10, 20);
        Transform sixth = Transform.rotation(Math.PI / 3, Point.of(-2, 5));
        assertImage(sixth, Point.of(0, 5), -1, 5 + Math.sqrt(3));
        assertImage(sixth, Point.of(-2, 5), -2, 5);
    }

    @Test
    void mirrors_keep_their_line() {
        assertImage(Transform.mirrorX(3), Point.of(5, 7), 1, 7);
        Transform slanted = Transform.mirror(Point.of(1, 0), Point.of(4, 4));
        assertImage(slanted, Point.of(1, 0), 1, 0);
        assertImage(slanted, Point.of(4, 4), 4, 4);
        // The line leads along (3, 4) / 5; (-4, 3) across it is turned round.
        assertImage(slanted, Point.of(1 - 4, 3), 1 + 4, -3);
        Transform off = Transform.mirror(Point.of(2, 7), Point.of(6, 10));
        assertImage(off, Point.of(2, 7), 2, 7);
        assertImage(off, Point.of(6, 10), 6, 10);
        assertImage(off, Point.of(2 - 3, 7 + 4), 2 + 3, 7 - 4);
        assertThat(slanted.reverses()).isTrue();
        assertThat(slanted.isRigid()).isTrue();
        assertThatThrownBy(() -> Transform.mirror(Point.of(1, 1), Point.of(1, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two different points");
    }

    @Test
    void composed_map_applies_the_first_first() {
        Transform first = new Transform(2, 3, 5, 7, 11, 13);
        Transform next = new Transform(17, 19, 23, 29, 31, 37);
        Point p = Point.of(41, 43);
        assertThat(first.then(next).apply(p)).isEqualTo(next.apply(first.apply(p)));
        assertThat(first.then(Transform.IDENTITY)).isEqualTo(first);
        assertThat(Transform.IDENTITY.then(first)).isEqualTo(first);
        assertThat(first.then(next).determinant()).isEqualTo(first.determinant() * next.determinant());
    }

    @Test
    void six_numbers_are_those_of_a_matrix() {
        Transform map = new Transform(2, 3, 5, 7, 11, 13);
        assertThat(map.apply(Point.of(1, 10))).isEqualTo(Point.of(2 + 50 + 11, 3 + 70 + 13));
        assertThat(map.apply(Vector.of(4, 10))).isEqualTo(Vector.of(8 + 50, 12 + 70));
        assertThat(map.determinant()).isEqualTo(14 - 15);
    }

    @Test
    void rigid_maps_keep_lengths_and_angles() {
        assertThat(Transform.IDENTITY.isRigid()).isTrue();
        assertThat(Transform.rotation(0.3, Point.of(5, 6)).isRigid()).isTrue();
        assertThat(Transform.translation(Vector.of(1, 2)).isRigid()).isTrue();
        assertThat(Transform.scale(1.01).isRigid()).isFalse();
        assertThat(new Transform(1, 0, 0, 1.01, 0, 0).isRigid()).isFalse();
        assertThat(new Transform(1.01, 0, 0, 1, 0, 0).isRigid()).isFalse();
        // Both axes keep their length, but the angle between them does not.
        assertThat(new Transform(1, 0, 0.6, 0.8, 0, 0).isRigid()).isFalse();
        assertThat(new Transform(0.8, 0.6, 0.8, 0.6, 0, 0).isRigid()).isFalse();
    }

    @Test
    void only_mirrors_reverse() {
        assertThat(Transform.mirrorX(0).reverses()).isTrue();
        assertThat(Transform.scale(2).reverses()).isFalse();
        assertThat(new Transform(1, 1, 1, 1, 0, 0).reverses()).isFalse();
    }

    @Test
    void scale_is_positive_and_coefficients_finite() {
        assertThat(Transform.scale(3).apply(Point.of(1, 2))).isEqualTo(Point.of(3, 6));
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Transform.scale(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("scale must be positive and finite, got " + bad);
        }
        for (int i = 0; i < 6; i++) {
            double[] c = {1, 0, 0, 1, 0, 0};
            c[i] = Double.NaN;
            assertThatThrownBy(() -> new Transform(c[0], c[1], c[2], c[3], c[4], c[5]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("abcdef".charAt(i) + " must be finite, got NaN");
        }
    }
}

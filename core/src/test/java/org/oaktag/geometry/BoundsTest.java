package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BoundsTest {
    private static final Bounds BOX = new Bounds(1, 2, 5, 10);

    @Test
    void measures_are_differences_and_means() {
        assertThat(BOX.width()).isEqualTo(4);
        assertThat(BOX.height()).isEqualTo(8);
        assertThat(BOX.center()).isEqualTo(Point.of(3, 6));
        assertThat(Bounds.of(Point.of(5, 2), Point.of(1, 10), Point.of(3, 3))).isEqualTo(BOX);
        assertThatThrownBy(Bounds::of).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void union_holds_both() {
        assertThat(BOX.union(new Bounds(0, 3, 2, 11))).isEqualTo(new Bounds(0, 2, 5, 11));
        assertThat(BOX.union(new Bounds(2, 1, 6, 4))).isEqualTo(new Bounds(1, 1, 6, 10));
    }

    @Test
    void rim_belongs_to_the_box() {
        for (Point corner : new Point[] {Point.of(1, 2), Point.of(5, 2), Point.of(5, 10), Point.of(1, 10)}) {
            assertThat(BOX.contains(corner)).isTrue();
        }
        double out = 1e-12;
        assertThat(BOX.contains(Point.of(1 - out, 5))).isFalse();
        assertThat(BOX.contains(Point.of(5 + out, 5))).isFalse();
        assertThat(BOX.contains(Point.of(3, 2 - out))).isFalse();
        assertThat(BOX.contains(Point.of(3, 10 + out))).isFalse();
    }

    @Test
    void boxes_that_share_a_rim_overlap() {
        assertThat(BOX.overlaps(new Bounds(5, 3, 9, 4))).isTrue();
        assertThat(BOX.overlaps(new Bounds(-3, 3, 1, 4))).isTrue();
        assertThat(BOX.overlaps(new Bounds(2, 10, 3, 14))).isTrue();
        assertThat(BOX.overlaps(new Bounds(2, 0, 3, 2))).isTrue();
        assertThat(BOX.overlaps(new Bounds(5.1, 3, 9, 4))).isFalse();
        assertThat(BOX.overlaps(new Bounds(-3, 3, 0.9, 4))).isFalse();
        assertThat(BOX.overlaps(new Bounds(2, 10.1, 3, 14))).isFalse();
        assertThat(BOX.overlaps(new Bounds(2, 0, 3, 1.9))).isFalse();
    }

    @Test
    void margin_grows_and_shrinks_down_to_nothing() {
        assertThat(BOX.expanded(1)).isEqualTo(new Bounds(0, 1, 6, 11));
        assertThat(BOX.expanded(-2)).isEqualTo(new Bounds(3, 4, 3, 8));
        assertThatThrownBy(() -> BOX.expanded(-2.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("inside out");
        assertThatThrownBy(() -> new Bounds(0, 1, 5, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThat(new Bounds(1, 1, 1, 1).width()).isZero();
    }

    @Test
    void sides_lie_on_the_plane() {
        for (int i = 0; i < 4; i++) {
            double[] c = {0, 0, 0, 0};
            c[i] = Double.NaN;
            String name = new String[] {"minX", "minY", "maxX", "maxY"}[i];
            assertThatThrownBy(() -> new Bounds(c[0], c[1], c[2], c[3]))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageStartingWith(name + " must lie within");
        }
        assertThat(new Bounds(-0.0, -0.0, -0.0, -0.0)).isEqualTo(new Bounds(0, 0, 0, 0));
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class CornerStyleTest {
    private static final Vector EAST = Vector.of(1, 0);

    private static Vector turned(double angle) {
        return EAST.rotated(angle);
    }

    @Test
    void a_limit_is_finite_and_at_least_one() {
        assertThat(CornerStyle.mitre(1)).isEqualTo(new CornerStyle.Mitre(1));
        assertThat(CornerStyle.squaredToFirst(1)).isEqualTo(new CornerStyle.SquaredTo(false, 1));
        assertThat(CornerStyle.squaredToSecond(2)).isEqualTo(new CornerStyle.SquaredTo(true, 2));
        for (double limit : new double[] {0.999, 0, -2, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> CornerStyle.mitre(limit))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("mitre limit must be finite and at least 1, got " + limit);
            assertThatThrownBy(() -> CornerStyle.squaredToFirst(limit)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    /** Only at inner corners, and a turn of less than a millionth is none; everywhere if asked for. */
    @Test
    void different_distances_are_carried_round_inner_corners() {
        OffsetCorners corners = OffsetCorners.all(CornerStyle.round(), 3);
        assertThat(corners.after()).isEqualTo(List.of(CornerStyle.round(), CornerStyle.round(), CornerStyle.round()));
        for (double[] d : new double[][] {{3, 5}, {5, 3}}) {
            assertThat(corners.carries(EAST, turned(-0.5), d[0], d[1])).isTrue();
            assertThat(corners.carries(EAST, turned(-2e-6), d[0], d[1])).isTrue();
            assertThat(corners.carries(EAST, turned(-0.5e-6), d[0], d[1])).isFalse();
            assertThat(corners.carries(EAST, turned(0.5), d[0], d[1])).isFalse();
            assertThat(corners.withAllCarried().carries(EAST, turned(0.5), d[0], d[1]))
                    .isTrue();
        }
        assertThat(corners.carries(EAST, turned(-0.5), 3, 3)).isFalse();
        assertThat(corners.withAllCarried().carries(EAST, turned(-0.5), 3, 3)).isFalse();
    }
}

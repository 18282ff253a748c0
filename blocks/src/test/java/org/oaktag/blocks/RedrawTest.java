package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

class RedrawTest {

    private static final Path WHOLE =
            Path.of(new Cubic(Point.of(0, 80), Point.of(45, 80), Point.of(80, 40), Point.of(75, 0)));

    @ParameterizedTest
    @ValueSource(doubles = {1e-5, 0.2, 3})
    void a_sliver_at_the_end_goes_along_instead_of_being_blown_up(double sliver) {
        Path.Split split = WHOLE.splitAt(WHOLE.length() - sliver);
        Path cut = Path.of(
                List.of(split.before().curves().get(0), split.after().curves().get(0)));
        Point end = WHOLE.end().plus(new Vector(8, -2));
        assertNear(Redraw.between(cut, cut.start(), end), Redraw.between(WHOLE, WHOLE.start(), end), sliver);
        Point start = WHOLE.end().plus(new Vector(-8, 2));
        Path reversed = Redraw.between(cut.reversed(), start, cut.start());
        assertNear(reversed.reversed(), Redraw.between(WHOLE, WHOLE.start(), start), sliver);
    }

    @Test
    void a_curve_as_long_as_the_way_of_its_end_is_redrawn_alone() {
        Path.Split split = WHOLE.splitAt(WHOLE.length() / 2);
        Path cut = Path.of(
                List.of(split.before().curves().get(0), split.after().curves().get(0)));
        Path redrawn = Redraw.between(cut, cut.start(), WHOLE.end().plus(new Vector(8, -2)));
        assertThat(redrawn.curves().get(0)).isEqualTo(cut.curves().get(0));
        assertThat(redrawn.endDirection().dot(cut.endDirection())).isCloseTo(1, within(1e-12));
    }

    /**
     * A path that is cut into two is redrawn nearly as the whole: by no more than the sliver and a share of the way.
     */
    private static void assertNear(Path cut, Path whole, double sliver) {
        assertThat(cut.curves()).hasSize(2);
        assertThat(cut.startDirection().dot(whole.startDirection())).isCloseTo(1, within(1e-9));
        assertThat(cut.endDirection().dot(whole.endDirection())).isCloseTo(1, within(1e-9));
        for (double share : new double[] {0.2, 0.5, 0.8, 0.95}) {
            assertThat(cut.nearest(whole.pointAt(share * whole.length())).distance())
                    .isLessThanOrEqualTo(1e-6 + sliver);
        }
    }
}

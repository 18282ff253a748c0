package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class DustTest {
    private static final double TOLERANCE = 0.01;

    /** A quarter of a bow 100 by 50 whose first handle is so long and points that way. */
    private static Cubic bow(double size, double handle, double angle) {
        Point start = Point.of(10 * size, 20 * size);
        return new Cubic(
                start,
                start.plus(Vector.polar(handle * size, angle)),
                start.plus(Vector.of(60 * size, -50 * size)),
                start.plus(Vector.of(100 * size, -50 * size)));
    }

    @Test
    void a_handle_of_dust_is_drawn_in_and_a_longer_one_left() {
        for (double size : new double[] {1e-3, 1, 1e4}) {
            for (double angle = 0; angle < 6; angle += 0.5) {
                Cubic dusty = bow(size, 9e-5, angle);
                Cubic clean = (Cubic) Dust.retracted(dusty, TOLERANCE * size);
                assertThat(clean.control1()).isEqualTo(clean.start());
                assertThat(clean.control2()).isEqualTo(dusty.control2());
                Cubic back = (Cubic) Dust.retracted(dusty.reversed(), TOLERANCE * size);
                assertThat(back).isEqualTo(clean.reversed());
                Cubic handled = bow(size, 2e-4, angle);
                assertThat(Dust.retracted(handled, TOLERANCE * size)).isSameAs(handled);
                // A handle as long as the tolerance counts, however great the curve is.
                assertThat(Dust.retracted(dusty, 9e-5 * size)).isSameAs(dusty);
            }
        }
    }

    /**
     * Its normal swings about the start by any angle within the first ten-millionth of the curve; the parallel leaves
     * square to the bow.
     */
    @Test
    void dust_in_any_direction_leaves_the_parallel_where_it_is() {
        Path clean = OffsetCurve.of(bow(1, 0, 0), 12, TOLERANCE);
        for (double handle = 1e-5; handle > 1e-14; handle *= 0.07) {
            for (double angle = 0; angle < 6.2; angle += 0.3) {
                for (double left : new double[] {-12, 12}) {
                    Path parallel = OffsetCurve.of(bow(1, handle, angle), left, TOLERANCE);
                    Path expected = left > 0 ? clean : OffsetCurve.of(bow(1, 0, 0), left, TOLERANCE);
                    assertThat(parallel).as("%s at %s", handle, angle).isEqualTo(expected);
                }
            }
        }
        Vector leaving = Vector.of(60, -50).unit();
        assertThat(clean.start()
                        .distanceTo(Point.of(10, 20).plus(leaving.leftNormal().times(12))))
                .isCloseTo(0, within(1e-12));
    }

    /** Too long for dust: the tangent does turn from the handle's direction to the bow's, about the start. */
    @Test
    void a_short_handle_that_is_no_dust_is_swung_about() {
        for (double handle : new double[] {2e-4, 1e-3, 1e-2}) {
            Cubic hooked = bow(1, handle, 2.5);
            Path parallel = OffsetCurve.of(hooked, -12, TOLERANCE);
            assertThat(parallel.start().distanceTo(hooked.start().plus(Vector.polar(12, 2.5 + Math.PI / 2))))
                    .isLessThan(1e-9);
            for (double t = 1e-9; t < 1; t *= 1.5) {
                Point exact = hooked.pointAt(t)
                        .plus(hooked.directionAt(t).leftNormal().times(-12));
                assertThat(parallel.nearest(exact).distance()).as("t %s", t).isLessThan(TOLERANCE);
            }
            assertThat(parallel.curves()).hasSizeLessThan(20);
        }
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class SourceCuspsTest {
    /** The cubic from the origin whose derivative is {@code 3 (t - still)(a + b t)}. */
    static Cubic withCusp(double still, Vector a, Vector b) {
        Vector h0 = a.times(-still);
        Vector h1 = a.times(1 - 2 * still).minus(b.times(still)).times(0.5);
        Vector h2 = a.plus(b).times(1 - still);
        Point c1 = Point.ORIGIN.plus(h0);
        Point c2 = c1.plus(h1);
        return Cubic.of(Point.ORIGIN, c1, c2, c2.plus(h2));
    }

    /** From (0, 0) by (1 + e, 1) and (-e, 1) to (1, 0): in the middle its speed is 1.5 |e|, a cusp at e = 0. */
    static Cubic nearCusp(double size, double e) {
        return CubicTest.cubic(0, 0, size * (1 + e), size, -size * e, size, size, 0);
    }

    private static Cubic along(double x0, double x1, double x2, double x3) {
        return CubicTest.cubic(0.6 * x0, 0.8 * x0, 0.6 * x1, 0.8 * x1, 0.6 * x2, 0.8 * x2, 0.6 * x3, 0.8 * x3);
    }

    @Test
    void a_cusp_is_a_cut_at_which_both_parts_stand_still_to_the_last_bit() {
        for (double size : new double[] {1e-3, 1, 1e4}) {
            for (double still : new double[] {0.25, 0.5, 0.8}) {
                Cubic cubic = withCusp(still, Vector.of(size, 2 * size), Vector.of(3 * size, -size));
                List<Cubic> parts = SourceCusps.cut(cubic);
                assertThat(parts).hasSize(2);
                Cubic before = parts.get(0);
                Cubic after = parts.get(1);
                assertThat(before.start()).isEqualTo(cubic.start());
                assertThat(after.end()).isEqualTo(cubic.end());
                assertThat(before.control2()).isEqualTo(before.end());
                assertThat(after.control1()).isEqualTo(after.start());
                assertThat(before.control1()).isNotEqualTo(before.start());
                assertThat(after.control2()).isNotEqualTo(after.end());
                assertThat(before.end()).isEqualTo(after.start());
                assertThat(before.end().distanceTo(cubic.pointAt(still))).isLessThan(1e-9 * size);
                assertThat(before.pointAt(0.5).distanceTo(cubic.pointAt(0.5 * still)))
                        .isLessThan(1e-9 * size);
                assertThat(after.pointAt(0.5).distanceTo(cubic.pointAt(0.5 * (1 + still))))
                        .isLessThan(1e-9 * size);
            }
        }
    }

    /** x = 0, 10, -10, 20 has the derivative 240 (t - 1/4)(t - 1/2): there and back and there, to 3.125, 2.5 and 20. */
    @Test
    void a_straight_run_with_two_turns_has_three_parts() {
        assertEnds(along(0, 10, -10, 20), 3.125, 2.5, 20);
        assertEnds(along(20, -10, 10, 0), 2.5, 3.125, 0);
    }

    /** Of the three angles between its sides one alone is more than right, and the end that stands still is no cut. */
    @Test
    void a_straight_run_whose_end_stands_still_has_a_cut_at_its_turn_alone() {
        // 30 (1 - t)(1 - 4 t): turns at 1/4.
        assertEnds(along(0, 10, -5, -5), 3.4375, -5);
        // 30 t (3 - 4 t): turns at 3/4.
        assertEnds(along(0, 0, 15, 5), 8.4375, 5);
        // 30 (1 - 2 t): turns at 1/2.
        assertEnds(along(0, 10, 10, 0), 7.5, 0);
    }

    private static void assertEnds(Cubic cubic, double... along) {
        List<Cubic> parts = SourceCusps.cut(cubic);
        assertThat(parts).hasSize(along.length);
        for (int i = 0; i < along.length; i++) {
            Point end = Point.of(0.6 * along[i], 0.8 * along[i]);
            assertThat(parts.get(i).end().distanceTo(end)).as("end %s", i).isLessThan(1e-12);
            assertThat(parts.get(i).start())
                    .isEqualTo(i == 0 ? cubic.start() : parts.get(i - 1).end());
        }
    }

    /** The longest side of the hodograph is 3 (1 + e) sqrt 2 or so: the share of its size is e / (2 sqrt 2). */
    @Test
    void a_near_cusp_is_a_cut_at_which_nothing_stands_still() {
        for (double size : new double[] {1e-3, 1, 1e4}) {
            for (double e : new double[] {-2.7e-3, -1e-5, -1e-9, 1e-9, 1e-5, 2.7e-3}) {
                List<Cubic> parts = SourceCusps.cut(nearCusp(size, e));
                assertThat(parts).as("e %s", e).hasSize(2);
                Vector arriving = parts.get(0).end().minus(parts.get(0).control2());
                Vector leaving = parts.get(1).control1().minus(parts.get(1).start());
                assertThat(arriving.x()).isCloseTo(-0.25 * e * size, within(1e-14 * size));
                assertThat(leaving.x()).isCloseTo(-0.25 * e * size, within(1e-14 * size));
            }
            for (double e : new double[] {-3e-3, 3e-3}) {
                assertThat(SourceCusps.cut(nearCusp(size, e))).containsExactly(nearCusp(size, e));
            }
        }
    }

    @Test
    void a_curve_without_a_turn_back_is_whole() {
        for (Cubic whole : List.of(
                CubicTest.cubic(0, 0, 30, -180, 120, -240, 260, -250),
                CubicTest.cubic(0, 0, 0, 0, 9, 0, 27, 27),
                CubicTest.cubic(0, 0, 100, 100, -100, 100, 0, 0))) {
            assertThat(SourceCusps.cut(whole)).containsExactly(whole);
        }
    }
}

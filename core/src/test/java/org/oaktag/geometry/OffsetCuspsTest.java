package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Where the distance equals the radius of curvature on the inside of the bend: for y = x² and y = x³ in closed form.
 */
class OffsetCuspsTest {
    /** The parabola y = x²/size from x0 to x1 in sizes. Walked to the right with y down it bends to the right. */
    static Cubic parabola(double size, double x0, double x1) {
        double third = (x1 - x0) / 3;
        return CubicTest.cubic(
                size * x0,
                size * x0 * x0,
                size * (x0 + third),
                size * x0 * (x0 + 2 * third),
                size * (x1 - third),
                size * x1 * (x1 - 2 * third),
                size * x1,
                size * x1 * x1);
    }

    /** Its radius of curvature is {@code size/2 (1 + 4x²)^(3/2)}. */
    static double radius(double size, double x) {
        return 0.5 * size * Math.pow(1 + 4 * x * x, 1.5);
    }

    @Test
    void parallel_of_a_parabola_has_its_cusps_where_the_radius_is_the_distance() {
        for (double size : new double[] {1e-3, 1, 30, 1e4}) {
            Cubic cubic = parabola(size, -1, 2);
            for (double x : new double[] {0.125, 0.5, 0.75}) {
                double d = radius(size, x);
                assertCusps(OffsetCusps.of(cubic, -d), (1 - x) / 3, (1 + x) / 3);
                assertCusps(OffsetCusps.of(cubic.reversed(), d), (2 - x) / 3, (2 + x) / 3);
                assertThat(OffsetCusps.of(cubic, d)).as("outside").isEmpty();
            }
            assertCusps(OffsetCusps.of(cubic, -radius(size, 1.5)), 2.5 / 3);
            assertThat(OffsetCusps.of(cubic, -radius(size, 2.01))).isEmpty();
            assertThat(OffsetCusps.of(cubic, -0.499 * size)).isEmpty();
            assertThat(OffsetCusps.of(cubic, -0.501 * size)).hasSize(2);
        }
    }

    /**
     * {@code (1 + 9x⁴)^(3/2) = 6 d x}: the radius is least at x⁴ = 1/45, and the two sides of the inflection mirror
     * each other.
     */
    @Test
    void parallel_of_a_cubical_parabola_has_cusps_on_one_side_of_the_inflection() {
        Cubic cubic = CubicTest.cubic(-1, -1, -1.0 / 3, 1, 1.0 / 3, -1, 1, 1);
        double x = 0.5;
        double d = Math.pow(1 + 9 * x * x * x * x, 1.5) / (6 * x);
        double low = 0.1;
        double sharpest = Math.pow(45, -0.25);
        double high = sharpest;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (Math.pow(1 + 9 * Math.pow(middle, 4), 1.5) > 6 * d * middle) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertCusps(OffsetCusps.of(cubic, -d), 0.5 * (1 + low), 0.5 * (1 + x));
        assertCusps(OffsetCusps.of(cubic, d), 0.5 * (1 - x), 0.5 * (1 - low));
        double least = Math.pow(1.2, 1.5) / (6 * sharpest);
        for (int side = -1; side <= 1; side += 2) {
            assertThat(OffsetCusps.of(cubic, side * 0.9999 * least)).isEmpty();
            assertThat(OffsetCusps.of(cubic, side * 1.0001 * least)).hasSize(2);
        }
    }

    /**
     * x = 27t², y = 27t³ stands still at its start; there {@code 27 t (4 + 9t²)^(3/2) = 6 d} is left of the condition.
     */
    @Test
    void where_the_curve_itself_stands_still_at_an_end_its_parallel_has_no_cusp() {
        Cubic cubic = CubicTest.cubic(0, 0, 0, 0, 9, 0, 27, 27);
        for (double t : new double[] {0.01, 0.25, 0.75}) {
            double d = 4.5 * t * Math.pow(4 + 9 * t * t, 1.5);
            assertCusps(OffsetCusps.of(cubic, -d), t);
            assertCusps(OffsetCusps.of(cubic.reversed(), d), 1 - t);
            assertThat(OffsetCusps.of(cubic, d)).isEmpty();
        }
    }

    @Test
    void all_cusps_of_wavy_curves_are_found_as_a_fine_search_finds_them() {
        for (Cubic cubic : List.of(
                CubicTest.cubic(0, 0, 200, 30, -90, 80, 100, 100),
                CubicTest.cubic(0, 0, 120, 10, -30, 30, 100, 0),
                CubicTest.cubic(3, 5, 100, 100, 0, 100, 97, -4),
                CubicTest.cubic(0, 0, 10, 90, 90, -80, 100, 7))) {
            for (double d : new double[] {-60, -20, -8, -2, 2, 8, 20, 60}) {
                assertCusps(OffsetCusps.of(cubic, d), searched(cubic, d));
            }
        }
    }

    private static double[] searched(Cubic cubic, double d) {
        List<Double> found = new ArrayList<>();
        int steps = 2000;
        for (int i = 0; i < steps; i++) {
            double low = (double) i / steps;
            double high = (i + 1.0) / steps;
            boolean backwards = runsBackwards(cubic, d, low);
            if (backwards == runsBackwards(cubic, d, high)) {
                continue;
            }
            for (int k = 0; k < 50; k++) {
                double middle = 0.5 * (low + high);
                if (runsBackwards(cubic, d, middle) == backwards) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            found.add(low);
        }
        return found.stream().mapToDouble(t -> t).toArray();
    }

    private static boolean runsBackwards(Cubic cubic, double d, double t) {
        return 1 + d * cubic.curvatureAt(t) < 0;
    }

    private static void assertCusps(double[] actual, double... expected) {
        assertThat(actual).containsExactly(expected, within(1e-9));
    }
}

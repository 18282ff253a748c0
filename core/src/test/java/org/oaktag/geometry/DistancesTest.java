package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Distances that follow from circles, segments and shifts. */
class DistancesTest {
    private static Path circle(double x, double y, double radius) {
        return Arcs.circular(Point.of(x, y), Point.of(x + radius, y), 2 * Math.PI, 1e-8);
    }

    private static void assertOnBoth(Distances.Apart apart, Path first, Path second) {
        Point one =
                first.curves().get(apart.first().curve()).pointAt(apart.first().t());
        Point other = second.curves()
                .get(apart.second().curve())
                .pointAt(apart.second().t());
        assertThat(one.distanceTo(apart.firstPoint())).isLessThan(1e-9);
        assertThat(other.distanceTo(apart.secondPoint())).isLessThan(1e-9);
        assertThat(one.distanceTo(other)).isCloseTo(apart.distance(), within(1e-9));
    }

    @Test
    void circles_side_by_side() {
        Path left = circle(0, 0, 30);
        Path right = circle(100, 0, 20);
        Distances.Apart least = Distances.least(left, right, 1e-6);
        Distances.Apart greatest = Distances.greatest(left, right, 1e-6);
        Distances.Apart hausdorff = Distances.hausdorff(left, right, 1e-6);
        assertThat(least.distance()).isCloseTo(50, within(2e-6));
        assertThat(greatest.distance()).isCloseTo(150, within(2e-6));
        // From the far side of the greater circle to the near side of the other.
        assertThat(hausdorff.distance()).isCloseTo(110, within(2e-6));
        assertThat(Distances.straying(right, left, 1e-6).distance()).isCloseTo(90, within(2e-6));
        assertOnBoth(least, left, right);
        assertOnBoth(greatest, left, right);
        assertOnBoth(hausdorff, left, right);
        assertOnBoth(least.swapped(), right, left);
    }

    /** Everywhere as far apart: what bounds by boxes would take for ever. */
    @Test
    void circles_in_each_other() {
        Path inner = circle(5, 5, 30);
        Path outer = circle(5, 5, 33);
        assertThat(Distances.least(inner, outer, 1e-6).distance()).isCloseTo(3, within(2e-6));
        assertThat(Distances.hausdorff(inner, outer, 1e-6).distance()).isCloseTo(3, within(2e-6));
        assertThat(Distances.greatest(inner, outer, 1e-4).distance()).isCloseTo(63, within(2e-4));
    }

    @Test
    void segments_by_their_ends_and_feet() {
        Path flat = Path.polyline(Point.of(0, 0), Point.of(100, 0));
        Path roof = Path.polyline(Point.of(20, 10), Point.of(40, 25), Point.of(90, 12), Point.of(130, 40));
        assertThat(Distances.least(flat, roof, 1e-9).distance()).isCloseTo(10, within(1e-9));
        assertThat(Distances.greatest(flat, roof, 1e-9).distance()).isCloseTo(Math.hypot(130, 40), within(1e-9));
        assertThat(Distances.straying(roof, flat, 1e-9).distance()).isCloseTo(50, within(1e-9));
        // Below the ridge, where both slopes are as near: (3 x - 20) / 5 = (1770 - 13 x) / w.
        double w = Math.hypot(50, 13);
        double x = (1770 / w + 4) / (0.6 + 13 / w);
        assertThat(Distances.straying(flat, roof, 1e-9).distance()).isCloseTo((3 * x - 20) / 5, within(1e-9));
    }

    @Test
    void paths_that_meet_or_are_one_are_at_no_distance() {
        Path wave = Path.of(CubicTest.cubic(0, 0, 40, 60, 60, -60, 100, 0));
        Path line = Path.polyline(Point.of(0, -20), Point.of(100, 20));
        assertThat(Distances.least(wave, line, 1e-6).distance()).isLessThanOrEqualTo(1e-6);
        assertThat(Distances.hausdorff(wave, wave.reversed(), 1e-9).distance()).isLessThanOrEqualTo(1e-9);
        Path halves =
                Path.of(wave.curves().get(0).sub(0, 0.3), wave.curves().get(0).sub(0.3, 1));
        assertThat(Distances.hausdorff(wave, halves, 1e-9).distance()).isLessThanOrEqualTo(1e-9);
    }

    @Test
    void points_far_and_small_tolerances_come_to_an_end() {
        Path point = Path.of(new Line(Point.of(3, 4), Point.of(3, 4)));
        Path origin = Path.of(new Line(Point.ORIGIN, Point.ORIGIN));
        assertThat(Distances.least(point, origin, Double.MIN_VALUE).distance()).isEqualTo(5);
        assertThat(Distances.greatest(point, origin, Double.MIN_VALUE).distance())
                .isEqualTo(5);
        assertThat(Distances.hausdorff(point, origin, Double.MIN_VALUE).distance())
                .isEqualTo(5);
        Path wave = Path.of(CubicTest.cubic(0, 0, 40, 60, 60, -60, 100, 0));
        assertThat(Distances.straying(wave, point, 1e-18).distance()).isGreaterThan(90);
        assertThatThrownBy(() -> Distances.least(point, origin, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("tolerance must be positive and finite, got 0.0");
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;

class OffsetPathTest {
    private static final double TOLERANCE = 1e-4;

    private static Path polyline(double size, double... c) {
        Point[] points = new Point[c.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = Point.of(size * c[2 * i], size * c[2 * i + 1]);
        }
        return Path.polyline(points);
    }

    private static void assertPoints(Path path, double tolerance, Path expected) {
        assertThat(path.curves()).hasSameSizeAs(expected.curves());
        assertThat(path.start().distanceTo(expected.start())).isLessThan(tolerance);
        for (int i = 0; i < path.curves().size(); i++) {
            Point end = expected.curves().get(i).end();
            assertThat(path.curves().get(i).end().distanceTo(end))
                    .as("end %s", i)
                    .isLessThan(tolerance);
        }
    }

    /** East 100, south 60: left of it is the outside of the corner, right the inside. */
    @Test
    void outside_a_right_angle_the_parallel_grows_and_inside_it_is_trimmed() {
        for (double size : new double[] {1e-3, 1, 1e4}) {
            Path ell = polyline(size, 0, 0, 100, 0, 100, 60);
            assertPoints(
                    OffsetPath.of(ell, 10 * size, CornerStyle.mitre(2), TOLERANCE * size),
                    1e-9 * size,
                    polyline(size, 0, -10, 110, -10, 110, 60));
            assertPoints(
                    OffsetPath.of(ell, -10 * size, CornerStyle.mitre(2), TOLERANCE * size),
                    1e-6 + 1e-9 * size,
                    polyline(size, 0, 10, 90, 10, 90, 60));
            assertPoints(
                    OffsetPath.of(ell.reversed(), 10 * size, CornerStyle.mitre(2), TOLERANCE * size),
                    1e-6 + 1e-9 * size,
                    polyline(size, 90, 60, 90, 10, 0, 10));
        }
    }

    @Test
    void at_distance_zero_it_is_the_path() {
        Path ell = polyline(1, 0, 0, 100, 0, 100, 60);
        assertThat(OffsetPath.of(ell, 0, CornerStyle.round(), TOLERANCE)).isEqualTo(ell);
    }

    @Test
    void round_a_turn_back_it_is_half_a_circle_or_the_end_of_a_box() {
        Path back = polyline(1, 0, 0, 100, 0, 0, 0);
        Path round = OffsetPath.of(back, 7, CornerStyle.round(), TOLERANCE);
        assertThat(round.length()).isCloseTo(200 + 7 * Math.PI, within(1e-3));
        assertThat(round.nearest(Point.of(107, 0)).distance()).isLessThan(TOLERANCE);
        assertPoints(
                OffsetPath.of(back, 7, CornerStyle.square(), TOLERANCE),
                1e-9,
                polyline(1, 0, -7, 107, -7, 107, 7, 0, 7));
    }

    /**
     * A flask sunk into a straight run of 400: too narrow in its neck, and the parallel of its wide square belly is a
     * square of its own.
     */
    @Test
    void of_several_runs_the_longest_is_left() {
        for (double belly : new double[] {100, 160, 200}) {
            double west = 200 - 0.5 * belly;
            double east = 200 + 0.5 * belly;
            double end = 100 + belly;
            Path flask = polyline(
                    1, 0, 0, 195, 0, 195, 100, west, 100, west, end, east, end, east, 100, 205, 100, 205, 0, 400, 0);
            Path longest = OffsetPath.of(flask, 20, CornerStyle.mitre(2), TOLERANCE);
            double inBelly = 4 * (belly - 40);
            assertThat(longest.length()).as("belly %s", belly).isCloseTo(Math.max(400, inBelly), within(1e-6));
            assertThat(longest.bounds().minY()).isCloseTo(inBelly > 400 ? 120 : -20, within(1e-9));
            assertThat(OffsetPath.of(flask.reversed(), -20, CornerStyle.mitre(2), TOLERANCE)
                            .length())
                    .isCloseTo(Math.max(400, inBelly), within(1e-6));
        }
    }

    /**
     * Inside a circle of radius 10 a parallel at less is a circle too; at more no point of it is far enough from the
     * circle.
     */
    @Test
    void inside_a_ring_a_distance_above_its_radius_is_refused() {
        Path ring = Path.of(Arcs.of(Point.of(0, 0), Point.of(10, 0), Point.of(10, 0), 2 * Math.PI, 1e-6));
        Path inside = OffsetPath.of(ring, -9, CornerStyle.round(), TOLERANCE);
        assertThat(inside.length()).isCloseTo(2 * Math.PI, within(1e-3));
        assertThatThrownBy(() -> OffsetPath.of(ring, -10.5, CornerStyle.round(), TOLERANCE))
                .isInstanceOf(PatternException.class)
                .hasMessage("parallel of a path: must keep its distance from the path somewhere;"
                        + " got 10.5 mm to the right; use at most 9.9 mm");
        assertThat(OffsetPath.of(ring, -9.9, CornerStyle.round(), TOLERANCE).length())
                .isCloseTo(0.2 * Math.PI, within(1e-3));
    }

    @Test
    void requests_that_mean_nothing_are_refused() {
        Path point = Path.of(new Line(Point.of(3, 4), Point.of(3, 4)));
        Path line = polyline(1, 0, 0, 10, 0);
        assertThatThrownBy(() -> OffsetPath.of(point, 1, CornerStyle.round(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has no parallel");
        assertThatThrownBy(() -> OffsetPath.of(line, Double.POSITIVE_INFINITY, CornerStyle.round(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("offset distance");
        assertThatThrownBy(() -> OffsetPath.of(line, 1, CornerStyle.round(), Double.NaN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tolerance");
    }
}

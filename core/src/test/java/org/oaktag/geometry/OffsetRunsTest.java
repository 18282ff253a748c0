package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Parallels of open paths that come too near to the path: to its ends, to its other side, or to itself. */
class OffsetRunsTest {
    private static final double TOLERANCE = 0.01;

    private static Path polyline(double... c) {
        Point[] points = new Point[c.length / 2];
        for (int i = 0; i < points.length; i++) {
            points[i] = Point.of(c[2 * i], c[2 * i + 1]);
        }
        return Path.polyline(points);
    }

    private static void assertKeepsDistance(Path path, OffsetRuns runs, double distance) {
        for (Path run : runs.runs()) {
            for (int i = 0; i <= 500; i++) {
                Point on = run.pointAt(run.length() * i / 500);
                assertThat(path.nearest(on).distance()).isBetween(distance - TOLERANCE, distance + TOLERANCE);
            }
        }
    }

    /**
     * The end is (100, 19): on the line 20 to the right of the first leg the circle of 20 about it begins at 100 -
     * sqrt(399).
     */
    @Test
    void a_run_ends_where_it_would_come_too_near_to_the_end_of_the_path() {
        Path hook = polyline(0, 0, 100, 0, 100, 19);
        OffsetRuns runs = OffsetRuns.of(hook, -20, CornerStyle.round(), TOLERANCE);
        assertThat(runs.runs()).hasSize(1);
        Path run = runs.runs().get(0);
        assertThat(run.start().distanceTo(Point.of(0, 20))).isLessThan(1e-9);
        assertThat(run.end().x()).isCloseTo(100 - Math.sqrt(399), within(2 * TOLERANCE));
        assertThat(run.end().y()).isCloseTo(20, within(1e-9));
        assertKeepsDistance(hook, runs, 20);
        assertThat(runs.leftOut()).hasSize(1);
        assertThat(runs.leftOut().get(0).from()).isCloseTo(run.end().x(), within(1e-6));
        assertThat(runs.leftOut().get(0).to()).isCloseTo(119, within(1e-6));
        assertThat(OffsetPath.of(hook, -20, CornerStyle.round(), TOLERANCE)).isEqualTo(run);
    }

    /** A spiral whose last leg rises towards the first from above: there its right side meets the left of the first. */
    @Test
    void a_run_ends_where_it_would_come_too_near_to_the_other_side_of_the_path() {
        Path spiral = polyline(0, 0, 200, 0, 200, 100, -50, 100, -50, -60, 150, -4);
        OffsetRuns runs = OffsetRuns.of(spiral, 10, CornerStyle.round(), TOLERANCE);
        assertKeepsDistance(spiral, runs, 10);
        // The last leg rises by 56 in 200: 10 square below it, and 10 above the first leg.
        double slope = 56.0 / 200;
        double x = -50 + (60 - 10 - 10 * Math.hypot(1, slope)) / slope;
        assertThat(runs.runs())
                .anySatisfy(run -> assertThat(Math.min(
                                run.start().distanceTo(Point.of(x, -10)),
                                run.end().distanceTo(Point.of(x, -10))))
                        .isLessThan(10 * TOLERANCE));
        assertThat(runs.leftOut().get(0).from()).isCloseTo(x, within(10 * TOLERANCE));
    }

    /**
     * A flask sunk into a straight run of 400, its neck 10 wide and 100 long, its belly 100 by 100. At 20 one run
     * passes over the mouth and one is a square of 60 in the belly; neither lies beside the neck, nor beside the last
     * 20 before and after each corner of the belly.
     */
    @Test
    void all_runs_are_told_with_what_lies_between_them() {
        Path flask = polyline(0, 0, 195, 0, 195, 100, 150, 100, 150, 200, 250, 200, 250, 100, 205, 100, 205, 0, 400, 0);
        for (boolean left : new boolean[] {true, false}) {
            OffsetRuns runs =
                    OffsetRuns.of(left ? flask : flask.reversed(), left ? 20 : -20, CornerStyle.mitre(2), TOLERANCE);
            assertThat(runs.runs()).hasSize(2);
            assertThat(runs.runs().stream().mapToDouble(Path::length).sorted().toArray())
                    .containsExactly(new double[] {240, 400}, within(1e-6));
            double[] from = {195, 320, 420, 520, 620, 685};
            double[] to = {295, 360, 460, 560, 660, 785};
            assertThat(runs.leftOut()).hasSize(from.length);
            for (int i = 0; i < from.length; i++) {
                assertThat(runs.leftOut().get(i).from()).isCloseTo(from[i], within(0.1));
                assertThat(runs.leftOut().get(i).to()).isCloseTo(to[i], within(0.1));
            }
        }
    }

    /**
     * A double tells points of this size 1.4e-14 mm apart; it is fitted to some hundred times that, and no more than
     * nothing is left out.
     */
    @Test
    void a_tolerance_below_what_the_coordinates_hold_ends_as_the_least_that_they_do() {
        Path wave = Path.from(Point.of(0, 0))
                .curveTo(Point.of(40, 30), Point.of(60, -30), Point.of(100, 0))
                .lineTo(Point.of(130, 20))
                .build();
        Path coarse = OffsetPath.of(wave, 8, CornerStyle.round(), 1e-6);
        for (double tolerance : new double[] {1e-12, 1e-18, Double.MIN_VALUE}) {
            OffsetRuns runs = OffsetRuns.of(wave, 8, CornerStyle.round(), tolerance);
            assertThat(runs.runs()).hasSize(1);
            assertThat(runs.runs().get(0).length()).isCloseTo(coarse.length(), within(1e-4));
            assertThat(runs.runs().get(0).curves()).hasSizeLessThan(2000);
        }
    }

    @Test
    void where_nothing_is_trimmed_nothing_is_left_out() {
        Path wave = Path.from(Point.of(0, 0))
                .curveTo(Point.of(40, 30), Point.of(60, -30), Point.of(100, 0))
                .build();
        for (double left : new double[] {-5, 0, 5}) {
            OffsetRuns runs = OffsetRuns.of(wave, left, CornerStyle.round(), TOLERANCE);
            assertThat(runs.runs()).hasSize(1);
            assertThat(runs.leftOut()).isEmpty();
        }
    }

    @Test
    void where_no_point_keeps_its_distance_all_is_left_out() {
        Path ring = Path.of(Arcs.of(Point.of(0, 0), Point.of(10, 0), Point.of(10, 0), 2 * Math.PI, 1e-6));
        OffsetRuns none = OffsetRuns.of(ring, -10.5, CornerStyle.round(), TOLERANCE);
        assertThat(none.runs()).isEmpty();
        assertThat(none.leftOut()).hasSize(1);
        assertThat(none.leftOut().get(0).length()).isCloseTo(ring.length(), within(1e-9));
        assertThatThrownBy(() -> OffsetRuns.of(ring, Double.NaN, CornerStyle.round(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("offset distance");
    }
}

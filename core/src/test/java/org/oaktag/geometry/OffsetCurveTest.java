package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Parallels whose length is known in closed form: between two cusps it is {@code |L + d turning|}. */
class OffsetCurveTest {
    private static final double FINE = 1e-7;

    /** Length of y = x²/size from the vertex to x sizes. */
    private static double length(double size, double x) {
        double slope = 2 * x;
        double asinh = Math.log(slope + Math.sqrt(1 + slope * slope));
        return size * 0.25 * (slope * Math.sqrt(1 + slope * slope) + asinh);
    }

    @Test
    void parallel_of_a_parabola_runs_back_between_its_cusps() {
        for (double size : new double[] {1e-2, 1, 200}) {
            Cubic cubic = OffsetCuspsTest.parabola(size, -1, 2);
            double d = OffsetCuspsTest.radius(size, 0.5);
            double forward = length(size, 2) + length(size, 1) - 2 * length(size, 0.5);
            double turning = Math.atan(4) + Math.atan(2) - 2 * Math.atan(1);
            double back = 2 * length(size, 0.5) - d * 2 * Math.atan(1);
            Path inside = OffsetCurve.of(cubic, -d, FINE * size);
            assertThat(inside.length(1e-9 * size)).isCloseTo(forward - d * turning - back, within(1e-4 * size));
            assertThat(inside.startDirection().dot(cubic.directionAt(0))).isCloseTo(1, within(1e-9));
            assertPassesAllItsPoints(cubic, inside, -d, FINE * size);
            assertThat(OffsetCurve.of(cubic, d, FINE * size).length(1e-9 * size))
                    .isCloseTo(
                            length(size, 2) + length(size, 1) + d * (Math.atan(4) + Math.atan(2)), within(1e-4 * size));
        }
    }

    private static void assertPassesAllItsPoints(Cubic cubic, Path parallel, double left, double tolerance) {
        for (int i = 0; i <= 40; i++) {
            double t = i / 40.0;
            assertThat(parallel.nearest(beside(cubic, t, left)).distance())
                    .as("t %s", t)
                    .isLessThan(tolerance);
        }
    }

    @Test
    void round_a_turn_back_the_parallel_goes_in_half_a_circle() {
        Cubic there = CubicTest.cubic(0, 0, 10, 0, -10, 0, 20, 0);
        for (double d : new double[] {1e-3, 1, 4}) {
            for (int side = -1; side <= 1; side += 2) {
                Path parallel = OffsetCurve.of(there, side * d, FINE * d);
                assertThat(parallel.length(1e-9)).isCloseTo(21.25 + 2 * Math.PI * d, within(1e-4 * d));
                assertThat(parallel.start().distanceTo(Point.of(0, -side * d))).isLessThan(1e-12);
                assertThat(parallel.end().distanceTo(Point.of(20, -side * d))).isLessThan(1e-12);
                assertThat(parallel.nearest(Point.of(3.125 + d, 0)).distance()).isLessThan(FINE * d);
                assertThat(parallel.nearest(Point.of(2.5 - d, 0)).distance()).isLessThan(FINE * d);
                assertThat(parallel.curves()).filteredOn(Line.class::isInstance).hasSize(3);
            }
        }
    }

    /**
     * Both branches turn by 45 degrees to the right, and the tip is half a turn more, to either side. The cusp is 20
     * sqrt 2 - 10 long, and its radius of curvature nowhere above 42.5.
     */
    @Test
    void round_a_cusp_the_parallel_goes_in_half_a_circle() {
        Cubic cusp = SourceCuspsTest.nearCusp(10, 0);
        double length = 20 * Math.sqrt(2) - 10;
        Point tip = cusp.pointAt(0.5);
        Path outside = OffsetCurve.of(cusp, 3, FINE);
        assertThat(outside.nearest(tip.plus(Vector.of(0, 3))).distance()).isLessThan(FINE);
        assertThat(outside.length(1e-9)).isCloseTo(length + 3 * 1.5 * Math.PI, within(1e-4));
        Path backwards = OffsetCurve.of(cusp, -50, FINE);
        assertThat(backwards.nearest(tip.plus(Vector.of(0, 50))).distance()).isLessThan(FINE);
        assertThat(backwards.length(1e-9)).isCloseTo(50 * 1.5 * Math.PI - length, within(1e-4));
    }

    /** Its tangent turns clockwise from (1 + e, 1) by the x axis, backward, to (1 + e, -1). */
    @Test
    void round_a_near_cusp_the_parallel_is_longer_by_the_turn() {
        for (double e : new double[] {1e-10, 1e-9, 1e-5, 1e-3, 1e-1}) {
            Cubic cubic = SourceCuspsTest.nearCusp(10, e);
            double turning = 2 * Math.PI - 2 * Math.atan(1 / (1 + e));
            for (double d : new double[] {0.5, 2}) {
                Path parallel = OffsetCurve.of(cubic, d, FINE);
                assertThat(parallel.length(1e-9))
                        .as("e %s, d %s", e, d)
                        .isCloseTo(cubic.length(1e-9) + turning * d, within(1e-4));
                assertPassesAllItsPoints(cubic, parallel, d, FINE);
            }
        }
    }

    /**
     * Within a share e of the parameters the tangent turns by half a turn; the parallel is found on the rims of ever
     * smaller stretches.
     */
    @Test
    void beside_a_near_cusp_the_parallel_keeps_its_distance_however_near_it_is() {
        for (double e = 1e-10; e < 1e-3; e *= 30) {
            for (int side = -1; side <= 1; side += 2) {
                Cubic cubic = SourceCuspsTest.nearCusp(10, side * e);
                for (double d : new double[] {-30, -1, 1, 30}) {
                    Path parallel = OffsetCurve.of(cubic, d, 1e-4);
                    for (Cubic part : SourceCusps.cut(cubic)) {
                        for (double share = 1e-14; share < 0.5; share *= 6) {
                            assertThat(parallel.nearest(beside(part, share, d)).distance())
                                    .isLessThan(1e-4);
                            assertThat(parallel.nearest(beside(part, 1 - share, d))
                                            .distance())
                                    .isLessThan(1e-4);
                        }
                    }
                }
            }
        }
    }

    /** A bend of 1.5 mm within the first hundredth of a cubic of 1,300 mm, which has a near cusp further on. */
    @Test
    void a_sharp_bend_at_the_very_start_is_followed() {
        Cubic cubic = Cubic.of(
                Point.of(24.188654043732143, 281.80401973294835),
                Point.of(28.301416077533382, 278.12075576089126),
                Point.of(269.74392626824476, 21.659826098473268),
                Point.of(-558.1483963298153, 899.0917551632983));
        for (double d : new double[] {-14.662861651062183, -5, 10, 25}) {
            Path ahead = OffsetCurve.of(cubic, d, 0.01);
            Path back = OffsetCurve.of(cubic.reversed(), -d, 0.01);
            for (double t = 0; t < 0.05; t += 0.0002) {
                assertThat(ahead.nearest(beside(cubic, t, d)).distance()).isLessThanOrEqualTo(0.01);
                assertThat(back.nearest(beside(cubic, t, d)).distance()).isLessThanOrEqualTo(0.01);
            }
        }
    }

    /** The tangent turns by half a turn within ever smaller stretches; 20 cubics on each side are enough. */
    @Test
    void a_near_cusp_takes_few_cubics_however_near_it_is() {
        for (double e = 1e-10; e < 0.1; e *= 10) {
            for (double d : new double[] {-10, 10}) {
                Cubic cubic = SourceCuspsTest.nearCusp(100, e);
                Path parallel = OffsetCurve.of(cubic, d, 0.01);
                assertThat(parallel.curves().size()).as("e %s, d %s", e, d).isLessThanOrEqualTo(40);
                for (Cubic part : SourceCusps.cut(cubic)) {
                    for (double t = 0; t <= 1; t += 1.0 / 512) {
                        assertThat(parallel.nearest(beside(part, t, d)).distance())
                                .as("e %s, d %s, t %s", e, d, t)
                                .isLessThanOrEqualTo(0.01);
                    }
                }
            }
        }
    }

    private static Point beside(Cubic cubic, double t, double left) {
        return cubic.pointAt(t).plus(cubic.directionAt(t).leftNormal().times(left));
    }

    @Test
    void parallel_of_a_straight_cubic_is_one_segment() {
        for (double size : new double[] {1e-3, 1, 1e4}) {
            for (double[] at : new double[][] {{0, 0.1, 0.3, 1}, {0, 0, 0.3, 1}, {0, 0.7, 1, 1}, {0, 0, 1, 1}}) {
                Vector way = Vector.polar(size, 0.7);
                Point from = Point.of(0.3 * size, 0.1 * size);
                Cubic straight =
                        Cubic.of(from, from.plus(way.times(at[1])), from.plus(way.times(at[2])), from.plus(way));
                Path parallel = OffsetCurve.of(straight, 0.25 * size, 0.01 * size);
                Vector shift = Vector.polar(0.25 * size, 0.7 - Math.PI / 2);
                assertThat(parallel.curves()).hasSize(1).first().isInstanceOf(Line.class);
                assertThat(parallel.start().distanceTo(from.plus(shift))).isLessThan(1e-12 * size);
                assertThat(parallel.end().distanceTo(from.plus(way).plus(shift)))
                        .isLessThan(1e-12 * size);
            }
        }
    }

    @Test
    void parallel_of_a_curve_that_bends_a_little_bends_as_well() {
        for (Cubic bent : List.of(
                CubicTest.cubic(0, 0, 10, 0.01, 20, 0.02, 30, 0),
                CubicTest.cubic(0, 0, 10, 0, 20, 0.01, 30, 0),
                CubicTest.cubic(0, 0, 10, -0.01, 20, 0, 30, 0))) {
            for (double d : new double[] {-5, 5}) {
                Path parallel = OffsetCurve.of(bent, d, FINE);
                double turning = bent.directionAt(0).angleTo(bent.directionAt(1));
                assertThat(parallel.startDirection().cross(bent.directionAt(0))).isCloseTo(0, within(1e-12));
                assertThat(parallel.endDirection().cross(bent.directionAt(1))).isCloseTo(0, within(1e-12));
                assertThat(parallel.length(1e-10)).isCloseTo(bent.length(1e-10) + d * turning, within(1e-6));
            }
        }
    }

    /** A loop from a point to itself has no chord; its parallel outside is longer by the turn of 270 degrees. */
    @Test
    void parallel_of_a_loop_that_ends_where_it_starts() {
        Cubic loop = CubicTest.cubic(0, 0, 100, 100, -100, 100, 0, 0);
        assertThat(OffsetCurve.of(loop, 7, FINE).length(1e-9))
                .isCloseTo(loop.length(1e-9) + 7 * 1.5 * Math.PI, within(1e-4));
    }

    @Test
    void at_distance_zero_the_parallel_is_the_curve_itself() {
        Cubic cubic = CubicTest.cubic(0, 0, 30, -180, 120, -240, 260, -250);
        assertThat(OffsetCurve.of(cubic, 0, FINE).curves()).containsExactly(cubic);
    }

    @Test
    void requests_that_mean_nothing_are_refused() {
        Line line = new Line(Point.of(0, 0), Point.of(1, 0));
        assertThatThrownBy(() -> OffsetCurve.of(line, Double.NaN, 0.01))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("offset distance")
                .hasMessageContaining("NaN");
        assertThatThrownBy(() -> OffsetCurve.of(line, 1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tolerance");
        assertThatThrownBy(() -> OffsetCurve.of(CubicTest.cubic(1, 2, 1, 2, 1, 2, 1, 2), 1, 0.01))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("has no parallel");
    }
}

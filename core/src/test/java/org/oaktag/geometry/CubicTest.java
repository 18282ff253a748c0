package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CubicTest {
    /** x = 3 t, y = 9 t - 27 t² + 18 t³ = 9 t (1 - t) (1 - 2 t): an S on the x axis. */
    private static final Cubic S = cubic(0, 0, 1, 3, 2, -3, 3, 0);

    private static final Cubic PLAIN = cubic(0, 0, 30, 180, 120, 240, 260, 250);

    static Cubic cubic(double... c) {
        return Cubic.of(Point.of(c[0], c[1]), Point.of(c[2], c[3]), Point.of(c[4], c[5]), Point.of(c[6], c[7]));
    }

    private static void assertNear(Point actual, Point expected, double tolerance) {
        assertThat(actual.distanceTo(expected)).isLessThanOrEqualTo(tolerance);
    }

    @Test
    void point_and_derivatives_agree_with_the_polynomial() {
        for (double t = 0; t <= 1; t += 0.125) {
            assertNear(S.pointAt(t), Point.of(3 * t, 9 * t - 27 * t * t + 18 * t * t * t), 1e-14);
            assertThat(S.derivativeAt(t).x()).isCloseTo(3, within(1e-14));
            assertThat(S.derivativeAt(t).y()).isCloseTo(9 - 54 * t + 54 * t * t, within(1e-13));
            assertThat(S.secondDerivativeAt(t).x()).isCloseTo(0, within(1e-13));
            assertThat(S.secondDerivativeAt(t).y()).isCloseTo(-54 + 108 * t, within(1e-13));
            assertThat(S.speedAt(t)).isCloseTo(S.derivativeAt(t).length(), within(1e-13));
        }
        assertThat(S.thirdDerivative()).isEqualTo(Vector.of(0, 108));
        assertThat(PLAIN.thirdDerivative()).isEqualTo(Vector.of(-60, 420));
        assertThat(PLAIN.length()).isEqualTo(PLAIN.length(Curve.DEFAULT_ACCURACY));
        assertThat(PLAIN.transformed(Transform.rotation(Math.PI / 2, Point.ORIGIN))
                        .thirdDerivative()
                        .y())
                .isCloseTo(PLAIN.thirdDerivative().x(), within(1e-12));
    }

    @Test
    void frame_is_point_and_unit_tangent() {
        double[] frame = new double[4];
        for (Cubic cubic : new Cubic[] {S, PLAIN, cubic(1, 1, 1, 1, 9, 0, 27, 27), cubic(0, 0, 1, 1, 0, 1, 1, 0)}) {
            for (double t = 0; t <= 1; t += 0.125) {
                cubic.fillFrame(t, frame);
                assertNear(Point.of(frame[0], frame[1]), cubic.pointAt(t), 1e-12);
                assertThat(Vector.of(frame[2], frame[3])
                                .minus(cubic.directionAt(t))
                                .length())
                        .isLessThan(1e-12);
            }
        }
    }

    @Test
    void curvature_follows_from_the_derivatives() {
        // At t = 0: r' = (3, 9), r'' = (0, -54).
        assertThat(S.curvatureAt(0)).isCloseTo(-162 / Math.pow(90, 1.5), within(1e-15));
        assertThat(S.curvatureAt(0.5)).isCloseTo(0, within(1e-14));
        assertThat(S.curvatureAt(1)).isCloseTo(162 / Math.pow(90, 1.5), within(1e-15));
    }

    /**
     * At the start of (0,0) (0,0) (9,0) (27,27) the curve stands still and leaves along x; y = x^(3/2) has no finite
     * curvature there.
     */
    @Test
    void doubled_control_has_a_direction_and_an_infinite_curvature() {
        Cubic cusp = cubic(0, 0, 0, 0, 9, 0, 27, 27);
        assertThat(cusp.directionAt(0)).isEqualTo(Vector.of(1, 0));
        assertThat(cusp.curvatureAt(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(cusp.reversed().directionAt(1)).isEqualTo(Vector.of(-1, 0));
        assertThat(cusp.reversed().curvatureAt(1)).isEqualTo(Double.NEGATIVE_INFINITY);
        Cubic straight = cubic(0, 0, 0, 0, 3, 4, 3, 4);
        assertThat(straight.directionAt(0)).isEqualTo(Vector.of(0.6, 0.8));
        assertThat(straight.directionAt(1)).isEqualTo(Vector.of(0.6, 0.8));
        assertThat(straight.curvatureAt(0)).isZero();
        assertThat(cubic(0, 0, 0, 0, 0, 0, 3, 4).directionAt(0)).isEqualTo(Vector.of(0.6, 0.8));
        assertThat(cubic(0, 0, 3, 4, 3, 4, 3, 4).directionAt(1)).isEqualTo(Vector.of(0.6, 0.8));
    }

    @Test
    void cusp_looks_ahead_and_turns_by_half_a_turn() {
        Cubic cusp = cubic(0, 0, 1, 1, 0, 1, 1, 0);
        assertThat(cusp.directionAt(0.5).y()).isCloseTo(-1, within(1e-12));
        // An eighth of a turn before and after, and half a turn of either sign at the cusp.
        assertThat(Math.sin(cusp.turning())).isCloseTo(-1, within(1e-14));
        // There and back and there again: x' = 30 (1 - 2 t) (1 - 4 t).
        assertThat(Math.abs(cubic(0, 0, 10, 0, -10, 0, 20, 0).turning())).isIn(0.0, 2 * Math.PI);
    }

    @Test
    void point_has_no_direction_and_no_length() {
        Cubic point = cubic(7, 7, 7, 7, 7, 7, 7, 7);
        assertThat(point.isPoint()).isTrue();
        assertThat(point.length()).isZero();
        assertThat(point.turning()).isZero();
        assertThatThrownBy(() -> point.directionAt(0.5))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("single point");
        assertThat(cubic(7, 7, 8, 7, 7, 7, 7, 7).isPoint()).isFalse();
        assertThat(cubic(7, 7, 7, 7, 8, 7, 7, 7).isPoint()).isFalse();
        assertThat(cubic(7, 7, 7, 7, 7, 7, 8, 7).isPoint()).isFalse();
    }

    /**
     * The loop leaves down to the right, passes its summit leftwards and arrives up to the right: three quarters of a
     * turn.
     */
    @Test
    void turning_counts_the_whole_loop() {
        assertThat(S.turning()).isCloseTo(0, within(1e-14));
        assertThat(PLAIN.turning()).isCloseTo(Math.atan2(10, 140) - Math.atan2(180, 30), within(1e-14));
        Cubic loop = cubic(0, 0, 20, 20, -10, 20, 10, 0);
        assertThat(loop.turning()).isCloseTo(1.5 * Math.PI, within(1e-12));
        assertThat(loop.reversed().turning()).isCloseTo(-1.5 * Math.PI, within(1e-12));
        assertThat(cubic(0, 0, 10, 0, 20, 0, 30, 0).turning()).isZero();
    }

    @Test
    void part_follows_the_curve() {
        Cubic part = PLAIN.sub(0.2, 0.7);
        for (double t = 0; t <= 1; t += 0.25) {
            assertNear(part.pointAt(t), PLAIN.pointAt(0.2 + 0.5 * t), 1e-12);
        }
        assertThat(part.start()).isEqualTo(PLAIN.pointAt(0.2));
        assertThat(part.end()).isEqualTo(PLAIN.pointAt(0.7));
        assertThat(PLAIN.sub(0, 1)).isSameAs(PLAIN);
        assertThat(PLAIN.sub(0, 0.5)).isNotEqualTo(PLAIN);
        assertThat(PLAIN.sub(0.5, 1)).isNotEqualTo(PLAIN);
        assertThat(PLAIN.sub(0.5, 0.5).length()).isLessThan(1e-12);
    }

    /** y of the S is greatest and least where 9 - 54 t + 54 t² = 0, t = 1/2 -+ sqrt(3)/6; there y = +-sqrt(3)/2. */
    @Test
    void box_is_that_of_the_curve_and_hull_that_of_the_controls() {
        Bounds bounds = S.bounds();
        assertThat(bounds.minX()).isZero();
        assertThat(bounds.maxX()).isEqualTo(3);
        assertThat(bounds.minY()).isCloseTo(-Math.sqrt(3) / 2, within(1e-14));
        assertThat(bounds.maxY()).isCloseTo(Math.sqrt(3) / 2, within(1e-14));
        assertThat(S.hull()).isEqualTo(new Bounds(0, -3, 3, 3));
        Bounds turned = S.transformed(new Transform(0, 1, 1, 0, 0, 0)).bounds();
        assertThat(turned.minX()).isCloseTo(-Math.sqrt(3) / 2, within(1e-14));
        assertThat(turned.maxX()).isCloseTo(Math.sqrt(3) / 2, within(1e-14));
    }

    /** 1/2 integral (x y' - y x') of the S is 0; moved by (2, 5) it grows by half of (2, 5) x (3, 0). */
    @Test
    void sweep_is_the_integral_of_green() {
        assertThat(S.sweep()).isCloseTo(0, within(1e-14));
        assertThat(S.transformed(Transform.translation(2, 5)).sweep()).isCloseTo(0.5 * (2 * 0 - 5 * 3), within(1e-14));
        assertThat(PLAIN.sweep()).isCloseTo(simpson(PLAIN), within(1e-9));
        Cubic away = PLAIN.transformed(Transform.translation(1000, -300));
        assertThat(away.sweep()).isCloseTo(simpson(away), within(1e-8));
    }

    /**
     * The integrand has degree 4 at most, after the terms of degree 5 cancel; Simpson's rule on 2000 stretches is exact
     * to 1e-9.
     */
    private static double simpson(Cubic cubic) {
        int n = 2000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            double t = (double) i / n;
            double w = i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2;
            Point p = cubic.pointAt(t);
            Vector d = cubic.derivativeAt(t);
            sum += w * 0.5 * (p.x() * d.y() - p.y() * d.x());
        }
        return sum / (3 * n);
    }

    @Test
    void nearest_point_is_no_further_than_any_other() {
        Point[] points = {
            Point.of(1.5, 0.2), Point.of(0.5, 2), Point.of(-1, -1), Point.of(4, 1), Point.of(1.5, 0), Point.of(2, -5)
        };
        for (Point point : points) {
            Nearest nearest = S.nearest(point);
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i <= 20_000; i++) {
                least = Math.min(least, S.pointAt(i / 20_000.0).distanceTo(point));
            }
            assertThat(nearest.distance()).isLessThanOrEqualTo(least + 1e-14);
            assertThat(nearest.distance()).isCloseTo(least, within(1e-6));
            assertThat(nearest.point()).isEqualTo(S.pointAt(nearest.t()));
        }
        assertThat(S.nearest(Point.of(1.5, 0)).t()).isCloseTo(0.5, within(1e-15));
    }

    /**
     * From the centre of curvature of a vertex the foot is a root of order three or four, which no sign change shows.
     */
    @Test
    void nearest_point_is_found_from_the_centre_of_curvature() {
        Cubic parabola = cubic(-1, 1, -1.0 / 3, -1.0 / 3, 1.0 / 3, -1.0 / 3, 1, 1);
        Nearest vertex = parabola.nearest(Point.of(0, 0.5));
        assertThat(vertex.point().distanceTo(Point.ORIGIN)).isLessThan(1e-4);
        assertThat(vertex.distance()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void line_as_a_cubic_has_even_speed() {
        Line line = Line.of(Point.of(1, 2), Point.of(7, -4));
        Cubic cubic = Cubic.from(line);
        assertNear(cubic.pointAt(0.3), line.pointAt(0.3), 1e-15);
        assertThat(cubic.speedAt(0.1)).isCloseTo(line.length(), within(1e-14));
        assertThat(Cubic.from((Curve) line)).isEqualTo(cubic);
        assertThat(Cubic.from((Curve) cubic)).isSameAs(cubic);
        assertThat(S.controls()).containsExactly(S.start(), S.control1(), S.control2(), S.end());
    }

    @Test
    void arguments_out_of_range_are_refused() {
        for (double bad : new double[] {-1e-12, 1.0000001, Double.NaN}) {
            assertThatThrownBy(() -> S.pointAt(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("t must lie within 0 to 1, got " + bad);
            assertThatThrownBy(() -> S.derivativeAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.secondDerivativeAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.directionAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.curvatureAt(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.sub(bad, 1)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.lengthBetween(bad, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        }
        for (double bad : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> S.length(bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.lengthBetween(0, 1, bad)).isInstanceOf(IllegalArgumentException.class);
            assertThatThrownBy(() -> S.parameterAt(1, bad)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void of_equally_near_places_the_first_is_told() {
        Cubic closed = cubic(0, 0, 60, 90, -60, 90, 0, 0);
        assertThat(closed.nearest(Point.of(0, 0)).t()).isEqualTo(0);
        assertThat(closed.nearest(Point.of(0, -5)).t()).isEqualTo(0);
    }

    @Test
    void between_two_points_the_length_of_a_direction_does_not_matter() {
        Point a = Point.of(10, 20);
        Point b = Point.of(40, 60); // 50 mm from a
        assertThat(Cubic.between(a, Vector.of(7, 0), b, Vector.of(0, 0.5)))
                .isEqualTo(Cubic.hermite(a, Vector.of(50.0 / 3, 0), b, Vector.of(0, 50.0 / 3)));
    }

    @Test
    void between_two_points_that_are_left_and_reached_along_their_line_runs_that_line_at_even_speed() {
        Line line = Line.of(Point.of(0, 0), Point.of(30, 0));
        assertThat(Cubic.between(line.start(), Vector.of(1, 0), line.end(), Vector.of(1, 0)))
                .isEqualTo(Cubic.from(line));
    }

    /** The parabola y = x² from 0 to 1 has its control point at (1/2, 0). */
    @Test
    void a_quadratic_is_raised_to_the_same_curve() {
        Cubic parabola = Cubic.ofQuadratic(Point.of(0, 0), Point.of(0.5, 0), Point.of(1, 1));
        for (double t = 0; t <= 1; t += 0.0625) {
            assertThat(parabola.pointAt(t).distanceTo(Point.of(t, t * t))).isLessThan(1e-15);
        }
        assertThat(parabola.length()).isCloseTo(Math.sqrt(5) / 2 + Math.log(2 + Math.sqrt(5)) / 4, within(1e-6));
    }
}

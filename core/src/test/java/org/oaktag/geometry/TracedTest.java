package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** Known curves, digitised with a shaky hand that shakes the same way every time. */
class TracedTest {
    private static final double ANGLE = Math.toRadians(40);

    private static Point shaken(Point point, double noise, SplittableRandom hand) {
        return point.plus(Vector.polar(noise * hand.nextDouble(), 2 * Math.PI * hand.nextDouble()));
    }

    private static List<Point> digitised(DoubleFunction<Point> curve, int count, double noise) {
        SplittableRandom hand = new SplittableRandom(17);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            points.add(shaken(curve.apply((double) i / (count - 1)), noise, hand));
        }
        return points;
    }

    private static void assertPassesBy(Traced traced, List<Point> points, double tolerance) {
        for (Point point : points) {
            assertThat(traced.path().nearest(point).distance()).isLessThanOrEqualTo(tolerance);
        }
    }

    private static void assertIsSmooth(Path path) {
        for (int i = 1; i < path.curves().size(); i++) {
            Vector arriving = path.curves().get(i - 1).directionAt(1);
            assertThat(arriving.angleTo(path.curves().get(i).directionAt(0))).isCloseTo(0, within(1e-3));
        }
    }

    @Test
    void circle_is_found_back_closed_and_without_a_corner() {
        for (double noise : new double[] {0, 0.1, 0.3, 1}) {
            double tolerance = Math.max(1.5 * noise, 0.1);
            List<Point> points = digitised(s -> Point.of(10, 20).plus(Vector.polar(100, 2 * Math.PI * s)), 201, noise);
            points.remove(200);
            Traced traced = Traced.closed(points, tolerance, 30, ANGLE);
            assertThat(traced.corners()).isEmpty();
            assertThat(traced.path().isClosed()).isTrue();
            assertPassesBy(traced, points, tolerance);
            assertIsSmooth(traced.path());
            assertThat(traced.path().curves().size()).as("noise %s", noise).isLessThanOrEqualTo(8);
            for (double s = 0; s < traced.path().length(); s += 3) {
                assertThat(traced.path().pointAt(s).distanceTo(Point.of(10, 20)))
                        .isCloseTo(100, within(tolerance + noise));
            }
            assertThat(traced.path().length()).isCloseTo(200 * Math.PI, within(2 * Math.PI * (tolerance + noise)));
        }
    }

    /** One period of y = sin x is 4 sqrt 2 E(1/2) = 7.640395578055424 long (complete elliptic integral, computed). */
    @Test
    void sine_is_found_back_with_its_length() {
        for (double noise : new double[] {0, 0.1, 0.5}) {
            double tolerance = Math.max(2 * noise, 0.05);
            List<Point> points =
                    digitised(s -> Point.of(200 * Math.PI * s, 100 * Math.sin(2 * Math.PI * s)), 300, noise);
            Traced traced = Traced.open(points, tolerance, 30, ANGLE);
            assertThat(traced.corners()).isEmpty();
            assertPassesBy(traced, points, tolerance);
            assertIsSmooth(traced.path());
            assertThat(traced.path().curves().size()).as("noise %s", noise).isLessThanOrEqualTo(10);
            assertThat(traced.path().length()).isCloseTo(764.0395578055424, within(4 * (tolerance + noise)));
            for (double s = 0; s <= traced.path().length(); s += 5) {
                Point on = traced.path().pointAt(s);
                double slope = Math.cos(on.x() / 100);
                double off = Math.abs(on.y() - 100 * Math.sin(on.x() / 100)) / Math.sqrt(1 + slope * slope);
                assertThat(off).isLessThanOrEqualTo(1.1 * (tolerance + noise));
            }
        }
    }

    /** The clothoid turns by half the square of its length; its points by Simpson's rule for Fresnel's integrals. */
    @Test
    void clothoid_is_found_back_with_its_length() {
        double length = 300;
        DoubleFunction<Point> clothoid = s -> {
            int n = 400;
            double x = 0;
            double y = 0;
            for (int i = 0; i <= n; i++) {
                double weight = (i == 0 || i == n ? 1 : 2 + 2 * (i % 2)) * s * length / (3 * n);
                double angle = 1.5 * Math.pow(s * i / n, 2);
                x += weight * Math.cos(angle);
                y += weight * Math.sin(angle);
            }
            return Point.of(x, y);
        };
        List<Point> points = digitised(clothoid, 150, 0.2);
        Traced traced = Traced.open(points, 0.5, 30, ANGLE);
        assertThat(traced.corners()).isEmpty();
        assertThat(traced.path().curves().size()).isLessThanOrEqualTo(3);
        assertThat(traced.path().length()).isCloseTo(length, within(1.5));
        for (double s = 0.02; s < 0.98; s += 0.01) {
            assertThat(traced.path().nearest(clothoid.apply(s)).distance()).isLessThanOrEqualTo(0.5);
        }
    }

    private static Point onSquare(double s) {
        double way = 4 * s % 4;
        double along = 100 * (way % 1);
        return switch ((int) way) {
            case 0 -> Point.of(along, 0);
            case 1 -> Point.of(100, along);
            case 2 -> Point.of(100 - along, 100);
            default -> Point.of(0, 100 - along);
        };
    }

    @Test
    void square_has_four_corners_and_four_sides_wherever_its_points_begin() {
        for (double noise : new double[] {0, 0.1, 0.5, 1}) {
            double tolerance = 2 * noise + 0.05;
            List<Point> round = digitised(TracedTest::onSquare, 161, noise);
            round.remove(160);
            for (int first = 0; first < 40; first += 7) {
                List<Point> points = new ArrayList<>(round);
                Collections.rotate(points, first);
                Traced traced = Traced.closed(points, tolerance, 25, ANGLE);
                assertThat(traced.corners()).hasSize(4).isSorted();
                assertThat(traced.path().isClosed()).isTrue();
                assertThat(traced.path().curves()).hasSize(4).allMatch(Line.class::isInstance);
                assertPassesBy(traced, points, tolerance);
                for (int i = 0; i < 4; i++) {
                    int expected = first + 40 * i;
                    int nearest = traced.corners().stream()
                            .mapToInt(corner -> Math.abs(corner - expected))
                            .min()
                            .orElseThrow();
                    assertThat(nearest).as("noise %s", noise).isLessThanOrEqualTo(noise == 0 ? 0 : 1);
                    Point corner = Point.of(i == 1 || i == 2 ? 100 : 0, i >= 2 ? 100 : 0);
                    assertThat(traced.path().nearest(corner).distance()).isLessThanOrEqualTo(tolerance + noise);
                }
            }
        }
    }

    /** A neckline and a shoulder: a corner between a curve and a straight line, told at its point. */
    @Test
    void corner_between_a_curve_and_a_line_is_told_by_its_point() {
        List<Point> points = new ArrayList<>();
        Cubic neckline = CubicTest.cubic(0, 80, 40, 80, 75, 45, 75, 0);
        SplittableRandom hand = new SplittableRandom(3);
        for (int i = 0; i <= 50; i++) {
            points.add(shaken(neckline.pointAt(i / 50.0), 0.2, hand));
        }
        for (int i = 1; i <= 50; i++) {
            points.add(shaken(Point.of(75 + 2.5 * i, i), 0.2, hand));
        }
        Traced traced = Traced.open(points, 0.5, 15, ANGLE);
        assertThat(traced.corners()).hasSize(1);
        assertThat(traced.corners().get(0)).isBetween(49, 51);
        assertThat(traced.path().curves().size()).isLessThanOrEqualTo(3);
        assertPassesBy(traced, points, 0.5);
    }

    /** A tolerance that the hand does not keep is kept all the same: the path then follows the hand. */
    @Test
    void tolerance_below_the_noise_is_kept() {
        List<Point> points = digitised(s -> Point.of(200 * s, 0), 60, 1);
        for (double tolerance : new double[] {0.5, 0.1, 1e-3, 1e-9}) {
            assertPassesBy(Traced.open(points, tolerance, 50, 3), points, tolerance);
            assertPassesBy(Traced.closed(points, tolerance, 50, 3), points, tolerance);
        }
    }

    @Test
    void two_points_are_a_segment_and_equal_neighbours_count_once() {
        Point a = Point.of(1, 2);
        Point b = Point.of(30, 40);
        assertThat(Traced.open(List.of(a, b), 0.1, 10, 1).path()).isEqualTo(Path.polyline(a, b));
        assertThat(Traced.open(List.of(a, a, a, b, b), 0.1, 10, 1).path()).isEqualTo(Path.polyline(a, b));
        List<Point> square = List.of(
                Point.of(0, 0),
                Point.of(0, 0),
                Point.of(9, 0),
                Point.of(9, 9),
                Point.of(9, 9),
                Point.of(0, 9),
                Point.of(0, 0));
        Traced traced = Traced.closed(square, 0.1, 5, 1);
        assertThat(traced.corners()).containsExactly(0, 2, 3, 5);
        assertThat(traced.path().length()).isCloseTo(36, within(1e-9));
    }

    @Test
    void what_is_no_path_is_refused() {
        List<Point> two = List.of(Point.of(0, 0), Point.of(1000, 0));
        assertRefused(List.of(), 1, "at least 2 distinct points, got 0 in 0");
        assertRefused(List.of(Point.ORIGIN, Point.ORIGIN), 1, "at least 2 distinct points, got 1 in 2");
        assertRefused(two, 1e-12, "tolerance must be at least");
        assertRefused(two, Double.NaN, "tolerance must be positive and finite, got NaN");
        assertRefused(two, -1, "tolerance must be positive and finite, got -1.0");
        assertThatThrownBy(() -> Traced.closed(two, 1, 10, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a ring needs at least 3 distinct points, got 2 in 2");
        assertThatThrownBy(() -> Traced.open(two, 1, 0, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("window");
        for (double angle : new double[] {0, Math.PI, Double.NaN}) {
            assertThatThrownBy(() -> Traced.open(two, 1, 10, angle))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("angle of a corner");
        }
        assertThatThrownBy(() -> Point.of(Double.NaN, 0)).isInstanceOf(IllegalArgumentException.class);
    }

    private static void assertRefused(List<Point> points, double tolerance, String message) {
        assertThatThrownBy(() -> Traced.open(points, tolerance, 10, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }
}

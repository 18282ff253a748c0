package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ArcsTest {
    private static final Point CENTER = Point.of(10, 20);

    @Test
    void arc_stays_as_near_to_the_circle_as_the_tolerance() {
        for (double tolerance : new double[] {0.1, 1e-2, 1e-4, 1e-6}) {
            for (double angle : new double[] {0.3, Math.PI / 2, -2, 3, -6}) {
                Point from = CENTER.plus(Vector.polar(50, 0.4));
                Point to = CENTER.plus(Vector.polar(50, 0.4 + angle));
                List<Curve> arc = Arcs.of(CENTER, from, to, angle, tolerance);
                Path path = Path.of(arc);
                assertThat(path.start()).isEqualTo(from);
                assertThat(path.end()).isEqualTo(to);
                assertThat(path.turning()).isCloseTo(angle, within(1e-9));
                assertThat(path.length()).isCloseTo(50 * Math.abs(angle), within(20 * tolerance));
                for (Curve curve : arc) {
                    for (double t = 0; t <= 1; t += 0.05) {
                        assertThat(curve.pointAt(t).distanceTo(CENTER)).isCloseTo(50, within(tolerance));
                    }
                }
            }
        }
    }

    @Test
    void arc_takes_no_more_cubics_than_it_needs() {
        Point from = CENTER.plus(Vector.of(50, 0));
        Point quarter = CENTER.plus(Vector.of(0, 50));
        assertThat(Arcs.of(CENTER, from, quarter, Math.PI / 2, 0.02)).hasSize(1);
        assertThat(Arcs.of(CENTER, from, quarter, Math.PI / 2, 0.01)).hasSize(2);
        assertThat(Arcs.of(CENTER, from, from.plus(Vector.of(-100, 0)), Math.PI, 100))
                .hasSize(2);
        assertThat(Arcs.of(CENTER, from, from, 2 * Math.PI, 0.02)).hasSize(4);
    }

    @Test
    void circular_arcs_keep_their_tolerance_on_the_outside() {
        for (double tolerance : new double[] {10, 0.1, 1e-3, 1e-6, 1e-9}) {
            for (double angle : new double[] {1e-3, 0.5, Math.PI / 2, -2, 2 * Math.PI, -9}) {
                Path arc = Arcs.circular(Point.of(3, 4), Point.of(103, 4), angle, tolerance);
                assertThat(arc.start()).isEqualTo(Point.of(103, 4));
                assertThat(arc.end().distanceTo(Point.of(3 + 100 * Math.cos(angle), 4 + 100 * Math.sin(angle))))
                        .isLessThan(1e-12);
                assertThat(arc.turning()).isCloseTo(angle, within(1e-9));
                for (Curve curve : arc.curves()) {
                    for (double t = 0; t <= 1; t += 0.03125) {
                        double off = curve.pointAt(t).distanceTo(Point.of(3, 4)) - 100;
                        assertThat(off).isBetween(-1e-12, tolerance + 1e-12);
                    }
                }
            }
        }
    }

    /**
     * (x/90)² + (y/40)² = 1 in the frame of the axes; its gradient turns a value into a distance, to the first order.
     */
    @Test
    void elliptical_arcs_keep_their_tolerance() {
        for (double tolerance : new double[] {1e-2, 1e-5}) {
            Path arc = Arcs.elliptical(Point.of(7, -2), 90, 40, 0.6, 1, 4, tolerance);
            Transform toAxes = Transform.translation(-7, 2).then(Transform.rotation(-0.6, Point.ORIGIN));
            for (Curve curve : arc.curves()) {
                for (double t = 0; t <= 1; t += 0.03125) {
                    Point p = toAxes.apply(curve.pointAt(t));
                    double value = p.x() * p.x() / 8100 + p.y() * p.y() / 1600 - 1;
                    double slope = 2 * Math.hypot(p.x() / 8100, p.y() / 1600);
                    assertThat(Math.abs(value) / slope).isLessThanOrEqualTo(1.01 * tolerance);
                }
            }
            Point start = toAxes.apply(arc.start());
            assertThat(start.distanceTo(Point.of(90 * Math.cos(1), 40 * Math.sin(1))))
                    .isLessThan(1e-12);
            Point end = toAxes.apply(arc.end());
            assertThat(end.distanceTo(Point.of(90 * Math.cos(5), 40 * Math.sin(5))))
                    .isLessThan(1e-12);
        }
    }

    @Test
    void arcs_of_nothing_or_of_too_much_are_refused() {
        assertThatThrownBy(() -> Arcs.circular(Point.ORIGIN, Point.ORIGIN, 1, 0.01))
                .hasMessage("radius must be positive and finite, got 0.0");
        assertThatThrownBy(() -> Arcs.circular(Point.ORIGIN, Point.of(1, 0), 0, 0.01))
                .hasMessage("angle of an arc must not be zero");
        assertThatThrownBy(() -> Arcs.circular(Point.ORIGIN, Point.of(1, 0), 1e9, 0.01))
                .hasMessageContaining("must take at most 100000 cubics");
        assertThatThrownBy(() -> Arcs.circular(Point.ORIGIN, Point.of(1, 0), 1, Double.MIN_VALUE))
                .hasMessageContaining("must take at most 100000 cubics");
    }
}

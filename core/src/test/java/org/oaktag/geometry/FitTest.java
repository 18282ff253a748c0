package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FitTest {
    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    @Test
    void spline_passes_its_points_with_continuous_direction_and_curvature() {
        List<Point> points = List.of(p(0, 0), p(30, 40), p(90, 30), p(120, 80));
        Path path = Fit.through(points, Vector.of(0, 2), Vector.of(3, 0));
        assertThat(path.curves()).hasSize(3);
        assertThat(path.startDirection()).isEqualTo(Vector.of(0, 1));
        assertThat(path.endDirection()).isEqualTo(Vector.of(1, 0));
        for (int i = 0; i < 2; i++) {
            Curve arriving = path.curves().get(i);
            Curve leaving = path.curves().get(i + 1);
            assertThat(arriving.end()).isEqualTo(points.get(i + 1));
            assertThat(arriving.directionAt(1).angleTo(leaving.directionAt(0))).isCloseTo(0, within(1e-14));
            assertThat(arriving.curvatureAt(1)).isCloseTo(leaving.curvatureAt(0), within(1e-14));
        }
    }

    @Test
    void spline_through_two_points_is_the_hermite_cubic() {
        Path path = Fit.through(List.of(p(0, 0), p(3, 4)), Vector.of(1, 0), Vector.of(0, 1));
        assertThat(path.curves())
                .containsExactly(Cubic.hermite(p(0, 0), Vector.of(5.0 / 3, 0), p(3, 4), Vector.of(0, 5.0 / 3)));
    }

    @Test
    void spline_refuses_too_few_or_coinciding_points() {
        assertThatThrownBy(() -> Fit.through(List.of(p(0, 0)), Vector.of(1, 0), Vector.of(1, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least two points to go through, got 1");
        assertThatThrownBy(() -> Fit.through(List.of(p(1, 2), p(1, 2)), Vector.of(1, 0), Vector.of(1, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("neighbouring points must differ");
        assertThatThrownBy(() -> Fit.through(List.of(p(1, 2), p(2, 2)), Vector.ZERO, Vector.of(1, 0)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("zero vector");
    }

    @Test
    void refit_finds_back_the_cubic_that_was_cut_to_pieces() {
        Cubic whole = new Cubic(p(0, 0), p(30, 180), p(120, 240), p(260, 250));
        List<Curve> pieces = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            pieces.add(whole.sub(i / 20.0, (i + 1) / 20.0));
        }
        for (double tolerance : new double[] {1, 1e-2, 1e-4, 1e-6}) {
            Path refit = Fit.refit(Path.of(pieces), tolerance);
            assertThat(refit.curves()).hasSize(1);
            for (double t = 0; t <= 1; t += 0.01) {
                assertThat(refit.nearest(whole.pointAt(t)).distance()).isLessThanOrEqualTo(tolerance);
            }
        }
    }

    @Test
    void refit_keeps_corners_and_makes_straight_runs_one() {
        Path path = Path.polyline(p(0, 0), p(10, 0), p(20, 0), p(20, 5), p(20, 9), p(20, 10));
        assertThat(Fit.refit(path, 0.01)).isEqualTo(Path.polyline(p(0, 0), p(20, 0), p(20, 10)));
        Path corner = Path.polyline(p(0, 0), p(10, 0), p(20, 10));
        assertThat(Fit.refit(corner, 0.01)).isEqualTo(corner);
    }

    @Test
    void blend_takes_on_direction_and_curvature_of_a_circle() {
        double k = 4.0 / 3 * Math.tan(Math.PI / 16);
        Cubic eighth = new Cubic(
                p(100, 0),
                p(100, 100 * k),
                p(100 * (Math.sqrt(0.5) + k * Math.sqrt(0.5)), 100 * (Math.sqrt(0.5) - k * Math.sqrt(0.5))),
                p(100 * Math.sqrt(0.5), 100 * Math.sqrt(0.5)));
        Path before = Path.of(eighth);
        Path after = before.transformed(Transform.rotation(Math.PI / 2, Point.ORIGIN));
        Cubic blend = Fit.blend(before, after);
        assertThat(blend.start()).isEqualTo(before.end());
        assertThat(blend.end()).isEqualTo(after.start());
        assertThat(blend.directionAt(0).angleTo(before.endDirection())).isCloseTo(0, within(1e-14));
        assertThat(blend.curvatureAt(0)).isCloseTo(before.curvatureAt(before.length()), within(1e-12));
        assertThat(blend.curvatureAt(1)).isCloseTo(after.curvatureAt(0), within(1e-12));
        assertThat(blend.pointAt(0.5).distanceTo(Point.ORIGIN)).isCloseTo(100, within(0.01));
    }

    @Test
    void blend_of_straight_paths_leaves_both_without_curvature() {
        Cubic blend = Fit.blend(Path.polyline(p(0, 0), p(10, 0)), Path.polyline(p(20, 10), p(20, 30)));
        assertThat(blend.control1().distanceTo(p(20, 0))).isLessThan(1e-12);
        assertThat(blend.control2().distanceTo(p(20, 0))).isLessThan(1e-12);
        assertThat(blend.curvatureAt(0)).isCloseTo(0, within(1e-14));
    }

    @Test
    void blend_falls_back_on_the_arc_where_no_handles_give_the_curvatures() {
        Cubic straight = Fit.blend(Path.polyline(p(0, 0), p(10, 0)), Path.polyline(p(40, 0), p(50, 0)));
        assertThat(straight.control1()).isEqualTo(p(20, 0));
        assertThat(straight.control2()).isEqualTo(p(30, 0));
        Cubic back = Fit.blend(Path.polyline(p(0, 0), p(10, 0)), Path.polyline(p(10, 10), p(0, 10)));
        assertThat(back.control1().distanceTo(p(10 + 10 / 1.5, 0))).isLessThan(1e-12);
        assertThat(back.control2().distanceTo(p(10 + 10 / 1.5, 10))).isLessThan(1e-12);
    }

    @Test
    void blend_needs_a_gap() {
        assertThatThrownBy(() -> Fit.blend(Path.polyline(p(0, 0), p(1, 0)), Path.polyline(p(1, 0), p(2, 0))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("gap");
    }
}

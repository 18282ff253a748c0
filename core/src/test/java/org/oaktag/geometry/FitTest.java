package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
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

    /** The tangents against the same system solved by another hand: commons-math's decomposition of the full matrix. */
    @Test
    void spline_of_uneven_chords_solves_its_system() {
        List<Point> points = List.of(p(0, 0), p(5, 1), p(60, 20), p(70, 90), p(71, 92), p(200, 60));
        Path path = Fit.through(points, Vector.of(1, 1), Vector.of(0, -1));
        int n = points.size() - 1;
        double[] h = new double[n];
        for (int i = 0; i < n; i++) {
            h[i] = points.get(i).distanceTo(points.get(i + 1));
        }
        // Second derivatives by the chord length agree at each inner point: 2 (m[i-1] + 2 m[i] - 3 s[i-1]) / h[i-1] =
        // ...
        double[][] a = new double[n + 1][n + 1];
        double[][] right = new double[n + 1][2];
        a[0][0] = 1;
        a[n][n] = 1;
        right[0] = new double[] {Math.sqrt(0.5), Math.sqrt(0.5)};
        right[n] = new double[] {0, -1};
        for (int i = 1; i < n; i++) {
            a[i][i - 1] = 1 / h[i - 1];
            a[i][i] = 2 / h[i - 1] + 2 / h[i];
            a[i][i + 1] = 1 / h[i];
            Vector arriving = points.get(i).minus(points.get(i - 1)).times(3 / (h[i - 1] * h[i - 1]));
            Vector leaving = points.get(i + 1).minus(points.get(i)).times(3 / (h[i] * h[i]));
            right[i] = new double[] {arriving.x() + leaving.x(), arriving.y() + leaving.y()};
        }
        var tangents =
                new LUDecomposition(new Array2DRowRealMatrix(a)).getSolver().solve(new Array2DRowRealMatrix(right));
        for (int i = 0; i < n; i++) {
            Cubic cubic = (Cubic) path.curves().get(i);
            Vector handle =
                    Vector.of(tangents.getEntry(i, 0), tangents.getEntry(i, 1)).times(h[i] / 3);
            assertThat(cubic.control1().minus(cubic.start()).minus(handle).length())
                    .isLessThan(1e-11);
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

    private static final Path WAVES = Fit.through(
            List.of(p(0, 0), p(40, 30), p(90, -20), p(150, 60), p(180, 150), p(260, 140), p(300, 40)),
            Vector.of(1, 0),
            Vector.of(0, -1));

    /** Each wave of the path cut into ten, as a draft is that has been cut and joined again and again. */
    private static Path shredded(Path path) {
        List<Curve> pieces = new ArrayList<>();
        for (Curve curve : path.curves()) {
            for (int i = 0; i < 10; i++) {
                pieces.add(curve.sub(i / 10.0, (i + 1) / 10.0));
            }
        }
        return Path.of(pieces);
    }

    @Test
    void refit_keeps_its_tolerance_everywhere_ends_and_smoothness_too() {
        Path source = shredded(WAVES);
        int last = 0;
        for (double tolerance : new double[] {1, 0.1, 1e-2, 1e-3}) {
            Path refit = Fit.refit(source, tolerance);
            assertThat(refit.curves()).hasSizeLessThan(source.curves().size()).hasSizeGreaterThanOrEqualTo(last);
            last = refit.curves().size();
            assertThat(refit.start()).isEqualTo(source.start());
            assertThat(refit.end()).isEqualTo(source.end());
            assertThat(refit.startDirection().angleTo(source.startDirection())).isCloseTo(0, within(1e-9));
            assertThat(refit.endDirection().angleTo(source.endDirection())).isCloseTo(0, within(1e-9));
            for (int i = 1; i < refit.curves().size(); i++) {
                Vector arriving = refit.curves().get(i - 1).directionAt(1);
                assertThat(arriving.angleTo(refit.curves().get(i).directionAt(0)))
                        .isCloseTo(0, within(1e-9));
            }
            for (int i = 0; i <= 500; i++) {
                Point on = source.pointAt(source.length() * i / 500);
                assertThat(refit.nearest(on).distance()).isLessThanOrEqualTo(tolerance);
                Point back = refit.pointAt(refit.length() * i / 500);
                assertThat(source.nearest(back).distance()).isLessThanOrEqualTo(tolerance);
            }
        }
    }

    /**
     * The error of a G1 cubic falls with the sixth power of its stretch, so a millionth of the tolerance takes ten
     * times as many.
     */
    @Test
    void refit_takes_no_more_cubics_than_the_sixth_order_asks_for() {
        Path source = shredded(shredded(WAVES));
        int coarse = Fit.refit(source, 1e-1).curves().size();
        int fine = Fit.refit(source, 1e-7).curves().size();
        assertThat(coarse).isLessThanOrEqualTo(12);
        assertThat(fine).isBetween(5 * coarse, 15 * coarse);
    }

    @Test
    void refit_that_saves_nothing_is_the_path_itself() {
        assertThat(Fit.refit(WAVES, 1e-9)).isSameAs(WAVES);
        Path single = Path.of(new Cubic(p(0, 0), p(1, 2), p(3, 2), p(4, 0)));
        assertThat(Fit.refit(single, 1)).isSameAs(single);
        Path point = Path.polyline(p(1, 2), p(1, 2));
        assertThat(Fit.refit(point, 1)).isSameAs(point);
    }

    /** A flat arc is within the tolerance of its chord, but it turns: one segment would lose its end directions. */
    @Test
    void refit_makes_no_segment_of_what_turns() {
        Cubic flat = new Cubic(p(0, 0), p(30, 0.1), p(70, 0.1), p(100, 0));
        Path halves = Path.of(flat.sub(0, 0.5), flat.sub(0.5, 1));
        Path refit = Fit.refit(halves, 1);
        assertThat(refit.curves()).hasSize(1);
        assertThat(refit.startDirection().angleTo(halves.startDirection())).isCloseTo(0, within(1e-12));
        // Forth, back and forth again: it does not turn in sum, but is no segment either.
        Path detour = Path.of(
                new Cubic(p(0, 0), p(10, 0), p(20, 20), p(30, 20)),
                new Cubic(p(30, 20), p(40, 20), p(50, 0), p(60, 0)));
        assertThat(detour.turning()).isCloseTo(0, within(1e-12));
        assertThat(Fit.refit(detour, 1).nearest(p(30, 20)).distance()).isLessThanOrEqualTo(1);
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

    /** Ends at the origin towards +x, with this curvature there. */
    private static Path towardsOrigin(double curvature) {
        // 3/2 k b² is the height of the other control over the tangent.
        return Path.of(new Cubic(p(-80, 10), p(-60, 1.5 * curvature * 900), p(-30, 0), p(0, 0)));
    }

    /**
     * The curvatures of some cubic are given, so that there are handles for them: at a place, in a direction, so many
     * times the arc's.
     */
    @Test
    void blend_takes_on_whatever_curvatures_a_cubic_can_have() {
        double[][] bridges = {
            // x, y, direction in degrees, handles
            {80, 30, 50, 1, 1},
            {80, 30, 50, 1.3, 0.8},
            {80, 30, 50, 0.7, 1.2},
            {60, 50, 80, 1.2, 1.1},
            {60, -50, -80, 0.9, 1.3},
            {120, 40, 40, 0.8, 0.8},
            {100, 5, -20, 1.2, 0.9},
            {100, -5, 20, 0.8, 0.9},
            {100, 60, 20, 1, 1.4},
        };
        for (double[] bridge : bridges) {
            Vector gap = Vector.of(bridge[0], bridge[1]);
            Vector leaving = Vector.polar(1, Math.toRadians(bridge[2]));
            double arc = gap.length() / (3 * Math.pow(Math.cos(Math.toRadians(bridge[2]) / 4), 2));
            Cubic model = new Cubic(
                    Point.ORIGIN,
                    p(bridge[3] * arc, 0),
                    Point.ORIGIN.plus(gap).plus(leaving.times(-bridge[4] * arc)),
                    Point.ORIGIN.plus(gap));
            Path before = towardsOrigin(model.curvatureAt(0));
            Path after = towardsOrigin(-model.curvatureAt(1))
                    .reversed()
                    .transformed(Transform.rotation(Math.PI + leaving.angle(), Point.ORIGIN)
                            .then(Transform.translation(gap)));
            Cubic blend = Fit.blend(before, after);
            String which = java.util.Arrays.toString(bridge);
            assertThat(blend.directionAt(0).angleTo(before.endDirection())).isCloseTo(0, within(1e-12));
            assertThat(blend.directionAt(1).angleTo(after.startDirection())).isCloseTo(0, within(1e-12));
            assertThat(blend.curvatureAt(0)).as(which).isCloseTo(model.curvatureAt(0), within(1e-11));
            assertThat(blend.curvatureAt(1)).as(which).isCloseTo(model.curvatureAt(1), within(1e-11));
        }
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

    /** An S whose halves turn by the same angle, one each way: its chord lies within 3 mm, and in another direction. */
    @Test
    void refit_does_not_take_an_s_for_its_chord() {
        Cubic half = CubicTest.cubic(0, 0, 10, 10, 20, 0, 30, 0);
        Path s = Path.of(
                half,
                half.transformed(Transform.rotation(Math.PI, Point.of(30, 0))).reversed());
        Path refit = Fit.refit(s, 10);
        assertThat(refit.startDirection()).isEqualTo(s.startDirection());
        assertThat(refit.endDirection().angleTo(s.endDirection())).isCloseTo(0, within(1e-9));
    }

    @Test
    void refit_of_a_straight_run_is_one_segment() {
        Path run = Path.polyline(Point.of(0, 0), Point.of(10, 5), Point.of(14, 7), Point.of(40, 20));
        assertThat(Fit.refit(run, 0.01)).isEqualTo(Path.polyline(Point.of(0, 0), Point.of(40, 20)));
    }
}

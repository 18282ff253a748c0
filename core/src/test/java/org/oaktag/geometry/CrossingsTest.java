package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CrossingsTest {
    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static Cubic cubic(double... c) {
        return new Cubic(p(c[0], c[1]), p(c[2], c[3]), p(c[4], c[5]), p(c[6], c[7]));
    }

    private static Line line(double x0, double y0, double x1, double y1) {
        return new Line(p(x0, y0), p(x1, y1));
    }

    private static void assertOne(List<Crossing> crossings, Crossing.Kind kind, Point point, double tolerance) {
        assertThat(crossings).hasSize(1);
        assertThat(crossings.get(0).kind()).isEqualTo(kind);
        assertThat(crossings.get(0).point().distanceTo(point)).isLessThanOrEqualTo(tolerance);
    }

    @Test
    void lines_cross_once() {
        List<Crossing> found = Crossings.between(line(0, 0, 10, 10), line(0, 10, 10, 0));
        assertOne(found, Crossing.Kind.CROSS, p(5, 5), 1e-15);
        assertThat(found.get(0).first()).isCloseTo(Math.sqrt(50), within(1e-12));
    }

    @Test
    void lines_that_share_an_end_touch() {
        assertOne(Crossings.between(line(0, 0, 10, 10), line(10, 10, 20, 0)), Crossing.Kind.TOUCH, p(10, 10), 0);
    }

    @Test
    void line_that_ends_on_another_touches() {
        assertOne(Crossings.between(line(0, 0, 9, 3), line(3, 1, 3, 20)), Crossing.Kind.TOUCH, p(3, 1), 0);
    }

    @Test
    void collinear_lines_overlap() {
        List<Crossing> found = Crossings.between(line(0, 0, 10, 0), line(15, 0, 4, 0));
        assertOne(found, Crossing.Kind.OVERLAP, p(4, 0), 0);
        assertThat(found.get(0).to()).isEqualTo(new Crossing.Place(p(10, 0), 10, 5));
    }

    @Test
    void parallel_and_distant_lines_do_not_meet() {
        assertThat(Crossings.between(line(0, 0, 10, 0), line(0, 1, 10, 1))).isEmpty();
        assertThat(Crossings.between(line(0, 0, 10, 0), line(11, 0, 20, 0))).isEmpty();
        assertThat(Crossings.between(line(0, 0, 10, 0), line(20, -5, 20, 5))).isEmpty();
    }

    /** The S curve y against x = t: crosses its own chord at both ends and in the middle. */
    @Test
    void cubic_crosses_its_chord_thrice() {
        Cubic s = cubic(0, 0, 1, 6, 2, -6, 3, 0);
        List<Crossing> found = Crossings.between(s, line(-1, 0, 4, 0));
        assertThat(found)
                .extracting(Crossing::kind)
                .containsExactly(Crossing.Kind.TOUCH, Crossing.Kind.CROSS, Crossing.Kind.TOUCH);
        assertThat(found.get(1).point()).isEqualTo(p(1.5, 0));
    }

    @Test
    void line_touches_the_summit_of_an_arch() {
        Cubic arch = cubic(0, 0, 0, 4, 4, 4, 4, 0);
        assertOne(Crossings.between(arch, line(-5, 3, 9, 3)), Crossing.Kind.TOUCH, p(2, 3), 1e-6);
        assertThat(Crossings.between(arch, line(-5, 3.0001, 9, 3.0001))).isEmpty();
        assertThat(Crossings.between(arch, line(-5, 2.9999, 9, 2.9999))).hasSize(2);
    }

    @Test
    void arches_touch_at_their_summits() {
        Cubic arch = cubic(0, 0, 0, 4, 4, 4, 4, 0);
        Cubic hung = cubic(0, 6, 0, 2, 4, 2, 4, 6);
        assertOne(Crossings.between(arch, hung), Crossing.Kind.TOUCH, p(2, 3), 1e-6);
        assertThat(Crossings.between(arch, hung.transformed(Transform.translation(0, 1e-6))))
                .isEmpty();
        assertThat(Crossings.between(arch, hung.transformed(Transform.translation(0, -1e-6))))
                .hasSize(2);
    }

    /** Two cubics that meet nine times, the most that Bézout allows. */
    @Test
    void cubics_meet_nine_times() {
        Cubic a = cubic(0, 5, 40, -12, -30, 22, 10, 5);
        Cubic b = cubic(5, 0, -12, 40, 22, -30, 5, 10);
        assertThat(Crossings.between(a, b)).hasSize(9).allMatch(c -> c.kind() == Crossing.Kind.CROSS);
    }

    @Test
    void same_cubic_overlaps_itself_forwards_and_backwards() {
        Cubic a = cubic(0, 0, 30, 180, 120, 240, 260, 250);
        for (Cubic b : List.of(a, a.reversed())) {
            List<Crossing> found = Crossings.between(a, b);
            assertOne(found, Crossing.Kind.OVERLAP, a.start(), 0);
            assertThat(found.get(0).to().point()).isEqualTo(a.end());
        }
        List<Crossing> part = Crossings.between(a.sub(0, 0.6), a.sub(0.4, 1));
        assertOne(part, Crossing.Kind.OVERLAP, a.pointAt(0.4), 1e-9);
        assertThat(part.get(0).to().point().distanceTo(a.pointAt(0.6))).isLessThan(1e-9);
    }

    @Test
    void crossing_at_a_join_is_reported_once() {
        Path bent = Path.polyline(p(0, 0), p(5, 5), p(10, 0));
        assertOne(Crossings.between(bent, Path.polyline(p(5, 0), p(5, 10))), Crossing.Kind.CROSS, p(5, 5), 0);
        assertOne(Crossings.between(bent, Path.polyline(p(0, 5), p(10, 5))), Crossing.Kind.TOUCH, p(5, 5), 0);
        assertOne(Crossings.between(bent, Path.polyline(p(5, 0), p(5, 5), p(5, 10))), Crossing.Kind.CROSS, p(5, 5), 0);
        assertOne(Crossings.between(bent, Path.polyline(p(4, 0), p(5, 5), p(6, 0))), Crossing.Kind.TOUCH, p(5, 5), 0);
        assertOne(Crossings.between(bent, Path.polyline(p(2, 5), p(5, 5), p(6, 0))), Crossing.Kind.CROSS, p(5, 5), 0);
    }

    @Test
    void endless_line_tells_signed_distances_along_itself() {
        List<Crossing> found =
                Crossings.ofLine(Path.polyline(p(0, -3), p(10, -3), p(10, 3), p(0, 3)), p(4, 0), Vector.of(0, 2));
        assertThat(found).extracting(Crossing::second).containsExactly(-3.0, 3.0);
        assertThat(found).extracting(Crossing::first).containsExactly(4.0, 22.0);
    }

    @Test
    void points_on_an_endless_line_are_its_joins_its_touches_and_the_ends_of_what_runs_along_it() {
        Path bent = Path.polyline(p(0, 0), p(5, 5), p(10, 0));
        Vector level = Vector.of(3, 0);
        assertThat(Crossings.pointsOnLine(bent, p(100, 5), level)).containsExactly(p(5, 5), p(5, 5));
        assertThat(Crossings.pointsOnLine(bent, p(-7, 2), level)).containsExactly(p(2, 2), p(8, 2));
        assertThat(Crossings.pointsOnLine(bent, p(-7, 6), level)).isEmpty();
        assertThat(Crossings.pointsOnLine(Path.polyline(p(0, -3), p(2, 1), p(9, 1)), p(0, 1), level))
                .containsExactly(p(2, 1), p(2, 1), p(9, 1));
        assertThat(Crossings.pointsOnLine(Path.of(cubic(0, 0, 0, 4, 8, 4, 8, 0)), p(0, 3), level))
                .allSatisfy(point -> assertThat(point.isCloseTo(p(4, 3), 1e-7)).isTrue())
                .isNotEmpty();
        assertThatThrownBy(() -> Crossings.pointsOnLine(bent, p(0, 0), Vector.ZERO))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void outline_reports_where_it_crosses_itself() {
        Outline bow = Outline.of(Path.polyline(p(0, 0), p(10, 10), p(10, 0), p(0, 10), p(0, 0)));
        assertOne(bow.selfCrossings(), Crossing.Kind.CROSS, p(5, 5), 0);
        Outline square = Outline.of(Path.polyline(p(0, 0), p(10, 0), p(10, 10), p(0, 10), p(0, 0)));
        assertThat(square.selfCrossings()).isEmpty();
        Cubic loop = cubic(0, 0, 20, 20, -10, 20, 10, 0);
        Outline looped = Outline.of(Path.of(loop, new Line(p(10, 0), p(0, 0))));
        assertThat(looped.selfCrossings()).hasSize(1);
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        Outline round = Outline.of(Path.from(p(1, 0))
                .curveTo(p(1, k), p(k, 1), p(0, 1))
                .curveTo(p(-k, 1), p(-1, k), p(-1, 0))
                .curveTo(p(-1, -k), p(-k, -1), p(0, -1))
                .curveTo(p(k, -1), p(1, -k), p(1, 0))
                .build());
        assertThat(round.selfCrossings()).isEmpty();
        Outline spike = Outline.of(Path.polyline(p(0, 0), p(10, 0), p(10, 5), p(10, -5), p(0, -5), p(0, 0)));
        assertThat(spike.selfCrossings()).extracting(Crossing::kind).contains(Crossing.Kind.OVERLAP);
    }

    @Test
    void outline_of_one_curve_does_not_cross_itself_at_its_join() {
        Outline drop = Outline.of(Path.of(cubic(3.1, 7.7, 83.3, 100, -80, 100.7, 3.1, 7.7)));
        assertThat(drop.selfCrossings()).isEmpty();
    }

    @Test
    void path_that_is_a_point_touches_what_it_lies_on() {
        Path point = Path.of(cubic(5, 0, 5, 0, 5, 0, 5, 0));
        Path line = Path.polyline(p(0, 0), p(10, 0));
        assertOne(Crossings.between(point, line), Crossing.Kind.TOUCH, p(5, 0), 0);
        assertOne(Crossings.between(line, point), Crossing.Kind.TOUCH, p(5, 0), 0);
        assertOne(Crossings.between(point, point), Crossing.Kind.TOUCH, p(5, 0), 0);
        assertThat(Crossings.between(point, Path.polyline(p(0, 1), p(10, 1)))).isEmpty();
    }

    @Test
    void curves_a_hair_apart_overlap_cross_or_stay_apart() {
        Cubic a = cubic(0, 0, 30, 180, 120, 240, 260, 250);
        for (double d = 1e-10; d < 0.1; d *= 10) {
            Cubic moved = a.transformed(Transform.translation(d, -d));
            Cubic turned = a.transformed(Transform.rotation(d / 100, a.pointAt(0.4)));
            if (d < 5e-8) {
                assertThat(Crossings.between(a, moved)).hasSize(1);
                assertThat(Crossings.between(a, turned))
                        .allMatch(c -> c.kind() == Crossing.Kind.OVERLAP)
                        .hasSize(1);
            } else {
                assertThat(Crossings.between(a, moved)).isEmpty();
                assertOne(Crossings.between(a, turned), Crossing.Kind.CROSS, a.pointAt(0.4), 1e-9 / d);
            }
        }
    }

    /** The two branches of a parallel at its cusp: they leave one point in one direction, and part slowly. */
    @Test
    void curves_that_part_slowly_from_a_common_end_meet_there_alone() {
        Path first = Path.from(new Point(28.46099920595732, -330.7401667080138))
                .curveTo(
                        new Point(31.31707397276704, -328.8743973836835),
                        new Point(32.22735685346045, -328.4958622325381),
                        new Point(32.35005289358537, -328.44463603749807))
                .build();
        Path second = Path.from(first.end())
                .curveTo(
                        new Point(32.07068893999632, -328.5612718503503),
                        new Point(29.67984705798692, -329.42234530504845),
                        new Point(25.98661941211943, -329.0406958121007))
                .build();
        List<Crossing> met = Crossings.between(first, second);
        assertThat(met).hasSize(1);
        assertThat(met.get(0).point().distanceTo(first.end())).isLessThan(1e-6);
    }

    /** Points lie within 1e12 mm; the line is cut off a little before. */
    @Test
    void a_line_crosses_paths_as_far_out_as_points_may_lie() {
        for (double c : new double[] {3e11, 5e11, 9.99e11, 9.9999e11}) {
            Path across = Path.polyline(p(-c, -c), p(c, c));
            for (Vector way : List.of(Vector.of(1, 0), Vector.of(0, -3), Vector.of(2, -1))) {
                List<Crossing> crossings = Crossings.ofLine(across, p(0.5 * c, 0.5 * c), way);
                assertThat(crossings).hasSize(1);
                assertThat(crossings.get(0).kind()).isEqualTo(Crossing.Kind.CROSS);
                assertThat(crossings.get(0).point().distanceTo(p(0.5 * c, 0.5 * c)))
                        .isLessThan(1e-3);
            }
        }
    }
}

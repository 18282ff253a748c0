package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What kind of meeting is told, once each, where joins, ends and the start of a closed path are in the way. */
class CrossingKindsTest {
    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    /** A square from its upper left corner clockwise, begun at this share of the first side. */
    private static Path square(double x, double y, double side, double begun) {
        Point start = p(x + begun * side, y);
        return begun == 0
                ? Path.polyline(start, p(x + side, y), p(x + side, y + side), p(x, y + side), start)
                : Path.polyline(start, p(x + side, y), p(x + side, y + side), p(x, y + side), p(x, y), start);
    }

    private static void assertKinds(List<Crossing> found, Crossing.Kind... kinds) {
        assertThat(found).extracting(Crossing::kind).containsExactly(kinds);
    }

    @Test
    void closed_paths_cross_wherever_they_are_begun() {
        // The second square's left side crosses the first one's top at its middle.
        for (double begun : new double[] {0, 0.25, 0.5}) {
            for (double other : new double[] {0, 0.25, 0.5}) {
                Path first = square(0, 0, 10, begun);
                Path second = square(5, -5, 10, other);
                List<Crossing> found = Crossings.between(first, second);
                assertKinds(found, Crossing.Kind.CROSS, Crossing.Kind.CROSS);
                assertThat(found).extracting(Crossing::point).containsExactlyInAnyOrder(p(5, 0), p(10, 5));
                for (Crossing crossing : found) {
                    assertThat(first.pointAt(crossing.first()).distanceTo(crossing.point()))
                            .isLessThan(1e-9);
                    assertThat(second.pointAt(crossing.second()).distanceTo(crossing.point()))
                            .isLessThan(1e-9);
                }
            }
        }
    }

    @Test
    void closed_paths_touch_at_a_corner_and_cross_at_corners() {
        // Corner against the middle of a side, from outside, and with the corner itself the start of either.
        Path diamond = Path.polyline(p(5, 0), p(8, -3), p(5, -6), p(2, -3), p(5, 0));
        for (double begun : new double[] {0, 0.25, 0.5}) {
            assertKinds(Crossings.between(square(0, 0, 10, begun), diamond), Crossing.Kind.TOUCH);
            assertKinds(Crossings.between(diamond, square(0, 0, 10, begun)), Crossing.Kind.TOUCH);
        }
        // Two diamonds corner to corner across each other: (0,0) is a corner of both.
        Path wide = Path.polyline(p(0, 0), p(9, -1), p(18, 0), p(9, 1), p(0, 0));
        Path tall = Path.polyline(p(0, 0), p(1, 9), p(0, 18), p(-1, 9), p(0, 0));
        assertKinds(Crossings.between(wide, tall), Crossing.Kind.TOUCH);
        Path bow = Path.polyline(p(-9, 1), p(0, 0), p(9, -1));
        Path upright = Path.polyline(p(1, 9), p(0, 0), p(-1, -9));
        assertKinds(Crossings.between(bow, upright), Crossing.Kind.CROSS);
        assertKinds(Crossings.between(bow.reversed(), upright), Crossing.Kind.CROSS);
        assertKinds(Crossings.between(bow, upright.reversed()), Crossing.Kind.CROSS);
    }

    @Test
    void ends_touch_even_where_they_would_cross_if_prolonged() {
        Path rail = Path.polyline(p(0, 0), p(10, 0));
        assertKinds(Crossings.between(rail, Path.polyline(p(3, 0), p(3, 5))), Crossing.Kind.TOUCH);
        assertKinds(Crossings.between(rail, Path.polyline(p(3, -5), p(3, 0))), Crossing.Kind.TOUCH);
        assertKinds(Crossings.between(Path.polyline(p(3, -5), p(3, 0)), rail), Crossing.Kind.TOUCH);
        assertKinds(Crossings.between(rail, Path.polyline(p(0, -5), p(0, 5))), Crossing.Kind.TOUCH);
        assertKinds(Crossings.between(rail, Path.polyline(p(10, -5), p(10, 5))), Crossing.Kind.TOUCH);
        // A hair inside its end, it crosses.
        assertKinds(Crossings.between(rail, Path.polyline(p(1e-4, -5), p(1e-4, 5))), Crossing.Kind.CROSS);
        assertKinds(Crossings.between(rail, Path.polyline(p(10 - 1e-4, -5), p(10 - 1e-4, 5))), Crossing.Kind.CROSS);
    }

    @Test
    void crossings_close_to_each_other_are_told_apart_and_keep_their_kinds() {
        Path rail = Path.polyline(p(0, 0), p(10, 0));
        // Down, up and down again within a twentieth of a millimetre, and a touch beside it.
        Path zigzag = Path.polyline(p(4.99, -1), p(5, 0.02), p(5.01, -0.02), p(5.02, 1));
        assertKinds(Crossings.between(rail, zigzag), Crossing.Kind.CROSS, Crossing.Kind.CROSS, Crossing.Kind.CROSS);
        Path dip = Path.polyline(p(4.9, -1), p(5, 0), p(5.01, -0.01), p(5.03, 0.01), p(6, 1));
        assertKinds(Crossings.between(rail, dip), Crossing.Kind.TOUCH, Crossing.Kind.CROSS);
    }

    @Test
    void paths_far_smaller_than_the_look_keep_their_kinds() {
        for (double scale : new double[] {1e-3, 1, 1e3, 1e6}) {
            Transform scaled = Transform.scale(scale);
            Path bent = Path.polyline(p(0, 0), p(5, 5), p(10, 0)).transformed(scaled);
            assertKinds(
                    Crossings.between(
                            bent, Path.polyline(p(2, 5), p(5, 5), p(6, 0)).transformed(scaled)),
                    Crossing.Kind.CROSS);
            assertKinds(
                    Crossings.between(
                            bent, Path.polyline(p(4, 0), p(5, 5), p(6, 0)).transformed(scaled)),
                    Crossing.Kind.TOUCH);
            assertKinds(
                    Crossings.between(
                            bent, Path.polyline(p(4, 9), p(5, 5), p(6, 9)).transformed(scaled)),
                    Crossing.Kind.TOUCH);
        }
    }

    /** Along two sides of the square and off again: one overlap, whose ends are not told a second time as points. */
    @Test
    void overlap_goes_on_over_joins() {
        Path along = Path.polyline(p(3, -4), p(3, 0), p(10, 0), p(10, 6), p(14, 6));
        for (double begun : new double[] {0, 0.1, 0.25}) {
            List<Crossing> found = Crossings.between(square(0, 0, 10, begun), along);
            assertKinds(found, Crossing.Kind.OVERLAP);
            assertThat(found.get(0).from().point()).isEqualTo(p(3, 0));
            assertThat(found.get(0).to().point()).isEqualTo(p(10, 6));
            assertThat(found.get(0).to().first() - found.get(0).from().first()).isCloseTo(13, within(1e-9));
            assertThat(found.get(0).from().second()).isCloseTo(4, within(1e-9));
            assertThat(found.get(0).to().second()).isCloseTo(17, within(1e-9));
            List<Crossing> back = Crossings.between(square(0, 0, 10, begun), along.reversed());
            assertKinds(back, Crossing.Kind.OVERLAP);
            assertThat(back.get(0).from().second()).isCloseTo(17, within(1e-9));
            assertThat(back.get(0).to().second()).isCloseTo(4, within(1e-9));
        }
    }

    @Test
    void overlap_and_points_elsewhere_are_both_told() {
        // Along the top from 2 to 8, then back through the square and out at its bottom.
        Path path = Path.polyline(p(2, -3), p(2, 0), p(8, 0), p(8, -2), p(5, -2), p(5, 15));
        List<Crossing> found = Crossings.between(square(0, 0, 10, 0), path);
        // The overlap is crossed in its middle by the same path, later on: a point of its own.
        assertThat(found).hasSize(3);
        assertThat(found.get(0).kind()).isEqualTo(Crossing.Kind.OVERLAP);
        assertThat(found.get(1).kind()).isEqualTo(Crossing.Kind.CROSS);
        assertThat(found.get(1).point()).isEqualTo(p(5, 0));
        assertThat(found.get(2).point()).isEqualTo(p(5, 10));
        // Two overlaps on one side stay two.
        Path twice = Path.polyline(p(1, -1), p(1, 0), p(3, 0), p(4, -1), p(5, 0), p(9, 0), p(9, -3));
        List<Crossing> two = Crossings.between(square(0, 0, 10, 0), twice);
        assertKinds(two, Crossing.Kind.OVERLAP, Crossing.Kind.OVERLAP);
        assertThat(two.get(1).from().point()).isEqualTo(p(5, 0));
    }

    /** Every order in which two segments can lie on one line. */
    @Test
    void collinear_segments_overlap_touch_or_stay_apart() {
        Line fixed = new Line(p(0, 0), p(10, 0));
        for (double[] c :
                new double[][] {{-5, 5, 0, 5}, {5, 15, 5, 10}, {2, 7, 2, 7}, {-3, 12, 0, 10}, {0, 10, 0, 10}}) {
            for (boolean reversed : new boolean[] {false, true}) {
                Line line = new Line(p(reversed ? c[1] : c[0], 0), p(reversed ? c[0] : c[1], 0));
                List<Crossing> found = Crossings.between(fixed, line);
                assertKinds(found, Crossing.Kind.OVERLAP);
                assertThat(found.get(0).from().first()).isCloseTo(c[2], within(1e-9));
                assertThat(found.get(0).to().first()).isCloseTo(c[3], within(1e-9));
                double second = Math.abs(c[2] - (reversed ? c[1] : c[0]));
                assertThat(found.get(0).from().second()).isCloseTo(second, within(1e-9));
            }
        }
        assertKinds(Crossings.between(fixed, new Line(p(10, 0), p(12, 0))), Crossing.Kind.TOUCH);
        assertKinds(Crossings.between(fixed, new Line(p(-2, 0), p(0, 0))), Crossing.Kind.TOUCH);
        assertThat(Crossings.between(fixed, new Line(p(10.1, 0), p(12, 0)))).isEmpty();
    }

    /** A stretch of a cubic under another parameter, and a curve that leaves it at both ends. */
    @Test
    void stretch_of_a_cubic_is_one_overlap_in_either_order() {
        Cubic whole = CubicTest.cubic(0, 0, 30, 180, 120, 240, 260, 250);
        Cubic part = whole.sub(0.3, 0.7);
        Vector off = part.directionAt(1).leftNormal().times(30);
        Path detour = Path.of(part, new Line(part.end(), part.end().plus(off)));
        List<Crossing> found = Crossings.between(Path.of(whole), detour);
        assertKinds(found, Crossing.Kind.OVERLAP);
        assertThat(found.get(0).from().first()).isCloseTo(whole.lengthBetween(0, 0.3, 1e-9), within(1e-5));
        assertThat(found.get(0).to().first()).isCloseTo(whole.lengthBetween(0, 0.7, 1e-9), within(1e-5));
        assertKinds(Crossings.between(detour, Path.of(whole)), Crossing.Kind.OVERLAP);
        assertKinds(Crossings.between(part.reversed(), whole), Crossing.Kind.OVERLAP);
        assertKinds(Crossings.between(whole, part), Crossing.Kind.OVERLAP);
    }

    /** Before the stretch that it shares, and after, a curve may cross the other once more. */
    @Test
    void crossing_outside_of_a_shared_stretch_is_told() {
        Cubic loop = CubicTest.cubic(0, 0, 20, 20, -10, 20, 10, 0);
        // The last part of the loop crosses the first part of it.
        Cubic last = loop.sub(0.6, 1);
        List<Crossing> found = Crossings.between(loop, last);
        assertThat(found).extracting(Crossing::kind).containsExactly(Crossing.Kind.CROSS, Crossing.Kind.OVERLAP);
        Cubic first = loop.sub(0, 0.4);
        assertThat(Crossings.between(loop, first))
                .extracting(Crossing::kind)
                .containsExactly(Crossing.Kind.OVERLAP, Crossing.Kind.CROSS);
    }

    @Test
    void parabolas_meet_where_their_equations_say() {
        Cubic one = parabola(1, 0, 0);
        Cubic other = parabola(2, 0, -1);
        List<Crossing> found = Crossings.between(one, other);
        assertKinds(found, Crossing.Kind.CROSS, Crossing.Kind.CROSS);
        assertThat(found.get(0).point().distanceTo(p(-1, 1))).isLessThan(1e-9);
        assertThat(found.get(1).point().distanceTo(p(1, 1))).isLessThan(1e-9);
        // x² = 2 x - 1 has the double root 1: a common tangent.
        List<Crossing> tangent = Crossings.between(one, parabola(0, 2, -1));
        assertKinds(tangent, Crossing.Kind.TOUCH);
        assertThat(tangent.get(0).point().distanceTo(p(1, 1))).isLessThan(1e-4);
        // x² = -x² + 2 x - 1/2 has the double root 1/2: two curves that touch inside.
        List<Crossing> kiss = Crossings.between(one, parabola(-1, 2, -0.5));
        assertKinds(kiss, Crossing.Kind.TOUCH);
        assertThat(kiss.get(0).point().distanceTo(p(0.5, 0.25))).isLessThan(1e-4);
        // Touching from the same side: x² = x²/2 only at 0, where both are level.
        assertKinds(Crossings.between(one, parabola(0.5, 0, 0)), Crossing.Kind.TOUCH);
        assertThat(Crossings.between(one, parabola(1, 0, 1e-6))).isEmpty();
    }

    /** y = a x² + b x + c for x from -2 to 2. */
    private static Cubic parabola(double a, double b, double c) {
        double y0 = 4 * a - 2 * b + c;
        double y1 = 4 * a + 2 * b + c;
        double slope0 = -4 * a + b;
        double slope1 = 4 * a + b;
        double third = 4.0 / 3;
        return CubicTest.cubic(-2, y0, -2 + third, y0 + slope0 * third, 2 - third, y1 - slope1 * third, 2, y1);
    }

    /** x³ touches its tangent at 0 and crosses it there: the order in which the branches leave tells. */
    @Test
    void tangent_at_a_point_of_inflection_crosses() {
        Cubic s = CubicTest.cubic(-1, -1, -1.0 / 3, 1, 1.0 / 3, -1, 1, 1);
        assertThat(s.pointAt(0.5)).isEqualTo(Point.ORIGIN);
        List<Crossing> found = Crossings.between(s, new Line(p(-3, 0), p(3, 0)));
        assertThat(found)
                .filteredOn(c -> c.point().distanceTo(Point.ORIGIN) < 1e-3)
                .hasSize(1);
        assertThat(found).allMatch(c -> c.kind() == Crossing.Kind.CROSS);
    }

    @Test
    void segment_that_just_reaches_or_just_misses_a_cubic() {
        Cubic arch = CubicTest.cubic(0, 0, 0, 4, 4, 4, 4, 0);
        assertKinds(Crossings.between(new Line(p(2, 5), p(2, 3)), arch), Crossing.Kind.TOUCH);
        assertThat(Crossings.between(new Line(p(2, 5), p(2, 3 + 1e-6)), arch)).isEmpty();
        assertKinds(Crossings.between(new Line(p(2, 5), p(2, 3 - 1e-3)), arch), Crossing.Kind.CROSS);
        assertKinds(Crossings.between(arch, new Line(p(2, 0), p(2, 3))), Crossing.Kind.TOUCH);
        assertThat(Crossings.between(arch, new Line(p(2, 0), p(2, 3 - 1e-6)))).isEmpty();
        assertThat(Crossings.between(arch, new Line(p(2, 1), p(2, 1)))).isEmpty();
        // A line that lies in a straight cubic.
        assertKinds(
                Crossings.between(new Line(p(1, 0), p(2, 0)), CubicTest.cubic(0, 0, 1, 0, 2, 0, 3, 0)),
                Crossing.Kind.OVERLAP);
    }

    /** A crossing a millionth of a millimetre from an end, or nearer, is at that end. */
    @Test
    void end_reaches_as_far_as_a_meeting() {
        Path rail = Path.polyline(p(0, 0), p(1, 0));
        for (double x : new double[] {1e-6, 1 - 1e-6}) {
            Path across = Path.polyline(p(x, -1), p(x, 1));
            assertKinds(Crossings.between(rail, across), Crossing.Kind.TOUCH);
            assertKinds(Crossings.between(across, rail), Crossing.Kind.TOUCH);
        }
        for (double x : new double[] {1.01e-6, 1 - 1.01e-6}) {
            assertKinds(Crossings.between(rail, Path.polyline(p(x, -1), p(x, 1))), Crossing.Kind.CROSS);
        }
    }

    /** Just beside a touch the second path goes through: what is seen from the touch must not reach that far. */
    @Test
    void touch_beside_a_crossing_stays_a_touch() {
        Path rail = Path.polyline(p(-5, 0), p(5, 0));
        for (double gap : new double[] {1e-4, 1e-2, 0.06}) {
            Path dip = Path.polyline(p(-1, -1), p(0, 0), p(0.5 * gap, -0.5 * gap), p(2 * gap, gap), p(3, 3));
            assertKinds(Crossings.between(rail, dip), Crossing.Kind.TOUCH, Crossing.Kind.CROSS);
            assertKinds(Crossings.between(dip, rail), Crossing.Kind.TOUCH, Crossing.Kind.CROSS);
        }
    }

    /** A star of four corners a hundredth of a millimetre across: what is looked at must be smaller yet. */
    @Test
    void short_paths_are_looked_at_from_nearby() {
        for (double size : new double[] {1e-3, 1e-2, 0.1}) {
            Transform scaled = Transform.scale(size);
            Path hook =
                    Path.polyline(p(-1, 0), p(0.2, 0), p(0.2, 0.3), p(-1, 0.3)).transformed(scaled);
            Path across = Path.polyline(p(0, -1), p(0, 0.2), p(-0.5, 0.2), p(-0.5, -0.1), p(2, -0.1))
                    .transformed(scaled);
            assertThat(Crossings.between(hook, across)).hasSize(2).allMatch(c -> c.kind() == Crossing.Kind.CROSS);
        }
    }

    /** Out of a square through the middle of a side, once, however small the square is beside what is looked at. */
    @Test
    void way_out_of_a_square_crosses_once() {
        for (double side : new double[] {1e-3, 3e-3, 1e-2, 0.07, 1, 1e4}) {
            Path square = square(0, 0, side, 0);
            Path out = Path.polyline(p(0.5 * side, 0.5 * side), p(0.5 * side, -0.5 * side));
            assertKinds(Crossings.between(square, out), Crossing.Kind.CROSS);
            assertKinds(Crossings.between(out, square.reversed()), Crossing.Kind.CROSS);
        }
    }

    /** However short the way back to the point is: drawn larger, the same outline shows it. */
    @Test
    void a_small_loop_keeps_its_kind() {
        for (double size : new double[] {1e-3, 0.01, 0.03, 0.1, 1, 30}) {
            Point down = p(0, size);
            Point aside = p(-size, size);
            for (boolean crosses : new boolean[] {false, true}) {
                Path outline = Path.polyline(
                        p(100, 0),
                        p(0, 0),
                        crosses ? aside : down,
                        crosses ? down : aside,
                        p(0, 0),
                        p(-100, 0),
                        p(0, -100),
                        p(100, 0));
                assertKinds(Crossings.ofItself(outline), crosses ? Crossing.Kind.CROSS : Crossing.Kind.TOUCH);
                assertKinds(
                        Crossings.ofItself(outline.reversed()), crosses ? Crossing.Kind.CROSS : Crossing.Kind.TOUCH);
            }
        }
    }
}

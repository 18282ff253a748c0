package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Corners between two parallels of which each part follows from two straight lines or a circle. */
class OffsetCornerTest {
    private static final double TOLERANCE = 1e-6;

    /** Sharp, right and blunt turns to the right, so that the left is the outside. */
    private static final double[] OUTER = {0.3, 0.8, Math.PI / 2, 2, 2.8};

    /** Two edges of 100 that meet at a corner, and the parallels to the left of them. */
    private static final class Corner {
        final Point at;
        final Vector arriving;
        final Vector leaving;
        final double d1;
        final double d2;
        final List<RawCurve> head = new ArrayList<>();
        final List<RawCurve> tail = new ArrayList<>();

        Corner(double size, double turn, double d1, double d2) {
            this.at = Point.of(3 * size, -4 * size);
            this.arriving = Vector.polar(1, 0.4);
            this.leaving = Vector.polar(1, 0.4 + turn);
            this.d1 = d1 * size;
            this.d2 = d2 * size;
            Point end = at.plus(arriving.leftNormal().times(this.d1));
            Point start = at.plus(leaving.leftNormal().times(this.d2));
            head.add(
                    new RawCurve(new Line(end.plus(arriving.times(-100 * size)), end), 4, RawCurve.NONE, false, false));
            tail.add(new RawCurve(
                    new Line(start, start.plus(leaving.times(100 * size))), 5, RawCurve.NONE, false, false));
        }

        Corner outer(CornerStyle style) {
            new OffsetCorner(style, TOLERANCE).outer(head, tail, at, arriving, leaving, d1, d2);
            return this;
        }

        List<RawCurve> run() {
            return Stream.concat(head.stream(), tail.stream()).toList();
        }

        /** The point left of the first edge by across and past its end by along. */
        Point byFirst(double across, double along) {
            return at.plus(arriving.leftNormal().times(across)).plus(arriving.times(along));
        }

        Point bySecond(double across, double along) {
            return at.plus(leaving.leftNormal().times(across)).plus(leaving.times(along));
        }

        double turn() {
            return arriving.angleTo(leaving);
        }

        /** Where the parallels, prolonged, meet. */
        Point tip() {
            return byFirst(d1, (d2 - d1 * Math.cos(turn())) / Math.sin(turn()));
        }

        void assertRun(double tolerance, Point... between) {
            List<RawCurve> run = run();
            assertThat(run).hasSize(between.length + 1);
            for (int i = 0; i < between.length; i++) {
                assertThat(run.get(i).curve().end())
                        .isEqualTo(run.get(i + 1).curve().start());
                assertThat(run.get(i).curve().end().distanceTo(between[i]))
                        .as("point %s", i)
                        .isLessThan(tolerance);
            }
            assertThat(run.get(0).curve().start().distanceTo(byFirst(d1, -100 * scale())))
                    .isLessThan(tolerance);
            assertThat(run.get(run.size() - 1).curve().end().distanceTo(bySecond(d2, 100 * scale())))
                    .isLessThan(tolerance);
        }

        private double scale() {
            return at.x() / 3;
        }
    }

    @Test
    void parallels_are_mitred_at_their_meeting() {
        for (double size : new double[] {1e-3, 1, 1e3}) {
            for (double turn : OUTER) {
                Corner corner = new Corner(size, turn, 7, 7);
                Point tip = corner.at.plus(
                        corner.arriving.leftNormal().rotated(turn / 2).times(7 * size / Math.cos(turn / 2)));
                corner.outer(CornerStyle.mitre(1.0001 / Math.cos(turn / 2))).assertRun(1e-9 * size, tip);
                assertThat(corner.run()).noneMatch(RawCurve::corner);
            }
            Corner unequal = new Corner(size, 2, 3, 8);
            unequal.outer(CornerStyle.mitre(4)).assertRun(1e-9 * size, unequal.tip());
        }
    }

    /** Just below the share at which the tip lies the limit cuts it off, square to the way to the tip. */
    @Test
    void a_tip_beyond_the_limit_is_cut_off_square_at_the_limit() {
        for (double turn : OUTER) {
            double limit = 0.5 * (1 + 1 / Math.cos(turn / 2));
            Corner corner = new Corner(1, turn, 7, 7).outer(CornerStyle.mitre(limit));
            double half = (7 / Math.cos(turn / 2) - 7 * limit) / Math.tan(turn / 2);
            Vector out = corner.arriving.leftNormal().rotated(turn / 2);
            Point middle = corner.at.plus(out.times(7 * limit));
            corner.assertRun(
                    1e-9,
                    middle.plus(out.leftNormal().times(half)),
                    middle.plus(out.rightNormal().times(half)));
            assertThat(corner.head.get(1).corner()).isTrue();
            assertThat(corner.head.get(1).link()).isFalse();
            assertThat(corner.head.get(1).edge()).isEqualTo(4);
        }
    }

    @Test
    void square_and_unequal_round_corners_are_cut_at_the_greater_distance() {
        for (CornerStyle style : List.of(CornerStyle.square(), CornerStyle.round(), CornerStyle.mitre(1))) {
            for (double[] d : new double[][] {{3, 5}, {5, 3}}) {
                Corner corner = new Corner(1, 2, d[0], d[1]);
                Vector out = corner.tip().minus(corner.at).unit();
                corner.outer(style);
                assertThat(corner.head).hasSize(2);
                assertThat(corner.tail).hasSize(1);
                for (Point end : List.of(
                        corner.head.get(1).curve().start(),
                        corner.head.get(1).curve().end())) {
                    assertThat(end.minus(corner.at).dot(out)).isCloseTo(5, within(1e-9));
                }
                assertOnLine(corner.head.get(1).curve().start(), corner.at, corner.arriving, d[0]);
                assertOnLine(corner.head.get(1).curve().end(), corner.at, corner.leaving, d[1]);
            }
        }
    }

    private static void assertOnLine(Point point, Point through, Vector direction, double left) {
        assertThat(point.minus(through).dot(direction.leftNormal())).isCloseTo(left, within(1e-9));
    }

    @Test
    void a_round_corner_is_an_arc_about_it() {
        for (double turn : OUTER) {
            Corner corner = new Corner(1, turn, 7, 7).outer(CornerStyle.round());
            assertThat(corner.head.size()).isGreaterThan(1);
            double length = 0;
            for (RawCurve raw : corner.head.subList(1, corner.head.size())) {
                assertThat(raw.corner()).isTrue();
                assertThat(raw.link()).isFalse();
                length += raw.curve().length();
                for (double t = 0; t <= 1; t += 0.125) {
                    assertThat(raw.curve().pointAt(t).distanceTo(corner.at)).isCloseTo(7, within(0.5 * TOLERANCE));
                }
            }
            assertThat(length).isCloseTo(7 * turn, within(1e-5));
        }
    }

    @Test
    void beside_an_edge_at_distance_zero_every_corner_is_the_meeting_of_the_prolongations() {
        for (CornerStyle style : List.of(
                CornerStyle.square(), CornerStyle.round(), CornerStyle.mitre(1), CornerStyle.squaredToFirst(1))) {
            Corner first = new Corner(1, 3, 0, 7);
            first.outer(style).assertRun(1e-9, first.tip());
            Corner second = new Corner(1, 3, 7, 0);
            second.outer(style).assertRun(1e-9, second.tip());
        }
        // sin 0.0005 puts the meeting 2000 distances away; a thousand is as far as it goes.
        Corner far = new Corner(1, Math.PI - 5e-4, 7, 0);
        far.outer(CornerStyle.square());
        assertThat(far.head.get(far.head.size() - 1).curve().end().distanceTo(far.at))
                .isCloseTo(7000, within(10.0));
    }

    /**
     * The first allowance ends square at the point of its edge's prolongation that lies on the second parallel, and the
     * other way round.
     */
    @Test
    void a_corner_square_to_one_edge_ends_where_that_edge_prolonged_leaves_the_others_distance() {
        for (double turn : new double[] {0.8, Math.PI / 2, 2}) {
            for (double[] d : new double[][] {{7, 7}, {4, 9}, {9, 4}}) {
                Corner first = new Corner(1, turn, d[0], d[1]).outer(CornerStyle.squaredToFirst(3));
                double past = d[1] / Math.sin(turn);
                first.assertRun(1e-9, first.byFirst(d[0], past), first.byFirst(0, past));
                assertOnLine(first.byFirst(0, past), first.at, first.leaving, d[1]);
                assertThat(first.head.get(1).corner()).isTrue();
                Corner second = new Corner(1, turn, d[0], d[1]).outer(CornerStyle.squaredToSecond(3));
                double before = -d[0] / Math.sin(turn);
                second.assertRun(1e-9, second.bySecond(0, before), second.bySecond(d[1], before));
                assertOnLine(second.bySecond(0, before), second.at, second.arriving, d[0]);
                assertThat(second.head.get(1).corner()).isTrue();
            }
        }
    }

    /**
     * At 2 rad its end lies 1.0998 distances away, and the meeting 1.8508: beyond the limit the one is no end and the
     * other is cut off.
     */
    @Test
    void a_square_end_beyond_the_limit_is_mitred() {
        for (boolean second : new boolean[] {false, true}) {
            double end = 1 / Math.sin(2);
            Corner within = new Corner(1, 2, 7, 7).outer(new CornerStyle.SquaredTo(second, end + 1e-9));
            assertThat(within.run()).hasSize(3);
            assertThat(within.head.get(1).curve().length()).isCloseTo(7, within(1e-9));
            Corner beyond = new Corner(1, 2, 7, 7).outer(new CornerStyle.SquaredTo(second, end - 1e-9));
            double cut = 2 * (7 / Math.cos(1) - 7 * end) / Math.tan(1);
            assertThat(beyond.head.get(1).curve().length()).isCloseTo(cut, within(1e-6));
            // The limit is a share of the greater distance, 9, and the end lies at the other's, 5, over the sine.
            double share = 5 / Math.sin(2.8) / 9;
            Corner sharp = new Corner(1, 2.8, second ? 5 : 9, second ? 9 : 5);
            sharp.outer(new CornerStyle.SquaredTo(second, share + 1e-9));
            assertThat(sharp.head.get(1).curve().length()).isCloseTo(9, within(1e-9));
        }
        for (boolean second : new boolean[] {false, true}) {
            Corner blunt = new Corner(1, 0.3, 7, 7).outer(new CornerStyle.SquaredTo(second, 2));
            blunt.assertRun(1e-9, blunt.tip());
        }
    }

    /**
     * The edge that has to be cut off is too short for it, as the end would come past its other end: mitred instead.
     */
    @Test
    void a_square_end_that_the_other_parallel_does_not_reach_is_mitred() {
        Corner first = new Corner(1, 0.8, 7, 7);
        Line second = (Line) first.tail.get(0).curve();
        first.tail.set(0, first.tail.get(0).with(second.sub(0, 0.05)));
        first.outer(CornerStyle.squaredToFirst(3));
        assertThat(first.head).hasSize(1);
        assertThat(first.head.get(0).curve().end().distanceTo(first.tip())).isLessThan(1e-9);
        Corner last = new Corner(1, 0.8, 7, 7);
        last.head.set(0, last.head.get(0).with(last.head.get(0).curve().sub(0.95, 1)));
        last.outer(CornerStyle.squaredToSecond(3));
        assertThat(last.head).hasSize(1);
        assertThat(last.tail.get(0).curve().start().distanceTo(last.tip())).isLessThan(1e-9);
    }

    /** A parallel in several pieces is cut off in the piece where the line is met, and the pieces beyond are gone. */
    @Test
    void pieces_beyond_the_cut_are_gone() {
        Corner first = new Corner(1, 0.8, 7, 7);
        Curve whole = first.tail.get(0).curve();
        first.tail.set(0, first.tail.get(0).with(whole.sub(0, 0.03)));
        first.tail.add(first.tail.get(0).with(whole.sub(0.03, 1)));
        first.outer(CornerStyle.squaredToFirst(3));
        double past = 7 / Math.sin(0.8);
        first.assertRun(1e-9, first.byFirst(7, past), first.byFirst(0, past));

        Corner last = new Corner(1, 0.8, 7, 7);
        Curve head = last.head.get(0).curve();
        last.head.set(0, last.head.get(0).with(head.sub(0, 0.97)));
        last.head.add(last.head.get(0).with(head.sub(0.97, 1)));
        last.outer(CornerStyle.squaredToSecond(3));
        last.assertRun(1e-9, last.bySecond(0, -past), last.bySecond(7, -past));
    }

    @Test
    void a_turn_back_is_rounded_or_boxed() {
        Corner round = new Corner(1, Math.PI, 7, 7);
        new OffsetCorner(CornerStyle.round(), TOLERANCE).back(round.head, round.tail, round.at, round.arriving, 7, 7);
        double length = 0;
        for (RawCurve raw : round.head.subList(1, round.head.size())) {
            length += raw.curve().length();
            Vector arm = raw.curve().pointAt(0.5).minus(round.at);
            assertThat(arm.length()).isCloseTo(7, within(TOLERANCE));
            assertThat(arm.dot(round.arriving)).isPositive();
        }
        assertThat(length).isCloseTo(7 * Math.PI, within(1e-5));
        for (CornerStyle style : List.of(CornerStyle.square(), CornerStyle.mitre(3), CornerStyle.round())) {
            for (double[] d : new double[][] {{4, 9}, {9, 4}}) {
                Corner box = new Corner(1, Math.PI, d[0], d[1]);
                new OffsetCorner(style, TOLERANCE).back(box.head, box.tail, box.at, box.arriving, d[0], d[1]);
                box.assertRun(1e-9, box.byFirst(d[0], 9), box.byFirst(-d[1], 9));
            }
        }
    }

    @Test
    void crossing_parallels_are_linked_through_the_corner() {
        Corner corner = new Corner(1, -1, 7, 9);
        new OffsetCorner(CornerStyle.round(), TOLERANCE).inner(corner.head, corner.tail, corner.at);
        corner.assertRun(1e-12, corner.byFirst(7, 0), corner.at, corner.bySecond(9, 0));
        assertThat(corner.run()).extracting(RawCurve::link).containsExactly(false, true, true, false);
        assertThat(corner.run()).extracting(RawCurve::corner).containsExactly(false, true, true, false);
    }

    @Test
    void a_step_is_straight() {
        Corner corner = new Corner(1, 0, 7, 9);
        new OffsetCorner(CornerStyle.round(), TOLERANCE).step(corner.head, corner.tail);
        corner.assertRun(1e-12, corner.byFirst(7, 0), corner.bySecond(9, 0));
        assertThat(corner.run()).extracting(RawCurve::link).containsOnly(false);
        assertThat(corner.run()).extracting(RawCurve::corner).containsExactly(false, true, false);
    }

    /**
     * The arc of the greater distance crosses the other edge's line square, at the distance from the corner, and goes
     * on.
     */
    @Test
    void the_greater_distance_is_carried_round_past_the_other_edge() {
        for (double turn : new double[] {-1.2, -0.3, -1e-3, 0.5}) {
            Corner first = new Corner(1, turn, 9, 2);
            new OffsetCorner(CornerStyle.mitre(2), TOLERANCE)
                    .carryRound(first.head, first.tail, first.at, first.arriving, first.leaving, 9, 2);
            List<RawCurve> arc = first.head.subList(1, first.head.size() - 1);
            assertArc(arc, first.at, 0.5 * Math.PI + turn + 1.5);
            assertThat(nearest(arc, first.bySecond(0, 9))).isLessThan(TOLERANCE);
            assertLink(first.head.get(first.head.size() - 1), first);

            Corner second = new Corner(1, turn, 2, 9);
            new OffsetCorner(CornerStyle.mitre(2), TOLERANCE)
                    .carryRound(second.head, second.tail, second.at, second.arriving, second.leaving, 2, 9);
            List<RawCurve> back = second.head.subList(2, second.head.size());
            assertArc(back, second.at, 0.5 * Math.PI + turn + 1.5);
            assertThat(nearest(back, second.byFirst(0, -9))).isLessThan(TOLERANCE);
            assertLink(second.head.get(1), second);
        }
    }

    private static void assertLink(RawCurve link, Corner corner) {
        assertThat(link.link()).isTrue();
        List<RawCurve> run = corner.run();
        for (int i = 1; i < run.size(); i++) {
            assertThat(run.get(i).curve().start())
                    .isEqualTo(run.get(i - 1).curve().end());
        }
    }

    private static void assertArc(List<RawCurve> arc, Point center, double angle) {
        double length = 0;
        for (RawCurve raw : arc) {
            assertThat(raw.link()).isFalse();
            assertThat(raw.corner()).isTrue();
            assertThat(raw.curve().pointAt(0.5).distanceTo(center)).isCloseTo(9, within(TOLERANCE));
            length += raw.curve().length();
        }
        assertThat(length).isCloseTo(9 * angle, within(1e-4));
    }

    private static double nearest(List<RawCurve> run, Point point) {
        return run.stream()
                .mapToDouble(raw -> raw.curve().nearest(point).distance())
                .min()
                .orElseThrow();
    }

    /** An edge at distance 0 is prolonged to the other's parallel, which ends there. */
    @Test
    void a_parallel_ends_on_the_prolongation_of_an_edge_at_distance_zero() {
        double far = 7 / Math.sin(0.8);
        Corner end = new Corner(1, 0.8, 7, 0);
        new OffsetCorner(CornerStyle.round(), TOLERANCE).cutEnd(end.head, end.tail, end.at, end.leaving);
        end.assertRun(1e-9, end.bySecond(0, -far));
        Corner start = new Corner(1, 0.8, 0, 7);
        new OffsetCorner(CornerStyle.round(), TOLERANCE).cutStart(start.head, start.tail, start.at, start.arriving);
        start.assertRun(1e-9, start.byFirst(0, far));

        Corner shortHead = new Corner(1, 0.8, 7, 0);
        shortHead.head.set(
                0, shortHead.head.get(0).with(shortHead.head.get(0).curve().sub(0.95, 1)));
        new OffsetCorner(CornerStyle.round(), TOLERANCE)
                .cutEnd(shortHead.head, shortHead.tail, shortHead.at, shortHead.leaving);
        assertThat(shortHead.run()).hasSize(3);
        assertThat(shortHead.head.get(1).curve().length()).isCloseTo(7, within(1e-9));
        Corner shortTail = new Corner(1, 0.8, 0, 7);
        shortTail.tail.set(
                0, shortTail.tail.get(0).with(shortTail.tail.get(0).curve().sub(0, 0.05)));
        new OffsetCorner(CornerStyle.round(), TOLERANCE)
                .cutStart(shortTail.head, shortTail.tail, shortTail.at, shortTail.arriving);
        assertThat(shortTail.run()).hasSize(3);
        assertThat(shortTail.head.get(1).curve().length()).isCloseTo(7, within(1e-9));
    }

    @Test
    void a_parallel_that_crosses_the_line_twice_is_cut_off_at_the_crossing_nearer_to_the_corner() {
        // x = 3 t, y = 9 t (1 - t)(1 - 2 t) - 1/2.
        Cubic wave = CubicTest.cubic(0, -0.5, 1, 2.5, 2, -3.5, 3, -0.5);
        double[] roots = Polynomials.roots(-0.5, 2.5, -3.5, -0.5);
        assertThat(roots).hasSize(2);
        Vector east = Vector.of(1, 0);
        List<RawCurve> head = new ArrayList<>(List.of(new RawCurve(wave, 0, RawCurve.NONE, false, false)));
        List<RawCurve> tail = new ArrayList<>(
                List.of(new RawCurve(new Line(Point.of(5, 0), Point.of(9, 0)), 1, RawCurve.NONE, false, false)));
        new OffsetCorner(CornerStyle.round(), TOLERANCE).cutEnd(head, tail, Point.of(5, 0), east);
        assertThat(head.get(0).curve().end().x()).isCloseTo(3 * roots[1], within(1e-9));
        assertThat(tail.get(0).curve().start()).isEqualTo(head.get(0).curve().end());

        List<RawCurve> before = new ArrayList<>(
                List.of(new RawCurve(new Line(Point.of(-9, 0), Point.of(-5, 0)), 0, RawCurve.NONE, false, false)));
        List<RawCurve> after = new ArrayList<>(List.of(new RawCurve(wave, 1, RawCurve.NONE, false, false)));
        new OffsetCorner(CornerStyle.round(), TOLERANCE).cutStart(before, after, Point.of(-5, 0), east);
        assertThat(after.get(0).curve().start().x()).isCloseTo(3 * roots[0], within(1e-9));
        assertThat(before.get(0).curve().end()).isEqualTo(after.get(0).curve().start());
    }

    /** A curved parallel is prolonged by a straight line of its own. */
    @Test
    void curved_parallels_are_prolonged_straight() {
        Corner corner = new Corner(1, 2, 7, 7);
        Cubic first = Cubic.from(corner.head.get(0).curve());
        Cubic second = Cubic.from(corner.tail.get(0).curve());
        corner.head.set(0, corner.head.get(0).with(first));
        corner.tail.set(0, corner.tail.get(0).with(second));
        corner.outer(CornerStyle.mitre(4));
        corner.assertRun(1e-9, first.end(), corner.tip(), second.start());
        assertThat(corner.run()).noneMatch(RawCurve::corner);
        assertThat(corner.run()).extracting(RawCurve::edge).containsExactly(4, 4, 5, 5);
    }
}

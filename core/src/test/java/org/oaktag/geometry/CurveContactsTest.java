package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class CurveContactsTest {
    /** y = 9 t (1 - t) (1 - 2 t) over x = 3 t: on the x axis at 0, 1/2 and 1. */
    private static final Cubic S = CubicTest.cubic(0, 0, 1, 3, 2, -3, 3, 0);

    /** Meets itself at 1/2 -+ sqrt(0.15). */
    private static final Cubic LOOP = CubicTest.cubic(0, 0, 20, 20, -10, 20, 10, 0);

    private static final double KNOT = 0.5 - Math.sqrt(0.15);

    private static Cubic scaled(Cubic cubic, double scale) {
        return cubic.transformed(Transform.scale(scale));
    }

    private static void assertStretch(Contact found, double t0, double t1, double u0, double u1) {
        assertThat(new double[] {found.t0(), found.t1(), found.u0(), found.u1()})
                .containsExactly(new double[] {t0, t1, u0, u1}, within(1e-8));
    }

    @Test
    void tolerance_is_a_billionth_of_a_millimetre_or_the_grain_of_a_double() {
        assertThat(CurveContacts.tolerance(S, LOOP)).isEqualTo(1e-9);
        for (Cubic far : List.of(
                CubicTest.cubic(0, 0, 0x1p39, 0, 0, 1, 1, 1),
                CubicTest.cubic(0, 0, -0x1p39, 0, 0, 1, 1, 1),
                CubicTest.cubic(0, 0, 0, 0x1p39, 0, 1, 1, 1),
                CubicTest.cubic(0, 0, 0, -0x1p39, 0, 1, 1, 1))) {
            assertThat(CurveContacts.tolerance(S, far)).isEqualTo(8 * 0x1p-13);
            assertThat(CurveContacts.tolerance(far, S)).isEqualTo(8 * 0x1p-13);
        }
    }

    /** Meetings nearer than a millionth of a millimetre along both curves are one. */
    @Test
    void curve_smaller_than_a_meeting_meets_once() {
        Line axis = new Line(Point.of(-1, 0), Point.of(4e3, 0));
        for (double size : new double[] {1e-6, 1e-7}) {
            assertThat(CurveContacts.between(scaled(S, size / 12), axis)).hasSize(1);
            assertThat(CurveContacts.between(axis, scaled(S, size / 12))).hasSize(1);
        }
        for (double size : new double[] {1e-4, 1e-2, 1, 1e3}) {
            assertThat(CurveContacts.between(scaled(S, size), axis))
                    .extracting(Contact::t0)
                    .containsExactly(0.0, 0.5, 1.0);
        }
    }

    /** S and its reflection in the axis meet in three points, of which two are ends of both; each is told once. */
    @Test
    void ends_are_told_once() {
        Cubic mirrored = CubicTest.cubic(0, 0, 1, -3, 2, 3, 3, 0);
        assertThat(CurveContacts.between(S, mirrored))
                .containsExactly(Contact.point(0, 0), Contact.point(0.5, 0.5), Contact.point(1, 1));
        assertThat(CurveContacts.between(S, mirrored.reversed()))
                .usingElementComparator((x, y) -> Math.abs(x.t0() - y.t0()) + Math.abs(x.u0() - y.u0()) < 1e-15 ? 0 : 1)
                .containsExactly(Contact.point(0, 1), Contact.point(0.5, 0.5), Contact.point(1, 0));
    }

    /** An end that comes within the tolerance meets; one that does not, does not. */
    @Test
    void end_meets_within_the_tolerance() {
        Line rail = new Line(Point.of(-8, 0), Point.of(8, 0));
        for (double sign : new double[] {1, -1}) {
            Line near = new Line(Point.of(4, sign * 0.9e-9), Point.of(4, sign * 5));
            assertThat(CurveContacts.between(rail, near)).containsExactly(Contact.point(0.75, 0));
            assertThat(CurveContacts.between(near.reversed(), rail)).containsExactly(Contact.point(1, 0.75));
            Line off = new Line(Point.of(4, sign * 1.1e-9), Point.of(4, sign * 5));
            assertThat(CurveContacts.between(rail, off)).isEmpty();
            assertThat(CurveContacts.between(off, rail)).isEmpty();
        }
        // Against the ends of the rail, both are told as ends.
        Line corner = new Line(Point.of(8, 0.5e-9), Point.of(8, 5));
        assertThat(CurveContacts.between(rail, corner)).containsExactly(Contact.point(1, 0));
        assertThat(CurveContacts.between(rail.reversed(), corner.reversed())).containsExactly(Contact.point(0, 1));
    }

    /** Every way in which two stretches of one curve can lie: each is one overlap, whatever parameters they have. */
    @Test
    void stretches_of_one_curve_share_what_they_have_in_common() {
        for (double[] c : new double[][] {
            {0, 1, 0, 1},
            {0, 0.6, 0.4, 1},
            {0.4, 1, 0, 0.6},
            {0, 1, 0.3, 0.7},
            {0.3, 0.7, 0, 1},
            {0, 0.5, 0, 1},
            {0.5, 1, 0, 1},
        }) {
            Cubic a = LOOP.sub(c[0], c[1]);
            Cubic b = LOOP.sub(c[2], c[3]);
            double low = Math.max(c[0], c[2]);
            double high = Math.min(c[1], c[3]);
            double t0 = (low - c[0]) / (c[1] - c[0]);
            double t1 = (high - c[0]) / (c[1] - c[0]);
            double u0 = (low - c[2]) / (c[3] - c[2]);
            double u1 = (high - c[2]) / (c[3] - c[2]);
            assertThat(stretches(a, b)).hasSize(1);
            assertStretch(stretches(a, b).get(0), t0, t1, u0, u1);
            assertStretch(stretches(a, b.reversed()).get(0), t0, t1, 1 - u0, 1 - u1);
            assertStretch(stretches(b, a).get(0), u0, u1, t0, t1);
            assertStretch(stretches(b.reversed(), a).get(0), 1 - u1, 1 - u0, t1, t0);
        }
    }

    private static List<Contact> stretches(Cubic a, Cubic b) {
        return CurveContacts.between(a, b).stream().filter(c -> !c.isPoint()).toList();
    }

    /** A point in the knot of the loop lies on it twice; what ends there shares the right one of the two ways on. */
    @Test
    void curve_that_ends_in_the_knot_of_another_overlaps() {
        Cubic inner = LOOP.sub(KNOT, 1 - KNOT);
        assertThat(CurveContacts.between(LOOP, inner)).hasSize(1);
        assertStretch(CurveContacts.between(LOOP, inner).get(0), KNOT, 1 - KNOT, 0, 1);
        assertThat(CurveContacts.between(inner, LOOP)).hasSize(1);
        assertStretch(CurveContacts.between(inner, LOOP).get(0), 0, 1, KNOT, 1 - KNOT);
        assertStretch(CurveContacts.between(inner.reversed(), LOOP).get(0), 0, 1, 1 - KNOT, KNOT);
        assertThat(CurveContacts.between(LOOP.sub(0, 1 - KNOT), LOOP)).hasSize(1);
        assertStretch(CurveContacts.between(LOOP.sub(0, 1 - KNOT), LOOP).get(0), 0, 1, 0, 1 - KNOT);
        assertThat(CurveContacts.between(LOOP.sub(KNOT, 1), LOOP)).hasSize(1);
        assertStretch(CurveContacts.between(LOOP.sub(KNOT, 1), LOOP).get(0), 0, 1, KNOT, 1);
        // Up to the knot only: a stretch, and the same point passed a second time.
        for (Cubic[] pair : new Cubic[][] {
            {LOOP.sub(0, KNOT), LOOP},
            {LOOP, LOOP.sub(0, KNOT)},
            {LOOP.sub(1 - KNOT, 1), LOOP},
            {LOOP, LOOP.sub(1 - KNOT, 1)}
        }) {
            assertThat(CurveContacts.between(pair[0], pair[1])).hasSize(2);
            assertThat(stretches(pair[0], pair[1])).hasSize(1);
        }
        assertStretch(stretches(LOOP.sub(1 - KNOT, 1), LOOP).get(0), 0, 1, 1 - KNOT, 1);
        // Past it: the knot is a crossing, whichever of the two comes first.
        for (Cubic[] pair :
                new Cubic[][] {{LOOP.sub(0.6, 1), LOOP}, {LOOP, LOOP.sub(0.6, 1)}, {LOOP.sub(0, 0.6), LOOP.sub(0.2, 1)}
                }) {
            assertThat(CurveContacts.between(pair[0], pair[1])).hasSize(2);
            assertThat(CurveContacts.between(pair[1].reversed(), pair[0])).hasSize(2);
            assertThat(stretches(pair[0], pair[1])).hasSize(1);
        }
        // A line that ends in the knot meets both branches there.
        Line into = new Line(Point.of(5, -5), LOOP.pointAt(KNOT));
        assertThat(CurveContacts.between(into, LOOP)).hasSize(2).allMatch(c -> c.t0() > 1 - 1e-12);
    }

    /** A closed curve runs along itself from its start to its end, and along its reverse from its end to its start. */
    @Test
    void closed_curve_overlaps_itself_the_way_it_runs() {
        Cubic drop = CubicTest.cubic(0, 0, 60, 90, -60, 90, 0, 0);
        assertThat(CurveContacts.between(drop, drop)).containsExactly(new Contact(0, 1, 0, 1));
        assertThat(CurveContacts.between(drop, drop.reversed())).containsExactly(new Contact(0, 1, 1, 0));
        assertStretch(CurveContacts.between(drop, drop.sub(0.25, 0.75)).get(0), 0.25, 0.75, 0, 1);
        // What touches its start touches its end.
        Line at = new Line(Point.of(0, 0), Point.of(0, -9));
        assertThat(CurveContacts.between(drop, at)).containsExactly(Contact.point(0, 0), Contact.point(1, 0));
        assertThat(CurveContacts.between(at, drop)).containsExactly(Contact.point(0, 0), Contact.point(0, 1));
    }

    /** The ends meet, and the curves run side by side a little way off: no stretch is shared. */
    @Test
    void common_ends_alone_share_no_stretch() {
        Cubic arch = CubicTest.cubic(0, 0, 1, 1, 2, 1, 3, 0);
        for (double off : new double[] {1, 1e-3, 1e-6}) {
            Cubic other = CubicTest.cubic(0, 0, 1, 1 + off, 2, 1 + off, 3, 0);
            assertThat(CurveContacts.between(arch, other)).containsExactly(Contact.point(0, 0), Contact.point(1, 1));
        }
        // They part only in the last ninth: y differs by a cubic with a triple root at 0.
        Cubic bent = CubicTest.cubic(0, 0, 1, 1, 2, 1, 3, 1e-5);
        assertThat(CurveContacts.between(arch, bent)).hasSize(1);
    }

    /** A curve may end where it touches another; the place is loose, the end is not. */
    @Test
    void end_that_touches_is_told_exactly() {
        Cubic rail = Polynomial.graph(-2, 3, 0, 0, 0.5, 0.25);
        for (double from : new double[] {0, -2}) {
            // Differs from the rail by (x - 1)², at its one end or at its other.
            Cubic ending = Polynomial.graph(from, 1, 1, -2, 1.5, 0.25);
            Cubic starting = Polynomial.graph(1, 4 + from, 1, -2, 1.5, 0.25);
            assertThat(CurveContacts.between(ending, rail)).hasSize(1).allMatch(c -> c.t0() == 1);
            assertThat(CurveContacts.between(rail, ending)).hasSize(1).allMatch(c -> c.u0() == 1);
            assertThat(CurveContacts.between(starting, rail)).hasSize(1).allMatch(c -> c.t0() == 0);
            assertThat(CurveContacts.between(rail, starting)).hasSize(1).allMatch(c -> c.u0() == 0);
        }
    }

    /** In order along the first curve, points and stretches alike. */
    @Test
    void contacts_come_in_order_along_the_first() {
        assertThat(CurveContacts.between(LOOP, LOOP.sub(0.6, 1)))
                .extracting(Contact::isPoint)
                .containsExactly(true, false);
        assertThat(CurveContacts.between(LOOP, LOOP.sub(0, 0.4)))
                .extracting(Contact::isPoint)
                .containsExactly(false, true);
        Line axis = new Line(Point.of(5, 0), Point.of(-1, 0));
        assertThat(CurveContacts.between(axis, S)).extracting(Contact::u0).containsExactly(1.0, 0.5, 0.0);
    }

    /** Lines that lie side by side within reach of each other share what both have; farther off they share nothing. */
    @Test
    void lines_a_hair_apart_share_a_stretch() {
        Line rail = new Line(Point.of(0, 0), Point.of(8, 0));
        for (double off : new double[] {0.9e-7, 100 * 1e-9, -100 * 1e-9}) {
            assertThat(CurveContacts.between(rail, new Line(Point.of(2, off), Point.of(6, off))))
                    .containsExactly(new Contact(0.25, 0.75, 0, 1));
        }
        assertThat(CurveContacts.between(rail, new Line(Point.of(2, 1.1e-7), Point.of(6, 1.1e-7))))
                .isEmpty();
        // One that is no longer than a meeting is a point.
        for (double length : new double[] {0.9e-6, 1e-6}) {
            assertThat(CurveContacts.between(rail, new Line(Point.of(0, 0), Point.of(length, 0))))
                    .hasSize(1)
                    .allMatch(Contact::isPoint);
        }
        assertThat(CurveContacts.between(rail, new Line(Point.of(2, 0), Point.of(2 + 1.1e-6, 0))))
                .hasSize(1)
                .noneMatch(Contact::isPoint);
    }
}

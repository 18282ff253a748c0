package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class SelfContactsTest {
    /** Flat on the x axis, and swings over it: what both do, forward or back, is told by the x of their controls. */
    private static Cubic flat(double x0, double x1, double x2, double x3) {
        return CubicTest.cubic(x0, 0, x1, 0, x2, 0, x3, 0);
    }

    /**
     * The cubic with r(t) = r(u): with s = t + u and p = t u, {@code r(t) - r(u) = (t - u) (a (s² - p) + b s + c)}, so
     * c follows from a and b.
     */
    private static Cubic knotted(Vector a, Vector b, double t, double u) {
        double s = t + u;
        Vector c = a.times(s * s - t * u).plus(b.times(s)).times(-1);
        return Polynomial.ofPowers(Vector.of(3, -5), c, b, a);
    }

    @Test
    void double_point_is_where_it_was_put() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 50; i++) {
            Vector a = Vector.of(random.nextDouble(-90, 90), random.nextDouble(-90, 90));
            Vector b = Vector.of(random.nextDouble(-90, 90), random.nextDouble(-90, 90));
            if (Math.abs(a.cross(b)) < 0.2 * a.length() * b.length()) {
                continue;
            }
            double t = random.nextDouble(0.02, 0.45);
            double u = random.nextDouble(0.55, 0.98);
            List<Contact> found = SelfContacts.of(knotted(a, b, t, u));
            assertThat(found).hasSize(1);
            assertThat(found.get(0).isPoint()).isTrue();
            assertThat(found.get(0).t0()).isCloseTo(t, within(1e-11));
            assertThat(found.get(0).u0()).isCloseTo(u, within(1e-11));
            assertThat(SelfContacts.of(knotted(a, b, -t, u))).isEmpty();
            assertThat(SelfContacts.of(knotted(a, b, t, 1 + t))).isEmpty();
            assertThat(SelfContacts.of(knotted(a, b, -t, 1 + t))).isEmpty();
        }
    }

    /** The first or the last point may lie on the curve; all of these numbers are exact. */
    @Test
    void end_that_lies_on_its_own_curve_is_a_double_point() {
        Vector a = Vector.of(96, 0);
        Vector b = Vector.of(-48, 48);
        assertThat(SelfContacts.of(knotted(a, b, 0, 0.5))).containsExactly(Contact.point(0, 0.5));
        assertThat(SelfContacts.of(knotted(a, b, 0.5, 1))).containsExactly(Contact.point(0.5, 1));
        // Both ends: the curve is closed, and that is a join.
        assertThat(SelfContacts.of(knotted(a, b, 0, 1))).isEmpty();
    }

    /** Where the two parameters fall together the curve stands still, in a cusp, but does not meet itself. */
    @Test
    void cusp_is_no_double_point() {
        assertThat(SelfContacts.of(knotted(Vector.of(96, 0), Vector.of(-48, 48), 0.5, 0.5)))
                .isEmpty();
    }

    @Test
    void curve_of_lower_degree_has_no_double_point() {
        assertThat(SelfContacts.of(Polynomial.graph(0, 4, 1, 2, 3, 0))).isEmpty();
        assertThat(SelfContacts.of(Polynomial.graph(0, 4, 1, 2, 3, 5))).isEmpty();
        assertThat(SelfContacts.of(flat(0, 1, 2, 3))).isEmpty();
        assertThat(SelfContacts.of(flat(0, 0, 0, 0))).isEmpty();
    }

    /** y = 0 along the first curve, so the second meets it where its y is 0. */
    private static void assertMeetOnceMore(Cubic first, Cubic second, double u) {
        double x = second.pointAt(u).x();
        assertThat(second.pointAt(u).y()).isCloseTo(0, within(1e-14));
        assertThat(x).isBetween(first.bounds().minX(), first.bounds().maxX());
        assertThat(SelfContacts.between(first, second, true, false)).anyMatch(c -> Math.abs(c.u0() - u) < 1e-9);
        assertThat(SelfContacts.between(second, first, false, true)).anyMatch(c -> Math.abs(c.t0() - u) < 1e-9);
    }

    /** Neighbours that do not run forward throughout may meet again: that one leg of each runs back is enough. */
    @Test
    void neighbours_that_turn_back_meet_again() {
        assertMeetOnceMore(flat(0, -10, 20, 30), CubicTest.cubic(30, 0, -10, 20, 20, -20, 60, 0), 0.5);
        assertMeetOnceMore(flat(0, 25, 10, 30), CubicTest.cubic(30, 0, 40, 20, -40, -20, 35, 0), 0.5);
        assertMeetOnceMore(flat(0, 20, 40, 30), CubicTest.cubic(30, 0, 35, 12, 40, -4, 1, 0), 0.75);
    }

    @Test
    void neighbours_that_run_forward_meet_at_their_join_only() {
        Cubic first = CubicTest.cubic(0, 0, 10, 5, 20, 5, 30, 0);
        Cubic second = CubicTest.cubic(30, 0, 40, -5, 50, -5, 60, 0);
        assertThat(SelfContacts.between(first, second, true, false)).isEmpty();
        assertThat(SelfContacts.between(second, first, false, true)).isEmpty();
        // Neighbours on both sides, of an outline of two: joined at both ends, and nowhere else.
        Cubic back = CubicTest.cubic(30, 0, 20, -9, 10, -9, 0, 0);
        assertThat(SelfContacts.between(first, back, true, true)).isEmpty();
    }

    /** Curves that are not neighbours meet wherever they do, a common end included. */
    @Test
    void common_end_of_others_is_told() {
        Line first = new Line(Point.of(0, 0), Point.of(10, 0));
        Line second = new Line(Point.of(10, 0), Point.of(10, 10));
        assertThat(SelfContacts.between(first, second, false, false)).containsExactly(Contact.point(1, 0));
        assertThat(SelfContacts.between(second, first, false, false)).containsExactly(Contact.point(0, 1));
        assertThat(SelfContacts.between(first, second, true, false)).isEmpty();
        assertThat(SelfContacts.between(second, first, false, true)).isEmpty();
    }

    /** Neighbours that double back share a stretch, which is told, though it begins at their join. */
    @Test
    void neighbour_that_doubles_back_overlaps() {
        Line out = new Line(Point.of(0, 0), Point.of(10, 0));
        Line home = new Line(Point.of(10, 0), Point.of(4, 0));
        assertThat(SelfContacts.between(out, home, true, false)).containsExactly(new Contact(0.4, 1, 1, 0));
        assertThat(SelfContacts.between(home, out, false, true)).containsExactly(new Contact(0, 1, 1, 0.4));
    }
}

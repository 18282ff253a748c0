package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Places where two cubics meet, known from the roots of a polynomial or from a mirror, to the last digits. */
class CubicContactsTest {
    private static final Cubic PLAIN = CubicTest.cubic(0, 0, 30, 180, 120, 240, 260, 250);
    private static final double[] SCALES = {1e-3, 1, 300, 1e6};

    private static List<Contact> between(Cubic a, Cubic b) {
        return CubicContacts.between(a, b, List.of(), CurveContacts.tolerance(a, b));
    }

    /**
     * Each of those expected is found to the last digits, and what else is found belongs to it: the curves do not part
     * between.
     */
    private static void assertContacts(List<Contact> found, double accuracy, double[]... expected) {
        for (Contact contact : found) {
            assertThat(List.of(expected)).as("%s", contact).anyMatch(e -> isAt(contact, e, 1e-4));
        }
        for (double[] e : expected) {
            assertThat(found).as("t %s, u %s", e[0], e[1]).anyMatch(contact -> isAt(contact, e, accuracy));
        }
    }

    private static boolean isAt(Contact contact, double[] expected, double accuracy) {
        return contact.isPoint()
                && Math.abs(contact.t0() - expected[0]) <= accuracy
                && Math.abs(contact.u0() - expected[1]) <= accuracy;
    }

    /**
     * Two cubics whose difference is k (x - r) (x - s) (x - q), the first for x from 0 to 1, the second from -1/4 to
     * 3/2.
     */
    private static Cubic[] meeting(double k, double r, double s, double q) {
        Cubic a = Polynomial.graph(0, 1, 0.25, -1, 0.5, 0.75);
        Cubic b = Polynomial.graph(
                -0.25, 1.5, 0.25 - k * r * s * q, -1 + k * (r * s + s * q + q * r), 0.5 - k * (r + s + q), 0.75 + k);
        return new Cubic[] {a, b};
    }

    private static double[] at(double x) {
        return new double[] {x, (x + 0.25) / 1.75};
    }

    private static Transform slanted(double scale) {
        return Transform.rotation(0.7, Point.of(0.3, -2)).then(Transform.scale(scale));
    }

    @Test
    void cubics_cross_at_the_roots_of_their_difference() {
        for (double scale : SCALES) {
            for (Transform moved : new Transform[] {Transform.scale(scale), slanted(scale)}) {
                for (double k : new double[] {-3, 1, 20}) {
                    Cubic[] c = meeting(k, 0.15, 0.45, 0.85);
                    List<Contact> found = between(c[0].transformed(moved), c[1].transformed(moved));
                    assertContacts(found, 1e-12, at(0.15), at(0.45), at(0.85));
                    assertThat(found).hasSize(3);
                    List<Contact> back = between(
                            c[1].transformed(moved), c[0].transformed(moved).reversed());
                    assertThat(back).hasSize(3);
                    for (double x : new double[] {0.15, 0.45, 0.85}) {
                        assertThat(back).anyMatch(b -> isAt(b, new double[] {at(x)[1], 1 - x}, 1e-12));
                    }
                }
            }
        }
    }

    /** At a double root they touch: the place of a common tangent is as exact as that of a crossing. */
    @Test
    void cubics_touch_at_a_double_root() {
        for (double scale : new double[] {1, 300}) {
            for (Transform moved : new Transform[] {Transform.scale(scale), slanted(scale)}) {
                for (double k : new double[] {-3, 2, 20}) {
                    Cubic[] c = meeting(k, 0.35, 0.35, 0.8);
                    assertContacts(between(c[0].transformed(moved), c[1].transformed(moved)), 1e-11, at(0.35), at(0.8));
                    assertContacts(
                            between(c[0].transformed(moved), c[1].reversed().transformed(moved)),
                            1e-11,
                            new double[][] {{0.35, 1 - at(0.35)[1]}, {0.8, 1 - at(0.8)[1]}});
                }
            }
        }
    }

    /** A root beyond the end of the one curve or of the other is no contact. */
    @Test
    void roots_beyond_the_ends_are_none() {
        Cubic[] c = meeting(3, -0.1, 0.5, 1.2);
        assertContacts(between(c[0], c[1]), 1e-12, at(0.5));
        Cubic[] touch = meeting(3, 1.3, 1.3, 0.5);
        assertContacts(between(touch[0], touch[1]), 1e-12, at(0.5));
    }

    /**
     * A curve touches its image in its own tangent, and its image in the point of contact, there, at the same
     * parameter.
     */
    @Test
    void curve_touches_its_image_in_its_tangent() {
        for (double t : new double[] {0.11, 0.37, 0.5, 0.83}) {
            Point on = PLAIN.pointAt(t);
            Cubic mirrored = PLAIN.transformed(Transform.mirror(on, on.plus(PLAIN.directionAt(t))));
            Cubic turned = PLAIN.transformed(Transform.rotation(Math.PI, on));
            for (Cubic image : List.of(mirrored, turned)) {
                assertContacts(between(PLAIN, image), 1e-11, new double[][] {{t, t}});
                assertContacts(between(image, PLAIN), 1e-11, new double[][] {{t, t}});
                double u = (t - 0.05) / 0.9;
                assertContacts(between(PLAIN, image.sub(0.05, 0.95)), 1e-11, new double[][] {{t, u}});
                assertContacts(between(PLAIN, image.sub(0.05, 0.95).reversed()), 1e-11, new double[][] {{t, 1 - u}});
                // Lifted off by more than the tolerance, or cut short of the place, it does not.
                Vector normal = PLAIN.directionAt(t).leftNormal();
                Vector bend = image.secondDerivativeAt(t).minus(PLAIN.secondDerivativeAt(t));
                Vector off = normal.times(1e-7 * Math.signum(normal.dot(bend)));
                assertThat(between(PLAIN, image.transformed(Transform.translation(off))))
                        .isEmpty();
                assertThat(between(PLAIN, image.sub(0, t - 0.01))).isEmpty();
                assertThat(between(PLAIN.sub(t + 0.01, 1), image)).isEmpty();
            }
        }
    }

    /** A circle of curvature has three points in common with its curve at once: where they differ by (x - r)³ only. */
    @Test
    void curves_of_equal_curvature_meet_near_a_triple_root() {
        Cubic[] c = meeting(5, 0.4, 0.4, 0.4);
        // 5 |x - r|³ is at most the distance at which curves meet.
        double loose = Math.cbrt(2e-9 / 5);
        assertThat(between(c[0], c[1])).isNotEmpty().allMatch(contact -> isAt(contact, at(0.4), loose));
        assertThat(CurveContacts.between(c[0], c[1])).hasSize(1);
    }

    /** The search leaves out what the curves share, but neither what lies before it nor what lies after. */
    @Test
    void only_the_parts_outside_of_a_shared_stretch_are_searched() {
        Cubic[] c = meeting(20, 0.15, 0.45, 0.85);
        double tolerance = CurveContacts.tolerance(c[0], c[1]);
        // Three parts of the first curve, and of the second two, one on either side of the middle crossing.
        Contact before = new Contact(0, 0.3, 0, at(0.3)[1]);
        Contact after = new Contact(0.6, 1, at(0.6)[1], 1);
        Contact back = new Contact(0.6, 1, 1, at(0.6)[1]);
        Contact middle = new Contact(0.3, 0.6, at(0.3)[1], at(0.6)[1]);
        for (Contact last : List.of(after, back)) {
            assertContacts(CubicContacts.between(c[0], c[1], List.of(last), tolerance), 1e-12, at(0.15), at(0.45));
            assertContacts(CubicContacts.between(c[0], c[1], List.of(before, last), tolerance), 1e-12, at(0.45));
        }
        assertContacts(CubicContacts.between(c[0], c[1], List.of(before), tolerance), 1e-12, at(0.45), at(0.85));
        assertContacts(CubicContacts.between(c[0], c[1], List.of(middle), tolerance), 1e-12, at(0.15), at(0.85));
        assertThat(CubicContacts.between(c[0], c[1], List.of(new Contact(0, 1, 0, 1)), tolerance))
                .isEmpty();
        // A stretch of the first curve is left out against that stretch of the second only.
        for (Contact elsewhere : List.of(new Contact(0.3, 0.6, 0, 0.1), new Contact(0.3, 0.6, 1, 0.9))) {
            assertContacts(
                    CubicContacts.between(c[0], c[1], List.of(elsewhere), tolerance),
                    1e-12,
                    at(0.15),
                    at(0.45),
                    at(0.85));
        }
    }

    /** Halving cuts a curve at its middle; a crossing or a touch just there is found from either side. */
    @Test
    void crossing_and_touch_at_the_place_of_a_cut_are_found() {
        for (double x : new double[] {0.5, 0.25, 0.75}) {
            Cubic[] cross = meeting(4, x, -1, 2);
            assertContacts(between(cross[0], cross[1]), 1e-12, at(x));
            Cubic[] touch = meeting(4, x, x, 2);
            assertContacts(between(touch[0], touch[1]), 1e-11, at(x));
        }
    }

    /** Nothing is searched at the ends of a stretch either: they are told as such. */
    @Test
    void ends_of_a_shared_stretch_are_not_searched() {
        Cubic[] c = meeting(3, 0, 1, 2);
        List<Contact> all = List.of(new Contact(0, 1, 0, 1));
        for (Cubic first : List.of(c[0], c[0].reversed())) {
            assertThat(between(first, c[1])).hasSizeGreaterThan(1);
            assertThat(CubicContacts.between(first, c[1], all, 1e-9)).isEmpty();
            assertThat(CubicContacts.between(c[1], first, all, 1e-9)).isEmpty();
        }
    }
}

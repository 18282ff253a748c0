package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Curves that touch so closely that they stay within a billionth of a millimetre of each other for a while: graphs of
 * polynomials whose difference is known, and has its only root near zero there.
 */
class OsculationTest {
    private static final int TRIES = 150;

    private final SplittableRandom random = new SplittableRandom(77);
    private int longStretches;

    /** The cubic with these powers of t, from t0 to t1. */
    private static Cubic powers(double[] x, double[] y, double t0, double t1) {
        Cubic whole = new Cubic(control(x, y, 0), control(x, y, 1), control(x, y, 2), control(x, y, 3));
        return extended(whole, t0, t1);
    }

    private static Point control(double[] x, double[] y, int i) {
        return Point.of(bernstein(x, i), bernstein(y, i));
    }

    private static double bernstein(double[] p, int i) {
        return switch (i) {
            case 0 -> p[0];
            case 1 -> p[0] + p[1] / 3;
            case 2 -> p[0] + 2 * p[1] / 3 + p[2] / 3;
            default -> p[0] + p[1] + p[2] + p[3];
        };
    }

    /** The same polynomials, by blossoming, from t0 to t1. */
    private static Cubic extended(Cubic c, double t0, double t1) {
        return new Cubic(
                blossom(c, t0, t0, t0), blossom(c, t0, t0, t1), blossom(c, t0, t1, t1), blossom(c, t1, t1, t1));
    }

    private static Point blossom(Cubic c, double r, double s, double t) {
        Point ab = c.start().lerp(c.control1(), r);
        Point bc = c.control1().lerp(c.control2(), r);
        Point cd = c.control2().lerp(c.end(), r);
        return ab.lerp(bc, s).lerp(bc.lerp(cd, s), t);
    }

    private double signed(double least, double most) {
        return random.nextDouble(least, most) * (random.nextBoolean() ? 1 : -1);
    }

    private Cubic graph(double[] x, double[] y) {
        return powers(x, y, -random.nextDouble(0.2, 0.6), random.nextDouble(0.2, 0.6));
    }

    private void assertMeetOnce(Curve a, Curve b, Crossing.Kind kind) {
        double size = Math.pow(10, random.nextDouble(0, 3));
        Transform placed = Transform.rotation(random.nextDouble(6), Point.ORIGIN)
                .then(Transform.scale(size))
                .then(Transform.translation(random.nextDouble(500), random.nextDouble(500)));
        Point touch = placed.apply(Point.ORIGIN);
        Curve one = a.transformed(placed);
        Curve other = b.transformed(placed);
        List<Crossing> met = Crossings.between(one, other).stream()
                .filter(crossing -> crossing.point().distanceTo(touch) < 0.06 * size)
                .toList();
        assertThat(met).as("%s and %s", one, other).hasSize(1);
        assertThat(met.get(0).kind()).as("%s and %s", one, other).isEqualTo(kind);
        assertThat(one.nearest(met.get(0).point()).distance()).isLessThan(1e-9);
        assertThat(other.nearest(met.get(0).point()).distance()).isLessThan(3e-9);
        longStretches +=
                other.nearest(one.nearest(touch.plus(Vector.polar(0.02, 1))).point())
                                        .distance()
                                < 1e-9
                        ? 1
                        : 0;
    }

    private static double[] p(double... powers) {
        return powers;
    }

    @Test
    void the_same_curvature_on_both_sides_is_one_cross() {
        for (int i = 0; i < TRIES; i++) {
            double bend = random.nextDouble(0.2, 1);
            Cubic one = graph(p(0, 1, 0, 0), p(0, 0, bend, 0));
            Cubic other = graph(p(0, 1, 0, 0), p(0, 0, bend, signed(0.1, 0.8)));
            assertMeetOnce(one, other, Crossing.Kind.CROSS);
        }
    }

    /** The one runs x = t + c t³ on the height of the other: their difference leads with t⁴, and has one sign. */
    @Test
    void the_same_curvature_and_its_slope_is_one_touch() {
        for (int i = 0; i < TRIES; i++) {
            double bend = random.nextDouble(0.2, 1);
            Cubic one = graph(p(0, 1, 0, 0), p(0, 0, bend, 0));
            Cubic other = graph(p(0, 1, 0, signed(0.1, 1)), p(0, 0, bend, 0));
            assertMeetOnce(one, other, Crossing.Kind.TOUCH);
        }
        assertThat(longStretches).isGreaterThan(TRIES / 10);
    }

    @Test
    void a_line_through_an_inflection_is_one_cross_and_along_a_bend_one_touch() {
        for (int i = 0; i < TRIES; i++) {
            Line line = new Line(Point.of(-random.nextDouble(0.2, 0.6), 0), Point.of(random.nextDouble(0.2, 0.6), 0));
            assertMeetOnce(line, graph(p(0, 1, 0, 0), p(0, 0, 0, signed(0.1, 0.8))), Crossing.Kind.CROSS);
            assertMeetOnce(graph(p(0, 1, 0, 0), p(0, 0, signed(0.2, 1), 0)), line, Crossing.Kind.TOUCH);
        }
    }

    @Test
    void two_inflections_on_one_tangent_are_one_cross() {
        for (int i = 0; i < TRIES; i++) {
            double rise = random.nextDouble(0.1, 0.8);
            assertMeetOnce(
                    graph(p(0, 1, 0, 0), p(0, 0, 0, rise)),
                    graph(p(0, 1, 0, 0), p(0, 0, 0, -rise)),
                    Crossing.Kind.CROSS);
        }
    }
}

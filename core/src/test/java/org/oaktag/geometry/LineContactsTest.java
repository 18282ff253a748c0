package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineContactsTest {
    private static final double TOLERANCE = 1e-9;

    private static Line line(double x0, double y0, double x1, double y1) {
        return new Line(Point.of(x0, y0), Point.of(x1, y1));
    }

    @Test
    void segments_meet_within_both_their_ends_included() {
        Line level = line(0, 0, 8, 0);
        for (double x : new double[] {0, 2, 8}) {
            assertThat(LineContacts.between(level, line(x, -3, x, 1), TOLERANCE))
                    .containsExactly(Contact.point(x / 8, 0.75));
            assertThat(LineContacts.between(level, line(x, 0, x, 1), TOLERANCE))
                    .containsExactly(Contact.point(x / 8, 0));
            assertThat(LineContacts.between(level, line(x, 1, x, 0), TOLERANCE))
                    .containsExactly(Contact.point(x / 8, 1));
            assertThat(LineContacts.between(level, line(x, 1, x, 0.5), TOLERANCE))
                    .isEmpty();
            assertThat(LineContacts.between(level, line(x, -0.5, x, -1), TOLERANCE))
                    .isEmpty();
        }
        assertThat(LineContacts.between(level, line(-1, -3, -1, 1), TOLERANCE)).isEmpty();
        assertThat(LineContacts.between(level, line(9, -3, 9, 1), TOLERANCE)).isEmpty();
        assertThat(LineContacts.between(level, line(1, 1, 9, 1), TOLERANCE)).isEmpty();
        assertThat(LineContacts.between(level, line(1, 0, 9, 0), TOLERANCE)).isEmpty();
    }

    /** y = 32 t (1 - t) (1 - 2 t), x = 8 t meets y = 0 at x = 0, 4 and 8. */
    @Test
    void segment_meets_a_cubic_within_its_ends_included() {
        Cubic s = Polynomial.graph(0, 8, 0, 4, -1.5, 0.125);
        assertThat(s.pointAt(0.5)).isEqualTo(Point.of(4, 0));
        assertThat(u(line(-1, 0, 9, 0), s)).containsExactly(0, 0.5, 1);
        assertThat(u(line(0, 0, 8, 0), s)).containsExactly(0, 0.5, 1);
        assertThat(u(line(1, 0, 7, 0), s)).containsExactly(0.5);
        assertThat(u(line(4, 0, 8, 0), s)).containsExactly(0.5, 1);
        assertThat(u(line(0, 0, 4, 0), s)).containsExactly(0, 0.5);
        assertThat(u(line(4.1, 0, 7, 0), s)).isEmpty();
        assertThat(LineContacts.between(line(2, 0, 7, 0), s, TOLERANCE)).containsExactly(Contact.point(0.4, 0.5));
        assertThat(LineContacts.between(line(7, 0, 2, 0), s, TOLERANCE)).containsExactly(Contact.point(0.6, 0.5));
        assertThat(LineContacts.between(line(4, 0, 4, 0), s, TOLERANCE)).isEmpty();
    }

    private static double[] u(Line line, Cubic cubic) {
        List<Contact> found = LineContacts.between(line, cubic, TOLERANCE);
        return found.stream().mapToDouble(Contact::u0).toArray();
    }

    /** The summit of 12 t (1 - t), at t = 1/2 and y = 3, touches all lines less than the tolerance over it. */
    @Test
    void summit_within_the_tolerance_touches() {
        Cubic arch = CubicTest.cubic(0, 0, 0, 4, 4, 4, 4, 0);
        double half = 0.5;
        for (double tolerance : new double[] {0x1p-30, 0x1p-10}) {
            assertThat(parameters(arch, 3 + tolerance, tolerance)).containsExactly(half);
            assertThat(parameters(arch, 3 + 2 * tolerance, tolerance)).isEmpty();
            // Under it, two crossings; and the summit, which is where a touch is looked for, is near as well.
            double[] under = parameters(arch, 3 - tolerance, tolerance);
            assertThat(under).hasSize(3).contains(half);
            double off = Math.sqrt(tolerance / 12);
            assertThat(under[0]).isCloseTo(half - off, within(1e-12));
            assertThat(under[1]).isCloseTo(half + off, within(1e-12));
            assertThat(parameters(arch, 3 - 2 * tolerance, tolerance)).hasSize(2);
        }
    }

    /** A cubic that lies in the line throughout, to within the tolerance, has no points of its own there. */
    @Test
    void cubic_in_the_line_meets_it_nowhere_in_particular() {
        double h = 0x1p-30;
        assertThat(parameters(CubicTest.cubic(0, h, 1, -h, 2, h, 3, -h), 0, h)).isEmpty();
        assertThat(parameters(CubicTest.cubic(0, h, 1, -2 * h, 2, 2 * h, 3, -h), 0, h))
                .isNotEmpty();
        assertThat(parameters(CubicTest.cubic(0, 2 * h, 1, -h, 2, h, 3, -h), 0, h))
                .isNotEmpty();
    }

    private static double[] parameters(Cubic cubic, double level, double tolerance) {
        return LineContacts.parameters(cubic, Point.of(-7, level), Vector.of(1, 0), tolerance);
    }

    private static List<Point> points(Curve curve, double level) {
        List<Point> points = new ArrayList<>();
        LineContacts.addPoints(curve, Point.of(-7, level), Vector.of(1, 0), points);
        return points;
    }

    @Test
    void points_on_an_endless_line_are_told_once() {
        Cubic s = Polynomial.graph(0, 8, 0, 4, -1.5, 0.125);
        assertThat(points(s, 0)).containsExactly(Point.of(0, 0), Point.of(4, 0), Point.of(8, 0));
        assertThat(points(line(0, 0, 8, 0), 0)).containsExactly(Point.of(0, 0), Point.of(8, 0));
        assertThat(points(line(0, -1, 8, 1), 0)).containsExactly(Point.of(4, 0));
        assertThat(points(line(0, 1, 8, -3), 0)).containsExactly(Point.of(2, 0));
        assertThat(points(line(0, 1, 8, 3), 0)).isEmpty();
    }

    /** An end just as far off as curves may meet is on the line, above it or below; a hair more and it is not. */
    @Test
    void end_within_the_tolerance_is_on_the_endless_line() {
        for (double off : new double[] {TOLERANCE, -TOLERANCE}) {
            Line start = line(0, off, 8, 5 * Math.signum(off));
            assertThat(points(start, 0)).containsExactly(start.start());
            assertThat(points(start.reversed(), 0)).containsExactly(start.start());
            Line beside = line(0, 1.001 * off, 8, 5 * Math.signum(off));
            assertThat(points(beside, 0)).isEmpty();
            assertThat(points(beside.reversed(), 0)).isEmpty();
        }
    }
}

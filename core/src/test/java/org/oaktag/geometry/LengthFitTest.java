package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Cubics of a given length, where the handles that give it are known in closed form. */
class LengthFitTest {
    private static final Pattern RANGE = Pattern.compile("is (\\S+) to (\\S+) mm long");

    /** The usual quarter circle, with handles 4 (sqrt 2 - 1) / 3; its length was computed with 50 digits. */
    @Test
    void quarter_circle_is_found_by_its_length() {
        for (double r : new double[] {1, 100, 1000}) {
            Cubic cubic = Fit.ofLength(
                    Point.of(r, 0), Vector.of(0, 1), Point.of(0, r), Vector.of(-1, 0), 1.5710166980738556 * r);
            double handle = 4 * (Math.sqrt(2) - 1) / 3;
            assertThat(cubic.control1().distanceTo(Point.of(r, handle * r))).isLessThan(2e-6);
            assertThat(cubic.control2().distanceTo(Point.of(handle * r, r))).isLessThan(2e-6);
        }
    }

    /**
     * The usual quarter circle is 2.725300074e-4 of the radius off, and the error falls with the sixth power of the
     * turn, but for some per cent; a cubic as long as the arc is no further from it.
     */
    @Test
    void cubic_as_long_as_an_arc_lies_beside_it() {
        for (int degrees = 10; degrees <= 120; degrees += 10) {
            double turn = Math.toRadians(degrees);
            Cubic cubic = Fit.ofLength(
                    Point.of(100, 0),
                    Vector.of(0, 1),
                    Point.ORIGIN.plus(Vector.polar(100, turn)),
                    Vector.polar(1, turn + Math.PI / 2),
                    100 * turn);
            assertThat(cubic.length(1e-10)).isCloseTo(100 * turn, within(1e-6));
            for (double t = 0; t <= 1; t += 0.05) {
                assertThat(cubic.pointAt(t).distanceTo(Point.ORIGIN))
                        .isCloseTo(100, within(1.05 * 2.725300074e-2 * Math.pow(degrees / 90.0, 6) + 1e-6));
            }
        }
    }

    /** y = x² from -1 to 1 is a cubic with equal handles; its half is sqrt(5)/2 + asinh(2)/4 long. */
    @Test
    void parabola_is_found_by_its_length() {
        double half = Math.sqrt(5) / 2 + Math.log(2 + Math.sqrt(5)) / 4;
        Cubic cubic =
                Fit.ofLength(Point.of(-100, 100), Vector.of(1, -2), Point.of(100, 100), Vector.of(1, 2), 200 * half);
        for (double x = -100; x <= 100; x += 10) {
            assertThat(cubic.nearest(Point.of(x, x * x / 100)).distance()).isLessThan(1e-5);
        }
    }

    @Test
    void longer_is_asked_longer_is_got_with_the_ends_and_directions_asked_for() {
        Point a = Point.of(3, 4);
        Point b = Point.of(103, 24);
        for (double leaving = -1.5; leaving <= 1.5; leaving += 0.5) {
            for (double arriving = -1.5; arriving <= 1.5; arriving += 0.5) {
                double[] range = range(a, Vector.polar(2, leaving), b, Vector.polar(3, arriving));
                double last = 0;
                for (int i = 0; i <= 10; i++) {
                    double length = range[0] + (range[1] - range[0]) * i / 10;
                    Cubic cubic = Fit.ofLength(a, Vector.polar(2, leaving), b, Vector.polar(3, arriving), length);
                    assertThat(cubic.length(1e-10)).isCloseTo(length, within(1e-6));
                    assertThat(cubic.start()).isEqualTo(a);
                    assertThat(cubic.end()).isEqualTo(b);
                    assertThat(cubic.directionAt(0).angleTo(Vector.polar(1, leaving)))
                            .isCloseTo(0, within(1e-12));
                    assertThat(cubic.directionAt(1).angleTo(Vector.polar(1, arriving)))
                            .isCloseTo(0, within(1e-12));
                    double handle = a.distanceTo(cubic.control1());
                    assertThat(handle).isCloseTo(b.distanceTo(cubic.control2()), within(1e-9));
                    assertThat(handle).isGreaterThan(last);
                    assertThat(SelfContacts.of(cubic)).isEmpty();
                    last = handle;
                }
            }
        }
    }

    /** The range that the refusal tells. */
    private static double[] range(Point a, Vector leaving, Point b, Vector arriving) {
        String refused = catchThrowableOfType(
                        IllegalArgumentException.class, () -> Fit.ofLength(a, leaving, b, arriving, 1))
                .getMessage();
        Matcher range = RANGE.matcher(refused);
        assertThat(range.find()).as(refused).isTrue();
        return new double[] {Double.parseDouble(range.group(1)), Double.parseDouble(range.group(2))};
    }

    @Test
    void range_that_a_refusal_tells_works_and_nothing_beyond_it_does() {
        Point a = Point.of(0, 0);
        Point b = Point.of(80, 0);
        Vector up = Vector.of(1, -1);
        Vector down = Vector.of(1, 1);
        double[] range = range(a, up, b, down);
        assertThat(range[0]).isBetween(80.0, 81.0);
        assertThat(range[1]).isGreaterThan(100);
        for (double length : new double[] {range[0] - 1e-3, range[1] + 1e-3, 0, -5, Double.NaN}) {
            assertThatThrownBy(() -> Fit.ofLength(a, up, b, down, length))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("got " + length);
        }
    }

    /** Handles that cross over lead round a loop, through a cusp: the longest is just short of that. */
    @Test
    void longest_cubic_is_that_before_the_cusp() {
        Point a = Point.of(0, 0);
        Point b = Point.of(100, 0);
        double[] range = range(a, Vector.of(1, -1), b, Vector.of(1, 1));
        Cubic cusp = Cubic.hermite(a, Vector.of(100, -100), b, Vector.of(100, 100));
        assertThat(cusp.derivativeAt(0.5).length()).isLessThan(1e-9);
        assertThat(range[1]).isCloseTo(cusp.length(1e-9), within(0.5)).isLessThan(cusp.length(1e-9));
    }

    @Test
    void straight_on_there_is_one_length() {
        Vector along = Vector.of(3, 4);
        Cubic straight = Fit.ofLength(Point.ORIGIN, along, Point.of(30, 40), along, 50);
        assertThat(straight.control1().distanceTo(Point.of(10, 40.0 / 3))).isLessThan(1e-12);
        assertThatThrownBy(() -> Fit.ofLength(Point.ORIGIN, along, Point.of(30, 40), along, 51))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("50.0 to 50.0 mm long; got 51.0");
    }

    @Test
    void one_end_or_no_direction_is_refused() {
        assertThatThrownBy(() -> Fit.ofLength(Point.ORIGIN, Vector.of(1, 0), Point.ORIGIN, Vector.of(1, 0), 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two ends");
        assertThatThrownBy(() -> Fit.ofLength(Point.ORIGIN, Vector.ZERO, Point.of(1, 0), Vector.of(1, 0), 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("zero vector");
    }
}

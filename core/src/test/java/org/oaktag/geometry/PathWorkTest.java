package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How many curves of a path are looked at for an answer: counted, in short paths and in very long ones. */
class PathWorkTest {
    private static final int[] COUNTS = {3, 100, 3_000, 100_000};

    /** Waves, lines and points in turn. */
    private static List<Curve> curves(int count) {
        List<Curve> curves = new ArrayList<>(count);
        Point pen = Point.ORIGIN;
        for (int i = 0; i < count; i++) {
            Point end = pen.plus(Vector.of(i % 7 == 6 ? 0 : 3, 0));
            curves.add(
                    i % 2 == 0 && !pen.equals(end)
                            ? new Cubic(pen, pen.plus(Vector.of(1, 2)), end.plus(Vector.of(-1, -2)), end)
                            : new Line(pen, end));
            pen = end;
        }
        return curves;
    }

    @Test
    void the_first_question_looks_at_every_curve_once_and_no_later_one_does() {
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(curves(count));
            Path path = counted.path();
            assertThat(counted.takenBy(path::length)).isEqualTo(count);
            assertThat(counted.takenBy(path::length)).isZero();
            assertThat(counted.takenBy(() -> path.length(1))).isZero();
        }
    }

    @Test
    void a_place_is_found_by_looking_at_its_own_curve_alone() {
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(curves(count));
            Path path = counted.path();
            double length = path.length();
            for (double share : new double[] {0, 0.1, 0.3719, 0.5, 0.99, 1}) {
                double distance = share * length;
                Path.Location at = path.locate(distance);
                assertThat(counted.takenBy(() -> path.locate(distance))).isLessThanOrEqualTo(1);
                assertThat(counted.takenBy(() -> path.distanceAt(at))).isLessThanOrEqualTo(1);
                assertThat(counted.takenBy(() -> path.pointAt(distance))).isLessThanOrEqualTo(2);
                assertThat(counted.takenBy(() -> path.directionAt(distance))).isLessThanOrEqualTo(2);
                assertThat(counted.takenBy(() -> path.curvatureAt(distance))).isLessThanOrEqualTo(2);
            }
        }
    }

    @Test
    void a_part_takes_no_more_than_its_own_curves() {
        for (int count : COUNTS) {
            CountedCurves counted = new CountedCurves(curves(count));
            Path path = counted.path();
            double length = path.length();
            for (double share : new double[] {0.1, 0.3719, 0.5, 0.9}) {
                double from = share * length;
                double to = Math.min(from + 20, length);
                int own = path.sub(from, to).curves().size();
                assertThat(own).isLessThanOrEqualTo(20);
                // One more is looked at to find each end, and one where a curve ends just there.
                assertThat(counted.takenBy(() -> path.sub(from, to))).isLessThanOrEqualTo(own + 4);
                assertThat(counted.takenBy(() -> path.splitAt(from))).isLessThanOrEqualTo(count + 4);
            }
        }
    }

    @Test
    void a_part_shares_the_curves_that_are_not_cut() {
        Path path = Path.of(curves(60));
        Path part = path.sub(0.1 * path.length(), 0.9 * path.length());
        List<Curve> whole = part.curves().subList(1, part.curves().size() - 1);
        assertThat(whole).hasSizeGreaterThan(20);
        for (Curve curve : whole) {
            assertThat(path.curves()).anyMatch(shared -> shared == curve);
        }
        assertThat(path.sub(0, path.length())).isSameAs(path);
        Path line = Path.polyline(Point.of(0, 0), Point.of(1, 0), Point.of(2, 1));
        assertThat(line.withoutPointCurves()).isSameAs(line);
    }

    /** However it was made: a part measures its own curves, and so does a copy of it. */
    @Test
    void equal_paths_tell_equal_lengths_to_the_last_bit() {
        Path path = Path.of(curves(100));
        Path part = path.sub(0.123 * path.length(), 0.789 * path.length());
        Path copy = Path.of(new ArrayList<>(part.curves()));
        assertThat(part).isEqualTo(copy);
        assertThat(part.length()).isEqualTo(copy.length());
        for (double share : new double[] {0.2, 0.5, 0.7}) {
            assertThat(part.pointAt(share * part.length())).isEqualTo(copy.pointAt(share * copy.length()));
        }
    }
}

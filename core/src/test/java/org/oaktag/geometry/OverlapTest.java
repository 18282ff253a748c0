package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Paths that run along each other: every stretch is told once, its distances rise or fall throughout, and nothing in it
 * is told again.
 */
class OverlapTest {
    private static final Point[] CORNERS = {Point.of(0, 0), Point.of(10, 0), Point.of(10, 10), Point.of(0, 10)};

    /** A square of side 10 that starts at this distance along its outline. */
    private static Path square(double begun) {
        Path once = Path.polyline(CORNERS[0], CORNERS[1], CORNERS[2], CORNERS[3], CORNERS[0]);
        return begun == 0 ? once : once.sub(begun, 40).then(once.sub(0, begun));
    }

    /** Overlaps only, on both paths together as long as the whole, and at each place the same point on both. */
    private static void assertCover(Path first, Path second, double length, int overlaps) {
        assertCover(first, second, length, overlaps, 1e-9);
    }

    private static void assertCover(Path first, Path second, double length, int overlaps, double accuracy) {
        List<Crossing> found = Crossings.between(first, second);
        assertThat(found).hasSize(overlaps).allMatch(c -> c.kind() == Crossing.Kind.OVERLAP);
        double along = 0;
        for (Crossing overlap : found) {
            double firsts = overlap.to().first() - overlap.from().first();
            double seconds = overlap.to().second() - overlap.from().second();
            assertThat(Math.abs(seconds)).isCloseTo(firsts, within(accuracy));
            for (double share = 0; share <= 1; share += 0.125) {
                Point one = first.pointAt(overlap.from().first() + share * firsts);
                Point other = second.pointAt(overlap.from().second() + share * seconds);
                assertThat(one.distanceTo(other)).isLessThan(accuracy);
            }
            along += firsts;
        }
        assertThat(along).isCloseTo(length, within(accuracy));
    }

    /** The start of the one cuts the overlap of the other in two, unless both start at one place. */
    @Test
    void outline_overlaps_itself_wherever_it_is_begun() {
        for (double begun : new double[] {0, 5, 10, 27.5}) {
            for (double other : new double[] {0, 2.5, 10, 20, 35}) {
                int overlaps = begun == other ? 1 : 2;
                assertCover(square(begun), square(other), 40, overlaps);
                assertCover(square(begun), square(other).reversed(), 40, overlaps);
            }
        }
    }

    @Test
    void path_that_runs_there_and_back_overlaps_twice() {
        Path there = Path.polyline(Point.of(0, 0), Point.of(5, 0), Point.of(10, 0));
        Path back = there.then(there.reversed());
        assertCover(there, back, 20, 2);
        assertCover(back, there, 20, 2);
        Path thrice = back.then(there);
        assertCover(there, thrice, 30, 3);
        assertCover(thrice, there, 30, 3);
    }

    /**
     * A cubic on a line runs from 0 to its greatest x, back to its least, and on: each of its runs is an overlap of its
     * own.
     */
    @Test
    void cubic_that_runs_to_and_fro_overlaps_a_line_with_each_of_its_runs() {
        Path line = Path.polyline(Point.of(-50, 0), Point.of(150, 0));
        Cubic fro = CubicTest.cubic(0, 0, 120, 0, -60, 0, 60, 0);
        // x' / 3 = 120 (1-t)^2 - 360 t (1-t) + 120 t^2 = 600 t^2 - 600 t + 120.
        double first = (600 - Math.sqrt(600 * 600 - 4 * 600 * 120.0)) / 1200;
        double greatest = fro.pointAt(first).x();
        double least = fro.pointAt(1 - first).x();
        double length = greatest + (greatest - least) + (60 - least);
        assertCover(Path.of(fro), line, length, 3, Curve.DEFAULT_ACCURACY);
        assertCover(line, Path.of(fro), length, 3, Curve.DEFAULT_ACCURACY);
        assertCover(Path.of(fro), line.reversed(), length, 3, Curve.DEFAULT_ACCURACY);
        // Turned and moved, on a line that begins in its middle.
        Transform turn = Transform.rotation(0.7, Point.of(13, -4)).then(Transform.translation(Vector.of(311, 97)));
        assertCover(Path.of(fro).transformed(turn), line.transformed(turn), length, 3, Curve.DEFAULT_ACCURACY);
        Path half = Path.polyline(Point.of(30, 0), Point.of(150, 0));
        assertCover(Path.of(fro), half, (greatest - 30) + (greatest - 30) + 30, 3, Curve.DEFAULT_ACCURACY);
    }

    @Test
    void cubic_that_runs_to_and_fro_overlaps_itself() {
        Cubic back = CubicTest.cubic(0, 0, 40, 0, 40, 0, 0, 0);
        List<Crossing> found = Crossings.ofItself(Path.of(back));
        assertThat(found).hasSize(1).allMatch(c -> c.kind() == Crossing.Kind.OVERLAP);
        assertThat(found.get(0).from().first()).isCloseTo(0, within(1e-9));
        assertThat(found.get(0).to().first()).isCloseTo(30, within(1e-9));
        assertThat(found.get(0).from().second()).isCloseTo(60, within(1e-9));
        assertThat(Crossings.ofItself(Path.of(CubicTest.cubic(0, 0, 10, 0, 20, 0, 30, 0))))
                .isEmpty();
    }

    /** However the same stretch is cut into segments, forward or backward, it is one. */
    @Test
    void overlap_does_not_depend_on_the_cuts() {
        double[][] cuts = {{0, 10}, {0, 3, 10}, {0, 3, 4, 9, 10}, {-2, 1, 5, 12}};
        for (double[] one : cuts) {
            for (double[] other : cuts) {
                assertCover(rail(one), rail(other), one[0] < 0 && other[0] < 0 ? 14 : 10, 1);
                assertCover(rail(one), rail(other).reversed(), one[0] < 0 && other[0] < 0 ? 14 : 10, 1);
            }
        }
    }

    private static Path rail(double... x) {
        List<Curve> lines = new ArrayList<>();
        for (int i = 1; i < x.length; i++) {
            lines.add(new Line(Point.of(x[i - 1], 0), Point.of(x[i], 0)));
        }
        return Path.of(lines);
    }

    /**
     * Two laps of the square along one: at the start of each lap the distances begin anew, so there are two overlaps.
     */
    @Test
    void laps_are_told_apart() {
        assertCover(square(0), square(0).then(square(0)), 80, 2);
        assertCover(square(0).then(square(0)), square(0), 80, 2);
    }

    /** The point where a later piece of the second path comes through the overlap belongs to no overlap. */
    @Test
    void passing_through_an_overlap_later_is_a_crossing() {
        Path rail = rail(0, 3, 10);
        Path through = Path.polyline(Point.of(2, 0), Point.of(6, 0), Point.of(6, -4), Point.of(4, -4), Point.of(4, 3));
        List<Crossing> found = Crossings.between(rail, through);
        assertThat(found).extracting(Crossing::kind).containsExactly(Crossing.Kind.OVERLAP, Crossing.Kind.CROSS);
        assertThat(found.get(1).from()).isEqualTo(new Crossing.Place(Point.of(4, 0), 4, 14));
        List<Crossing> swapped = Crossings.between(through, rail);
        assertThat(swapped).extracting(Crossing::kind).containsExactly(Crossing.Kind.OVERLAP, Crossing.Kind.CROSS);
        assertThat(swapped.get(1).from()).isEqualTo(new Crossing.Place(Point.of(4, 0), 14, 4));
    }

    /** The place is the very end of whichever curve ends there. */
    @Test
    void place_of_an_end_is_that_end() {
        Point third = Point.of(1.0 / 3, 0.7 / 3);
        Path ending = Path.polyline(Point.of(0.1, 2.3), third);
        Path rail = Path.polyline(Point.of(0, 0), Point.of(10, 7));
        assertThat(Crossings.between(rail, ending)).extracting(Crossing::point).containsExactly(third);
        assertThat(Crossings.between(ending, rail)).extracting(Crossing::point).containsExactly(third);
        assertThat(Crossings.between(rail, ending.reversed()))
                .extracting(Crossing::point)
                .containsExactly(third);
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.geometry.Polygons.polygon;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;

class OffsetLoopsTest {
    private static final double TOLERANCE = 0.01;

    private static double[] all(List<Path> edges, double distance) {
        double[] distances = new double[edges.size()];
        Arrays.fill(distances, distance);
        return distances;
    }

    /**
     * Walls 20 thick round 100 by 100, with a mouth of 10 above: edges 2, 3, 4, 5 and 6 lie inside, 1 and 7 in the
     * mouth.
     */
    private static final List<Path> SACK =
            polygon(0, 0, 65, 0, 65, 20, 20, 20, 20, 120, 120, 120, 120, 20, 75, 20, 75, 0, 140, 0, 140, 140, 0, 140);

    @Test
    void a_mouth_that_closes_leaves_a_hole_that_runs_against_the_outline() {
        for (double d : new double[] {6, 20, 40}) {
            OffsetLoops loops = OffsetLoops.outward(SACK, all(SACK, d), CornerStyle.mitre(2), TOLERANCE);
            assertThat(loops.loops()).hasSize(2);
            assertThat(loops.loops().get(0).outline().signedArea())
                    .isCloseTo((140 + 2 * d) * (140 + 2 * d), within(1e-6));
            assertThat(loops.loops().get(1).outline().signedArea())
                    .isCloseTo(-(100 - 2 * d) * (100 - 2 * d), within(1e-4));
            assertThat(loops.loops().get(1).parts())
                    .extracting(OffsetPart::edge)
                    .contains(2, 3, 4, 5)
                    .doesNotContain(0, 8);
            assertThat(loops.lost()).as("at %s", d).containsExactly(1, 7);
            assertThat(OutlineOffset.outward(SACK, all(SACK, d), CornerStyle.mitre(2), TOLERANCE)
                            .outline())
                    .isEqualTo(loops.loops().get(0).outline());
        }
        OffsetLoops full = OffsetLoops.outward(SACK, all(SACK, 51), CornerStyle.mitre(2), TOLERANCE);
        assertThat(full.loops()).hasSize(1);
        assertThat(full.lost()).containsExactly(1, 2, 3, 4, 5, 6, 7);
    }

    /** Two squares of 100 with a bridge of 20 between them. */
    @Test
    void an_inward_offset_that_falls_apart_leaves_its_parts() {
        List<Path> twins = polygon(
                0, 0, 100, 0, 100, 40, 140, 40, 140, 0, 240, 0, 240, 100, 140, 100, 140, 60, 100, 60, 100, 100, 0, 100);
        OffsetLoops loops = OffsetLoops.outward(twins, all(twins, -15), CornerStyle.mitre(2), TOLERANCE);
        assertThat(loops.loops()).hasSize(2);
        for (OutlineOffset part : loops.loops()) {
            assertThat(part.outline().signedArea()).isCloseTo(70 * 70, within(1e-4));
        }
        assertThat(loops.lost()).containsExactly(2, 8);
        OffsetLoops nothing = OffsetLoops.outward(twins, all(twins, -51), CornerStyle.mitre(2), TOLERANCE);
        assertThat(nothing.loops()).isEmpty();
        assertThat(nothing.lost()).hasSize(twins.size());
    }

    @Test
    void in_the_ordinary_case_there_is_one_loop_and_nothing_is_lost() {
        List<Path> square = polygon(0, 0, 100, 0, 100, 100, 0, 100);
        for (double d : new double[] {-20, 0, 20}) {
            OffsetLoops loops = OffsetLoops.outward(square, all(square, d), CornerStyle.round(), TOLERANCE);
            assertThat(loops.loops()).hasSize(1);
            assertThat(loops.lost()).isEmpty();
            assertThat(loops.loops().get(0))
                    .isEqualTo(OutlineOffset.outward(square, all(square, d), CornerStyle.round(), TOLERANCE));
        }
    }

    /** Edge 1 is a point, edge 3 a hundred-millionth of a millimetre long. */
    @Test
    void an_edge_without_length_is_left_out_and_named() {
        List<Path> edges = polygon(0, 0, 100, 0, 100, 0, 100, 100, 100, 100 + 1e-8, 0, 100);
        for (double d : new double[] {-10, 10}) {
            OffsetLoops loops = OffsetLoops.outward(edges, all(edges, d), CornerStyle.mitre(2), TOLERANCE);
            assertThat(loops.loops()).hasSize(1);
            OutlineOffset offset = loops.loops().get(0);
            assertThat(offset.outline().area()).isCloseTo((100 + 2 * d) * (100 + 2 * d), within(1e-4));
            assertThat(offset.parts()).extracting(OffsetPart::edge).containsExactlyInAnyOrder(0, 2, 4, 5);
            assertThat(loops.lost()).containsExactly(1, 3);
        }
    }

    @Test
    void an_outline_that_crosses_itself_is_refused_for_that_whatever_the_distance() {
        List<Path> eight = polygon(0, 0, 100, 0, 0, 80, 110, 80);
        for (double d : new double[] {-500, -1, 1, 20}) {
            for (CornerStyle style : List.of(CornerStyle.round(), CornerStyle.mitre(3))) {
                assertThatThrownBy(() -> OutlineOffset.outward(eight, all(eight, d), style, TOLERANCE))
                        .isInstanceOf(PatternException.class)
                        .hasMessageStartingWith("outline to be offset: must not cross itself; got a crossing at (")
                        .hasMessageNotContaining("offset distance");
                assertThatThrownBy(() -> OffsetLoops.outward(eight, all(eight, d), style, TOLERANCE))
                        .isInstanceOf(PatternException.class)
                        .hasMessageContaining("must not cross itself");
            }
        }
    }

    /** A corner overdrawn by a fiftieth of a millimetre. */
    @Test
    void where_a_tiny_crossing_is_in_the_way_it_is_named_and_not_the_distance() {
        List<Path> overdrawn = polygon(0, 0, 100.02, 0, 100, -0.02, 100, 100, 0, 100);
        for (double d : new double[] {-10, 10}) {
            try {
                double area = OutlineOffset.outward(overdrawn, all(overdrawn, d), CornerStyle.mitre(2), TOLERANCE)
                        .outline()
                        .area();
                assertThat(area).isCloseTo((100 + 2 * d) * (100 + 2 * d), within(10.0));
            } catch (PatternException refused) {
                assertThat(refused).hasMessageContaining("must not cross itself; got a crossing at (100.0, 0.0)");
            }
        }
    }

    /** A triangle with two bent edges, one with a dust handle, up to thirty kilometres across. */
    @Test
    void a_drawing_of_any_size_has_its_loop() {
        for (double size : new double[] {1e-3, 1, 1e3, 1e4, 1e5}) {
            Point top = Point.of(5.167456730577385 * size, 69.99576556316387 * size);
            Point left = Point.of(-192.18927221956642 * size, 241.42799580437014 * size);
            Point right = Point.of(-129.21150703770445 * size, 7.644224364084906 * size);
            Cubic first = new Cubic(
                    top,
                    Point.of(5.1674567305722405 * size, 69.99576556316464 * size),
                    Point.of(-125.90454201393939 * size, 182.56515182468328 * size),
                    left);
            Cubic last = new Cubic(
                    right,
                    Point.of(-84.53440283054033 * size, 28.975814174029168 * size),
                    Point.of(-32.99588268377811 * size, 46.64060758807079 * size),
                    top);
            Outline drawing = Outline.of(Path.of(first, new Line(left, right), last));
            for (double distance : new double[] {9.5, 9.58, 12, 12.77, 13, 20}) {
                OffsetLoops moved = OffsetLoops.outward(drawing, distance * size, CornerStyle.round(), 0.01 * size);
                assertThat(moved.loops()).as("%s, by %s", size, distance).hasSize(1);
                assertThat(moved.loops().get(0).outline().area()).isGreaterThan(drawing.area());
            }
        }
    }
}

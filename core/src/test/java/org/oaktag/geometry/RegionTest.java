package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Unions, intersections and differences whose areas follow from squares and circles. */
class RegionTest {
    private static Outline box(double x, double y, double width, double height) {
        return Outline.of(Path.polyline(
                Point.of(x, y),
                Point.of(x + width, y),
                Point.of(x + width, y + height),
                Point.of(x, y + height),
                Point.of(x, y)));
    }

    private static Outline disc(double x, double y, double radius) {
        Point start = Point.of(x + radius, y);
        return Outline.of(Path.of(Arcs.of(Point.of(x, y), start, start, 2 * Math.PI, 1e-7 * radius)));
    }

    private static Region region(Outline outline) {
        return Region.of(outline);
    }

    @Test
    void discs_overlap_in_a_lens() {
        Region left = region(disc(0, 0, 100));
        Region right = region(disc(100, 0, 100));
        // Two circular segments of a third of a circle.
        double lens = 100 * 100 * (2 * Math.PI / 3 - Math.sqrt(3) / 2);
        double disc = Math.PI * 100 * 100;
        assertThat(left.intersection(right).area()).isCloseTo(lens, within(0.1));
        assertThat(left.union(right).area()).isCloseTo(2 * disc - lens, within(0.1));
        assertThat(left.minus(right).area()).isCloseTo(disc - lens, within(0.1));
        assertThat(left.symmetricDifference(right).area()).isCloseTo(2 * (disc - lens), within(0.1));
        assertThat(left.symmetricDifference(right).pieces()).hasSize(2);
    }

    @Test
    void what_is_cut_out_of_the_middle_is_a_hole() {
        Region ring = region(box(0, 0, 100, 80)).minus(region(disc(50, 40, 30)));
        assertThat(ring.area()).isCloseTo(8000 - Math.PI * 900, within(0.01));
        assertThat(ring.loops()).hasSize(2);
        assertThat(ring.pieces()).hasSize(1);
        assertThat(ring.pieces().get(0).holes()).hasSize(1);
        assertThat(ring.pieces().get(0).outer().outline().isClockwise()).isTrue();
        assertThat(ring.pieces().get(0).holes().get(0).isHole()).isTrue();
        assertThat(ring.contains(Point.of(50, 40))).isFalse();
        assertThat(ring.contains(Point.of(50, 5))).isTrue();
        assertThat(ring.contains(Point.of(80, 40))).isTrue();
        Region plug = region(disc(50, 40, 20));
        Region both = ring.union(plug);
        assertThat(both.pieces()).hasSize(2);
        assertThat(both.pieces().get(0).holes()).hasSize(1);
        assertThat(both.pieces().get(1).holes()).isEmpty();
        assertThat(both.union(region(disc(50, 40, 31))).area()).isCloseTo(8000, within(1e-9));
    }

    /** The unit squares of a chessboard touch in corners only. */
    @Test
    void what_touches_in_a_point_is_two_pieces() {
        Region both = region(box(0, 0, 10, 10)).union(region(box(10, 10, 10, 10)));
        assertThat(both.pieces()).hasSize(2);
        assertThat(both.area()).isEqualTo(200);
        assertThat(region(box(0, 0, 10, 10))
                        .intersection(region(box(10, 10, 10, 10)))
                        .isEmpty())
                .isTrue();
    }

    @Test
    void edges_that_are_shared_vanish_in_the_union() {
        Region whole = region(box(0, 0, 10, 10)).union(region(box(10, 2, 10, 6)));
        assertThat(whole.area()).isEqualTo(160);
        assertThat(whole.loops()).hasSize(1);
        assertThat(whole.loops().get(0).edges()).hasSize(8);
        assertThat(region(box(0, 0, 10, 10)).intersection(region(box(10, 2, 10, 6))))
                .isEqualTo(Region.EMPTY);
        assertThat(region(box(0, 0, 10, 10)).minus(region(box(10, 2, 10, 6))).area())
                .isEqualTo(100);
    }

    @Test
    void a_region_and_itself() {
        Region disc = region(disc(3, 4, 50));
        assertThat(disc.union(disc)).isEqualTo(disc);
        assertThat(disc.intersection(disc)).isEqualTo(disc);
        assertThat(disc.minus(disc)).isEqualTo(Region.EMPTY);
        assertThat(disc.symmetricDifference(disc)).isEqualTo(Region.EMPTY);
        assertThat(disc.union(Region.EMPTY)).isEqualTo(disc);
        assertThat(Region.EMPTY.union(disc)).isEqualTo(disc);
        assertThat(Region.EMPTY.minus(disc)).isEqualTo(Region.EMPTY);
        assertThat(Region.of(disc(3, 4, 50).reversed()).area()).isCloseTo(disc.area(), within(1e-9));
    }

    @Test
    void an_edge_says_which_piece_of_which_outline_it_is() {
        Outline front = disc(0, 0, 100);
        Outline facing = box(-200, -30, 400, 60);
        for (Region.Loop loop : region(front).intersection(region(facing)).loops()) {
            for (Region.Edge edge : loop.edges()) {
                assertThat(edge.source()).isIn(front, facing);
                Curve source = edge.source().path().curves().get(edge.index());
                assertThat(source.pointAt(edge.from()).distanceTo(edge.curve().start()))
                        .isLessThan(1e-6);
                assertThat(source.pointAt(edge.to()).distanceTo(edge.curve().end()))
                        .isLessThan(1e-6);
                assertThat(source.nearest(edge.curve().pointAt(0.4)).distance()).isLessThan(1e-6);
            }
        }
        Region.Loop whole = region(front).loops().get(0);
        assertThat(whole.outline()).isEqualTo(front);
        assertThat(whole.edges()).allMatch(edge -> edge.from() == 0 && edge.to() == 1);
    }

    @Test
    void winding_rules_read_one_drawing_in_three_ways() {
        List<Outline> drawing = List.of(
                box(0, 0, 100, 100), box(20, 20, 50, 50), box(30, 30, 10, 10).reversed());
        assertThat(Region.of(drawing, WindingRule.NON_ZERO).area()).isEqualTo(10_000);
        assertThat(Region.of(drawing, WindingRule.EVEN_ODD).area()).isEqualTo(7_600);
        assertThat(Region.of(drawing, WindingRule.EVEN_ODD).pieces()).hasSize(2);
        List<Outline> holed = List.of(box(0, 0, 100, 100), box(20, 20, 50, 50).reversed());
        assertThat(Region.of(holed, WindingRule.CLOCKWISE).area()).isEqualTo(7_500);
        assertThat(Region.of(List.of(), WindingRule.CLOCKWISE)).isEqualTo(Region.EMPTY);
        assertThat(Region.of(box(0, 0, 1, 1).reversed()).area()).isEqualTo(1);
    }

    /** A pentagram: its five points are wound round once, its middle twice. */
    @Test
    void what_crosses_itself_is_taken_apart_by_the_rule() {
        PathBuilder star = Path.from(Point.of(100, 0));
        for (int i = 1; i < 5; i++) {
            star.lineTo(Point.ORIGIN.plus(Vector.polar(100, 4 * Math.PI * i / 5)));
        }
        Outline pentagram = Outline.of(star.close().build());
        double inner = 100 * Math.cos(2 * Math.PI / 5) / Math.cos(Math.PI / 5);
        double middle = 2.5 * inner * inner * Math.sin(2 * Math.PI / 5);
        Region all = Region.of(pentagram);
        Region points = Region.of(List.of(pentagram), WindingRule.EVEN_ODD);
        assertThat(all.area() - points.area()).isCloseTo(middle, within(1e-9));
        assertThat(pentagram.area()).isCloseTo(all.area() + middle, within(1e-9));
        assertThat(points.pieces()).hasSize(5);
        assertThat(all.loops()).hasSize(1);
        assertThat(all.loops().get(0).edges()).hasSize(10);
    }

    @Test
    void points_and_outlines_without_area_leave_nothing() {
        Outline point = Outline.of(Path.of(new Line(Point.ORIGIN, Point.ORIGIN)));
        Outline there = Outline.of(Path.polyline(Point.of(0, 0), Point.of(10, 0), Point.of(0, 0)));
        assertThat(Region.of(point)).isEqualTo(Region.EMPTY);
        assertThat(Region.of(there)).isEqualTo(Region.EMPTY);
        Region square = region(box(0, 0, 10, 10));
        assertThat(square.union(Region.of(there))).isEqualTo(square);
        assertThat(Region.of(List.of(box(0, 0, 10, 10), there, point), WindingRule.NON_ZERO)
                        .area())
                .isEqualTo(100);
    }

    @Test
    void regions_far_away_are_as_good_as_their_coordinates() {
        double far = 1e9;
        Region both = region(box(far, far, 100, 100)).union(region(box(far + 50, far + 50, 100, 100)));
        assertThat(both.area()).isEqualTo(17_500);
        Region lens = region(disc(far, far, 100)).intersection(region(disc(far + 100, far, 100)));
        assertThat(lens.area()).isCloseTo(10_000 * (2 * Math.PI / 3 - Math.sqrt(3) / 2), within(0.2));
    }
}

package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.locationtech.jts.geom.Polygon;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Region;
import org.oaktag.geometry.WindingRule;
import org.oaktag.testkit.curves.Curves;
import org.oaktag.testkit.curves.Scribbles;

/** What regions have together and in common: laws of sets, samples of points, and JTS on fine chords. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class RegionProperties {
    private static final int CHORDS = 400;

    @Provide
    Arbitrary<Scribbles.Pair> pairs() {
        return Scribbles.pairs();
    }

    @Property
    void areas_add_up(@ForAll("pairs") Scribbles.Pair pair) {
        Region a = Region.of(pair.first());
        Region b = Region.of(pair.second());
        double both = a.intersection(b).area();
        double slack = slack(a, b);
        assertThat(a.union(b).area()).isCloseTo(a.area() + b.area() - both, within(slack));
        assertThat(a.minus(b).area()).isCloseTo(a.area() - both, within(slack));
        assertThat(a.symmetricDifference(b).area()).isCloseTo(a.area() + b.area() - 2 * both, within(slack));
        assertThat(b.union(a).area()).isCloseTo(a.union(b).area(), within(slack));
        assertThat(b.intersection(a).area()).isCloseTo(both, within(slack));
    }

    /** Ends are moved by up to a millionth of a millimetre. */
    private static double slack(Region a, Region b) {
        return 1e-6 * (perimeter(a) + perimeter(b));
    }

    private static double perimeter(Region region) {
        return region.loops().stream()
                .mapToDouble(loop -> loop.outline().perimeter())
                .sum();
    }

    @Property
    void a_point_is_in_what_its_sides_say(@ForAll("pairs") Scribbles.Pair pair, @ForAll @Size(40) List<Point> points) {
        Region a = Region.of(pair.first());
        Region b = Region.of(List.of(pair.second()), WindingRule.EVEN_ODD);
        Region union = a.union(b);
        Region both = a.intersection(b);
        Region without = a.minus(b);
        Region either = a.symmetricDifference(b);
        for (Point any : points) {
            Point point = Point.of(200 + any.x(), 200 + any.y());
            if (Math.min(
                            pair.first().path().nearest(point).distance(),
                            pair.second().path().nearest(point).distance())
                    > 2e-6) {
                boolean inA = pair.first().windingNumber(point) != 0;
                boolean inB = pair.second().windingNumber(point) % 2 != 0;
                assertThat(union.contains(point)).isEqualTo(inA || inB);
                assertThat(both.contains(point)).isEqualTo(inA && inB);
                assertThat(without.contains(point)).isEqualTo(inA && !inB);
                assertThat(either.contains(point)).isEqualTo(inA != inB);
            }
        }
    }

    @Property
    void every_edge_is_a_piece_of_the_curve_that_it_names(@ForAll("pairs") Scribbles.Pair pair) {
        Region first = Region.of(pair.first());
        for (Region region : List.of(
                first.union(Region.of(pair.second())),
                first.minus(Region.of(pair.second())).union(Region.of(pair.second())))) {
            for (Region.Loop loop : region.loops()) {
                for (Region.Edge edge : loop.edges()) {
                    assertThat(edge.source()).isIn(pair.first(), pair.second());
                    Curve source = edge.source().path().curves().get(edge.index());
                    for (double t = 0; t <= 1; t += 0.25) {
                        Point there = source.pointAt(edge.from() + (edge.to() - edge.from()) * t);
                        assertThat(edge.curve().pointAt(t).distanceTo(there)).isLessThan(2e-6);
                    }
                }
            }
        }
    }

    /**
     * Where JTS takes both polygons as they are; chords err by up to a few hundredths of a square millimetre in all.
     */
    @Property(tries = 400)
    void areas_are_those_of_fine_polygons_in_jts(@ForAll("pairs") Scribbles.Pair pair) {
        Assume.that(!pair.first().meetsItself() && !pair.second().meetsItself());
        Polygon first = Flattened.polygon(pair.first(), CHORDS);
        Polygon second = Flattened.polygon(pair.second(), CHORDS);
        Assume.that(first.isValid() && second.isValid());
        Region a = Region.of(pair.first());
        Region b = Region.of(pair.second());
        assertThat(a.union(b).area()).isCloseTo(first.union(second).getArea(), within(0.5));
        assertThat(a.intersection(b).area())
                .isCloseTo(first.intersection(second).getArea(), within(0.5));
        assertThat(a.minus(b).area()).isCloseTo(first.difference(second).getArea(), within(0.5));
    }

    @Property(tries = 300)
    void a_region_with_itself_is_itself_and_without_itself_nothing(@ForAll Outline outline) {
        Region region = Region.of(outline);
        assertThat(region.union(region)).isEqualTo(region);
        assertThat(region.intersection(region)).isEqualTo(region);
        assertThat(region.minus(region).isEmpty()).isTrue();
        assertThat(region.pieces()).hasSize(1);
    }

    @Property(tries = 300)
    void holes_and_pieces_share_out_all_loops(@ForAll("pairs") Scribbles.Pair pair) {
        Region region = Region.of(pair.first()).symmetricDifference(Region.of(pair.second()));
        List<Region.Piece> pieces = region.pieces();
        assertThat(pieces.stream().mapToInt(piece -> 1 + piece.holes().size()).sum())
                .isEqualTo(region.loops().size());
        for (Region.Piece piece : pieces) {
            double holes = piece.holes().stream()
                    .mapToDouble(hole -> hole.outline().area())
                    .sum();
            assertThat(holes).isLessThan(piece.outer().outline().area());
        }
    }
}

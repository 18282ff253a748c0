package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.statistics.Statistics;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * Outlines that cross themselves, or nearly: their points lie on a coarse grid, so that many touch and run along each
 * other.
 */
class OutlineProperties {

    private static final GeometryFactory JTS = new GeometryFactory();

    /** A leg from one corner of an outline to the next: straight, or curved by two control points. */
    private record Leg(Point corner, Point control1, Point control2, boolean isCurved) {
        Curve to(Point next) {
            return isCurved ? new Cubic(corner, control1, control2, next) : new Line(corner, next);
        }
    }

    @Provide
    Arbitrary<Point> points() {
        Arbitrary<Integer> at = Arbitraries.integers().between(0, 5);
        return Combinators.combine(at, at).as((x, y) -> Point.of(10 * x, 10 * y));
    }

    @Provide
    Arbitrary<List<Leg>> legs() {
        return Combinators.combine(points(), points(), points(), Arbitraries.of(true, false))
                .as(Leg::new)
                .list()
                .ofMinSize(3)
                .ofMaxSize(7);
    }

    private static boolean hasCorners(List<Leg> legs) {
        return IntStream.range(0, legs.size())
                .noneMatch(i -> legs.get(i)
                        .corner()
                        .equals(legs.get((i + 1) % legs.size()).corner()));
    }

    private static Outline outline(List<Leg> legs) {
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < legs.size(); i++) {
            curves.add(legs.get(i).to(legs.get((i + 1) % legs.size()).corner()));
        }
        return Outline.of(Path.of(curves));
    }

    @Property(tries = 3000)
    void whether_an_outline_meets_itself_is_whether_a_meeting_is_found(@ForAll("legs") List<Leg> legs) {
        Assume.that(hasCorners(legs));
        Outline outline = outline(legs);
        boolean meets = outline.meetsItself();
        assertThat(meets).isEqualTo(!outline.selfCrossings().isEmpty());
        Statistics.collect(meets);
        Statistics.coverage(coverage -> coverage.check(false).percentage(share -> share > 3));
    }

    @Property(tries = 3000)
    void a_polygon_meets_itself_where_it_is_not_simple_in_jts(@ForAll("legs") List<Leg> legs) {
        Assume.that(hasCorners(legs));
        List<Leg> straight = legs.stream()
                .map(leg -> new Leg(leg.corner(), leg.corner(), leg.corner(), false))
                .toList();
        List<Coordinate> corners = new ArrayList<>();
        legs.forEach(
                leg -> corners.add(new Coordinate(leg.corner().x(), leg.corner().y())));
        corners.add(corners.get(0));
        boolean simple =
                JTS.createLinearRing(corners.toArray(Coordinate[]::new)).isSimple();
        assertThat(outline(straight).meetsItself()).isEqualTo(!simple);
        Statistics.collect(simple);
        Statistics.coverage(coverage -> coverage.check(true).percentage(share -> share > 3));
    }
}

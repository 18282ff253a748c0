package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.locationtech.jts.geom.Coordinate;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.curves.CubicShape;
import org.oaktag.testkit.curves.Curves;

/** Where curves and paths meet. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class CrossingProperties {
    @Provide
    Arbitrary<Cubic> general() {
        return Curves.of(CubicShape.GENERAL);
    }

    private static double slack(Curve a, Curve b) {
        return 1e-8 + 10 * (LengthProperties.rounding(a) + LengthProperties.rounding(b));
    }

    @Property
    void every_meeting_lies_on_both_at_the_distances_it_tells(@ForAll Curve a, @ForAll Curve b) {
        Path first = Path.of(a);
        Path second = Path.of(b);
        double slack = slack(a, b);
        for (Crossing crossing : Crossings.between(a, b)) {
            for (Crossing.Place place : List.of(crossing.from(), crossing.to())) {
                assertThat(a.nearest(place.point()).distance()).isLessThanOrEqualTo(slack);
                assertThat(b.nearest(place.point()).distance()).isLessThanOrEqualTo(slack);
                assertThat(first.pointAt(place.first()).distanceTo(place.point()))
                        .isLessThanOrEqualTo(slack + 2e-6);
                assertThat(second.pointAt(place.second()).distanceTo(place.point()))
                        .isLessThanOrEqualTo(slack + 2e-6);
            }
        }
    }

    @Property
    void meetings_are_the_same_whichever_comes_first(@ForAll("general") Cubic a, @ForAll("general") Cubic b) {
        List<Crossing> there = Crossings.between(a, b);
        List<Crossing> back = Crossings.between(b, a);
        assertThat(back).hasSameSizeAs(there);
        for (Crossing crossing : there) {
            assertThat(back)
                    .anyMatch(other -> other.kind() == crossing.kind()
                            && other.point().isCloseTo(crossing.point(), 1e-7)
                            && Math.abs(other.first() - crossing.second()) < 1e-5
                            && Math.abs(other.second() - crossing.first()) < 1e-5);
        }
    }

    @Property
    void different_cubics_meet_nine_times_at_most(@ForAll("general") Cubic a, @ForAll("general") Cubic b) {
        assertThat(Crossings.between(a, b)).hasSizeLessThanOrEqualTo(9);
        assertThat(Crossings.between(a, new Line(b.start(), b.end()))).hasSizeLessThanOrEqualTo(3);
    }

    /** JTS crosses fine chords; each of its crossings is one of ours, and each of ours at a fair angle one of its. */
    @Property(tries = 300)
    void meetings_agree_with_those_of_fine_chords_in_jts(@ForAll("general") Cubic a, @ForAll("general") Cubic b) {
        List<Crossing> ours = Crossings.between(a, b);
        Coordinate[] theirs = Flattened.line(Path.of(a), 1000)
                .intersection(Flattened.line(Path.of(b), 1000))
                .getCoordinates();
        for (Coordinate their : theirs) {
            assertThat(ours).anyMatch(our -> our.point().distanceTo(new Point(their.x, their.y)) < 1);
        }
        for (Crossing our : ours) {
            double sine = Path.of(a).directionAt(our.first()).cross(Path.of(b).directionAt(our.second()));
            if (our.kind() == Crossing.Kind.CROSS && Math.abs(sine) > 0.1) {
                assertThat(theirs).anyMatch(their -> our.point().distanceTo(new Point(their.x, their.y)) < 0.1);
            }
        }
    }

    @Property
    void two_parts_of_a_cut_curve_meet_at_the_cut(
            @ForAll("general") Cubic cubic, @ForAll @DoubleRange(min = 0.1, max = 0.9) double t) {
        assertThat(Crossings.between(cubic.sub(0, t), cubic.sub(t, 1)))
                .anyMatch(c -> c.kind() == Crossing.Kind.TOUCH && c.point().isCloseTo(cubic.pointAt(t), 1e-9));
    }

    @Property
    void curve_lies_along_itself(@ForAll("general") Cubic cubic) {
        assertThat(Crossings.between(cubic, cubic))
                .anyMatch(c -> c.kind() == Crossing.Kind.OVERLAP
                        && c.from().point().equals(cubic.start())
                        && c.to().point().equals(cubic.end()));
    }

    @Property
    void parts_that_share_a_stretch_overlap_there(
            @ForAll("general") Cubic cubic,
            @ForAll @DoubleRange(min = 0.1, max = 0.4) double from,
            @ForAll @DoubleRange(min = 0.6, max = 0.9) double to) {
        List<Crossing> found = Crossings.between(cubic.sub(0, to), cubic.sub(from, 1));
        assertThat(found)
                .filteredOn(c -> c.kind() == Crossing.Kind.OVERLAP)
                .singleElement()
                .satisfies(c -> {
                    assertThat(c.from().point().isCloseTo(cubic.pointAt(from), 1e-8))
                            .isTrue();
                    assertThat(c.to().point().isCloseTo(cubic.pointAt(to), 1e-8))
                            .isTrue();
                    assertThat(c.to().first() - c.from().first())
                            .isCloseTo(cubic.lengthBetween(from, to, 1e-9), within(1e-5));
                });
    }

    @Property
    void outline_without_crossings_is_found_to_have_none(@ForAll Outline outline) {
        assertThat(outline.selfCrossings()).isEmpty();
    }

    @Property
    void line_through_an_outline_goes_in_as_often_as_out(@ForAll Outline outline, @ForAll Point a, @ForAll Point b) {
        if (!a.equals(b)) {
            List<Crossing> found = Crossings.ofLine(outline.path(), a, b.minus(a));
            long crossed =
                    found.stream().filter(c -> c.kind() == Crossing.Kind.CROSS).count();
            assertThat(crossed % 2).isZero();
            assertThat(found)
                    .allSatisfy(c -> assertThat(
                                    a.plus(b.minus(a).unit().times(c.second())).distanceTo(c.point()))
                            .isLessThan(1e-8));
            List<Point> points = Crossings.pointsOnLine(outline.path(), a, b.minus(a));
            assertThat(found)
                    .filteredOn(c -> c.kind() == Crossing.Kind.CROSS)
                    .allSatisfy(c -> assertThat(points).anyMatch(point -> point.isCloseTo(c.point(), 1e-6)));
            assertThat(points)
                    .allSatisfy(point -> assertThat(found)
                            .anyMatch(c -> c.point().isCloseTo(point, 1e-6) || c.kind() == Crossing.Kind.OVERLAP));
        }
    }

    @Property
    void meetings_of_paths_come_in_order_along_the_first(@ForAll Path a, @ForAll Path b) {
        List<Crossing> found = Crossings.between(a, b);
        for (int i = 1; i < found.size(); i++) {
            assertThat(found.get(i).first())
                    .isGreaterThanOrEqualTo(found.get(i - 1).first());
        }
    }
}

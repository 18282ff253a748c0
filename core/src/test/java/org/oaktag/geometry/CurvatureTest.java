package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CurvatureTest {
    private static final double WIGGLE = 1e-3;

    /** The quarter of a circle of radius 40 about the origin from (0, -40) clockwise on the table. */
    private static final Cubic QUARTER =
            (Cubic) Arcs.of(Point.ORIGIN, Point.of(0, -40), Point.of(40, 0), Math.PI / 2, 1)
                    .get(0);

    /** y = x³ has the curvature 6x / (1 + 9x⁴)^(3/2): greatest where x⁴ = 1/45, and 0 at the origin. */
    @Test
    void graph_of_a_cube_bends_most_at_the_fourth_root_of_a_forty_fifth() {
        Curvature cube = Curvature.of(Polynomial.graph(-1, 1, 0, 0, 0, 1));
        double x = Math.pow(1 / 45.0, 0.25);
        double most = 6 * x / Math.pow(1 + 9 / 45.0, 1.5);
        assertThat(cube.extrema()).hasSize(2);
        Curvature.Bend left = cube.extrema().get(0);
        Curvature.Bend right = cube.extrema().get(1);
        assertThat(left.point().x()).isCloseTo(-x, within(1e-14));
        assertThat(left.curvature()).isCloseTo(-most, within(1e-13));
        assertThat(right.point().x()).isCloseTo(x, within(1e-14));
        assertThat(right.curvature()).isCloseTo(most, within(1e-13));
        assertThat(cube.leastRadius().radius()).isCloseTo(1 / most, within(1e-13));
        assertThat(cube.inflections()).hasSize(1);
        assertThat(cube.inflections().get(0).point().distanceTo(Point.ORIGIN)).isLessThan(1e-15);
        assertThat(cube.inflections().get(0).curvature()).isZero();
        assertThat(cube.inflections().get(0).radius()).isInfinite();
    }

    @Test
    void least_radius_between_two_places_may_lie_at_one_of_them() {
        Curvature parabola = Curvature.of(Polynomial.graph(-1, 1, 0, 0, 1, 0));
        double half = parabola.path().length() / 2;
        assertThat(parabola.leastRadius().radius()).isCloseTo(0.5, within(1e-15));
        assertThat(parabola.leastRadius().point().distanceTo(Point.ORIGIN)).isLessThan(1e-15);
        assertThat(parabola.leastRadius().distanceAlong()).isCloseTo(half, within(1e-6));
        Curvature.Bend beyond = parabola.leastRadius(half + 0.1, half + 0.2);
        assertThat(beyond.distanceAlong()).isCloseTo(half + 0.1, within(1e-6));
        double x = beyond.point().x();
        assertThat(beyond.radius()).isCloseTo(Math.pow(1 + 4 * x * x, 1.5) / 2, within(1e-12));
        assertThat(parabola.leastRadius(half - 0.2, half + 0.2).radius()).isCloseTo(0.5, within(1e-15));
        assertThat(parabola.at(half + 0.1).curvature()).isCloseTo(beyond.curvature(), within(1e-6));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> parabola.leastRadius(0.3, 0.2))
                .withMessage("from must not exceed to, got 0.3 and 0.2 mm");
    }

    @Test
    void segments_have_an_infinite_radius_and_no_turn() {
        Curvature line = Curvature.of(Line.of(Point.of(3, 4), Point.of(103, -7)));
        Curvature asCubic = Curvature.of(Cubic.from(Line.of(Point.of(3.1, 4.7), Point.of(103.3, -7.9))));
        for (Curvature straight : List.of(line, asCubic)) {
            assertThat(straight.leastRadius().radius()).isInfinite();
            assertThat(straight.leastRadius().distanceAlong()).isZero();
            assertThat(straight.extrema()).isEmpty();
            assertThat(straight.inflections()).isEmpty();
            assertThat(straight.joins()).isEmpty();
            assertThat(straight.turns(1e-6)).isEmpty();
            assertThat(straight.signChanges(1e-6)).isZero();
        }
    }

    /** The cubic (0,0) (1,1) (0,1) (1,0) stands still at t = 1/2, between two arches that turn the same way. */
    @Test
    void cusp_has_radius_nought_and_is_no_change_of_sign() {
        Curvature cusp = Curvature.of(CubicTest.cubic(0, 0, 1, 1, 0, 1, 1, 0));
        assertThat(cusp.leastRadius().radius()).isZero();
        assertThat(cusp.leastRadius().at().t()).isEqualTo(0.5);
        assertThat(cusp.extrema()).hasSize(1);
        assertThat(cusp.extrema().get(0).curvature()).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(cusp.inflections()).isEmpty();
        assertThat(cusp.turns(WIGGLE)).hasSize(1);
        // Clockwise from 45 degrees to the right and down to 45 degrees to the right and up.
        assertThat(cusp.turns(WIGGLE).get(0).angle()).isCloseTo(1.5 * Math.PI, within(1e-12));
        Curvature fold = Curvature.of(CubicTest.cubic(0, 0, 10, 0, -10, 0, 20, 0));
        assertThat(fold.extrema()).hasSize(2);
        assertThat(fold.leastRadius().radius()).isZero();
    }

    /** x = 27 t² , y = 27 t³, moved: its curvature is 6 / (27 t (4 + 9 t²)^(3/2)), infinite at the start. */
    @Test
    void retracted_handle_has_radius_nought_at_its_end_only() {
        Curvature semicubical = Curvature.of(CubicTest.cubic(0, 0, 0, 0, 9, 0, 27, 27));
        assertThat(semicubical.leastRadius().radius()).isZero();
        assertThat(semicubical.leastRadius().distanceAlong()).isZero();
        double end = semicubical.path().length();
        assertThat(semicubical.leastRadius(1, end).distanceAlong()).isCloseTo(1, within(1e-6));
        assertThat(semicubical.at(end).curvature()).isCloseTo(6 / (27 * Math.pow(13, 1.5)), within(1e-15));
    }

    @Test
    void dust_of_a_handle_changes_no_figure() {
        Cubic clean = CubicTest.cubic(10, 20, 10, 20, 90, 10, 140, 80);
        Curvature expected = Curvature.of(clean);
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 300; i++) {
            Vector dust = Vector.polar(Math.pow(10, random.nextDouble(-13, -4.5)), random.nextDouble(0, 2 * Math.PI));
            Curvature dusty =
                    Curvature.of(new Cubic(clean.start(), clean.control1().plus(dust), clean.control2(), clean.end()));
            assertThat(dusty.turns(WIGGLE)).hasSameSizeAs(expected.turns(WIGGLE));
            assertThat(dusty.turns(WIGGLE).get(0).angle())
                    .isCloseTo(expected.turns(WIGGLE).get(0).angle(), within(1e-12));
            assertThat(dusty.inflections()).isEmpty();
            assertThat(dusty.extrema()).hasSameSizeAs(expected.extrema());
            double length = dusty.path().length();
            assertThat(dusty.leastRadius(1, length).radius())
                    .isCloseTo(expected.leastRadius(1, expected.path().length()).radius(), within(1e-3));
        }
    }

    @Test
    void a_curve_that_shrinks_to_its_dust_is_straight() {
        Cubic both = CubicTest.cubic(0, 0, 3e-6, -2e-6, 100 - 1e-6, 1e-6, 100, 0);
        assertThat(Curvature.of(both).turns(1e-9)).isEmpty();
        Cubic doubled = CubicTest.cubic(0, 0, 3e-6, -2e-6, -1e-6, 4e-6, 100, 0);
        assertThat(Curvature.of(doubled).turns(1e-9)).isEmpty();
        Cubic mirrored = CubicTest.cubic(0, 0, 100 + 3e-6, -2e-6, 100 - 1e-6, 4e-6, 100, 0);
        assertThat(Curvature.of(mirrored).turns(1e-9)).isEmpty();
        assertThat(Curvature.of(CubicTest.cubic(5, 5, 5, 5, 5, 5, 5, 5))
                        .leastRadius()
                        .radius())
                .isInfinite();
    }

    /** A segment of 30 into a quarter of radius 40, then a corner of half a right angle back. */
    @Test
    void joins_tell_the_gaps_of_direction_and_curvature() {
        Point start = Point.of(-30, -40);
        Path path = Path.of(Line.of(start, Point.of(0, -40)), QUARTER, Line.of(Point.of(40, 0), Point.of(70, 30)));
        List<Curvature.Join> joins = Curvature.of(path).joins();
        assertThat(joins).hasSize(2);
        assertThat(joins.get(0).point()).isEqualTo(Point.of(0, -40));
        assertThat(joins.get(0).distanceAlong()).isEqualTo(30);
        assertThat(joins.get(0).turn()).isCloseTo(0, within(1e-15));
        assertThat(joins.get(0).arriving()).isZero();
        // At the start of a cubic the curvature is 2/3 of the distance of control2 from the tangent, by handle squared.
        double k = 4 * (Math.sqrt(2) - 1) / 3;
        assertThat(joins.get(0).leaving()).isCloseTo(2 * (1 - k) / (3 * k * k) / 40, within(1e-15));
        assertThat(joins.get(0).curvatureGap()).isEqualTo(joins.get(0).leaving());
        assertThat(joins.get(1).turn()).isCloseTo(-Math.PI / 4, within(1e-15));
        assertThat(joins.get(1).arriving()).isCloseTo(joins.get(0).leaving(), within(1e-15));
        Path closed = path.then(Path.polyline(Point.of(70, 30), Point.of(40, 30), Point.of(40, 30), start));
        List<Curvature.Join> all = Curvature.of(closed).joins();
        assertThat(all).hasSize(5);
        assertThat(all.get(4).point()).isEqualTo(start);
        assertThat(all.get(4).distanceAlong()).isEqualTo(closed.length());
        double turned = all.stream().mapToDouble(Curvature.Join::turn).sum();
        assertThat(turned + QUARTER.turning()).isCloseTo(2 * Math.PI, within(1e-12));
    }

    @Test
    void turns_go_over_joins_and_leave_out_what_is_straight_between() {
        Point half = Point.of(40, 0);
        Cubic back = (Cubic) Arcs.of(Point.of(80, 60), Point.of(40, 60), Point.of(80, 100), -Math.PI / 2, 1)
                .get(0);
        Path path = Path.of(QUARTER, Line.of(half, Point.of(40, 60)), back);
        List<Curvature.Turn> turns = Curvature.of(path).turns(WIGGLE);
        assertThat(turns).hasSize(2);
        assertThat(turns.get(0).from()).isZero();
        assertThat(turns.get(0).to()).isCloseTo(QUARTER.length(), within(1e-6));
        assertThat(turns.get(0).angle()).isCloseTo(Math.PI / 2, within(1e-12));
        assertThat(turns.get(1).from()).isCloseTo(QUARTER.length() + 60, within(1e-6));
        assertThat(turns.get(1).to()).isEqualTo(path.length());
        assertThat(turns.get(1).angle()).isCloseTo(-Math.PI / 2, within(1e-12));
        assertThat(Curvature.of(path).signChanges(WIGGLE)).isEqualTo(1);
        assertThat(Curvature.of(path.reversed()).signChanges(WIGGLE)).isEqualTo(1);
        assertThat(Curvature.of(path.reversed()).turns(WIGGLE).get(0).angle()).isCloseTo(Math.PI / 2, within(1e-12));
    }

    @Test
    void wiggle_within_the_tolerance_is_no_change_of_sign() {
        // y' = x - x² from 0 to 1, then y' = 1 - x up to 3.
        Cubic rising = Polynomial.graph(0, 1, 0, 0, 0.5, -1 / 3.0);
        Cubic falling = Polynomial.graph(1, 3, -1 / 3.0, 1, -0.5, 0);
        Path wiggle = Path.of(rising, new Cubic(rising.end(), falling.control1(), falling.control2(), falling.end()));
        // y' rises from 0 to 1/4 at x = 1/2 and falls from there on, to -2.
        Curvature bends = Curvature.of(wiggle);
        double rise = Math.atan(0.25);
        assertThat(bends.turns(0.99 * rise)).hasSize(2);
        assertThat(bends.turns(0.99 * rise).get(0).angle()).isCloseTo(rise, within(1e-12));
        assertThat(bends.turns(1.01 * rise)).hasSize(1);
        assertThat(bends.turns(1.01 * rise).get(0).angle()).isCloseTo(-rise - Math.atan(2), within(1e-12));
        assertThat(bends.turns(0.99 * rise).get(0).to())
                .isCloseTo(bends.inflections().get(0).distanceAlong(), within(1e-9));
        assertThat(bends.turns(4)).isEmpty();
    }

    @Test
    void teeth_stand_on_the_outside_and_are_as_long_as_the_path_is_bent() {
        Path path = Path.of(Line.of(Point.of(-30, -40), Point.of(0, -40)), QUARTER);
        Curvature bends = Curvature.of(path);
        Curvature.Comb comb = bends.comb(400, 5, 1000);
        assertThat(comb.teeth()).hasSize(7 + 1 + 13);
        assertThat(comb.rim().curves()).hasSize(comb.teeth().size() - 1);
        for (Line tooth : comb.teeth()) {
            double curvature =
                    bends.at(path.nearest(tooth.start()).distanceAlong()).curvature();
            if (tooth.start().x() > 1e-9) {
                assertThat(tooth.length()).isCloseTo(400 * curvature, within(1e-6));
                // Away from the centre, by the nearest of all that a quarter's error allows.
                assertThat(tooth.end().distanceTo(Point.ORIGIN)).isCloseTo(40 + tooth.length(), within(0.011));
            }
        }
        assertThat(comb.teeth().get(3).length()).isZero();
        assertThat(bends.comb(400, 5, 2).teeth().get(9).length()).isCloseTo(2, within(1e-12));
        assertThat(comb.rim().end()).isEqualTo(comb.teeth().get(20).end());
        Curvature point = Curvature.of(Line.of(Point.of(1, 2), Point.of(1, 2)));
        assertThat(point.comb(1, 1, 1).rim().length()).isZero();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> bends.comb(400, 1e-5, 10))
                .withMessageStartingWith("spacing of a comb on a path of 92.8")
                .withMessageContaining("must be at least 9.28")
                .withMessageEndingWith("got 1.0E-5");
    }

    /** No sample is sharper than the least radius, and one of those near it is as good as that. */
    @Test
    void nothing_on_random_cubics_is_sharper_than_the_least_radius() {
        SplittableRandom random = new SplittableRandom(3);
        int extrema = 0;
        for (int i = 0; i < 400; i++) {
            double[] c = random.doubles(8, 0, 300).toArray();
            Cubic cubic = CubicTest.cubic(c);
            Curvature bends = Curvature.of(cubic);
            double least = bends.leastRadius().radius();
            double sampled = Double.POSITIVE_INFINITY;
            int changes = 0;
            int turnsOfCurvature = 0;
            double before = cubic.curvatureAt(0);
            double rise = 0;
            for (int k = 1; k <= 2000; k++) {
                double curvature = cubic.curvatureAt(k / 2000.0);
                sampled = Math.min(sampled, 1 / Math.abs(curvature));
                changes += curvature * before < 0 ? 1 : 0;
                turnsOfCurvature += (curvature - before) * rise < 0 ? 1 : 0;
                rise = curvature - before;
                before = curvature;
            }
            assertThat(least).isLessThanOrEqualTo(sampled * (1 + 1e-9));
            assertThat(bends.inflections().size()).isEqualTo(changes);
            assertThat(bends.extrema().size()).isGreaterThanOrEqualTo(turnsOfCurvature);
            extrema += bends.extrema().size() - turnsOfCurvature;
            assertThat(bends.signChanges(1e-9)).isEqualTo(changes);
        }
        // Pairs closer than a sample, which these do not see, are rare.
        assertThat(extrema).isLessThan(8);
    }
}

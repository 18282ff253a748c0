package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.OffsetCurve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.testkit.curves.CubicShape;
import org.oaktag.testkit.curves.Curves;

/** Parallels of single curves. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class OffsetProperties {
    private static final double FINE = 1e-7;

    @Provide
    Arbitrary<Cubic> general() {
        return Curves.of(CubicShape.GENERAL);
    }

    @Provide
    Arbitrary<Cubic> moving() {
        return Curves.movingCubics();
    }

    /** The parallel moves at (1 + curvature d) times the speed of the curve: without a cusp that stays well above 0. */
    private static boolean isSmooth(Cubic cubic, double d) {
        for (int i = 0; i <= 400; i++) {
            if (!(1 + d * cubic.curvatureAt(i / 400.0) > 0.1)
                    || cubic.derivativeAt(i / 400.0).length() < 5) {
                return false;
            }
        }
        return true;
    }

    @Property(tries = 300)
    void length_is_that_of_the_curve_plus_distance_times_turning(
            @ForAll("general") Cubic cubic, @ForAll @DoubleRange(min = -30, max = 30) double d) {
        Assume.that(isSmooth(cubic, d));
        assertThat(OffsetCurve.of(cubic, d, FINE).length(1e-9))
                .isCloseTo(cubic.length(1e-9) + d * cubic.turning(), within(1e-5));
    }

    @Property(tries = 300)
    void area_between_is_distance_times_length_plus_half_its_square_times_turning(
            @ForAll("general") Cubic cubic, @ForAll @DoubleRange(min = -30, max = 30) double d) {
        Assume.that(isSmooth(cubic, d));
        Path parallel = OffsetCurve.of(cubic, d, FINE);
        Path round = Path.of(cubic, new Line(cubic.end(), parallel.end()))
                .then(parallel.reversed())
                .then(Path.of(new Line(parallel.start(), cubic.start())));
        assertThat(-round.sweep()).isCloseTo(d * cubic.length(1e-9) + 0.5 * d * d * cubic.turning(), within(1e-3));
    }

    @Property(tries = 300)
    void exact_parallel_lies_within_the_tolerance(
            @ForAll("moving") Cubic cubic,
            @ForAll @DoubleRange(min = -40, max = 40) double d,
            @ForAll @IntRange(min = 2, max = 5) int digits) {
        double tolerance = Math.pow(10, -digits);
        Path parallel = OffsetCurve.of(cubic, d, tolerance);
        double slack = tolerance + 4 * LengthProperties.rounding(cubic) + 1e-9;
        for (int i = 0; i <= 60; i++) {
            double t = i / 60.0;
            Point exact =
                    cubic.pointAt(t).plus(cubic.directionAt(t).leftNormal().times(d));
            assertThat(parallel.nearest(exact).distance()).isLessThanOrEqualTo(slack);
        }
    }

    /** A thousand places of each, to a tolerance of anything between a tenth and a ten-millionth of a millimetre. */
    @Property(tries = 100)
    void parallel_without_a_cusp_keeps_its_tolerance_everywhere_and_has_no_corner(
            @ForAll("general") Cubic cubic,
            @ForAll @DoubleRange(min = -30, max = 30) double d,
            @ForAll @IntRange(min = 1, max = 7) int digits) {
        Assume.that(isSmooth(cubic, d));
        double tolerance = Math.pow(10, -digits);
        Path parallel = OffsetCurve.of(cubic, d, tolerance);
        for (int i = 0; i <= 1000; i++) {
            double t = i / 1000.0;
            Point exact =
                    cubic.pointAt(t).plus(cubic.directionAt(t).leftNormal().times(d));
            assertThat(parallel.nearest(exact).distance()).isLessThanOrEqualTo(tolerance);
        }
        for (int i = 1; i < parallel.curves().size(); i++) {
            Vector arriving = parallel.curves().get(i - 1).directionAt(1);
            assertThat(arriving.angleTo(parallel.curves().get(i).directionAt(0)))
                    .isCloseTo(0, within(1e-6));
        }
    }

    @Property(tries = 300)
    void parallel_is_nowhere_farther_than_the_distance(
            @ForAll("moving") Cubic cubic, @ForAll @DoubleRange(min = -40, max = 40) double d) {
        double slack = 0.01 + 4 * LengthProperties.rounding(cubic);
        for (Curve curve : OffsetCurve.of(cubic, d, 0.01).curves()) {
            for (int i = 0; i <= 20; i++) {
                assertThat(cubic.nearest(curve.pointAt(i / 20.0)).distance()).isLessThanOrEqualTo(Math.abs(d) + slack);
            }
        }
    }

    @Property(tries = 200)
    void offset_and_back_is_where_it_was(
            @ForAll("general") Cubic cubic, @ForAll @DoubleRange(min = -30, max = 30) double d) {
        Assume.that(isSmooth(cubic, d));
        for (Curve curve : OffsetCurve.of(cubic, d, 1e-4).curves()) {
            for (Curve back : OffsetCurve.of(curve, -d, 1e-4).curves()) {
                assertThat(cubic.nearest(back.pointAt(0.5)).distance()).isLessThanOrEqualTo(1e-2);
                assertThat(cubic.nearest(back.pointAt(0)).distance()).isLessThanOrEqualTo(1e-2);
            }
        }
    }

    @Property(tries = 200)
    void mirrored_curves_have_mirrored_parallels(
            @ForAll("general") Cubic cubic, @ForAll @DoubleRange(min = -30, max = 30) double d) {
        Transform mirror = Transform.mirrorX(0);
        Path parallel = OffsetCurve.of(cubic, d, 0.01);
        Path mirrored = OffsetCurve.of(cubic.transformed(mirror), -d, 0.01);
        assertThat(mirrored).isEqualTo(parallel.transformed(mirror));
    }
}

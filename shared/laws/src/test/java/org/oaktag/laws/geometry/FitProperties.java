package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Fit;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.testkit.curves.CubicShape;
import org.oaktag.testkit.curves.Curves;
import org.oaktag.testkit.curves.SmoothPaths;

/** Smooth runs through points, refits and blends. */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class FitProperties {
    private static final Pattern RANGE = Pattern.compile("is (\\S+) to (\\S+) mm long");

    @Provide
    Arbitrary<Cubic> general() {
        return Curves.of(CubicShape.GENERAL);
    }

    @Property
    void spline_passes_its_points_smoothly(
            @ForAll @Size(min = 2, max = 8) List<Point> points,
            @ForAll @DoubleRange(min = -3, max = 3) double start,
            @ForAll @DoubleRange(min = -3, max = 3) double end) {
        Assume.that(points.stream().distinct().count() == points.size());
        Path path = Fit.through(points, Vector.polar(1, start), Vector.polar(5, end));
        assertThat(path.start()).isEqualTo(points.get(0));
        assertThat(path.startDirection().angleTo(Vector.polar(1, start))).isCloseTo(0, within(1e-12));
        assertThat(path.endDirection().angleTo(Vector.polar(1, end))).isCloseTo(0, within(1e-12));
        for (int i = 1; i < points.size(); i++) {
            Curve curve = path.curves().get(i - 1);
            assertThat(curve.end()).isEqualTo(points.get(i));
            if (i < path.curves().size() && curve.derivativeAt(1).length() > 1e-3) {
                Vector leaving = path.curves().get(i).directionAt(0);
                assertThat(curve.directionAt(1).angleTo(leaving)).isCloseTo(0, within(1e-9));
            }
        }
    }

    @Property(tries = 200)
    void refit_stays_within_the_tolerance_and_never_has_more_curves(
            @ForAll("general") Cubic cubic,
            @ForAll @IntRange(min = 2, max = 12) int pieces,
            @ForAll @IntRange(min = 1, max = 5) int digits) {
        List<Curve> cut = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            cut.add(cubic.sub((double) i / pieces, (i + 1.0) / pieces));
        }
        Path path = Path.of(cut);
        double tolerance = Math.pow(10, -digits);
        Path refit = Fit.refit(path, tolerance);
        assertThat(refit.curves()).hasSizeLessThanOrEqualTo(pieces);
        assertThat(refit.start()).isEqualTo(path.start());
        assertThat(refit.end()).isEqualTo(path.end());
        for (int i = 0; i <= 200; i++) {
            assertThat(refit.nearest(cubic.pointAt(i / 200.0)).distance()).isLessThanOrEqualTo(1.1 * tolerance);
        }
    }

    @Provide
    Arbitrary<Path> smooth() {
        return SmoothPaths.all();
    }

    /** A thousandth of a radian is what parts a corner from a smooth join. */
    @Property(tries = 1200)
    void refit_of_a_smooth_path_keeps_its_end_directions_has_no_corner_and_lies_within_the_tolerance_both_ways(
            @ForAll("smooth") Path path, @ForAll @DoubleRange(min = -3, max = 0.3) double digits) {
        double tolerance = Math.pow(10, digits);
        Path refit = Fit.refit(path, tolerance);
        assertThat(refit.startDirection().angleTo(path.startDirection())).isCloseTo(0, within(1e-8));
        assertThat(refit.endDirection().angleTo(path.endDirection())).isCloseTo(0, within(1e-8));
        for (int i = 1; i < refit.curves().size(); i++) {
            Vector arriving = refit.curves().get(i - 1).directionAt(1);
            assertThat(arriving.angleTo(refit.curves().get(i).directionAt(0))).isCloseTo(0, within(1e-3));
        }
        for (int i = 0; i <= 150; i++) {
            Point old = path.pointAt(i / 150.0 * path.length());
            Point fitted = refit.pointAt(i / 150.0 * refit.length());
            assertThat(refit.nearest(old).distance()).isLessThanOrEqualTo(1.05 * tolerance);
            assertThat(path.nearest(fitted).distance()).isLessThanOrEqualTo(1.05 * tolerance);
        }
        Statistics.label("curves saved")
                .collect(refit.curves().size() < path.curves().size());
    }

    @Property
    void refit_of_any_path_keeps_its_ends(@ForAll Path path) {
        Path refit = Fit.refit(path, 0.1);
        assertThat(refit.start()).isEqualTo(path.start());
        assertThat(refit.end()).isEqualTo(path.end());
    }

    @Property
    void blend_takes_on_the_directions_of_both_paths(@ForAll("general") Cubic a, @ForAll("general") Cubic b) {
        Cubic blend = Fit.blend(Path.of(a), Path.of(b));
        assertThat(blend.start()).isEqualTo(a.end());
        assertThat(blend.end()).isEqualTo(b.start());
        assertThat(blend.directionAt(0).angleTo(a.directionAt(1))).isCloseTo(0, within(1e-9));
        assertThat(blend.directionAt(1).angleTo(b.directionAt(0))).isCloseTo(0, within(1e-9));
    }

    /** Between any two ends a length between the two that the refusal of another tells. */
    @Property(tries = 300)
    void cubic_of_a_length_has_it_and_its_ends_and_directions(
            @ForAll Point a,
            @ForAll Point b,
            @ForAll @DoubleRange(min = -3, max = 3) double leaving,
            @ForAll @DoubleRange(min = -3, max = 3) double arriving,
            @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Assume.that(a.distanceTo(b) > 1);
        Vector first = Vector.polar(1, leaving);
        Vector last = Vector.polar(1, arriving);
        String refused = catchThrowableOfType(IllegalArgumentException.class, () -> Fit.ofLength(a, first, b, last, 0))
                .getMessage();
        Matcher range = RANGE.matcher(refused);
        assertThat(range.find()).as(refused).isTrue();
        double least = Double.parseDouble(range.group(1));
        double most = Double.parseDouble(range.group(2));
        double length = least + share * (most - least);
        Cubic cubic = Fit.ofLength(a, first, b, last, length);
        assertThat(cubic.length(1e-9)).isCloseTo(length, within(2e-6));
        assertThat(cubic.start()).isEqualTo(a);
        assertThat(cubic.end()).isEqualTo(b);
        assertThat(cubic.directionAt(0).angleTo(first)).isCloseTo(0, within(1e-9));
        assertThat(cubic.directionAt(1).angleTo(last)).isCloseTo(0, within(1e-9));
        assertThat(Path.of(cubic).bounds().width()).isLessThanOrEqualTo(length + 1e-6);
    }
}

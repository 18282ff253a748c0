package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.testkit.curves.Curves;

@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class LengthProperties {
    private static final double[] ACCURACIES = {1, 1e-3, 1e-6, 1e-9};

    /** What rounding may add to an accuracy: coordinates of this size are no finer. */
    static double rounding(Curve curve) {
        Cubic cubic = Cubic.from(curve);
        double size = polygon(cubic)
                + Math.abs(cubic.start().x())
                + Math.abs(cubic.start().y());
        return 1e-14 * size;
    }

    static double polygon(Cubic cubic) {
        return cubic.start().distanceTo(cubic.control1())
                + cubic.control1().distanceTo(cubic.control2())
                + cubic.control2().distanceTo(cubic.end());
    }

    @Property
    void every_accuracy_is_kept(@ForAll Cubic cubic) {
        double exact = cubic.length(1e-13);
        for (double accuracy : ACCURACIES) {
            assertThat(cubic.length(accuracy)).isCloseTo(exact, within(accuracy + rounding(cubic)));
        }
    }

    @Property
    void length_lies_between_the_chord_and_the_control_polygon(@ForAll Cubic cubic) {
        assertThat(cubic.length())
                .isGreaterThanOrEqualTo(cubic.start().distanceTo(cubic.end()) - 1e-6 - rounding(cubic))
                .isLessThanOrEqualTo(polygon(cubic) + 1e-6 + rounding(cubic));
    }

    @Property
    void running_a_curve_backwards_keeps_its_length(@ForAll Curve curve) {
        assertThat(curve.reversed().length(1e-9)).isCloseTo(curve.length(1e-9), within(2e-9 + rounding(curve)));
    }

    @Property
    void parts_sum_to_the_whole(@ForAll Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double t) {
        double whole = curve.length(1e-9);
        double slack = 4e-9 + rounding(curve);
        assertThat(curve.lengthBetween(0, t, 1e-9) + curve.lengthBetween(t, 1, 1e-9))
                .isCloseTo(whole, within(slack));
        assertThat(curve.sub(0, t).length(1e-9) + curve.sub(t, 1).length(1e-9)).isCloseTo(whole, within(slack));
        assertThat(curve.sub(0, t).end()).isEqualTo(curve.sub(t, 1).start()).isEqualTo(curve.pointAt(t));
    }

    @Property
    void rigid_maps_keep_lengths(@ForAll Curve curve, @ForAll Transform rigid) {
        Curve image = curve.transformed(rigid);
        assertThat(image.length(1e-9)).isCloseTo(curve.length(1e-9), within(2e-9 + rounding(curve) + rounding(image)));
    }

    @Property
    void scaling_scales_lengths(@ForAll Curve curve, @ForAll @DoubleRange(min = 0.01, max = 100) double scale) {
        Curve image = curve.transformed(Transform.scale(scale));
        assertThat(image.length(1e-9))
                .isCloseTo(scale * curve.length(1e-9), within((1 + scale) * 1e-9 + rounding(image)));
    }

    @Property
    void length_of_the_parameter_at_a_distance_is_the_distance(
            @ForAll Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double length = curve.length(1e-12);
        for (double accuracy : ACCURACIES) {
            double distance = share * length;
            double t = curve.parameterAt(distance, accuracy);
            assertThat(t).isBetween(0.0, 1.0);
            assertThat(curve.lengthBetween(0, t, 1e-12)).isCloseTo(distance, within(accuracy + rounding(curve)));
        }
    }

    /** In millimetres: where a curve all but stands still many parameters are at one place. */
    @Property
    void parameter_at_the_length_to_a_place_leads_back_to_it(
            @ForAll Curve curve, @ForAll @DoubleRange(min = 0, max = 1) double t) {
        for (double accuracy : ACCURACIES) {
            double back = curve.parameterAt(curve.lengthBetween(0, t, 1e-12), accuracy);
            double off = curve.lengthBetween(Math.min(t, back), Math.max(t, back), 1e-12);
            assertThat(off).isLessThanOrEqualTo(accuracy + 2 * rounding(curve));
        }
    }

    @Property
    void parameters_rise_with_the_distance(@ForAll Cubic cubic, @ForAll double a, @ForAll double b) {
        double length = cubic.length(1e-12);
        double less = length * Math.min(share(a), share(b));
        double more = length * Math.max(share(a), share(b));
        double gap = cubic.lengthBetween(0, cubic.parameterAt(more), 1e-9)
                - cubic.lengthBetween(0, cubic.parameterAt(less), 1e-9);
        assertThat(gap).isGreaterThanOrEqualTo(-2e-6 - rounding(cubic));
    }

    private static double share(double any) {
        double part = Math.abs(any) % 1;
        return Double.isFinite(part) ? part : 0;
    }

    @Property
    void path_is_as_long_as_its_curves(@ForAll Path path) {
        double sum = path.curves().stream().mapToDouble(c -> c.length(1e-9)).sum();
        double slack =
                path.curves().stream().mapToDouble(LengthProperties::rounding).sum();
        assertThat(path.length()).isCloseTo(sum, within(1e-6 + slack));
        assertThat(path.length(1e-9)).isCloseTo(sum, within(1e-8 + slack));
        assertThat(path.reversed().length()).isCloseTo(path.length(), within(2e-6 + slack));
    }

    @Property
    void path_cut_anywhere_sums_to_the_whole(
            @ForAll Path path, @ForAll @DoubleRange(min = 0.001, max = 0.999) double share) {
        double slack = 4e-6
                + 2
                        * path.curves().stream()
                                .mapToDouble(LengthProperties::rounding)
                                .sum();
        double distance = share * path.length();
        Assume.that(path.length() * Math.min(share, 1 - share) > 1e-5);
        Path.Split split = path.splitAt(distance);
        assertThat(split.before().end()).isEqualTo(split.after().start());
        assertThat(split.before().start()).isEqualTo(path.start());
        assertThat(split.after().end()).isEqualTo(path.end());
        assertThat(split.before().length()).isCloseTo(distance, within(slack));
        assertThat(split.before().length() + split.after().length()).isCloseTo(path.length(), within(slack));
    }

    @Property
    void place_at_a_distance_is_found_again(@ForAll Path path, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double distance = share * path.length();
        double slack = 2e-6
                + path.curves().stream().mapToDouble(LengthProperties::rounding).sum();
        assertThat(path.distanceAt(path.locate(distance))).isCloseTo(distance, within(slack));
        Point point = path.pointAt(distance);
        assertThat(path.nearest(point).distance()).isLessThanOrEqualTo(slack);
    }
}

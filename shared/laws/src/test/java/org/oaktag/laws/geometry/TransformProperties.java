package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.testkit.curves.Curves;

/**
 * Mirrors: in the upright line through the origin, which only flips the sign of every x, to the last bit; in any line,
 * to the accuracy and the rounding of the controls.
 */
@Domain(Curves.class)
@Domain(DomainContext.Global.class)
class TransformProperties {
    private static final Transform FLIP = Transform.mirrorX(0);

    @Property
    void flipped_curve_is_as_long_to_the_last_bit(
            @ForAll Curve curve,
            @ForAll @DoubleRange(min = 0, max = 1) double a,
            @ForAll @DoubleRange(min = 0, max = 1) double b) {
        Curve image = curve.transformed(FLIP);
        double from = Math.min(a, b);
        double to = Math.max(a, b);
        for (double accuracy : new double[] {1, 1e-3, 1e-6, 1e-9}) {
            assertThat(image.length(accuracy)).isEqualTo(curve.length(accuracy));
            assertThat(image.lengthBetween(from, to, accuracy)).isEqualTo(curve.lengthBetween(from, to, accuracy));
            double distance = a * curve.length(accuracy);
            assertThat(image.parameterAt(distance, accuracy)).isEqualTo(curve.parameterAt(distance, accuracy));
        }
    }

    @Property
    void flipping_negates_areas_and_turns_to_the_last_bit(@ForAll Curve curve, @ForAll Outline outline) {
        assertThat(curve.transformed(FLIP).sweep()).isEqualTo(-curve.sweep());
        assertThat(curve.transformed(FLIP).turning()).isEqualTo(-curve.turning());
        assertThat(outline.transformed(FLIP).signedArea()).isEqualTo(-outline.signedArea());
        assertThat(outline.transformed(FLIP).area()).isEqualTo(outline.area());
    }

    @Property
    void flipped_path_tells_the_flipped_place_at_every_distance(
            @ForAll Path path, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Path image = path.transformed(FLIP);
        double distance = share * path.length();
        assertThat(image.length()).isEqualTo(path.length());
        assertThat(image.locate(distance)).isEqualTo(path.locate(distance));
        assertThat(image.pointAt(distance)).isEqualTo(path.pointAt(distance).transformed(FLIP));
    }

    @Property
    void flipping_twice_is_doing_nothing(@ForAll Path path) {
        assertThat(path.transformed(FLIP).transformed(FLIP)).isEqualTo(path);
    }

    @Property
    void any_mirror_keeps_the_length_of_a_curve(@ForAll Curve curve, @ForAll Point a, @ForAll Point b) {
        Assume.that(!a.equals(b));
        Curve image = curve.transformed(Transform.mirror(a, b));
        double slack = LengthProperties.rounding(curve) + LengthProperties.rounding(image);
        for (double accuracy : new double[] {1, 1e-3, 1e-6, 1e-9}) {
            assertThat(image.length(accuracy)).isCloseTo(curve.length(accuracy), within(2 * accuracy + slack));
        }
    }

    @Property
    void any_mirror_keeps_the_length_of_a_path(@ForAll Path path, @ForAll Point a, @ForAll Point b) {
        Assume.that(!a.equals(b));
        Path image = path.transformed(Transform.mirror(a, b));
        double slack = rounding(path) + rounding(image);
        assertThat(image.length()).isCloseTo(path.length(), within(2e-6 + slack));
        assertThat(image.length(1e-9)).isCloseTo(path.length(1e-9), within(2e-9 + slack));
    }

    @Property
    void any_mirror_negates_the_area_of_an_outline(@ForAll Outline outline, @ForAll Point a, @ForAll Point b) {
        Assume.that(!a.equals(b));
        Outline image = outline.transformed(Transform.mirror(a, b));
        assertThat(image.signedArea()).isCloseTo(-outline.signedArea(), within(1e-11 * outline.area()));
        assertThat(image.isClockwise()).isNotEqualTo(outline.isClockwise());
        assertThat(image.perimeter()).isCloseTo(outline.perimeter(), within(2e-6));
    }

    private static double rounding(Path path) {
        return path.curves().stream().mapToDouble(LengthProperties::rounding).sum();
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A handle no longer than the tolerance, whichever way it points, is no reason to refuse a cut line. */
class HookedOutlineTest {
    private static final double TOLERANCE = 0.01;
    private static final double DISTANCE = 30;

    /** A lens 120 mm wide, the first handle of its upper edge a hook. */
    private static Outline lens(double hook, double angle) {
        Point left = Point.of(0, 0);
        Point right = Point.of(120, 0);
        Cubic upper = new Cubic(left, left.plus(Vector.polar(hook, angle)), Point.of(70, -60), right);
        Cubic lower = new Cubic(right, Point.of(90, 50), Point.of(30, 50), left);
        return Outline.of(Path.of(upper, lower));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-5, 2e-4, 1e-3, 3e-3, 9e-3})
    void an_outline_with_a_hook_has_a_parallel_that_keeps_its_distance(double hook) {
        for (double angle = 0; angle < 6.2; angle += 0.31) {
            Outline outline = lens(hook, angle);
            for (double distance : new double[] {DISTANCE, -5}) {
                OffsetLoops offset = OffsetLoops.outward(outline, distance, CornerStyle.round(), TOLERANCE);
                assertThat(offset.loops()).as("%s at %s", hook, angle).hasSize(1);
                assertThat(offset.lost()).isEmpty();
                for (Curve curve : offset.loops().get(0).outline().path().curves()) {
                    for (int i = 0; i <= 20; i++) {
                        double kept =
                                outline.path().nearest(curve.pointAt(i / 20.0)).distance();
                        assertThat(kept)
                                .as("%s at %s", hook, angle)
                                .isBetween(Math.abs(distance) - TOLERANCE, Math.abs(distance) + TOLERANCE);
                    }
                }
            }
        }
    }

    /**
     * A hook five times the tolerance at the top of an egg: of two ways past it one comes too near by half as much as
     * the tolerance allows, and only at its end.
     */
    @Test
    void the_right_way_past_a_hook_is_found() {
        Point top = Point.of(0, 150.02801647429874);
        Point tip = Point.of(-0.023613032359394787, 150.07173498065563);
        Point left = Point.of(-143.6571813863441, 0);
        Point bottom = Point.of(0, -121.42164020348913);
        Point right = Point.of(53.33776166041781, 0);
        Outline egg = Outline.of(Path.of(
                new Cubic(
                        right,
                        Point.of(53.33776166041782, 42.6691175662768),
                        Point.of(30.96559593295703, 150.02801647429874),
                        top),
                new Line(top, tip),
                new Cubic(
                        tip,
                        Point.of(-30.98920896531641, 150.07173498065563),
                        Point.of(-143.6571813863441, 42.66911756627682),
                        left),
                new Cubic(
                        left,
                        Point.of(-143.6571813863441, -42.66911756627679),
                        Point.of(-30.96559593295704, -121.42164020348913),
                        bottom),
                new Cubic(
                        bottom,
                        Point.of(30.965595932956997, -121.42164020348913),
                        Point.of(53.337761660417804, -42.6691175662768),
                        right)));
        for (double distance = -16; distance < -13; distance += 0.021) {
            OutlineOffset inner = OutlineOffset.outward(egg, distance, CornerStyle.round(), TOLERANCE);
            for (Curve curve : inner.outline().path().curves()) {
                for (int i = 0; i < 10; i++) {
                    assertThat(egg.path().nearest(curve.pointAt(i / 10.0)).distance())
                            .as("at %s", distance)
                            .isBetween(-distance - 1.3 * TOLERANCE, -distance + TOLERANCE);
                }
            }
        }
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

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
}

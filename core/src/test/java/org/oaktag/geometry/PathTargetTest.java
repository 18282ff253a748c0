package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PathTargetTest {
    private static final Cubic BEND = CubicTest.cubic(0, 0, 20, 0, 40, 10, 60, 40);
    private static final Line STRAIGHT = new Line(Point.of(60, 40), Point.of(90, 85));
    private static final PathTarget TARGET = new PathTarget(Path.of(BEND, STRAIGHT));

    @Test
    void frame_is_evenly_spaced_in_the_parameter_of_each_curve() {
        double bend = BEND.length();
        double straight = STRAIGHT.length();
        assertFrame(0, BEND, 0);
        assertFrame(0.25 * bend, BEND, 0.25);
        assertFrame(bend, BEND, 1);
        assertFrame(bend + 0.75 * straight, STRAIGHT, 0.75);
        assertFrame(bend + straight, STRAIGHT, 1);
        // Rounding may ask for a place a hair beyond an end.
        assertFrame(-1e-9, BEND, 0);
        assertFrame(bend + straight + 1e-9, STRAIGHT, 1);
    }

    private static void assertFrame(double s, Curve curve, double t) {
        double[] frame = new double[4];
        TARGET.frameAt(s, frame);
        assertThat(Point.of(frame[0], frame[1]).distanceTo(curve.pointAt(t))).isLessThan(1e-7);
        assertThat(Vector.of(frame[2], frame[3]).minus(curve.directionAt(t)).length())
                .isLessThan(1e-7);
    }

    @Test
    void speed_is_how_fast_the_frame_moves() {
        for (double s : new double[] {1, 20, 60, 80, 100, 120}) {
            double h = 1e-4;
            double[] before = new double[4];
            double[] after = new double[4];
            TARGET.frameAt(s - h, before);
            TARGET.frameAt(s + h, after);
            double moved = Math.hypot(after[0] - before[0], after[1] - before[1]);
            assertThat(TARGET.speedAt(s)).as("at %s", s).isCloseTo(moved / (2 * h), within(1e-6));
        }
    }
}

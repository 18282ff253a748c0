package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ArcsTest {
    private static final Point CENTER = Point.of(10, 20);

    @Test
    void arc_stays_as_near_to_the_circle_as_the_tolerance() {
        for (double tolerance : new double[] {0.1, 1e-2, 1e-4, 1e-6}) {
            for (double angle : new double[] {0.3, Math.PI / 2, -2, 3, -6}) {
                Point from = CENTER.plus(Vector.polar(50, 0.4));
                Point to = CENTER.plus(Vector.polar(50, 0.4 + angle));
                List<Curve> arc = Arcs.of(CENTER, from, to, angle, tolerance);
                Path path = Path.of(arc);
                assertThat(path.start()).isEqualTo(from);
                assertThat(path.end()).isEqualTo(to);
                assertThat(path.turning()).isCloseTo(angle, within(1e-9));
                assertThat(path.length()).isCloseTo(50 * Math.abs(angle), within(20 * tolerance));
                for (Curve curve : arc) {
                    for (double t = 0; t <= 1; t += 0.05) {
                        assertThat(curve.pointAt(t).distanceTo(CENTER)).isCloseTo(50, within(tolerance));
                    }
                }
            }
        }
    }

    @Test
    void arc_takes_no_more_cubics_than_it_needs() {
        Point from = CENTER.plus(Vector.of(50, 0));
        Point quarter = CENTER.plus(Vector.of(0, 50));
        assertThat(Arcs.of(CENTER, from, quarter, Math.PI / 2, 0.02)).hasSize(1);
        assertThat(Arcs.of(CENTER, from, quarter, Math.PI / 2, 0.01)).hasSize(2);
        assertThat(Arcs.of(CENTER, from, from.plus(Vector.of(-100, 0)), Math.PI, 100))
                .hasSize(2);
        assertThat(Arcs.of(CENTER, from, from, 2 * Math.PI, 0.02)).hasSize(4);
    }
}

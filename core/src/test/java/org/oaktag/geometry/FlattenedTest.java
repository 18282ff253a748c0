package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class FlattenedTest {
    private final SplittableRandom random = new SplittableRandom(4);

    private Point point() {
        return Point.of(random.nextDouble(300), random.nextDouble(300));
    }

    @Test
    void chords_keep_within_the_error_both_ways_and_corners_tell_their_place() {
        for (int i = 0; i < 60; i++) {
            Path path = Path.from(point())
                    .curveTo(point(), point(), point())
                    .lineTo(point())
                    .curveTo(point(), point(), point())
                    .build();
            double error = Math.pow(10, -random.nextDouble(-1, 3));
            Flattened chords = Flattened.of(path, error);
            for (Flattened.Corner corner : chords.corners()) {
                Curve curve = path.curves().get(corner.at().curve());
                assertThat(curve.pointAt(corner.at().t())).isEqualTo(corner.point());
            }
            assertThat(chords.path().start()).isEqualTo(path.start());
            assertThat(chords.path().end()).isEqualTo(path.end());
            for (double share = 0; share <= 1; share += 0.003) {
                Point there = path.pointAt(share * path.length());
                Point here = chords.path().pointAt(share * chords.path().length());
                assertThat(chords.path().nearest(there).distance()).isLessThanOrEqualTo(error + 1e-9);
                assertThat(path.nearest(here).distance()).isLessThanOrEqualTo(error + 1e-9);
            }
        }
    }

    /**
     * A quarter of a circle of 100 mm in n chords is off by 100 (1 - cos(pi / 4n)): six for a third of a millimetre.
     */
    @Test
    void takes_at_most_twice_the_chords_that_a_circle_needs() {
        Path quarter = Arcs.circular(Point.ORIGIN, Point.of(100, 0), Math.PI / 2, 1);
        assertThat(Flattened.of(quarter, 0.35).corners()).hasSizeBetween(7, 13);
        assertThat(Flattened.of(Path.polyline(Point.of(0, 0), Point.of(9, 9)), 1e-18)
                        .corners())
                .hasSize(2);
    }

    @Test
    void more_than_a_million_chords_are_refused_with_the_error_that_works() {
        Path quarter = Arcs.circular(Point.ORIGIN, Point.of(100, 0), Math.PI / 2, 1);
        assertThatThrownBy(() -> Flattened.of(quarter, Double.MIN_VALUE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be at least");
    }
}

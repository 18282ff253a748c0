package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class OffsetSourceTest {
    private static final double TOLERANCE = 0.01;

    private static Path line(double x0, double y0, double x1, double y1) {
        return Path.polyline(Point.of(x0, y0), Point.of(x1, y1));
    }

    @Test
    void edges_without_dust_are_left_as_they_are() {
        List<Path> edges = List.of(
                line(0, 0, 100, 0), Path.of(CubicTest.cubic(100, 0, 120, 30, 120, 60, 100, 100)), line(100, 100, 0, 0));
        OffsetSource source = OffsetSource.of(edges, true, TOLERANCE);
        assertThat(source.index()).containsExactly(0, 1, 2);
        for (int i = 0; i < edges.size(); i++) {
            assertThat(source.edges().get(i)).isSameAs(edges.get(i));
        }
    }

    @Test
    void what_follows_dust_joins_on_and_the_outline_stays_closed() {
        double dust = 5e-5;
        for (int first = 0; first < 4; first++) {
            List<Path> edges = new ArrayList<>(List.of(
                    line(0, 0, 100, 0),
                    line(100, 0, 100 + dust, 0),
                    line(100 + dust, 0, 100, 100),
                    Path.polyline(Point.of(100, 100), Point.of(dust, 0), Point.of(0, 0))));
            Collections.rotate(edges, first);
            OffsetSource source = OffsetSource.of(edges, true, TOLERANCE);
            assertThat(source.edges()).hasSize(3);
            assertThat(source.index()).doesNotContain((1 + first) % 4);
            Path round = OffsetSense.joined(source.edges());
            assertThat(round.isClosed()).isTrue();
            assertThat(round.curves()).hasSize(3);
            for (Path edge : edges) {
                assertThat(round.nearest(edge.end()).distance()).isLessThanOrEqualTo(1.001 * dust);
            }
        }
    }

    /** A shape drawn in steps each of which is dust is not: what adds up to more than dust is kept. */
    @Test
    void dust_that_adds_up_is_no_dust() {
        List<Curve> steps = new ArrayList<>();
        double step = 3e-5;
        Point pen = Point.of(100, 0);
        steps.add(new Line(Point.of(0, 0), pen));
        for (int i = 0; i < 1000; i++) {
            Point next = Point.of(100, (i + 1) * step);
            steps.add(new Line(pen, next));
            pen = next;
        }
        Path cleaned = OffsetSource.of(List.of(Path.of(steps)), false, TOLERANCE)
                .edges()
                .get(0);
        assertThat(cleaned.end().distanceTo(pen)).isLessThan(1.1e-4);
        assertThat(cleaned.curves().size()).isBetween(250, 600);
    }
}

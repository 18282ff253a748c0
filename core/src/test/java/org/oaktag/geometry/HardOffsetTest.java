package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;

/**
 * Offsets that have to be trimmed hard: edges that bend in more sharply than their distance, loops, slivers and several
 * runs.
 */
class HardOffsetTest {
    private static final double TOLERANCE = 0.01;

    private static Path line(double x0, double y0, double x1, double y1) {
        return Path.polyline(Point.of(x0, y0), Point.of(x1, y1));
    }

    /**
     * The result is one run without crossings round the source, and every point of it that lies square off an edge on
     * its outer side keeps that edge's distance.
     */
    private static void assertKeepsDistances(List<Path> edges, double... distances) {
        OutlineOffset offset = OutlineOffset.outward(edges, distances, CornerStyle.round(), TOLERANCE);
        assertThat(offset.outline().selfCrossings()).isEmpty();
        Outline source = Outline.of(
                Path.of(edges.stream().flatMap(edge -> edge.curves().stream()).toList()));
        double out = (source.isClockwise() ? -1 : 1) * (distances[1] < 0 ? -1 : 1);
        for (OffsetPart part : offset.parts()) {
            if (distances[part.edge()] == 0) {
                continue;
            }
            for (double share = 0.05; share < 1; share += 0.1) {
                Point on = part.path().pointAt(share * part.path().length());
                for (int i = 0; i < edges.size(); i++) {
                    Path edge = edges.get(i);
                    double along = edge.nearest(on).distance();
                    Nearest nearest = edge.curves().get(0).nearest(on);
                    boolean squareOff = nearest.t() > 0.01 && nearest.t() < 0.99;
                    double side = edge.curves().get(0).directionAt(nearest.t()).cross(on.minus(nearest.point())) * out;
                    if (squareOff && side > 0) {
                        assertThat(along)
                                .as("%s beside edge %s", on, i)
                                .isGreaterThan(Math.abs(distances[i]) - 3 * TOLERANCE);
                    }
                }
            }
        }
    }

    /**
     * The curved edge bends in beside a corner with a radius far below its distance, so its parallel alone does not go
     * round.
     */
    @Test
    void an_edge_that_bends_in_sharply_beside_a_corner_is_gone_round() {
        assertKeepsDistances(
                List.of(
                        line(55, 4, -41, 58),
                        line(-41, 58, -4, -65),
                        Path.of(CubicTest.cubic(-4, -65, 48.2, -73.8, 36.3, -3.9, 55, 4))),
                3.1,
                1.1,
                21.9);
        assertKeepsDistances(
                List.of(
                        line(56, 50, -73, 30),
                        Path.of(CubicTest.cubic(-73, 30, -60.6, -44.7, 5.3, -24.4, 15, -49)),
                        line(15, -49, 56, 50)),
                28.7,
                17.1,
                4.1);
        assertKeepsDistances(
                List.of(
                        line(57, 38, -20, 53),
                        Path.of(CubicTest.cubic(-20, 53, -41, 62.6, -31.6, -9.4, -52, -17)),
                        line(-52, -17, 31, -45),
                        line(31, -45, 57, 38)),
                -4.0 / 3,
                -24.4 / 3,
                -5.3 / 3,
                -0.7);
    }

    /**
     * A corner at which two parallels all but touch cuts off a fragment of a few hundredths, which must not lead the
     * run astray.
     */
    @Test
    void a_fragment_hardly_longer_than_the_tolerance_does_not_lead_astray() {
        assertKeepsDistances(
                List.of(
                        Path.of(CubicTest.cubic(42, 22, 32.5, 18, 7.5, 45.5, 7, 52)),
                        line(7, 52, -53, 12),
                        Path.of(CubicTest.cubic(-53, 12, -58.6, -5.6, -8.6, -31.2, -23, -46)),
                        line(-23, -46, 28, -65),
                        line(28, -65, 42, 22)),
                6,
                2.6,
                4.9,
                7,
                3.1);
    }

    /**
     * A dent whose walls are on the fold or nearly so, between edges with great distances, leaves a run within the dent
     * as well.
     */
    @Test
    void of_several_outward_runs_the_outermost_is_left() {
        List<Path> edges = List.of(
                Path.of(CubicTest.cubic(11, 16, 8.2, 13.4, -1, 17, -5, 22)),
                line(-5, 22, -20, 6),
                line(-20, 6, -25, -61),
                line(-25, -61, 19, -14),
                line(19, -14, 11, 16));
        double[] distances = {28.3, 4.2, 0, 2.2, 21.1};
        OutlineOffset offset = OutlineOffset.outward(edges, distances, CornerStyle.mitre(2), TOLERANCE);
        assertThat(offset.outline().selfCrossings()).isEmpty();
        for (Path edge : edges) {
            Point middle = edge.pointAt(edge.length() / 2);
            assertThat(offset.outline().contains(middle)
                            || offset.outline().path().nearest(middle).distance() < 1e-6)
                    .isTrue();
        }
        assertThat(offset.parts()).extracting(OffsetPart::edge).contains(0, 1, 2, 3, 4);
    }

    /**
     * 100 by 20: by 9.98 inwards a sliver of 80.04 by 0.04 is left, by 9.995 one thinner than the tolerance, which is
     * none.
     */
    @Test
    void a_sliver_thinner_than_the_tolerance_is_nothing() {
        List<Path> edges = List.of(line(0, 0, 100, 0), line(100, 0, 100, 20), line(100, 20, 0, 20), line(0, 20, 0, 0));
        double[] just = {-9.98, -9.98, -9.98, -9.98};
        assertThat(OutlineOffset.outward(edges, just, CornerStyle.mitre(2), TOLERANCE)
                        .outline()
                        .area())
                .isCloseTo(80.04 * 0.04, within(1e-6));
        double[] beyond = {-9.995, -9.995, -9.995, -9.995};
        assertThatThrownBy(() -> OutlineOffset.outward(edges, beyond, CornerStyle.mitre(2), TOLERANCE))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("leaves 0 pieces");
    }

    /** One curve from a point to itself, left where it is: a fragment may end where it starts. */
    @Test
    void an_outline_of_one_curve_stays_where_it_is_at_distance_zero() {
        Outline drop = Outline.of(Path.of(CubicTest.cubic(0, 0, 100, 100, -100, 100, 0, 0)));
        OutlineOffset still = OutlineOffset.outward(drop, 0, CornerStyle.round(), TOLERANCE);
        assertThat(still.outline().area()).isCloseTo(drop.area(), within(1e-6));
        assertThat(still.parts()).hasSize(1);
        OutlineOffset grown = OutlineOffset.outward(drop, 2, CornerStyle.round(), TOLERANCE);
        // Steiner's formula for a convex curve: A + L d + pi d².
        assertThat(grown.outline().area())
                .isCloseTo(drop.area() + 2 * drop.perimeter() + 4 * Math.PI, within(0.01 * drop.perimeter()));
    }

    /**
     * x = 6t - 15t² + 10t³ and y = 3t(1 - t), in sizes of 100: it crosses itself at t = 1/2 -+ sqrt 0.15. An open run
     * leaves out the loop between, even where that is the longer part.
     */
    @Test
    void an_open_run_leaves_out_its_loop() {
        Cubic loop = CubicTest.cubic(0, 0, 200, 100, -100, 100, 100, 0);
        double crossing = 0.5 - Math.sqrt(0.15);
        double arm = loop.lengthBetween(0, crossing, 1e-9);
        assertThat(loop.length()).isGreaterThan(4 * arm);
        for (Path path : List.of(Path.of(loop), Path.of(loop.reversed()))) {
            Path without = OffsetPath.of(path, 0, CornerStyle.round(), TOLERANCE);
            assertThat(without.start()).isEqualTo(path.start());
            assertThat(without.end()).isEqualTo(path.end());
            assertThat(without.length()).isCloseTo(2 * arm, within(1e-5));
            assertThat(without.nearest(loop.pointAt(crossing)).distance()).isLessThan(1e-6);
        }
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;

/**
 * With round corners an outline moved outwards by d bounds all points no farther from the outline than d, and moved
 * inwards all points inside no nearer to it: on a grid, by distances to straight segments.
 */
class OffsetRegionTest {
    private static final double TOLERANCE = 0.01;

    private static final double[] ELL = {0, 0, 100, 0, 100, 50, 50, 50, 50, 100, 0, 100};

    /** Three fingers of 20 with gaps of 20. */
    private static final double[] COMB = {
        0, 0, 20, 0, 20, 60, 40, 60, 40, 0, 60, 0, 60, 60, 80, 60, 80, 0, 100, 0, 100, 90, 0, 90
    };

    /** A C whose mouth is 8 wide and its inside 60 by 60. */
    private static final double[] MOUTH = {
        0, 0, 100, 0, 100, 46, 80, 46, 80, 20, 20, 20, 20, 80, 80, 80, 80, 54, 100, 54, 100, 100, 0, 100
    };

    private static final double[] STAR = {50, 0, 60, 35, 98, 35, 68, 57, 79, 95, 50, 72, 21, 95, 32, 57, 2, 35, 40, 35};

    /** A dent whose sides stand 4 apart at its mouth. */
    private static final double[] DENT = {0, 0, 48, 0, 40, 40, 60, 40, 52, 0, 100, 0, 100, 80, 0, 80};

    private static List<Path> edges(double[] c, int first, boolean clockwise) {
        int n = c.length / 2;
        List<Path> edges = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            int i = (first + k) % n;
            int j = (i + 1) % n;
            edges.add(Path.polyline(Point.of(c[2 * i], c[2 * i + 1]), Point.of(c[2 * j], c[2 * j + 1])));
        }
        if (!clockwise) {
            edges.replaceAll(Path::reversed);
            Collections.reverse(edges);
        }
        return edges;
    }

    private static double[] all(int n, double distance) {
        double[] distances = new double[n];
        java.util.Arrays.fill(distances, distance);
        return distances;
    }

    @Test
    void outwards_it_bounds_all_that_is_near_the_outline() {
        for (double[] shape : List.of(ELL, COMB, MOUTH, STAR, DENT)) {
            for (double distance : new double[] {1, 3, 7, 12, 25}) {
                assertRegion(shape, distance);
            }
        }
    }

    @Test
    void inwards_it_bounds_all_that_is_far_enough_inside() {
        for (double distance : new double[] {1, 3, 9}) {
            assertRegion(ELL, -distance);
            assertRegion(MOUTH, -distance);
            assertRegion(COMB, -distance);
        }
        assertRegion(ELL, -24);
        assertRegion(STAR, -10);
        assertRegion(DENT, -8);
        // The fingers are gone, and what is left is the bar across.
        assertRegion(COMB, -11);
    }

    private static void assertRegion(double[] shape, double distance) {
        int n = shape.length / 2;
        for (int first = 0; first < n; first += 3) {
            for (boolean clockwise : new boolean[] {true, false}) {
                OutlineOffset offset = OutlineOffset.outward(
                        edges(shape, first, clockwise), all(n, distance), CornerStyle.round(), TOLERANCE);
                assertThat(offset.outline().isClockwise()).isEqualTo(clockwise);
                assertThat(offset.outline().selfCrossings()).isEmpty();
                for (double x = -30.3; x < 135; x += 6.07) {
                    for (double y = -30.7; y < 135; y += 6.11) {
                        double signed = (isInside(shape, x, y) ? -1 : 1) * toOutline(shape, x, y);
                        if (Math.abs(signed - distance) > 2 * TOLERANCE && !isShutIn(shape, x, y, distance)) {
                            assertThat(offset.outline().contains(Point.of(x, y)))
                                    .as("%s, %s of %s by %s from %s", x, y, n, distance, first)
                                    .isEqualTo(signed < distance);
                        }
                    }
                }
            }
        }
    }

    /** What lies in the inside of the C stays a hole when its mouth is shut, and the outermost run goes round it. */
    private static boolean isShutIn(double[] shape, double x, double y, double distance) {
        boolean mouth = shape == MOUTH && distance > 4 && x > 20 && x < 80 && y > 20 && y < 80;
        return mouth || (shape == DENT && distance > 2 && x > 38 && x < 62 && y > 0 && y < 40);
    }

    private static double toOutline(double[] c, double x, double y) {
        double nearest = Double.POSITIVE_INFINITY;
        int n = c.length / 2;
        for (int i = 0; i < n; i++) {
            double dx = c[2 * ((i + 1) % n)] - c[2 * i];
            double dy = c[2 * ((i + 1) % n) + 1] - c[2 * i + 1];
            double share = ((x - c[2 * i]) * dx + (y - c[2 * i + 1]) * dy) / (dx * dx + dy * dy);
            double t = Math.min(Math.max(share, 0), 1);
            nearest = Math.min(nearest, Math.hypot(x - c[2 * i] - t * dx, y - c[2 * i + 1] - t * dy));
        }
        return nearest;
    }

    private static boolean isInside(double[] c, double x, double y) {
        boolean inside = false;
        int n = c.length / 2;
        for (int i = 0; i < n; i++) {
            double ay = c[2 * i + 1];
            double by = c[2 * ((i + 1) % n) + 1];
            if (ay > y != by > y && x < c[2 * i] + (y - ay) / (by - ay) * (c[2 * ((i + 1) % n)] - c[2 * i])) {
                inside = !inside;
            }
        }
        return inside;
    }

    /** A mouth of 8 shuts at a distance of 4: one run all the same, and no way in. */
    @Test
    void a_mouth_that_is_shut_leaves_the_outermost_run() {
        OutlineOffset open = OutlineOffset.outward(edges(MOUTH, 0, true), all(12, 3), CornerStyle.mitre(2), TOLERANCE);
        assertThat(open.outline().area()).isCloseTo(106.0 * 106 - 54 * 54 - 2 * 26, within(1e-6));
        OutlineOffset shut = OutlineOffset.outward(edges(MOUTH, 0, true), all(12, 5), CornerStyle.mitre(2), TOLERANCE);
        assertThat(shut.outline().area()).isCloseTo(110.0 * 110, within(1e-6));
    }

    /** Four fingers of 10 on a bar of 30: at 4.9 they are there, at 5.1 they have gone, at 15 the bar has. */
    @Test
    void an_inward_offset_that_falls_apart_says_how_far_it_holds() {
        double[] dumbbell = {
            0, 0, 60, 0, 60, 26, 100, 26, 100, 0, 160, 0, 160, 60, 100, 60, 100, 34, 60, 34, 60, 60, 0, 60
        };
        for (double size : new double[] {1, 20}) {
            double[] scaled = dumbbell.clone();
            for (int i = 0; i < scaled.length; i++) {
                scaled[i] *= size;
            }
            for (boolean clockwise : new boolean[] {true, false}) {
                List<Path> edges = edges(scaled, 0, clockwise);
                double most = Math.floor((4 * size - TOLERANCE) * 10) / 10;
                assertThatThrownBy(
                                () -> OutlineOffset.outward(edges, all(12, -6 * size), CornerStyle.mitre(2), TOLERANCE))
                        .isInstanceOf(PatternException.class)
                        .hasMessage("inward offset: must leave the outline in one piece; got " + 6 * size
                                + " mm, which leaves 2 pieces; use at most " + most + " mm");
                assertThat(OutlineOffset.outward(edges, all(12, -most), CornerStyle.mitre(2), TOLERANCE)
                                .outline()
                                .area())
                        .isCloseTo(
                                2 * Math.pow(60 * size - 2 * most, 2) + (40 * size + 2 * most) * (8 * size - 2 * most),
                                within(1e-6));
                assertThatThrownBy(() ->
                                OutlineOffset.outward(edges, all(12, -31 * size), CornerStyle.mitre(2), TOLERANCE))
                        .isInstanceOf(PatternException.class)
                        .hasMessageContaining(
                                "must leave some of the outline; got " + 31 * size + " mm, which leaves 0 pieces")
                        .hasMessageContaining("use at most ");
            }
        }
    }
}

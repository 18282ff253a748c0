package org.oaktag.laws.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.laws.geometry.HardOffsetsTest.cases;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.PatternException;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OffsetPart;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.PathNearest;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.curves.HardDrawings;

/** Outlines by a random hand, with a distance of its own for every edge, some of them none. */
class UnequalOffsetsTest {
    private static final double TOLERANCE = 0.01;
    private static final int PLACES = 16;

    private static final CornerStyle[] STYLES = {CornerStyle.round(), CornerStyle.mitre(3), CornerStyle.square()};

    @Test
    void every_edge_keeps_its_own_distance() {
        cases(UnequalOffsetsTest::assertKeepsDistances);
    }

    /**
     * A step, and the prolongation of an edge that stays, that pass an edge which bends in: no parallel crosses them
     * there.
     */
    @ParameterizedTest
    @ValueSource(longs = {1006, 8098, 15001, 17808})
    void where_an_edge_bends_in_beside_a_corner_as_well(long seed) {
        assertKeepsDistances(seed);
    }

    private static void assertKeepsDistances(long seed) {
        HardDrawings hand = HardDrawings.of(seed);
        Outline outline = hand.starOutline();
        List<Path> edges = outline.path().curves().stream().map(Path::of).toList();
        boolean inward = hand.between(-1, 1) < 0;
        double[] distances = new double[edges.size()];
        for (int i = 0; i < distances.length; i++) {
            double distance = hand.between(0, 30);
            double share = hand.between(0, 1) < 0.15 ? 0 : 1;
            distances[i] = share * distance * (inward ? -0.5 : 1);
        }
        CornerStyle style = STYLES[(int) hand.between(0, STYLES.length - 1e-3)];
        try {
            OutlineOffset offset = OutlineOffset.outward(edges, distances, style, TOLERANCE);
            assertThat(offset.outline().meetsItself()).as("seed %s", seed).isFalse();
            double out = (outline.isClockwise() ? -1 : 1) * (inward ? -1 : 1);
            offset.parts().forEach(part -> assertKeeps(seed, part, edges, distances, out));
        } catch (PatternException refused) {
            // Few are, and then less works.
            assertThat(refused.remedy()).as("seed %s", seed).matches("use at most [0-9.]+ mm");
        }
    }

    private static void assertKeeps(long seed, OffsetPart part, List<Path> edges, double[] distances, double out) {
        int count = distances.length;
        for (int i = 0; i < count; i++) {
            int apart = Math.floorMod(i - part.edge(), count);
            if (distances[part.edge()] == 0 && (apart == 1 || apart == count - 1)) {
                // The neighbours of an edge at no distance end on its prolongation.
                continue;
            }
            for (Curve curve : part.path().curves()) {
                for (int k = 0; k <= PLACES; k++) {
                    Point point = curve.pointAt((double) k / PLACES);
                    double least = required(edges, distances, i, point, out) - 1.3 * TOLERANCE;
                    assertThat(edges.get(i).nearest(point).distance())
                            .as("seed %s, edge %s, at %s of %s", seed, i, point, Arrays.toString(distances))
                            .isGreaterThanOrEqualTo(least);
                }
            }
        }
    }

    /** Beyond the end of an edge the lesser of the two distances that meet there counts; behind it none does. */
    private static double required(List<Path> edges, double[] distances, int i, Point point, double out) {
        int count = distances.length;
        Path edge = edges.get(i);
        PathNearest foot = edge.nearest(point);
        double along = foot.distanceAlong();
        double own = Math.abs(distances[i]);
        if (along <= 2 * TOLERANCE) {
            return Math.min(own, Math.abs(distances[(i + count - 1) % count]));
        }
        if (along >= edge.length() - 2 * TOLERANCE) {
            return Math.min(own, Math.abs(distances[(i + 1) % count]));
        }
        return edge.directionAt(along).cross(point.minus(foot.point())) * out > 0 ? own : 0;
    }
}

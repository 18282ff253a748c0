package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.geometry.Polygons.polygon;

import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Points a hair nearer and a hair farther than each distance, and a whole grid against the rule applied edge by edge.
 */
class ClearanceTest {
    private static final double SLACK = 0.01;
    private static final double HAIR = 0.001;

    private static Clearance clearance(List<Path> edges, boolean closed, double... distances) {
        OffsetCorners corners = OffsetCorners.all(CornerStyle.mitre(2), edges.size());
        return new Clearance(edges, distances, corners, closed, SLACK);
    }

    private static final List<Path> SQUARE = polygon(0, 0, 100, 0, 100, 100, 0, 100);

    /** Clockwise, so the left of each edge is outside; it is drawn from the corner at the top left. */
    private static void assertRim(Clearance clearance, Vector way, Point on, double distance, int edge) {
        assertThat(clearance.isKeptBy(on.plus(way.times(distance - SLACK - HAIR)), edge))
                .as("inside")
                .isFalse();
        assertThat(clearance.isKeptBy(on.plus(way.times(distance - SLACK + HAIR)), edge))
                .as("outside")
                .isTrue();
    }

    @Test
    void beside_each_edge_its_own_distance_counts() {
        Clearance outside = clearance(SQUARE, true, 5, 10, 15, 20);
        assertThat(outside.slack()).isEqualTo(SLACK);
        assertRim(outside, Vector.of(0, -1), Point.of(50, 0), 5, 0);
        assertRim(outside, Vector.of(1, 0), Point.of(100, 50), 10, 1);
        assertRim(outside, Vector.of(0, 1), Point.of(50, 100), 15, 2);
        assertRim(outside, Vector.of(-1, 0), Point.of(0, 50), 20, 3);
    }

    @Test
    void at_a_corner_the_lesser_of_the_two_distances_counts() {
        Clearance outside = clearance(SQUARE, true, 5, 10, 15, 20);
        double half = Math.sqrt(0.5);
        assertRim(outside, Vector.of(-half, -half), Point.of(0, 0), 5, 0);
        assertRim(outside, Vector.of(half, -half), Point.of(100, 0), 5, 0);
        assertRim(outside, Vector.of(half, half), Point.of(100, 100), 10, 1);
        assertRim(outside, Vector.of(-half, half), Point.of(0, 100), 15, 2);
    }

    @Test
    void at_a_corner_round_which_the_greater_distance_is_carried_that_one_counts() {
        OffsetCorners carried = OffsetCorners.all(CornerStyle.mitre(2), 4).withAllCarried();
        Clearance outside = new Clearance(SQUARE, new double[] {5, 10, 15, 20}, carried, true, SLACK);
        double half = Math.sqrt(0.5);
        assertRim(outside, Vector.of(-half, -half), Point.of(0, 0), 20, 0);
        assertRim(outside, Vector.of(half, -half), Point.of(100, 0), 10, 0);
    }

    /** The foot of a point may lie this near to a corner and count as there. */
    @Test
    void beside_a_corner_within_a_given_way_the_distance_at_the_corner_counts() {
        OffsetCorners corners = OffsetCorners.all(CornerStyle.mitre(2), 4);
        double[] distances = {5, 10, 15, 20};
        Clearance wide = new Clearance(SQUARE, distances, corners, true, SLACK, 3);
        Clearance narrow = new Clearance(SQUARE, distances, corners, true, SLACK, SLACK);
        assertThat(wide.isKeptBy(Point.of(104, 2.9), 1)).isFalse();
        assertThat(wide.isKeptBy(Point.of(106, 2.9), 1)).isTrue();
        assertThat(narrow.isKeptBy(Point.of(106, 2.9), 1)).isFalse();
        assertThat(wide.isKeptBy(Point.of(106, 3.1), 1)).isFalse();
        assertThat(wide.isKeptBy(Point.of(-12, 97.1), 3)).isFalse();
        assertThat(wide.isKeptBy(Point.of(-16, 97.1), 3)).isTrue();
        assertThat(narrow.isKeptBy(Point.of(-16, 97.1), 3)).isFalse();
    }

    /**
     * Distances are kept on the left, outside of a clockwise outline: no point inside is on it, however far it is from
     * every edge.
     */
    @Test
    void a_point_on_the_other_side_of_the_outline_is_not_kept() {
        Clearance outside = clearance(SQUARE, true, 5, 5, 5, 5);
        assertThat(outside.isKeptBy(Point.of(50, 50), 0)).isFalse();
        assertThat(outside.isKeptBy(Point.of(500, 50), 0)).isTrue();
        List<Path> back = polygon(0, 0, 0, 100, 100, 100, 100, 0);
        Clearance inside = clearance(back, true, 5, 5, 5, 5);
        assertThat(inside.isKeptBy(Point.of(50, 50), 0)).isTrue();
        assertThat(inside.isKeptBy(Point.of(500, 50), 0)).isFalse();
        assertRim(inside, Vector.of(1, 0), Point.of(0, 50), 5, 0);
        // A figure of distances 0 lies on its outline, on neither side.
        Clearance still = clearance(SQUARE, true, 0, 0, 0, 0);
        assertThat(still.isKeptBy(Point.of(50, 0), 0)).isTrue();
        assertThat(still.isKeptBy(Point.of(50, SLACK - HAIR), 0)).isTrue();
        assertThat(still.isKeptBy(Point.of(50, SLACK + HAIR), 0)).isFalse();
        assertThat(still.isKeptBy(Point.of(50, -SLACK - HAIR), 0)).isTrue();
    }

    /** A bar of 100 by 20: from behind, through the bar, no edge keeps a distance of more than the bar is wide. */
    @Test
    void an_edge_keeps_its_distance_on_its_own_side_only() {
        List<Path> bar = polygon(0, 0, 100, 0, 100, 20, 0, 20);
        Clearance outside = clearance(bar, true, 5, 5, 40, 5);
        // 26 mm above the lower edge, 6 mm above the upper one.
        assertThat(outside.isKeptBy(Point.of(50, -6), 0)).isTrue();
        assertThat(outside.isKeptBy(Point.of(50, -4), 0)).isFalse();
        assertRim(outside, Vector.of(0, 1), Point.of(50, 20), 40, 2);
        // Beyond its end it is the lesser distance that counts, on both sides.
        assertThat(outside.isKeptBy(Point.of(106, 10), 1)).isTrue();
    }

    /** The fold runs up the left; its prolongations keep no distance from hem and neck, but from all else. */
    @Test
    void the_prolongation_of_an_edge_at_distance_zero_keeps_none_from_its_neighbours() {
        List<Path> folded = polygon(0, 0, 100, 0, 100, 100, 0, 100);
        Clearance outside = clearance(folded, true, 10, 10, 10, 0);
        assertThat(outside.isKeptBy(Point.of(0, -3), 3)).isTrue();
        assertThat(outside.isKeptBy(Point.of(0, 103), 3)).isTrue();
        assertThat(outside.isKeptBy(Point.of(0, -3), 0)).isTrue();
        assertThat(outside.isKeptBy(Point.of(1, -3), 0)).isFalse();
        assertThat(outside.isKeptBy(Point.of(1, -3), 3)).isTrue();
        assertThat(outside.isKeptBy(Point.of(105, 50), 3)).isFalse();
        Clearance between = clearance(polygon(100, 100, 0, 100, 0, 0, 100, 0, 100, 50), true, 10, 0, 10, 10, 10);
        assertThat(between.isKeptBy(Point.of(1, -3), 1)).isTrue();
        assertThat(between.isKeptBy(Point.of(1, 103), 1)).isTrue();
        assertThat(between.isKeptBy(Point.of(105, 50), 1)).isFalse();
        // On the edge itself nothing is let off: here its neighbour leans over it.
        Clearance leaning = clearance(
                polygon(0, 100, 0, 0, -20, 30, -40, 30, -40, -50, 100, -50, 100, 100), true, 0, 10, 1, 1, 1, 1, 1);
        assertThat(leaning.isKeptBy(Point.of(0, 5), 0)).isFalse();
        assertThat(leaning.isKeptBy(Point.of(0, 60), 0)).isTrue();
    }

    /** An open run has two sides and no corners between its ends: its one distance counts everywhere. */
    @Test
    void an_open_run_keeps_its_distance_all_round() {
        List<Path> bend = List.of(Path.polyline(Point.of(0, 0), Point.of(100, 0), Point.of(100, 100)));
        Clearance open = clearance(bend, false, 10);
        assertRim(open, Vector.of(0, -1), Point.of(50, 0), 10, 0);
        assertRim(open, Vector.of(0, 1), Point.of(50, 0), 10, 0);
        assertRim(open, Vector.of(-1, 0), Point.of(0, 0), 10, 0);
        assertRim(open, Vector.of(-1, 0), Point.of(100, 50), 10, 0);
        assertThat(open.isKeptBy(Point.of(50, 50), 0)).isTrue();
        assertThat(clearance(bend, false, 0).isKeptBy(Point.of(0, -1), 0)).isTrue();
    }

    /** The rule word for word, by distances to straight segments, on a grid that no rim passes. */
    @Test
    void on_a_whole_grid_the_rule_holds_word_for_word() {
        double[] corners = {0, 0, 100, 10, 60, 50, 110, 90, 20, 110};
        double[] distances = {4, 12, 7, 9, 15};
        List<Path> edges = polygon(corners);
        Clearance outside = clearance(edges, true, distances);
        int kept = 0;
        for (double x = -30.37; x < 140; x += 3.1) {
            for (double y = -30.73; y < 140; y += 3.3) {
                boolean expected = isOutside(corners, x, y) && keepsDistances(corners, distances, x, y);
                assertThat(outside.isKeptBy(Point.of(x, y), 0))
                        .as("%s, %s", x, y)
                        .isEqualTo(expected);
                kept += expected ? 1 : 0;
            }
        }
        assertThat(kept).isBetween(500, 2500);
    }

    private static boolean keepsDistances(double[] c, double[] distances, double x, double y) {
        int n = distances.length;
        for (int i = 0; i < n; i++) {
            double ax = c[2 * i];
            double ay = c[2 * i + 1];
            double bx = c[2 * ((i + 1) % n)];
            double by = c[2 * ((i + 1) % n) + 1];
            double share =
                    ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
            double t = Math.min(Math.max(share, 0), 1);
            double distance = Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay));
            double required = distances[i];
            if (t == 0) {
                required = atCorner(c, distances, i);
            } else if (t == 1) {
                required = atCorner(c, distances, (i + 1) % n);
            } else if ((bx - ax) * (y - ay) - (by - ay) * (x - ax) > 0) {
                continue;
            }
            if (distance < required - SLACK) {
                return false;
            }
        }
        return true;
    }

    /** The greater distance if the outline turns left there, else the lesser. */
    private static double atCorner(double[] c, double[] distances, int corner) {
        int n = distances.length;
        int before = (corner + n - 1) % n;
        int after = (corner + 1) % n;
        double cross = (c[2 * corner] - c[2 * before]) * (c[2 * after + 1] - c[2 * corner + 1])
                - (c[2 * corner + 1] - c[2 * before + 1]) * (c[2 * after] - c[2 * corner]);
        return cross < 0
                ? Math.max(distances[before], distances[corner])
                : Math.min(distances[before], distances[corner]);
    }

    private static boolean isOutside(double[] c, double x, double y) {
        boolean outside = true;
        int n = c.length / 2;
        for (int i = 0; i < n; i++) {
            double ax = c[2 * i];
            double ay = c[2 * i + 1];
            double bx = c[2 * ((i + 1) % n)];
            double by = c[2 * ((i + 1) % n) + 1];
            if (ay > y != by > y && x < ax + (y - ay) / (by - ay) * (bx - ax)) {
                outside = !outside;
            }
        }
        return outside;
    }
}

package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.geometry.Polygons.polygon;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Whole outlines with a distance for each edge and a style for each corner: their areas by straight lines, and where
 * each part comes from.
 */
class OutlineCornersTest {
    private static final double TOLERANCE = 0.01;

    /** A house: all five corners differ. Clockwise from the left end of the floor's opposite, the left eave. */
    private static final double[] HOUSE = {0, 40, 50, 0, 120, 40, 110, 120, 0, 130};

    private static <T> List<T> backwards(List<T> list) {
        List<T> back = new ArrayList<>(list);
        Collections.reverse(back);
        return back;
    }

    private static double[] backwards(double[] values) {
        double[] back = new double[values.length];
        for (int i = 0; i < back.length; i++) {
            back[i] = values[values.length - 1 - i];
        }
        return back;
    }

    private static double area(List<Point> corners) {
        double twice = 0;
        for (int i = 0; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            twice += a.x() * b.y() - a.y() * b.x();
        }
        return Math.abs(twice) / 2;
    }

    /**
     * The corner between two edges moved outwards: where they meet, or the two points of the end that is square to one
     * of them.
     */
    private static List<Point> moved(Path arriving, Path leaving, double d1, double d2, CornerStyle style) {
        Point at = arriving.end();
        Vector a = arriving.endDirection();
        Vector l = leaving.startDirection();
        double sin = a.cross(l);
        if (style instanceof CornerStyle.SquaredTo squared) {
            Vector along = squared.second() ? l : a;
            double past = squared.second() ? -d1 / sin : d2 / sin;
            Point on = at.plus(along.times(past));
            Point out = on.plus(along.leftNormal().times(squared.second() ? d2 : d1));
            return squared.second() ? List.of(on, out) : List.of(out, on);
        }
        double along = (d2 - d1 * a.dot(l)) / sin;
        return List.of(at.plus(a.leftNormal().times(d1)).plus(a.times(along)));
    }

    @Test
    void each_corner_has_its_own_style_whichever_way_the_outline_runs() {
        List<Path> edges = polygon(HOUSE);
        double[] distances = {4, 9, 6, 12, 5};
        List<CornerStyle> styles = List.of(
                CornerStyle.mitre(3),
                CornerStyle.squaredToFirst(3),
                CornerStyle.squaredToSecond(3),
                CornerStyle.mitre(3),
                CornerStyle.squaredToFirst(3));
        List<Point> expected = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            expected.addAll(
                    moved(edges.get(i), edges.get((i + 1) % 5), distances[i], distances[(i + 1) % 5], styles.get(i)));
        }
        OutlineOffset offset = OutlineOffset.outward(edges, distances, CornerStyle.square(), styles, TOLERANCE);
        assertThat(offset.outline().area()).isCloseTo(area(expected), within(1e-6));
        for (Point corner : expected) {
            assertThat(offset.outline().path().nearest(corner).distance()).isLessThan(1e-9);
        }
        assertThat(offset.parts()).extracting(OffsetPart::edge).containsExactly(0, 1, 1, 2, 2, 3, 4, 4);
        assertThat(offset.parts())
                .extracting(OffsetPart::corner)
                .containsExactly(false, false, true, false, true, false, false, true);

        // Backwards the corner after an edge is the one before it, and what arrived leaves.
        List<Path> back = backwards(edges.stream().map(Path::reversed).toList());
        List<CornerStyle> backStyles = List.of(
                CornerStyle.mitre(3),
                CornerStyle.squaredToFirst(3),
                CornerStyle.squaredToSecond(3),
                CornerStyle.mitre(3),
                CornerStyle.squaredToSecond(3));
        OutlineOffset other =
                OutlineOffset.outward(back, backwards(distances), CornerStyle.square(), backStyles, TOLERANCE);
        assertThat(other.outline().isClockwise()).isFalse();
        assertThat(other.outline().area()).isCloseTo(area(expected), within(1e-6));
        for (Point corner : expected) {
            assertThat(other.outline().path().nearest(corner).distance()).isLessThan(1e-9);
        }
        // The corner between edges 1 and 2 is now after edge 2, between 4 - 2 and 4 - 1.
        assertThat(other.parts())
                .filteredOn(OffsetPart::corner)
                .extracting(OffsetPart::edge)
                .containsOnly(1, 2, 4);
        assertPartsAreBesideTheirEdges(back, backwards(distances), other);
        assertPartsAreBesideTheirEdges(edges, distances, offset);
    }

    private static void assertPartsAreBesideTheirEdges(List<Path> edges, double[] distances, OutlineOffset offset) {
        Path before = offset.parts().get(offset.parts().size() - 1).path();
        for (OffsetPart part : offset.parts()) {
            assertThat(part.path().start()).isEqualTo(before.end());
            before = part.path();
            Path edge = edges.get(part.edge());
            Point middle = part.path().pointAt(part.path().length() / 2);
            if (part.corner()) {
                assertThat(middle.distanceTo(edge.end())).isLessThan(3 * 12);
            } else {
                Vector from = middle.minus(edge.start());
                assertThat(Math.abs(edge.startDirection().cross(from)))
                        .as("part of edge %s", part.edge())
                        .isCloseTo(distances[part.edge()], within(1e-9));
                assertThat(part.path().startDirection().dot(edge.startDirection()))
                        .isCloseTo(1, within(1e-9));
            }
        }
    }

    /**
     * The limit decides for each style alike: all corners of an equilateral triangle have their tips at twice the
     * distance.
     */
    @Test
    void a_triangle_grows_to_a_triangle_below_the_limit_and_loses_its_tips_above() {
        double side = 100;
        double height = side * Math.sqrt(0.75);
        for (double size : new double[] {1e-2, 1, 1e2}) {
            List<Path> edges = polygon(0, 0, size * side, 0, size * side / 2, size * height);
            for (double limit : new double[] {1, 1.5, 1.99, 2.01, 5}) {
                double d = 5 * size;
                double grown = Math.sqrt(3) / 4 * Math.pow(size * side + 2 * Math.sqrt(3) * d, 2);
                double tip = Math.max(2 - limit, 0) * d;
                OutlineOffset offset = OutlineOffset.outward(
                        edges, new double[] {d, d, d}, CornerStyle.mitre(limit), TOLERANCE * size);
                assertThat(offset.outline().area())
                        .as("limit %s", limit)
                        .isCloseTo(grown - 3 * tip * tip * Math.tan(Math.PI / 6), within(1e-6 * size * size));
                assertThat(offset.parts()).hasSize(tip > 0 ? 6 : 3);
            }
        }
    }

    /**
     * The floor is on the fold: its neighbours end on its prolongations whatever the style, cut off at blunt corners,
     * grown at sharp ones.
     */
    @Test
    void neighbours_of_an_edge_at_distance_zero_end_on_its_prolongation() {
        double d = 8;
        for (double lean : new double[] {-40, 0, 20, 60}) {
            // The sides lean out by this much on a height of 60; the fold is the lower edge from 100 to 0.
            List<Path> edges = polygon(-lean, 0, 100 + lean, 0, 100, 60, 0, 60);
            double along = Math.hypot(lean, 60) / 60 * d;
            for (CornerStyle style : List.of(CornerStyle.mitre(1), CornerStyle.round(), CornerStyle.square())) {
                List<CornerStyle> styles = List.of(CornerStyle.mitre(9), style, style, CornerStyle.mitre(9));
                OutlineOffset offset =
                        OutlineOffset.outward(edges, new double[] {d, d, 0, d}, style, styles, TOLERANCE);
                double below = 100 + 2 * along;
                double above = below + 2 * lean * (60 + d) / 60;
                assertThat(offset.outline().area())
                        .as("lean %s, %s", lean, style)
                        .isCloseTo((below + above) / 2 * (60 + d), within(1e-6));
                assertThat(offset.outline().bounds().maxY()).isCloseTo(60, within(1e-9));
            }
        }
    }

    /** Two edges in one line at 5 and at 20: a step between them, square to both. */
    @Test
    void two_edges_in_line_have_a_step_between_them() {
        List<Path> edges = polygon(0, 0, 50, 0, 100, 0, 100, 80, 0, 80);
        for (boolean rising : new boolean[] {true, false}) {
            double[] distances = {rising ? 5 : 20, rising ? 20 : 5, 10, 10, 10};
            OutlineOffset offset = OutlineOffset.outward(edges, distances, CornerStyle.mitre(2), TOLERANCE);
            assertThat(offset.outline().area()).isCloseTo(60 * 95 + 60 * 110, within(1e-6));
            assertThat(offset.parts())
                    .filteredOn(OffsetPart::corner)
                    .hasSize(1)
                    .first()
                    .satisfies(step -> {
                        assertThat(step.edge()).isZero();
                        assertThat(step.path().length()).isCloseTo(15, within(1e-9));
                        assertThat(step.path().start().x()).isCloseTo(50, within(1e-9));
                    });
        }
    }

    /**
     * An inner corner that turns by 20 degrees: round it the greater distance is carried until it is as near to the
     * other edge as allowed.
     */
    @Test
    void at_a_blunt_inner_corner_the_greater_distance_goes_round_it() {
        double turn = Math.toRadians(20);
        Point corner = Point.of(100, 20);
        Point west = corner.plus(Vector.polar(-100, turn / 2));
        Point east = corner.plus(Vector.polar(100, -turn / 2));
        List<Path> edges =
                polygon(west.x(), west.y(), corner.x(), corner.y(), east.x(), east.y(), east.x(), 120, west.x(), 120);
        Vector a = edges.get(0).endDirection();
        Vector l = edges.get(1).startDirection();
        for (boolean first : new boolean[] {true, false}) {
            double[] distances = {first ? 12 : 3, first ? 3 : 12, 5, 5, 5};
            OutlineOffset offset = OutlineOffset.outward(edges, distances, CornerStyle.mitre(2), TOLERANCE);
            double foot = Math.sqrt(144 - 9);
            Point meeting = first
                    ? corner.plus(l.times(foot)).plus(l.leftNormal().times(3))
                    : corner.plus(a.times(-foot)).plus(a.leftNormal().times(3));
            assertThat(offset.outline().path().nearest(meeting).distance()).isLessThan(TOLERANCE);
            Vector out = first ? a.leftNormal() : l.leftNormal();
            Point onArc = corner.plus(out.rotated(first ? 0.5 : -0.5).times(12));
            assertThat(offset.outline().path().nearest(onArc).distance()).isLessThan(TOLERANCE);
            assertThat(offset.parts())
                    .filteredOn(OffsetPart::corner)
                    .extracting(OffsetPart::edge)
                    .containsExactly(0);
            assertThat(offset.outline().path().nearest(corner).distance()).isCloseTo(12, within(TOLERANCE));
        }
    }

    /**
     * A square drawn as one edge from the middle of a side: the side it begins in is one part, and so is a whole
     * without corners.
     */
    @Test
    void a_part_runs_on_through_the_start_of_the_outline() {
        Path square = Path.polyline(
                Point.of(50, 0),
                Point.of(100, 0),
                Point.of(100, 100),
                Point.of(0, 100),
                Point.of(0, 0),
                Point.of(50, 0));
        for (Path path : List.of(square, square.reversed())) {
            Outline outline = Outline.of(path);
            OutlineOffset round = OutlineOffset.outward(outline, 10, CornerStyle.round(), TOLERANCE);
            assertThat(round.parts()).hasSize(8).extracting(OffsetPart::edge).containsOnly(0);
            assertThat(round.parts())
                    .filteredOn(part -> !part.corner())
                    .allSatisfy(part -> assertThat(part.path().length()).isCloseTo(100, within(1e-6)));
            OutlineOffset mitred = OutlineOffset.outward(outline, 10, CornerStyle.mitre(2), TOLERANCE);
            assertThat(mitred.parts()).hasSize(1);
            assertThat(mitred.parts().get(0).path().length()).isCloseTo(480, within(1e-6));
            OutlineOffset inside = OutlineOffset.outward(outline, -10, CornerStyle.mitre(2), TOLERANCE);
            assertThat(inside.outline().area()).isCloseTo(6400, within(1e-6));
            assertThat(inside.outline().isClockwise()).isEqualTo(outline.isClockwise());
        }
    }

    @Test
    void an_edge_may_hold_points_and_straight_joints() {
        List<Path> edges = new ArrayList<>(polygon(0, 0, 100, 0, 100, 100, 0, 100));
        edges.set(
                0,
                Path.of(
                        new Line(Point.of(0, 0), Point.of(30, 0)),
                        new Line(Point.of(30, 0), Point.of(30, 0)),
                        new Line(Point.of(30, 0), Point.of(100, 0))));
        OutlineOffset offset =
                OutlineOffset.outward(edges, new double[] {10, 10, 10, 10}, CornerStyle.mitre(2), TOLERANCE);
        assertThat(offset.outline().area()).isCloseTo(14400, within(1e-9));
        assertThat(offset.parts()).extracting(OffsetPart::edge).containsExactly(0, 1, 2, 3);
    }

    @Test
    void requests_that_mean_nothing_say_what_is_wrong() {
        List<Path> edges = polygon(HOUSE);
        double[] distances = {1, 1, 1, 1, 1};
        assertThatThrownBy(() -> OutlineOffset.outward(
                        edges, distances, CornerStyle.round(), List.of(CornerStyle.round()), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("there must be one corner for each of the 5 edges, got 1");
        assertThatThrownBy(() -> OutlineOffset.outward(List.of(), new double[0], CornerStyle.round(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an outline needs at least one edge, got none");
        assertThatThrownBy(() -> OutlineOffset.outward(edges, distances, CornerStyle.round(), 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tolerance");
        distances[2] = Double.NaN;
        assertThatThrownBy(() -> OutlineOffset.outward(edges, distances, CornerStyle.round(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("offset distance");
        List<Path> flat = polygon(0, 0, 10, 0, 20, 0);
        assertThatThrownBy(() -> OutlineOffset.outward(flat, new double[3], CornerStyle.round(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("an outline must enclose an area to have an outside, got area 0");
    }
}

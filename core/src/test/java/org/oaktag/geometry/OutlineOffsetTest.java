package org.oaktag.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.geometry.Polygons.polygon;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;

class OutlineOffsetTest {
    private static final double TOLERANCE = 0.01;

    private static Point p(double x, double y) {
        return new Point(x, y);
    }

    private static double[] all(int n, double distance) {
        double[] distances = new double[n];
        java.util.Arrays.fill(distances, distance);
        return distances;
    }

    private static final List<Path> SQUARE = polygon(0, 0, 100, 0, 100, 100, 0, 100);
    private static final List<Path> ELL = polygon(0, 0, 100, 0, 100, 50, 50, 50, 50, 100, 0, 100);

    @Test
    void mitred_square_is_a_greater_square() {
        OutlineOffset offset = OutlineOffset.outward(SQUARE, all(4, 10), CornerStyle.mitre(4), TOLERANCE);
        assertThat(offset.outline().path().curves()).hasSize(4);
        assertThat(offset.outline().signedArea()).isCloseTo(120 * 120, within(1e-9));
        assertThat(offset.parts()).extracting(OffsetPart::edge).containsExactly(0, 1, 2, 3);
    }

    @Test
    void round_corners_are_quarter_circles() {
        OutlineOffset offset = OutlineOffset.outward(SQUARE, all(4, 10), CornerStyle.round(), TOLERANCE);
        assertThat(offset.outline().signedArea()).isCloseTo(100 * 100 + 4 * 1000 + Math.PI * 100, within(0.1));
        assertThat(offset.parts())
                .filteredOn(OffsetPart::corner)
                .extracting(OffsetPart::edge)
                .containsExactly(0, 1, 2, 3);
    }

    @Test
    void square_corners_are_cut_off_at_the_distance() {
        OutlineOffset offset = OutlineOffset.outward(SQUARE, all(4, 10), CornerStyle.square(), TOLERANCE);
        double cut = 10 * (Math.sqrt(2) - 1);
        assertThat(offset.outline().signedArea()).isCloseTo(120 * 120 - 4 * cut * cut, within(1e-9));
    }

    @Test
    void edges_have_distances_of_their_own() {
        OutlineOffset offset =
                OutlineOffset.outward(SQUARE, new double[] {10, 20, 30, 5}, CornerStyle.mitre(4), TOLERANCE);
        assertThat(offset.outline().bounds()).isEqualTo(new Bounds(-5, -10, 120, 130));
    }

    @Test
    void inner_corner_is_trimmed() {
        OutlineOffset offset = OutlineOffset.outward(ELL, all(6, 10), CornerStyle.mitre(4), TOLERANCE);
        assertThat(offset.outline().path().curves()).hasSize(6);
        assertThat(offset.outline().signedArea()).isCloseTo(120 * 70 + 70 * 50, within(1e-6));
    }

    @Test
    void inward_offset_is_the_outward_one_undone() {
        OutlineOffset offset = OutlineOffset.outward(ELL, all(6, -10), CornerStyle.mitre(4), TOLERANCE);
        assertThat(offset.outline().signedArea()).isCloseTo(80 * 30 + 30 * 50, within(1e-6));
        assertThat(offset.outline().isClockwise()).isTrue();
        assertThat(offset.parts()).extracting(OffsetPart::edge).containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5);
    }

    @Test
    void anticlockwise_outline_grows_as_well() {
        List<Path> back = polygon(0, 0, 0, 100, 100, 100, 100, 0);
        OutlineOffset offset =
                OutlineOffset.outward(back, new double[] {5, 30, 20, 10}, CornerStyle.mitre(4), TOLERANCE);
        assertThat(offset.outline().bounds()).isEqualTo(new Bounds(-5, -10, 120, 130));
        assertThat(offset.outline().isClockwise()).isFalse();
        for (OffsetPart part : offset.parts()) {
            double distance = new double[] {5, 30, 20, 10}[part.edge()];
            assertThat(back.get(part.edge())
                            .nearest(part.path().pointAt(part.path().length() / 2))
                            .distance())
                    .isCloseTo(distance, within(1e-9));
        }
    }

    /** A half front on the fold: the fold runs up the left side; neckline and hem end on its prolongation. */
    @Test
    void cut_line_ends_on_the_line_of_the_fold() {
        Path neck = Path.from(p(0, 80)).curveTo(p(40, 80), p(70, 40), p(75, 0)).build();
        Path shoulder = Path.polyline(p(75, 0), p(200, 45));
        Path armhole = Path.from(p(200, 45))
                .curveTo(p(185, 120), p(180, 210), p(250, 230))
                .build();
        Path side = Path.polyline(p(250, 230), p(250, 650));
        for (double slant : new double[] {0, 30, -30}) {
            Path hem = Path.polyline(p(250, 650), p(0, 650 + slant));
            Path fold = Path.polyline(p(0, 650 + slant), p(0, 80));
            List<Path> edges = List.of(neck, shoulder, armhole, side, hem, fold);
            OutlineOffset offset =
                    OutlineOffset.outward(edges, new double[] {6, 10, 10, 10, 25, 0}, CornerStyle.mitre(4), TOLERANCE);
            assertThat(offset.outline().bounds().minX()).as("slant %s", slant).isCloseTo(0, within(1e-9));
            assertThat(offset.outline().selfCrossings()).isEmpty();
            OffsetPart onFold = offset.parts().stream()
                    .filter(part -> part.edge() == 5)
                    .findFirst()
                    .orElseThrow();
            assertThat(onFold.path().start().x()).isCloseTo(0, within(1e-9));
            assertThat(onFold.path().end().x()).isCloseTo(0, within(1e-9));
            assertThat(onFold.path().end().y()).isCloseTo(74, within(1e-6));
            assertThat(onFold.path().start().y())
                    .isCloseTo(650 + slant + 25 * Math.hypot(250, slant) / 250, within(1e-6));
            for (OffsetPart part : offset.parts()) {
                for (double share = 0; share <= 1; share += 0.125) {
                    Point on = part.path().pointAt(share * part.path().length());
                    if (!part.corner() && part.edge() < 5) {
                        assertThat(edges.get(part.edge()).nearest(on).distance())
                                .isGreaterThanOrEqualTo(new double[] {6, 10, 10, 10, 25, 0}[part.edge()] - TOLERANCE);
                    }
                }
            }
        }
    }

    @Test
    void inward_offset_that_swallows_the_outline_is_refused() {
        assertThatThrownBy(() -> OutlineOffset.outward(SQUARE, all(4, -51), CornerStyle.mitre(4), TOLERANCE))
                .isInstanceOf(PatternException.class)
                .hasMessage("inward offset: must leave some of the outline; got 51.0 mm, which leaves 0 pieces;"
                        + " use at most 49.9 mm");
        List<Path> waisted = polygon(
                0, 0, 100, 0, 100, 100, 60, 100, 60, 140, 100, 140, 100, 240, 0, 240, 0, 140, 40, 140, 40, 100, 0, 100);
        assertThatThrownBy(() -> OutlineOffset.outward(waisted, all(12, -20), CornerStyle.mitre(4), TOLERANCE))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must leave the outline in one piece")
                .hasMessageContaining("use at most 9.9 mm");
    }

    @Test
    void broken_requests_are_refused() {
        assertThatThrownBy(() -> OutlineOffset.outward(SQUARE, all(3, 1), CornerStyle.square(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one distance for each of the 4 edges, got 3");
        assertThatThrownBy(() ->
                        OutlineOffset.outward(SQUARE, new double[] {1, -1, 1, 1}, CornerStyle.square(), TOLERANCE))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("both signs");
        assertThatThrownBy(() -> CornerStyle.mitre(0.5)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void an_outline_may_begin_at_a_corner_that_is_all_but_straight_and_turns_inwards() {
        for (double dent : new double[] {0.01, 0.2, 1, 4, 8}) {
            List<Point> corners = List.of(
                    Point.of(0, 0),
                    Point.of(200, -dent),
                    Point.of(200, 300),
                    Point.of(-200, 300),
                    Point.of(-200, -dent));
            double area = Double.NaN;
            for (int first = 0; first < corners.size(); first++) {
                List<Path> edges = new ArrayList<>();
                for (int i = 0; i < corners.size(); i++) {
                    edges.add(Path.polyline(
                            corners.get((first + i) % corners.size()), corners.get((first + i + 1) % corners.size())));
                }
                double[] widths = new double[corners.size()];
                Arrays.fill(widths, 5);
                double grown = OutlineOffset.outward(edges, widths, CornerStyle.mitre(3), 0.01)
                        .outline()
                        .area();
                area = first == 0 ? grown : area;
                assertThat(grown).as("dent %s, begun at corner %s", dent, first).isCloseTo(area, within(0.5));
            }
        }
    }

    /** A tightly curved outline, drawn with a hundred chords: many small turns both ways. */
    @Test
    void a_curve_drawn_in_a_hundred_chords_grows_by_a_little() {
        Outline curved = Outline.of(Path.from(p(0, 0))
                .curveTo(p(60, 40), p(140, 40), p(200, 0))
                .curveTo(p(150, 100), p(190, 180), p(250, 230))
                .lineTo(p(0, 230))
                .lineTo(p(0, 0))
                .build());
        Path path = curved.path();
        Point[] chords = new Point[101];
        for (int i = 0; i < 100; i++) {
            chords[i] = path.pointAt(path.length() * i / 100);
        }
        chords[100] = chords[0];
        Outline polygon = Outline.of(Path.polyline(chords));
        OutlineOffset offset = OutlineOffset.outward(polygon, 1.66, CornerStyle.round(), TOLERANCE);
        assertThat(offset.outline().selfCrossings()).isEmpty();
        for (Curve curve : offset.outline().path().curves()) {
            assertThat(polygon.path().nearest(curve.pointAt(0.5)).distance()).isCloseTo(1.66, within(2 * TOLERANCE));
        }
    }

    /** One edge moved inwards, the others left where they are. */
    @Test
    void one_edge_alone_moves_inwards() {
        List<Path> edges = List.of(
                Path.from(p(0, 0)).curveTo(p(60, 40), p(140, 40), p(200, 0)).build(),
                Path.from(p(200, 0))
                        .curveTo(p(150, 100), p(190, 180), p(250, 230))
                        .build(),
                Path.polyline(p(250, 230), p(0, 230)),
                Path.polyline(p(0, 230), p(0, 0)));
        double whole = Outline.of(
                        edges.get(0).then(edges.get(1)).then(edges.get(2)).then(edges.get(3)))
                .area();
        for (int moved = 0; moved < 4; moved++) {
            double[] distances = new double[4];
            distances[moved] = -6;
            OutlineOffset offset = OutlineOffset.outward(edges, distances, CornerStyle.mitre(4), TOLERANCE);
            double length = edges.get(moved).length();
            assertThat(whole - offset.outline().area())
                    .as("edge %s", moved)
                    .isBetween(6 * length - 150, 6 * length + 150);
            for (OffsetPart part : offset.parts()) {
                Point middle = part.path().pointAt(part.path().length() / 2);
                assertThat(edges.get(moved).nearest(middle).distance()).isGreaterThanOrEqualTo(6 - TOLERANCE - 1e-9);
            }
        }
    }
}

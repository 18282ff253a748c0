package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/** Hollows that the allowances close; what is expected follows from the widths of their mouths, by plain geometry. */
class HollowTest {
    private static final Pattern QUOTED = Pattern.compile("use at most ([0-9.]+) mm, and the other .* same share");

    /** A panel 400 mm square whose top edge is given, from (0, 0) to (400, 0). */
    private static Piece panel(Path top) {
        Point b = Point.of(400, 0);
        Point c = Point.of(400, 400);
        Point d = Point.of(0, 400);
        return Piece.of(
                Name.of("panel"),
                List.of(
                        new Edge(EdgeNames.TOP, top),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.HEM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, Point.of(0, 0))),
                new Grainline(Point.of(100, 100), Point.of(100, 300)),
                Cut.single(),
                Cloth.knit("trial knit", Percent.percent(20)));
    }

    /** A slot with a round bottom in the middle of the top edge, as wide and as deep to its bottom as said. */
    private static Path slot(double width, double depth) {
        double r = width / 2;
        double handle = r * 4 / 3;
        return Path.from(Point.of(0, 0))
                .lineTo(Point.of(200 - r, 0))
                .lineTo(Point.of(200 - r, depth - r))
                .curveTo(
                        Point.of(200 - r, depth - r + handle),
                        Point.of(200 + r, depth - r + handle),
                        Point.of(200 + r, depth - r))
                .lineTo(Point.of(200 + r, 0))
                .lineTo(Point.of(400, 0))
                .build();
    }

    /** A wedge in the middle of the top edge. */
    private static Path wedge(double mouth, double depth) {
        return Path.polyline(
                Point.of(0, 0),
                Point.of(200 - mouth / 2, 0),
                Point.of(200, depth),
                Point.of(200 + mouth / 2, 0),
                Point.of(400, 0));
    }

    private static Allowances all(double width) {
        return Allowances.of("all", mm(width));
    }

    private static Optional<PatternException> refusal(Piece piece, Allowances allowances) {
        try {
            CutLine.of(piece, allowances);
            return Optional.empty();
        } catch (PatternException refusal) {
            return Optional.of(refusal);
        }
    }

    private static double quoted(PatternException refusal) {
        Matcher quoted = QUOTED.matcher(refusal.remedy());
        assertThat(quoted.matches()).as(refusal.getMessage()).isTrue();
        return Double.parseDouble(quoted.group(1));
    }

    @Test
    void a_slot_whose_mouth_the_allowances_close_is_refused_by_the_name_of_its_edge() {
        Piece piece = panel(slot(15, 100));
        assertThatThrownBy(() -> CutLine.of(piece, all(10)))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "allowance of 'panel.top': must leave room to cut along the edge; here the allowances meet in front of"
                                + " its hollow from 192.5 to 401.3 mm along it; got 10.0 mm; use at most 7.4 mm, and the other"
                                + " allowances of the piece narrower by the same share");
    }

    @Test
    void what_is_quoted_works_and_a_tenth_more_does_not() {
        for (double width : new double[] {4, 15, 19.3, 40}) {
            Piece piece = panel(slot(width, 150));
            PatternException refusal = refusal(piece, all(25)).orElseThrow();
            double most = quoted(refusal);
            // Each side takes half of the mouth; at the bottom nothing is left of the last fraction.
            assertThat(most).as("slot %s wide", width).isCloseTo(width / 2, within(0.11));
            assertThat(refusal(piece, all(most))).isEmpty();
            assertThat(refusal(piece, all(most + 0.1))).isPresent();
        }
    }

    @Test
    void other_allowances_are_taken_in_the_same_share() {
        Piece piece = panel(slot(15, 100));
        Allowances uneven = Allowances.of("uneven", mm(20)).with(EdgeNames.TOP, mm(12));
        double most = quoted(refusal(piece, uneven).orElseThrow());
        Allowances less = Allowances.of("less", mm(20 * most / 12)).with(EdgeNames.TOP, mm(most));
        Allowances more = Allowances.of("more", mm(20 * (most + 0.1) / 12)).with(EdgeNames.TOP, mm(most + 0.1));
        assertThat(refusal(piece, less)).isEmpty();
        assertThat(refusal(piece, more)).isPresent();
    }

    @Test
    void a_hollow_that_is_wider_inside_than_at_its_mouth_is_refused_too() {
        Path bulb = Path.from(Point.of(0, 0))
                .lineTo(Point.of(192, 0))
                .curveTo(Point.of(192, 40), Point.of(130, 40), Point.of(130, 80))
                .curveTo(Point.of(130, 170), Point.of(270, 170), Point.of(270, 80))
                .curveTo(Point.of(270, 40), Point.of(208, 40), Point.of(208, 0))
                .lineTo(Point.of(400, 0))
                .build();
        double most = quoted(refusal(panel(bulb), all(10)).orElseThrow());
        assertThat(most).isBetween(6.5, 8.0);
        assertThat(refusal(panel(bulb), all(most))).isEmpty();
    }

    @Test
    void a_dent_no_deeper_than_the_allowance_is_bridged() {
        assertThatCode(() -> CutLine.of(panel(slot(15, 9)), all(10))).doesNotThrowAnyException();
        assertThat(refusal(panel(slot(15, 20)), all(10))).isPresent();
    }

    /**
     * However sharp, the cut line goes in as far as it can keep its distance: to the allowance over the sine of half
     * the angle.
     */
    @Test
    void a_sharp_inner_corner_is_cut_as_far_in_as_it_can_be() {
        for (double depth : new double[] {20, 50, 100, 150}) {
            Piece piece = panel(wedge(60, depth));
            CutLine cutLine = CutLine.of(piece, all(10));
            double corner = 10 / Math.sin(Math.atan(30 / depth));
            assertThat(cutLine.outline().path().nearest(Point.of(200, depth)).distance())
                    .isCloseTo(corner, within(0.01));
        }
    }

    @Test
    void a_wedge_whose_mouth_is_closed_is_refused() {
        PatternException refusal = refusal(panel(wedge(15, 100)), all(10)).orElseThrow();
        double most = quoted(refusal);
        assertThat(most).isCloseTo(7.5, within(0.5));
        assertThat(refusal(panel(wedge(15, 100)), all(most))).isEmpty();
        assertThat(refusal(panel(wedge(15, 100)), all(most + 0.1))).isPresent();
    }

    /** Both sides of the slot are cut above, but nothing is along its flat bottom. */
    @Test
    void a_slot_that_narrows_to_a_flat_bottom_is_refused() {
        Path narrowing = Path.polyline(
                Point.of(0, 0),
                Point.of(185, 0),
                Point.of(195, 100),
                Point.of(205, 100),
                Point.of(215, 0),
                Point.of(400, 0));
        double most = quoted(refusal(panel(narrowing), all(10)).orElseThrow());
        assertThat(refusal(panel(narrowing), all(most))).isEmpty();
        assertThat(refusal(panel(narrowing), all(most + 0.1))).isPresent();
    }

    @Test
    void a_slit_is_drawn_wider_or_cut_open() {
        Path slit = Path.polyline(
                Point.of(0, 0), Point.of(200, 0), Point.of(200, 100), Point.of(200.05, 0), Point.of(400, 0));
        assertThat(refusal(panel(slit), all(10)).orElseThrow().remedy())
                .isEqualTo("draw it wider, or cut it open without an allowance");
        assertThat(refusal(panel(slit), all(10).with(EdgeNames.TOP, mm(0)))).isEmpty();
    }
}

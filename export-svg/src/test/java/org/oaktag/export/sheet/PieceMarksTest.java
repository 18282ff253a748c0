package org.oaktag.export.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.blocks.KnitTop;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.NotchCut;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Snip;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Percent;

/** What a maker reads on a piece at the cutting table. */
class PieceMarksTest {

    private static final Garment TOP = Fixture.top();
    private static final Allowances ALLOWANCES = KnitTop.allowances(TOP);

    private static List<String> texts(Garment garment, Piece piece) {
        return PieceDrawing.of(garment, piece, ALLOWANCES).inks().stream()
                .filter(Label.class::isInstance)
                .map(Label.class::cast)
                .map(label ->
                        label.block().lines().stream().map(line -> line.text()).collect(Collectors.joining("|")))
                .toList();
    }

    private static List<Path> strokes(Figure figure, Predicate<Stroke> wanted) {
        return figure.inks().stream()
                .filter(Stroke.class::isInstance)
                .map(Stroke.class::cast)
                .filter(wanted)
                .map(Stroke::path)
                .toList();
    }

    @Test
    void a_piece_says_its_number_of_how_many_its_name_cut_cloth_wearer_and_which_way_is_up() {
        for (int i = 0; i < TOP.pieces().size(); i++) {
            Piece piece = TOP.pieces().get(i);
            String all = String.join("|", texts(TOP, piece));
            assertThat(all)
                    .contains((i + 1) + " of " + TOP.pieces().size())
                    .contains(piece.name().value())
                    .contains(piece.cut().instruction())
                    .contains(piece.cloth().use().value());
        }
        assertThat(texts(TOP, TOP.piece(Fixture.FRONT)))
                .contains("up", "stretch")
                .anyMatch(text -> text.contains(TOP.wearer().name()));
    }

    @Test
    void the_arrow_of_stretch_runs_across_the_grain() {
        Piece front = TOP.piece(Fixture.FRONT);
        Figure figure = PieceDrawing.of(TOP, front, ALLOWANCES);
        // The grainline is upright; so of the lines of its type only that of the stretch and the ends of the fold lie
        // level.
        assertThat(strokes(figure, stroke -> stroke.type() == LineType.GRAIN))
                .anyMatch(line -> Math.abs(line.start().y() - line.end().y()) < 1e-9 && line.length() == 50);
    }

    @Test
    void a_cloth_without_stretch_has_no_arrow_for_it() {
        Piece front = TOP.piece(Fixture.FRONT);
        Piece woven = front.withCloth(
                new org.oaktag.garment.Cloth(front.cloth().use(), "poplin", org.oaktag.measure.Percent.percent(0)));
        assertThat(texts(TOP.withPiece(woven), woven)).doesNotContain("stretch").contains("up");
    }

    @ParameterizedTest
    @EnumSource(NotchCut.class)
    void every_notch_reaches_from_the_seam_line_to_the_cut_line(NotchCut shape) {
        for (Piece piece : TOP.pieces()) {
            CutLine cut = CutLine.of(piece, ALLOWANCES.notched(shape));
            int cuts = piece.notches().stream().mapToInt(notch -> notch.count()).sum();
            assertThat(cut.snips().size()).isGreaterThanOrEqualTo(cuts);
            for (Snip snip : cut.snips()) {
                assertThat(piece.outline().path().nearest(snip.seam()).distance())
                        .isCloseTo(0, within(1e-6));
                assertThat(cut.outline().path().nearest(snip.cut()).distance()).isCloseTo(0, within(1e-6));
                assertThat(snip.path().start()).isEqualTo(snip.seam());
            }
        }
    }

    @Test
    void a_wedge_is_drawn_where_it_is_asked_for_no_deeper_than_half_the_allowance() {
        Piece front = TOP.piece(Fixture.FRONT);
        CutLine slit = CutLine.of(front, ALLOWANCES);
        CutLine wedge = CutLine.of(front, ALLOWANCES.notched(NotchCut.VEE));
        assertThat(slit.snips()).allMatch(snip -> snip.path().curves().size() == 1);
        assertThat(wedge.snips()).hasSameSizeAs(slit.snips()).allSatisfy(snip -> {
            assertThat(snip.path().curves()).hasSize(4);
            double allowance = snip.seam().distanceTo(snip.cut());
            assertThat(snip.path().curves().get(0).end().distanceTo(snip.cut()))
                    .as("the cut line lies within 0.01 mm of the allowance")
                    .isLessThanOrEqualTo(allowance / 2 + 0.005);
        });
    }

    @Test
    void the_ends_of_a_fold_are_snipped_as_centre_points() {
        Piece front = TOP.piece(Fixture.FRONT);
        Path fold = front.path(org.oaktag.garment.EdgeNames.CENTRE);
        assertThat(CutLine.of(front, ALLOWANCES).snips()).extracting(Snip::seam).contains(fold.start(), fold.end());
    }

    /**
     * Of a loop 12 mm wide nothing can be read on the piece itself; whoever prints it is told what to write by hand.
     */
    @Test
    void what_there_is_no_room_for_on_a_tiny_piece_is_named_with_the_piece() {
        Name loop = Name.of("hanger loop");
        List<Point> corners = List.of(Point.of(0, 0), Point.of(12, 0), Point.of(12, 40), Point.of(0, 40));
        List<Edge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(Edge.straight(Name.of("edge " + (i + 1)), corners.get(i), corners.get((i + 1) % 4)));
        }
        Piece tiny = Piece.of(
                loop,
                edges,
                new Grainline(Point.of(6, 5), Point.of(6, 35)),
                new Cut.Single(1),
                Cloth.knit("trial cloth", Percent.percent(20)));
        List<Piece> pieces = new ArrayList<>(TOP.pieces());
        pieces.add(tiny);
        Garment top = TOP.withPieces(pieces);
        List<LeftOut> before =
                Printout.tiled(TOP, ALLOWANCES, Tiling.on(Paper.A4)).leftOut();
        List<LeftOut> more = new ArrayList<>(
                Printout.tiled(top, ALLOWANCES, Tiling.on(Paper.A4)).leftOut());
        more.removeAll(before);
        assertThat(more)
                .contains(new LeftOut(loop, "up"), new LeftOut(loop, "stretch"))
                .allMatch(each -> each.piece().equals(loop));
        // Each of its labels is either on the piece or named as left out.
        String drawn = String.join("|", texts(top, tiny));
        for (Edge edge : edges) {
            String label = edge.name().value() + " " + edge.length().text();
            boolean leftOut = more.contains(new LeftOut(loop, label));
            boolean shown = drawn.contains(edge.name().value())
                    || drawn.contains(edge.length().text());
            assertThat(leftOut || shown).as(label).isTrue();
        }
        assertThat(Printout.whole(top, ALLOWANCES, Paper.A0).leftOut()).containsAll(more);
    }

    @ParameterizedTest
    @EnumSource(Mark.Use.class)
    void each_sign_of_a_mark_is_drawn_and_explained(Mark.Use use) {
        Point at = Point.of(60, 300);
        Piece sleeve = TOP.piece(Fixture.SLEEVE).withMarks(List.of(new Mark(Name.of("here"), use, at)));
        Garment top = TOP.withPiece(sleeve);
        Figure figure = PieceDrawing.of(top, sleeve, ALLOWANCES);
        for (Path line : MarkSign.of(use, at)) {
            assertThat(strokes(figure, stroke -> stroke.type() == LineType.NOTCH))
                    .contains(line);
        }
        Figure legend = new Figure();
        LineLegend.draw(legend, PatternHead.of(top), List.of(), 0, 0);
        assertThat(legend.inks().stream()
                        .filter(Label.class::isInstance)
                        .map(ink -> ((Label) ink).block().lines().get(0).text()))
                .contains(MarkSign.meaning(use));
    }
}

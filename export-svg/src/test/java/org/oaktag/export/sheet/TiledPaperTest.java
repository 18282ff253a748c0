package org.oaktag.export.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.PatternException;
import org.oaktag.blocks.KnitTop;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.svg.HtmlPages;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;

/** A pattern on sheets of every size: all of it, once, inside what a printer prints. */
class TiledPaperTest {

    private static final Garment TOP = Fixture.top();
    private static final Allowances ALLOWANCES = KnitTop.allowances(TOP);

    static List<Tiling> tilings() {
        return List.of(
                Tiling.on(Paper.A4),
                Tiling.on(Paper.A4).butted(),
                Tiling.on(Paper.A3).withMargin(mm(5)),
                Tiling.on(Paper.LETTER),
                Tiling.on(Paper.LEGAL).overlapped(mm(15)));
    }

    @ParameterizedTest
    @MethodSource("tilings")
    void every_piece_is_on_some_sheet_and_every_sheet_after_the_first_carries_something(Tiling tiling) {
        Printout printout = Printout.tiled(TOP, ALLOWANCES, tiling);
        assertThat(pieces(printout)).hasSize(TOP.pieces().size());
        for (PaperSheet sheet : printout.sheets()) {
            assertThat(sheet.width() * sheet.height())
                    .isEqualTo(tiling.paper().width().mm()
                            * tiling.paper().height().orElseThrow().mm());
            if (sheet.title().startsWith("Sheet")) {
                assertThat(sheet.placements()).anyMatch(each -> each.id().startsWith("piece-"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("tilings")
    void whatever_is_not_cut_off_at_a_window_lies_inside_the_margins(Tiling tiling) {
        double margin = tiling.margin().mm();
        for (PaperSheet sheet : Printout.tiled(TOP, ALLOWANCES, tiling).sheets()) {
            Bounds printed = new Bounds(margin, margin, sheet.width() - margin, sheet.height() - margin);
            for (Placement placement : sheet.placements()) {
                if (placement.window().isPresent()) {
                    assertThat(placement.window()).contains(printed);
                } else {
                    assertThat(inside(placement.bounds(), printed.expanded(0.3)))
                            .as("%s on '%s': %s", placement.id(), sheet.title(), placement.bounds())
                            .isTrue();
                }
            }
        }
    }

    /** Of A4 less its margins, 190 by 277 mm, one sheet holds the panel where it lies as the panel does. */
    @ParameterizedTest
    @CsvSource({"150, 260", "260, 150"})
    void a_panel_that_fits_on_one_sheet_takes_one_whichever_way_it_lies(double width, double height) {
        Point a = Point.of(0, 0);
        Point b = Point.of(width, 0);
        Point c = Point.of(width, height);
        Point d = Point.of(0, height);
        Piece panel = Piece.of(
                Name.of("panel"),
                List.of(
                        Edge.straight(EdgeNames.TOP, a, b),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.HEM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                new Grainline(Point.of(width / 2, 20), Point.of(width / 2, 100)),
                Cut.single(),
                Fixture.SHELL);
        Garment one = Garment.of("panel", TOP.wearer(), List.of(panel), List.of(), List.of());
        assertThat(Printout.tiled(one, Allowances.of("five", mm(5)), Tiling.on(Paper.A4))
                        .sheets())
                .extracting(PaperSheet::title)
                .filteredOn(title -> title.startsWith("Sheet"))
                .containsExactly("Sheet 1 of 1, column 1, row 1");
    }

    /** One cut is said to be a front and two a back, on every paper: common practice. */
    @Test
    void the_legend_draws_one_cut_for_a_front_and_two_for_a_back() {
        Figure figure = new Figure();
        LineLegend.draw(figure, PatternHead.of(TOP), List.of(), 0, 0);
        List<String> drawn = new ArrayList<>();
        for (Ink ink : figure.inks()) {
            if (ink instanceof Stroke stroke && stroke.type() == LineType.NOTCH) {
                drawn.add("cut");
            } else if (ink instanceof Label label) {
                drawn.add(label.block().lines().get(0).text());
            }
        }
        int single = drawn.indexOf("single notch: front");
        assertThat(drawn.subList(single - 1, single + 4))
                .containsExactly("cut", "single notch: front", "cut", "cut", "double notch: back");
        assertThat(drawn.get(single - 2)).isNotEqualTo("cut");
    }

    private static boolean inside(Bounds box, Bounds outer) {
        return outer.union(box).equals(outer);
    }

    @Test
    void the_first_sheet_has_the_square_and_asks_for_both_its_sides() {
        PaperSheet first =
                Printout.tiled(TOP, ALLOWANCES, Tiling.on(Paper.A4)).sheets().get(0);
        assertThat(first.placements().stream()
                        .flatMap(each -> each.figure().inks().stream())
                        .map(Ink::bounds))
                .anyMatch(box -> Math.abs(box.width() - 100.25) < 1e-9 && Math.abs(box.height() - 100.25) < 1e-9);
        String page = HtmlPages.of(Printout.tiled(TOP, ALLOWANCES, Tiling.on(Paper.A4)))
                .text()
                .replaceAll("<[^>]*>\\s*", " ");
        assertThat(page).contains("Measure both the width").contains("height of this square");
    }

    @Test
    void whole_pieces_lie_apart_on_large_paper() {
        for (Paper paper : List.of(Paper.A0, Paper.roll(inches(42)), Paper.roll(mm(1200)))) {
            Printout printout = Printout.whole(TOP, ALLOWANCES, paper);
            assertThat(pieces(printout)).hasSize(TOP.pieces().size());
            for (PaperSheet sheet : printout.sheets()) {
                List<Bounds> boxes =
                        sheet.placements().stream().map(Placement::bounds).toList();
                Bounds printed = new Bounds(10, 10, sheet.width() - 10, sheet.height() - 10);
                assertThat(boxes).allMatch(box -> inside(box, printed.expanded(0.3)));
                for (int i = 0; i < boxes.size(); i++) {
                    for (int k = 0; k < i; k++) {
                        assertThat(boxes.get(i).overlaps(boxes.get(k))).isFalse();
                    }
                }
            }
        }
        assertThat(Printout.whole(TOP, ALLOWANCES, Paper.roll(inches(42))).sheets())
                .hasSize(1);
    }

    private static Set<String> pieces(Printout printout) {
        return printout.sheets().stream()
                .flatMap(sheet -> sheet.placements().stream())
                .map(Placement::id)
                .filter(id -> id.startsWith("piece-"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void paper_on_which_it_cannot_be_printed_is_refused() {
        assertThatThrownBy(() -> Tiling.on(Paper.roll(mm(914))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("print whole pieces on a roll");
        assertThatThrownBy(() -> Tiling.on(Paper.A4).withMargin(mm(40)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("180.0 mm")
                .hasMessageContaining("got 40.0 mm");
        assertThatThrownBy(() -> Tiling.on(Paper.A4).overlapped(mm(-1)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("0 mm and 95.0 mm");
        assertThatThrownBy(() -> Printout.whole(TOP, ALLOWANCES, Paper.A3))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("at least 580.0 mm wide");
        assertThatThrownBy(() -> Printout.whole(TOP, ALLOWANCES, Paper.roll(mm(700))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("piece 'hem band'")
                .hasMessageContaining("join the pattern from sheets");
        assertThatThrownBy(() -> Paper.sheet("card", mm(0), mm(100))).isInstanceOf(PatternException.class);
    }

    @Test
    void a_page_for_the_browser_takes_sheets_of_one_size() {
        Printout two = new Printout(
                "two",
                "two sizes",
                List.of(new PaperSheet("a", 210, 297, List.of()), new PaperSheet("b", 297, 210, List.of())),
                List.of(),
                List.of());
        assertThatThrownBy(() -> HtmlPages.of(two))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("210mm 297mm")
                .hasMessageContaining("'b' of 297mm 210mm");
    }
}

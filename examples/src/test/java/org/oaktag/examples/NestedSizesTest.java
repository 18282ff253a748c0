package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.SizeRange;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.pdf.PdfPages;
import org.oaktag.export.sheet.Nest;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.PaperSheet;
import org.oaktag.export.sheet.Placement;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/** The hooded top in four sizes drawn over each other, on sheets and on one large sheet. */
class NestedSizesTest {

    private static final List<String> NAMES = List.of("S", "M", "L", "<XL> \u05D0");
    private static final List<LineType> LINES =
            List.of(LineType.SIZE_1, LineType.SIZE_2, LineType.SIZE_3, LineType.SIZE_4);

    private static final Map<String, Garment> TOPS = new LinkedHashMap<>();
    private static Allowances allowances = Allowances.of("none yet", Length.ZERO);

    @BeforeAll
    static void draft() {
        BodyMeasurements body = BodyFile.nightCrew().bodies().get(0);
        List<BodyMeasurements> bodies = SizeRange.GB_T_1335.around(body, 1, 2);
        for (int i = 0; i < bodies.size(); i++) {
            var played = HoodedTop.recipe(false).play(HoodedTop.block(bodies.get(i)));
            TOPS.put(NAMES.get(i), played.get(played.size() - 1).after());
        }
        allowances = KnitTop.allowances(top(0));
    }

    private static Garment top(int size) {
        return List.copyOf(TOPS.values()).get(size);
    }

    private static Nest nest() {
        return new Nest(TOPS.entrySet().stream()
                .map(each -> new Nest.Size(each.getKey(), each.getValue()))
                .toList());
    }

    private static Map<String, Placement> figures(Printout printout) {
        Map<String, Placement> figures = new TreeMap<>();
        for (PaperSheet sheet : printout.sheets()) {
            sheet.placements().forEach(each -> figures.put(each.id(), each));
        }
        return figures;
    }

    private static List<Path> cuts(Placement placement, LineType type) {
        return strokes(placement).stream()
                .filter(stroke -> stroke.type() == type)
                .map(Stroke::path)
                .toList();
    }

    private static List<Stroke> strokes(Placement placement) {
        List<Stroke> strokes = new ArrayList<>();
        for (Ink ink : placement.figure().inks()) {
            if (ink instanceof Stroke stroke) {
                strokes.add(stroke);
            }
        }
        return strokes;
    }

    @Test
    void every_piece_is_cut_in_every_size_in_a_line_and_a_layer_of_its_own() {
        Map<String, Placement> figures = figures(Printout.nested(nest(), allowances, Tiling.on(Paper.A4)));
        for (Piece piece : top(0).pieces()) {
            for (int i = 0; i < NAMES.size(); i++) {
                Piece own = top(i).piece(piece.name());
                Placement placement = figures.get("piece-" + piece.name().hyphenated() + "-" + (i + 1));
                assertThat(placement)
                        .as("%s in size %s", piece.name(), NAMES.get(i))
                        .isNotNull();
                assertThat(placement.layer()).contains("size " + FreeText.shown(NAMES.get(i)));
                List<Path> runs = CutLine.of(own, allowances).runs();
                List<Path> drawn = cuts(placement, LINES.get(i));
                assertThat(drawn).hasSameSizeAs(runs);
                for (int k = 0; k < runs.size(); k++) {
                    Bounds expected = runs.get(k).bounds();
                    Bounds actual = drawn.get(k).bounds();
                    assertThat(actual.width()).isCloseTo(expected.width(), within(1e-9));
                    assertThat(actual.height()).isCloseTo(expected.height(), within(1e-9));
                    // A parallel is a fit: of a piece that was moved first, it is one within the same tolerance.
                    assertThat(drawn.get(k).length()).isCloseTo(runs.get(k).length(), within(1e-3));
                }
            }
        }
    }

    /** The drawing of a piece: first what all sizes share, then what is of each size. */
    private static List<Placement> drawings(Map<String, Placement> figures, Piece piece) {
        String id = "piece-" + piece.name().hyphenated();
        List<Placement> drawings = new ArrayList<>();
        for (int i = 0; i <= NAMES.size(); i++) {
            drawings.add(Objects.requireNonNull(figures.get(i == 0 ? id : id + "-" + i)));
        }
        return drawings;
    }

    private static List<Label> labels(Placement placement) {
        List<Label> labels = new ArrayList<>();
        for (Ink ink : placement.figure().inks()) {
            if (ink instanceof Label label) {
                labels.add(label);
            }
        }
        return labels;
    }

    @Test
    void no_label_lies_on_a_line_of_any_size_or_on_another() {
        Map<String, Placement> figures = figures(Printout.nested(nest(), allowances, Tiling.on(Paper.A4)));
        int count = 0;
        for (Piece piece : top(0).pieces()) {
            List<Placement> drawings = drawings(figures, piece);
            List<Path> lines = new ArrayList<>();
            List<Label> labels = new ArrayList<>();
            for (Placement drawing : drawings) {
                strokes(drawing).forEach(stroke -> lines.add(stroke.path()));
                labels.addAll(labels(drawing));
            }
            for (Label label : labels) {
                count++;
                for (Path line : lines) {
                    assertThat(crosses(line, label))
                            .as("%s on %s", label.block().lines(), piece.name())
                            .isFalse();
                }
                assertThat(labels.stream().filter(each -> label.box().overlaps(each.box())))
                        .as("%s on %s", label.block().lines(), piece.name())
                        .containsExactly(label);
            }
        }
        assertThat(count).isGreaterThan(60);
    }

    /** A notch ends on the cut line; where that of another size runs there too, the line does not tell whose it is. */
    @Test
    void a_notch_where_cut_lines_of_sizes_run_on_each_other_has_the_number_of_its_size() {
        Map<String, Placement> figures = figures(Printout.nested(nest(), allowances, Tiling.on(Paper.A4)));
        int unclear = 0;
        for (Piece piece : top(0).pieces()) {
            List<Placement> drawings = drawings(figures, piece);
            for (int i = 0; i < NAMES.size(); i++) {
                Placement drawing = drawings.get(i + 1);
                String number = "" + (i + 1);
                assertThat(labels(drawing))
                        .allSatisfy(label ->
                                assertThat(label.block().lines().get(0).text()).isEqualTo(number));
                for (Point end : notchEnds(drawing, LINES.get(i))) {
                    if (isUnclear(end, i, drawings)) {
                        unclear++;
                        assertThat(labels(drawing).stream()
                                        .mapToDouble(
                                                label -> label.box().center().distanceTo(end)))
                                .as("%s in size %s, %s", piece.name(), NAMES.get(i), end)
                                .anyMatch(distance -> distance < 45);
                    }
                }
            }
        }
        assertThat(unclear).isGreaterThan(20);
    }

    private static boolean isUnclear(Point end, int size, List<Placement> drawings) {
        for (int i = 0; i < NAMES.size(); i++) {
            Placement other = drawings.get(i + 1);
            if (i != size
                    && cuts(other, LINES.get(i)).stream()
                            .anyMatch(run -> run.nearest(end).distance() < 0.5)
                    && notchEnds(other, LINES.get(i)).stream().noneMatch(each -> each.distanceTo(end) < 0.5)) {
                return true;
            }
        }
        return false;
    }

    private static List<Point> notchEnds(Placement drawing, LineType line) {
        return cuts(drawing, LineType.NOTCH).stream()
                .map(Path::end)
                .filter(end -> cuts(drawing, line).stream()
                        .anyMatch(run -> run.nearest(end).distance() < 1e-3))
                .toList();
    }

    @Test
    void a_drill_hole_that_lies_elsewhere_in_another_size_has_the_number_of_its_size() {
        Map<String, Placement> figures = figures(Printout.nested(nest(), allowances, Tiling.on(Paper.A4)));
        List<Placement> front = drawings(figures, top(0).piece(TopNames.FRONT));
        for (int i = 0; i < NAMES.size(); i++) {
            Piece own = top(i).piece(TopNames.FRONT);
            double down = top(0).piece(TopNames.FRONT).outline().bounds().minY()
                    - own.outline().bounds().minY();
            assertThat(own.marks()).hasSize(3);
            for (Mark mark : own.marks()) {
                Point at = mark.point().plus(Vector.of(0, down));
                assertThat(labels(front.get(i + 1)).stream()
                                .mapToDouble(label -> label.box().center().distanceTo(at)))
                        .as("%s in size %s", mark.name(), NAMES.get(i))
                        .anyMatch(distance -> distance < 15);
            }
        }
    }

    /** Every half millimetre of a line lies outside the label's box. */
    private static boolean crosses(Path line, Label label) {
        double length = line.length();
        for (double at = 0; at <= length; at += 0.5) {
            Point point = line.pointAt(at);
            Vector from = point.minus(label.box().center());
            Vector own = from.rotated(-label.box().angle());
            if (Math.abs(own.x()) < label.box().width() / 2
                    && Math.abs(own.y()) < label.box().height() / 2) {
                return true;
            }
        }
        return false;
    }

    @Test
    void the_pdf_has_a_layer_for_each_size_and_says_for_whom_it_is() throws IOException {
        for (Printout printout : List.of(
                Printout.nested(nest(), allowances, Tiling.on(Paper.A4)),
                Printout.nestedWhole(nest(), allowances, Paper.A0))) {
            try (PDDocument document = Loader.loadPDF(PdfPages.of(printout).bytes())) {
                assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
                        .containsExactlyInAnyOrder("size S", "size M", "size L", "size <XL> \u05D0");
                assertThat(document.getDocumentInformation().getTitle()).contains("for sizes S, M, L, <XL> \u05D0");
            }
        }
    }

    @Test
    void every_size_is_explained_in_the_legend() {
        Printout printout = Printout.nested(nest(), allowances, Tiling.on(Paper.A4));
        Set<String> texts = new TreeSet<>();
        for (Placement placement : printout.sheets().get(0).placements()) {
            for (Ink ink : placement.figure().inks()) {
                if (ink instanceof Label label) {
                    label.block().lines().forEach(line -> texts.add(line.text()));
                }
            }
        }
        assertThat(texts)
                .contains("1  cut line, S", "2  cut line, M", "3  cut line, L")
                .anyMatch(text -> text.contains("<XL>"))
                .doesNotContain("cut line", "seam line");
    }

    @Test
    void sizes_that_do_not_belong_together_are_refused() {
        Garment small = top(0);
        assertThatThrownBy(() -> new Nest(List.of(new Nest.Size("S", small))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("2 to 6 sizes");
        assertThatThrownBy(() -> new Nest(List.of(new Nest.Size("S", small), new Nest.Size("S", top(1)))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("'S' twice");
        Garment fewer = small.with(small.pieces().subList(0, 3), List.of(), List.of());
        assertThatThrownBy(() -> new Nest(List.of(new Nest.Size("S", small), new Nest.Size("M", fewer))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("make every size by the same recipe");
    }
}

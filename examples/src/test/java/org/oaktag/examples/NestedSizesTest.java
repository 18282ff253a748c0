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
        allowances = Allowances.industryKnit(top(0));
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
                    assertThat(drawn.get(k).length()).isCloseTo(runs.get(k).length(), within(1e-6));
                }
            }
        }
    }

    @Test
    void no_label_lies_on_a_line_of_any_size() {
        Map<String, Placement> figures = figures(Printout.nested(nest(), allowances, Tiling.on(Paper.A4)));
        int labels = 0;
        for (Piece piece : top(0).pieces()) {
            String id = "piece-" + piece.name().hyphenated();
            List<Path> lines = new ArrayList<>();
            for (int i = 0; i <= NAMES.size(); i++) {
                Placement placement = Objects.requireNonNull(figures.get(i == 0 ? id : id + "-" + i));
                strokes(placement).forEach(stroke -> lines.add(stroke.path()));
            }
            for (Ink ink : Objects.requireNonNull(figures.get(id)).figure().inks()) {
                if (ink instanceof Label label) {
                    labels++;
                    for (Path line : lines) {
                        assertThat(crosses(line, label))
                                .as("%s on %s", label.block().lines(), piece.name())
                                .isFalse();
                    }
                }
            }
        }
        assertThat(labels).isGreaterThan(30);
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
                .contains("cut line, S", "cut line, M", "cut line, L")
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

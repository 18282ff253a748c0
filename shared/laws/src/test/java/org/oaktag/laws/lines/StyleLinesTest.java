package org.oaktag.laws.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Step;
import org.oaktag.block.Style;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.examples.gallery.Wardrobe;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.testkit.lines.LineTable;

/** The lines, the notches and the fit of every style of the gallery, over 1,000 generated adults of each sex. */
class StyleLinesTest {

    private static final List<BodyMeasurements> ADULTS = LineTable.adults(1000);
    private static final double MOST_UNFIT = 0.02;

    static Stream<Style> styles() {
        BodyMeasurements any = ADULTS.get(0);
        return Stream.concat(Wardrobe.of(name -> any).stream().map(GalleryStyle::style), Stream.of(HoodedTop.style()));
    }

    /**
     * No allowance lies flat round a neckline of less than 12 mm, none round an armhole of less than 14 (common
     * practice). Under two in a hundred of the adults of the survey fail any check of the fit with the styles that are
     * shown.
     */
    @ParameterizedTest
    @MethodSource("styles")
    void every_line_is_fair_or_told_and_nearly_everyone_gets_into_every_style(Style style) {
        List<String> unfit = new ArrayList<>();
        for (BodyMeasurements body : ADULTS) {
            Garment garment = style.on(body);
            for (Name piece : List.of(TopNames.FRONT, TopNames.BACK)) {
                assertFairOrTold(garment, piece, TopEdges.NECKLINE, 12);
                assertFairOrTold(garment, piece, TopEdges.ARMHOLE, 14);
            }
            garment.fit().stream()
                    .filter(Fit::isCaution)
                    .findFirst()
                    .ifPresent(fit -> unfit.add(body.name() + ": " + fit));
        }
        assertThat(unfit).hasSizeLessThan((int) (MOST_UNFIT * ADULTS.size()));
    }

    private static void assertFairOrTold(Garment garment, Name name, Name edge, double least) {
        Piece piece = garment.piece(name);
        if (!piece.hasEdge(edge)) {
            return;
        }
        Fairness line = Fairness.of(piece, edge);
        boolean fair = line.changes() == 0 && line.leastRadius() >= least;
        if (!fair) {
            assertThat(garment.cautions())
                    .as("%s on %s", line, garment.wearer().name())
                    .anyMatch(caution -> caution.contains("the " + edge + " of the " + name));
        }
    }

    /** On every fifth of the adults, as the notches take longest. */
    @ParameterizedTest
    @MethodSource("styles")
    void a_style_carries_the_same_notches_on_every_body(Style style) {
        Step notching = Pieces.notchSeams();
        Map<Set<String>, String> sets = new LinkedHashMap<>();
        for (int i = 0; i < ADULTS.size(); i += 5) {
            BodyMeasurements body = ADULTS.get(i);
            sets.putIfAbsent(notches(style.on(body).adjust(notching)), body.name());
        }
        assertThat(sets.values()).hasSize(1);
    }

    private static Set<String> notches(Garment garment) {
        Set<String> notches = new TreeSet<>();
        for (Piece piece : garment.pieces()) {
            for (Notch notch : piece.notches()) {
                notches.add(piece.name() + "." + notch.edge() + ": " + notch.name() + ", " + notch.count());
            }
        }
        return notches;
    }
}

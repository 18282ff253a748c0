package org.oaktag.export.svg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.sheet.Fixture;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FlatShape;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.lay.Effort;
import org.oaktag.lay.Lay;
import org.oaktag.lay.Spread;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/** Sheets of a small top drawn by hand. What they measure is tested where they are read back. */
class SvgSheetTest {

    private static final Garment TOP = Fixture.top();

    /** Moves the hem of the front down by a piece of straight side. */
    private record Longer(String name) implements Step {

        @Override
        public List<Amount> amounts() {
            return List.of(Amount.of("at the hem", mm(30)));
        }

        @Override
        public Reshaped reshape(Garment garment) {
            Piece front = garment.piece(Fixture.FRONT);
            Point side = Point.of(255, 680);
            Point centre = Point.of(0, 680);
            Piece longer = front.redrawn(Map.of(
                    EdgeNames.SIDE,
                            org.oaktag.geometry.Path.polyline(
                                    front.path(EdgeNames.SIDE).start(), side),
                    EdgeNames.HEM, org.oaktag.geometry.Path.polyline(side, centre),
                    EdgeNames.CENTRE,
                            org.oaktag.geometry.Path.polyline(
                                    centre, front.path(EdgeNames.CENTRE).end())));
            return new Reshaped(
                    garment.withPiece(longer),
                    List.of(Note.rule("the hem lies lower by 30.0 mm")),
                    List.of(new Dimension(Fixture.FRONT, Point.of(255, 650), side, "30.0 mm")));
        }
    }

    private static String step() {
        return step("lengthen the front");
    }

    private static String step(String name) {
        return SvgSheet.step(3, Recipe.of("longer", new Longer(name)).play(TOP).get(0))
                .text();
    }

    @Test
    void a_long_title_goes_on_in_a_second_line_and_all_below_it_lies_lower() {
        String step = step("lengthen the front below the waist and above the hem and nowhere else");
        assertThat(step)
                .contains(
                        ">3  lengthen the front below the waist and above the hem and nowhere else: at the hem<",
                        ">30.0 mm<");
        double lower = y(step, "What moved most") - y(step(), "What moved most");
        assertThat(lower).isCloseTo(Font.NAME.lineHeight(), within(1e-3));
    }

    private static double y(String sheet, String text) {
        String before = sheet.substring(0, sheet.indexOf(">" + text + "<"));
        return Double.parseDouble(before.replaceAll("(?s).* y=\"([-0-9.]+)\".*", "$1"));
    }

    @Test
    void a_title_without_end_is_cut_short_in_its_third_line() {
        String step = step("lengthen the front " + "and the front again ".repeat(60) + "for good");
        assertThat(step.split("<text[^>]* font-size=\"9\"", -1)).hasSize(1 + 3);
        assertThat(step).contains("...<");
    }

    private static String pattern() {
        return SvgSheet.pattern(TOP, KnitTop.allowances(TOP)).text();
    }

    @Test
    void every_piece_has_its_group_and_says_what_it_is() {
        String pattern = pattern();
        for (Piece piece : TOP.pieces()) {
            assertThat(pattern).contains("<g id=\"piece-" + piece.name().hyphenated() + "\"");
            assertThat(pattern).contains(">" + piece.name() + "<");
        }
        assertThat(pattern).contains(">cut 1 on fold<", ">cut 1 pair (mirrored)<", ">place on fold<", ">patch corner<");
    }

    @Test
    void a_piece_too_small_to_write_on_is_labelled_below_it() {
        String tab = pattern().replaceAll("(?s).*<g id=\"piece-tab\"", "");
        assertThat(tab).contains(">tab<", ">cut 1 pair (mirrored)<", ">contrast<");
    }

    @Test
    void a_single_notch_is_one_line_and_a_double_notch_two() {
        String pattern = pattern();
        // Beside them the centre points at both ends of the fold.
        assertThat(notches(pattern, "front")).isEqualTo(1 + 2);
        assertThat(notches(pattern, "back")).isEqualTo(2 + 2);
    }

    /** Straight wide lines of a piece that are not part of its cut line. */
    private static long notches(String pattern, String piece) {
        String group =
                pattern.replaceAll("(?s).*<g id=\"piece-" + piece + "\"", "").replaceAll("(?s)</g>.*", "");
        return group.lines()
                .filter(line ->
                        line.matches(" *<path d=\"M [-0-9.]+ [-0-9.]+ L [-0-9.]+ [-0-9.]+\".*stroke-width=\"0.5\".*"))
                .count();
    }

    @Test
    void allowances_stand_in_the_header() {
        assertThat(pattern())
                .contains(">Allowances (industry knit)<", ">6.0 mm: neckline<", ">10.0 mm: all other seams<");
    }

    /** An eighth of a yard is 114.3 mm: 5 of them are 571.5 mm, for which nobody may be told to buy 0.57 m. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 7, 10, 100, 114.3})
    void a_lay_never_tells_to_buy_less_than_it_takes(double step) {
        Garment body = Garment.of("trial body", TOP.wearer(), TOP.pieces().subList(0, 2), List.of(), List.of());
        Spread spread = Spread.single(cm(150)).soldBy(mm(step));
        Lay lay = Lay.of(CutList.of(body), Fixture.SHELL, Allowances.of("ten", mm(10)), spread, Effort.tries(4));
        Matcher told = Pattern.compile(">Buy ([0-9.]+) m<")
                .matcher(SvgSheet.lay(lay, Cloths.of(TOP)).text());
        assertThat(told.find()).isTrue();
        double bought = 1000 * Double.parseDouble(told.group(1));
        double steps = Math.ceil(lay.length().mm() / step);
        assertThat(bought).isBetween(steps * step - 1e-6, steps * step + 10);
    }

    @Test
    void a_step_shows_before_and_after_with_its_amount_and_what_moved() {
        String step = step();
        assertThat(step)
                .contains(">3  lengthen the front: at the hem 30.0 mm<", ">30.0 mm (1 3/16 in)<", ">front.side<");
        assertThat(step).contains(">Rule: the hem lies lower by 30.0 mm (1 3/16 in)<");
        // Three edges moved: dashed and light before, wide and dark after.
        assertThat(step.lines().filter(line -> line.contains("4.2 1.05"))).hasSize(3 + 1);
        assertThat(step).doesNotContain(">back<");
    }

    @Test
    void a_top_without_a_hood_shows_its_inside_at_the_neck() {
        Garment top = KnitTop.draft(
                BodyMeasurements.builder()
                        .name("Juno")
                        .figure(Figure.WOMAN)
                        .bustGirth(Length.cm(94))
                        .height(Length.cm(165))
                        .build(),
                TopEase.standard(),
                Cloth.knit("loop terry", Percent.percent(25)));
        assertThat(SvgSheet.flat(top).text()).contains(">front<", ">back<", "not true size", "fill-opacity");
    }

    @Test
    void a_garment_of_which_nobody_said_how_it_lies_is_shown_with_its_pieces_in_a_row() {
        Garment band = Garment.of("band", TOP.wearer(), List.of(Fixture.band()), List.of(), List.of());
        assertThat(band.laidFlat(Aspect.FRONT)).hasSize(1).isEqualTo(band.laidFlat(Aspect.BACK));
        assertThat(TOP.laidFlat(Aspect.FRONT)).hasSameSizeAs(TOP.pieces());
        for (FlatShape shape : TOP.laidFlat(Aspect.FRONT)) {
            for (FlatShape other : TOP.laidFlat(Aspect.FRONT)) {
                double apart = other.outline().bounds().minX()
                        - shape.outline().bounds().maxX();
                double before = shape.outline().bounds().minX()
                        - other.outline().bounds().maxX();
                assertThat(shape.equals(other) || Math.max(apart, before) >= 30 - 1e-9)
                        .isTrue();
            }
        }
        assertThat(SvgSheet.flat(band).text()).contains(">front<", ">back<", "not true size");
    }

    @Test
    void a_sheet_is_stored_in_utf_8(@TempDir Path folder) throws IOException {
        Garment top = Fixture.top("S\u00F8ren \uD83E\uDDE5");
        SvgSheet sheet = SvgSheet.flat(top);
        Path file = folder.resolve("flat.svg");
        sheet.writeTo(file);
        assertThat(Files.readString(file)).isEqualTo(sheet.text()).contains("S\u00F8ren \uD83E\uDDE5");
    }

    @Test
    void the_same_garment_gives_the_same_text() {
        assertThat(pattern())
                .isEqualTo(
                        SvgSheet.pattern(Fixture.top(), KnitTop.allowances(TOP)).text());
        assertThat(step()).isEqualTo(step());
    }
}

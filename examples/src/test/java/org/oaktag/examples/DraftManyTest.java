package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.skirt.SkirtShapes.aLine;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.block.Style;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.measure.Length;
import org.oaktag.recipe.json.BodyJson;
import org.oaktag.recipe.json.RecipeJson;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.StraightSkirt;

/** One style for many bodies, and the style as it is written down. */
class DraftManyTest {

    @TempDir
    private Path folder;

    @Test
    void rows_stand_in_the_order_of_the_file_and_are_the_same_for_any_number_of_threads() throws IOException {
        Path in = bodies(200);
        assertThat(run(in, "one.csv", "--threads", "1")).contains("201 rows", "200 made", "1 broken");
        run(in, "three.csv", "--threads", "3");
        List<String> rows = Files.readAllLines(folder.resolve("one.csv"));
        assertThat(folder.resolve("three.csv")).hasSameBinaryContentAs(folder.resolve("one.csv"));
        assertThat(rows).hasSize(202);
        assertThat(rows.get(101)).startsWith("102,,broken,").contains("line 102");
        assertThat(rows.get(102)).startsWith("103,body 100,made,").contains(",21,21,0.000000,6.000,");
    }

    @Test
    void a_skirt_is_made_for_many_bodies_from_the_measures_that_it_needs_alone() throws IOException {
        Style skirt = new Style(
                StraightSkirt.BLOCK, SkirtEase.standard(), TweedSkirt.cloth(), Recipe.of("A-line skirt", aLine(0.5)));
        Path recipe = Files.writeString(
                folder.resolve("skirt.json"), RecipeJson.standard().write(skirt));
        Path in = folder.resolve("in.csv");
        Files.writeString(in, """
                name,figure,waist_girth_mm,hip_girth_mm,waist_to_hip_mm,height_mm
                Mira,woman,680,940,210,1780
                Ines,woman,740,1120,215,1605
                Bram,man,980,1010,240,1820
                Nell,woman,740,1120,,1605
                """);
        assertThat(run(in, "out.csv", "--recipe", recipe.toString())).contains("4 rows", "3 made");
        List<String> rows = Files.readAllLines(folder.resolve("out.csv"));
        assertThat(rows.get(0)).contains("waist_girth_mm", "hip_girth_mm", "hem_girth_mm");
        assertThat(rows.get(1)).startsWith("2,Mira,made,696.000,");
        assertThat(rows.get(3)).startsWith("4,Bram,made,996.000,");
        assertThat(rows.get(4)).startsWith("5,").doesNotContain(",made,").contains("waist to hip");
    }

    @Test
    void an_interrupted_run_is_gone_on_with_to_the_same_bytes() throws IOException {
        Path in = bodies(40);
        run(in, "whole.csv");
        byte[] whole = Files.readAllBytes(folder.resolve("whole.csv"));
        Files.write(folder.resolve("part.csv"), java.util.Arrays.copyOf(whole, whole.length / 2));
        run(in, "part.csv", "--resume");
        assertThat(folder.resolve("part.csv")).hasBinaryContent(whole);
    }

    @Test
    void a_line_that_is_no_body_is_a_row_with_the_reason_and_those_below_it_are_made() throws IOException {
        Path in = folder.resolve("in.csv");
        Files.writeString(in, """
                name,figure,bust_girth_mm,height_mm

                "open,woman,900,1650
                tall,woman,900,16500
                ,,,
                "Mira, of the night crew",woman,900,1650
                """);
        assertThat(run(in, "out.csv"))
                .contains("3 rows", "1 made", "1 broken: a quoted cell", "1 broken: must be # to # mm");
        List<String> rows = Files.readAllLines(folder.resolve("out.csv"));
        assertThat(rows.get(1)).startsWith("3,,broken,").contains("in.csv line 3: a quoted cell must end");
        assertThat(rows.get(2)).startsWith("4,,broken,").contains("in.csv line 4 column height_mm", "16500.0 mm");
        assertThat(rows.get(3)).startsWith("6,\"Mira, of the night crew\",made,");
    }

    @Test
    void a_body_with_an_open_question_is_a_row_that_says_so_and_is_made_once_it_is_answered() throws IOException {
        Path in = folder.resolve("in.csv");
        String text = """
                name,figure,bust_girth_mm,height_mm,waist_girth_mm,confirmed
                Mira,woman,900,1650,430,
                Juno,woman,1200,1650,,
                Nell,woman,900,1650,430,waist_girth
                Oskar,man,1000,1780,,
                """;
        Files.writeString(in, text);
        assertThat(run(in, "out.csv"))
                .contains("2 made", "1 asked: waist girth", "1 asked: hip girth", "mend what is wrong in in.csv");
        List<String> rows = Files.readAllLines(folder.resolve("out.csv"));
        assertThat(rows.get(1)).startsWith("2,Mira,asked,").contains("got 430.0 mm");
        assertThat(rows.get(2)).startsWith("3,Juno,asked,").contains("must be taken where the bust girth is over");
        assertThat(rows.get(3)).startsWith("4,Nell,made,");
        assertThat(run(in, "all.csv", "--confirmed")).contains("4 made").doesNotContain("asked");
    }

    @Test
    void a_body_that_the_style_does_not_fit_is_a_row_with_the_reason() throws IOException {
        Path recipe = Files.writeString(
                folder.resolve("style.json"), shipped().replaceFirst("\"by_mm\": 25", "\"by_mm\": 2500"));
        Path in = bodies(2);
        assertThat(run(in, "out.csv", "--recipe", recipe.toString())).contains("2 refused: ");
        assertThat(Files.readAllLines(folder.resolve("out.csv")).get(1)).startsWith("2,body 0,refused,");
    }

    @Test
    void rows_of_another_file_or_style_are_not_gone_on_with() throws IOException {
        Path in = bodies(3);
        run(in, "out.csv");
        Path out = folder.resolve("out.csv");
        String rows = Files.readString(out);
        Files.writeString(in, Files.readString(in).replace("body 0", "\nbody 0"));
        assertThat(refusal(in, out, "--resume")).contains("must hold rows of in.csv", "leave out --resume");
        assertThat(out).hasContent(rows);
        Files.writeString(out, "line,name\n2,body 0\n");
        assertThat(refusal(in, out, "--resume")).contains("must have the heads of this style");
    }

    @Test
    void what_cannot_be_run_is_said_and_nothing_is_written_over() throws IOException {
        Path in = bodies(2);
        String text = Files.readString(in);
        assertThat(refusal(in, in)).contains("OUT.csv: must be another file than IN.csv");
        assertThat(in).hasContent(text);
        Path out = folder.resolve("out.csv");
        assertThat(refusal(folder.resolve("none.csv"), out)).contains("file of bodies: must exist");
        assertThat(refusal(in, out, "--threads", "0")).contains("threads: must be 1 or more");
        assertThat(refusal(in, folder.resolve("none").resolve("out.csv"))).contains("cannot be read or written");
        assertThat(out).doesNotExist();
    }

    @Test
    void the_style_that_is_shipped_as_json_is_the_hooded_top() throws IOException {
        String json = shipped();
        assertThat(RecipeJson.standard().read(json)).isEqualTo(HoodedTop.style());
        assertThat(RecipeJson.standard().write(HoodedTop.style())).isEqualTo(json);
        BodyMeasurements body = BodyFile.nightCrew().bodies().get(0);
        assertThat(RecipeJson.standard().read(json).on(body))
                .isEqualTo(HoodedTop.recipe(false).applyTo(HoodedTop.block(body)));
    }

    @Test
    void what_is_unknown_in_a_style_is_refused_with_what_is_known() throws IOException {
        String json = shipped();
        refused(json.replace("\"version\": 1", "\"version\": 2"), "must be 1");
        refused(json.replace("widen neckline", "widen neklin"), "did you mean 'widen neckline'?");
        refused(json.replace("along_mm", "along_cm"), "did you mean 'along_mm'?");
        refused(json.replace("\"title\"", "\"titles\""), "did you mean 'title'?");
        refused(json.replace("\"along_mm\": 22", "\"along_mm\": \"22\""), "a number");
        refused(json + "{}", "JSON");
    }

    @Test
    void bodies_come_back_from_json_as_they_were() {
        List<BodyMeasurements> crew = BodyFile.nightCrew().bodies();
        assertThat(BodyJson.read(BodyJson.write(crew))).isEqualTo(crew);
        List<BodyMeasurements> narrow = List.of(crew.get(0).toBuilder()
                .waistGirth(Length.mm(445.1))
                .confirmed(BodyMeasure.WAIST_GIRTH)
                .build());
        String confirmed = BodyJson.write(narrow);
        assertThat(BodyJson.read(confirmed)).isEqualTo(narrow);
        assertThatThrownBy(() -> BodyJson.read(confirmed.replace("\"waist_girth\"", "")))
                .hasMessageContaining("confirm the waist girth");
        assertThatThrownBy(() -> BodyJson.read(confirmed.replace("\"waist_girth\"", "\"waste_girth\"")))
                .hasMessageContaining("did you mean 'waist_girth'?");
        String written = BodyJson.write(crew);
        assertThatThrownBy(() -> BodyJson.read(written.replaceFirst("bust_girth_mm", "bust_grith_mm")))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("did you mean 'bust_girth_mm'?");
    }

    private static void refused(String json, String message) {
        assertThatThrownBy(() -> RecipeJson.standard().read(json))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(message);
    }

    private static String shipped() throws IOException {
        try (var stream = Objects.requireNonNull(HoodedTop.class.getResourceAsStream("hooded-top.json"))) {
            return new String(stream.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }

    private String run(Path in, String out, String... more) {
        StringWriter told = new StringWriter();
        List<String> args = new java.util.ArrayList<>(
                List.of(in.toString(), folder.resolve(out).toString()));
        args.addAll(List.of(more));
        int code =
                DraftMany.run(new PrintWriter(told), new PrintWriter(new StringWriter()), args.toArray(String[]::new));
        assertThat(code).isZero();
        return told.toString();
    }

    private static String refusal(Path in, Path out, String... more) {
        StringWriter told = new StringWriter();
        List<String> args = new java.util.ArrayList<>(List.of(in.toString(), out.toString()));
        args.addAll(List.of(more));
        int code =
                DraftMany.run(new PrintWriter(new StringWriter()), new PrintWriter(told), args.toArray(String[]::new));
        assertThat(code).isEqualTo(1);
        return told.toString();
    }

    /** A file of so many bodies and one line in the middle that is none. */
    private Path bodies(int count) throws IOException {
        StringBuilder text = new StringBuilder("name,figure,bust_girth_mm,height_mm\n");
        for (int i = 0; i < count; i++) {
            text.append(i == count / 2 ? "nobody,woman\n" : "");
            text.append("body ").append(i).append(i % 2 == 0 ? ",woman," : ",man,");
            text.append(900 + i % 90).append(",").append(1650 + i % 70).append("\n");
        }
        return Files.writeString(folder.resolve("in.csv"), text);
    }
}

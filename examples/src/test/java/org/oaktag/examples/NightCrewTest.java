package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjustments.Necklines;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Length;

/** The main job as its users meet it. */
class NightCrewTest {

    private static final String HEAD = "name,figure,bust_girth_cm,height_cm\n";

    @TempDir
    private Path folder = Path.of("");

    static Stream<String> crew() {
        return BodyFile.nightCrew().bodies().stream().map(BodyMeasurements::name);
    }

    private Path out() {
        return folder.resolve("out");
    }

    private Run withBodies(String content, String... more) throws IOException {
        Path file = folder.resolve("bodies.csv");
        Files.writeString(file, content);
        String[] args = Stream.concat(Stream.of("--bodies", file.toString()), Arrays.stream(more))
                .toArray(String[]::new);
        return Run.into(out(), args);
    }

    private void assertNothingWritten() {
        assertThat(Run.entries(folder)).isSubsetOf("bodies.csv");
    }

    @ParameterizedTest
    @MethodSource("crew")
    void every_one_of_the_night_crew_gets_a_top_whose_seams_are_true(String body) {
        Run run = Run.into(out(), "--body", body);
        assertThat(run.code()).as(run.err()).isZero();
        Map<String, String> files = Run.files(out());
        assertThat(files.keySet())
                .contains(
                        "pattern.svg",
                        "pattern-a4.pdf",
                        "pattern-a4.html",
                        "pattern-copy-shop.pdf",
                        "flat.svg",
                        "seams.csv",
                        "changes.csv",
                        "finished.csv",
                        "cut-list.csv")
                .contains("assembly.csv", "lay-shell.svg", "lay-contrast.svg", "lay-lining.svg", "lay-rib.svg")
                .filteredOn(name -> name.matches("steps/\\d\\d-[a-z-]+\\.svg"))
                .hasSize(15);
        List<Csv.Row> seams = Csv.rows(files.getOrDefault("seams.csv", ""));
        assertThat(seams).hasSizeGreaterThan(15).allSatisfy(seam -> {
            assertThat(seam.text("true")).as(seam.text("seam")).isEqualTo("true");
            assertThat(seam.number("length_b_mm") - seam.number("length_a_mm"))
                    .isCloseTo(seam.number("difference_mm"), within(2e-4));
            assertThat(seam.number("difference_mm")).isCloseTo(seam.number("expected_difference_mm"), within(0.01));
        });
        assertThat(run.out()).contains(" for " + body).contains("every seam is true again");
    }

    @Test
    void the_account_is_at_most_a_hundred_columns_wide_and_has_no_control_characters() {
        for (String body : crew().toList()) {
            String account =
                    Run.into(out(), "--body", body, "--hood-drawstring").out();
            assertThat(account.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
            assertThat(account.chars().filter(c -> c != '\n').noneMatch(Character::isISOControl))
                    .isTrue();
        }
    }

    @Test
    void the_account_says_what_was_derived_and_how() {
        Run run = Run.into(out(), "--body", "Juno");
        assertThat(run.out())
                .containsPattern("head girth +[0-9.]+\\*")
                .contains("give or take")
                .contains("NATICK/TR-15/007");
        assertThat(run.out()).contains("the head girth is derived, not taken");
    }

    @Test
    void the_account_marks_a_derived_measure_beside_the_finished_ones_too() {
        String account = Run.into(out(), "--body", "Soren").out();
        assertThat(account.substring(account.indexOf("Finished measures")))
                .containsPattern("cuff girth +[0-9.]+ +[0-9.]+\\* .*wrist girth")
                .containsPattern("chest girth +[0-9.]+ +[0-9.]+  .*bust girth")
                .contains("* derived from other measures of the body, not taken");
    }

    @Test
    void where_every_letter_is_shown_nothing_is_said_to_be_left_out() {
        assertThat(Run.into(out()).out()).doesNotContain("Left out");
    }

    @Test
    void a_drawstring_is_cautioned_about_on_an_adults_hood() {
        assertThat(Run.into(out(), "--hood-drawstring").out())
                .contains("Cautions")
                .contains("check the rules in force where it is sold");
        assertThat(Run.into(out()).out()).doesNotContain("Cautions");
    }

    @Test
    void without_arguments_the_first_of_the_night_crew_is_taken() {
        assertThat(Run.into(out()).out()).startsWith("night crew hooded top for Mira");
    }

    @Test
    void help_says_what_it_does_and_ends_well() {
        Run run = Run.of("--help");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("--bodies", "--body", "--out", "--hood-drawstring", "Exit codes")
                .contains("Given 2 to 6 times");
    }

    @ParameterizedTest
    @CsvSource({"--nonsense", "--body", "'--out,x,y'", "top.svg"})
    void wrong_arguments_end_with_2_and_the_usage(String arguments) {
        Run run = Run.of(arguments.split(",", -1));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("Usage: night-crew");
        assertThat(run.out()).isEmpty();
    }

    /** Bars stand for line ends; parts of the message are parted by a tilde. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            missing column,    'name,figure,height_cm|Nell,woman,168|',                     'line 1~bust_girth'
            not a number,      'name,figure,bust_girth_cm,height_cm|Nell,woman,wide,168|',  'line 2~bust_girth_cm~wide'
            negative,          'name,figure,bust_girth_cm,height_cm|Nell,woman,-94,168|',   'line 2~bust_girth_cm~-94'
            cm in a mm column, 'name,figure,bust_girth_mm,height_cm|Nell,woman,94,168|',    'line 2~bust_girth_mm~94.0 mm~centimetres read as millimetres'
            in in a cm column, 'name,figure,bust_girth_cm,height_cm|Nell,woman,37,168|',    'line 2~bust_girth_cm~37~inches read as centimetres'
            duplicate names,   'name,figure,bust_girth_cm,height_cm|A,woman,94,168|A,man,96,180|', 'line 3~A~line 2'
            empty file,        '',                                                          'bodies.csv~empty'
            NaN,               'name,figure,bust_girth_cm,height_cm|Nell,woman,NaN,168|',   'line 2~bust_girth_cm~NaN'
            """)
    void a_bad_file_is_refused_with_line_column_and_value(String what, String content, String parts)
            throws IOException {
        Run run = withBodies(content.replace("|", "\n"));
        assertThat(run.code()).as(what).isEqualTo(1);
        assertThat(run.err())
                .startsWith("night-crew: ")
                .contains(parts.split("~", -1))
                .doesNotContain("\tat ");
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.out()).isEmpty();
        assertNothingWritten();
    }

    @Test
    void a_file_that_is_not_there_is_refused() {
        Run run = Run.into(out(), "--bodies", folder.resolve("none.csv").toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("must exist and be readable").contains("none.csv");
        assertNothingWritten();
    }

    @Test
    void an_unknown_body_is_refused_and_the_nearest_named() {
        Run run = Run.into(out(), "--body", "Mire");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("'Mire'").contains("did you mean 'Mira'?");
        assertNothingWritten();
    }

    @Test
    void a_sleeve_that_cannot_be_as_wide_as_its_arm_is_told_with_what_would_help() throws IOException {
        String nell = "name,figure,bust_girth_cm,height_cm,upper_arm_girth_cm\nNell,woman,90,168,52\n";
        assertThat(withBodies(nell).err())
                .startsWith("night-crew: bodies.csv line 2, upper arm girth of 'Nell': is asked about outside")
                .contains(
                        "confirm the upper arm girth (in the column 'confirmed', or all of the file with --confirmed)");
        assertNothingWritten();
        Run run = withBodies(nell, "--confirmed");
        assertThat(run.code()).isZero();
        assertThat(run.out().substring(run.out().indexOf("Cautions")).replaceAll("\\s+", " "))
                .contains("narrower than asked")
                .contains("give more ease at the bust, or less at the upper arm")
                .containsPattern("sleeve width [0-9.]+ mm is [0-9.]+ mm narrower than the upper arm \\(520.0 mm\\)");
    }

    /** No argument of the program asks for this; a maker who alters the recipe meets it. */
    @Test
    void an_amount_that_leaves_no_shoulder_is_refused_with_step_value_and_range() {
        Recipe levelling = HoodedTop.recipe(false).inserting(0, Necklines.widenNeckline(Length.mm(130)));
        Garment block = HoodedTop.block(BodyFile.nightCrew().body("Mira"));
        assertThatThrownBy(() -> levelling.applyTo(block))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("step 1 (widen the neckline), neckline of the front")
                // 20 mm of the seam must be left: 148.6 - 20 = 128.6, less what the two figures are rounded by.
                .hasMessageContaining("on a shoulder of 148.6 mm")
                .hasMessageContaining("to 128.5 mm")
                .hasMessageContaining("got 130.0 mm");
    }

    @Test
    void a_child_gets_no_drawstring_and_the_rule_is_named() throws IOException {
        Run run = withBodies(CHILD, "--hood-drawstring");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains("drawstring")
                .contains("ASTM F1816")
                .contains("EN 14682")
                .contains("Pip");
        assertNothingWritten();
    }

    @Test
    void a_child_gets_a_hood_without_a_cord_and_a_caution() throws IOException {
        Run run = withBodies(CHILD);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).contains("Cautions").contains("no cord may be put into this hood");
    }

    /** An invented child of eight with every measure that the draft asks for. */
    private static final String CHILD =
            "name,figure,age_years,bust_girth_cm,waist_girth_cm,hip_girth_cm,neck_base_girth_cm,"
                    + "upper_arm_girth_cm,wrist_girth_cm,hand_girth_cm,hand_girth_with_thumb_cm,head_girth_cm,shoulder_length_cm,"
                    + "across_back_cm,back_waist_length_cm,waist_to_hip_cm,nape_to_armpit_cm,arm_length_cm,height_cm\n"
                    + "Pip,girl,8,66,58,70,29.5,20,13,16,19,52.5,10,27.5,29,15,12.5,43,128\n";

    @Test
    void a_hostile_name_is_shown_harmlessly_everywhere() throws IOException {
        String name =
                "</text><script>alert(1)</script> & \"q\" ' \u202Eevil\u2066 \u05D0\u05D1\u05D2 \uD83E\uDDE5 \u001B[31m"
                        + "x".repeat(300);
        Run run = withBodies(HEAD + "\"" + name.replace("\"", "\"\"") + "\",woman,94,168\n");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out())
                .doesNotContain("\u001B")
                .doesNotContain("\u202E")
                .contains("Left out in the PDF\n  no font has \uD83E\uDDE5: a box");
        Run.files(out()).forEach((file, text) -> {
            if (file.endsWith(".pdf")) {
                assertThat(text)
                        .doesNotContain("/JavaScript")
                        .doesNotContain("/OpenAction")
                        .doesNotContain("/Annots")
                        .contains("05D0 05D1 05D2".replace(" ", "").toLowerCase(java.util.Locale.ROOT));
            }
            if (file.endsWith(".html")) {
                assertThat(text)
                        .doesNotContain("<script")
                        .doesNotContain("\u202E")
                        .doesNotContain("\u001B")
                        .startsWith("<!DOCTYPE html>\n");
                assertThat(SvgReader.read(text.replace("<!DOCTYPE html>", "")).title())
                        .contains("<script>alert(1)</script>")
                        .contains("\u05D0\u05D1\u05D2");
            }
            if (file.endsWith(".svg")) {
                assertThat(text)
                        .doesNotContain("<script")
                        .doesNotContain("\u202E")
                        .doesNotContain("\u001B");
                SvgReader sheet = SvgReader.read(text);
                if (file.equals("pattern.svg")) {
                    assertThat(sheet.title())
                            .contains("<script>alert(1)</script>")
                            .contains("\u05D0\u05D1\u05D2");
                }
            }
        });
    }

    @Test
    void an_output_folder_that_is_a_file_is_refused_and_left_alone() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        Run run = Run.into(file);
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("must be a folder").contains("taken");
        assertThat(Files.readString(file)).isEqualTo("mine");
        assertThat(Run.entries(folder)).containsExactly("taken");
    }

    @Test
    void an_output_folder_that_cannot_be_made_is_refused() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        Run run = Run.into(file.resolve("deeper").resolve("out"));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("must be a place that can be written to").doesNotContain("\tat ");
        assertThat(Run.entries(folder)).containsExactly("taken");
    }
}

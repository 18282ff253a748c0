package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Doubt;
import org.oaktag.body.Figure;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

class BodyFileTest {

    private static final String HEAD = "name,figure,bust_girth_cm,height_cm\n";

    @Test
    void the_night_crew_are_eight_grown_people_of_either_sex_and_different_builds() {
        List<BodyMeasurements> crew = BodyFile.nightCrew().bodies();
        assertThat(crew).hasSize(8).noneMatch(BodyMeasurements::isChild);
        assertThat(crew).filteredOn(body -> body.figure() == Figure.WOMAN).hasSize(4);
        assertThat(crew).extracting(BodyMeasurements::bustGirth).doesNotHaveDuplicates();
        assertThat(crew).extracting(BodyMeasurements::height).doesNotHaveDuplicates();
        assertThat(crew).anyMatch(body -> !body.derived().isEmpty());
        assertThat(crew).allSatisfy(body -> assertThat(body.measures()).hasSize(BodyMeasure.values().length));
    }

    @Test
    void a_column_is_read_in_its_unit() {
        BodyMeasurements body = only("""
                name,figure,bust_girth_cm,height_mm,shoulder_length_in,across_back_in
                Nell,woman,94,1680,5.25,15 1/2
                """);
        assertThat(body.bustGirth().mm()).isEqualTo(940);
        assertThat(body.height().mm()).isEqualTo(1680);
        assertThat(body.shoulderLength().mm()).isCloseTo(133.35, within(1e-12));
        assertThat(body.acrossBack().mm()).isCloseTo(15.5 * 25.4, within(1e-12));
    }

    @Test
    void a_column_may_go_by_the_other_term_for_its_measure() {
        assertThat(only("name,figure,chest_girth_cm,stature_cm\nNell,woman,94,168\n"))
                .isEqualTo(only(HEAD + "Nell,woman,94,168\n"));
    }

    @Test
    void a_blank_cell_is_a_measure_that_was_not_taken() {
        BodyMeasurements body =
                only("name,figure,bust_girth_cm,height_cm,neck_base_girth_cm,wrist_girth_cm\nNell,woman,94,168,,15\n");
        assertThat(body.derived())
                .anySatisfy(rule -> assertThat(rule.measure()).isEqualTo(BodyMeasure.NECK_BASE_GIRTH))
                .noneSatisfy(rule -> assertThat(rule.measure()).isEqualTo(BodyMeasure.WRIST_GIRTH));
    }

    /** Bars stand for line ends. */
    @ParameterizedTest(name = "{0}")
    @CsvSource(textBlock = """
            byte order mark,        '\uFEFFname,figure,bust_girth_cm,height_cm|Nell,woman,94,168|'
            quoted cells,           '"name","figure","bust_girth_cm","height_cm"|"Nell","woman","94","168"|'
            blanks round cells,     'name , figure , bust_girth_cm, height_cm| Nell , woman , 94 , 168|'
            capitals,               'Name,Figure,BUST_GIRTH_CM,Height_cm|Nell,WOMAN,94,168|'
            no line end at the end, 'name,figure,bust_girth_cm,height_cm|Nell,woman,94,168'
            blank lines,            '|name,figure,bust_girth_cm,height_cm||Nell,woman,94,168||,,,|'
            another order,          'height_cm,name,bust_girth_cm,figure|168,Nell,94,woman|'
            """)
    void the_form_of_the_file_does_not_matter(String form, String content) {
        BodyMeasurements expected = only(HEAD + "Nell,woman,94,168\n");
        assertThat(only(content.replace("|", "\n"))).as(form).isEqualTo(expected);
        assertThat(only(content.replace("|", "\r\n"))).as(form).isEqualTo(expected);
    }

    @Test
    void a_name_may_hold_commas_quotes_and_letters_of_any_script() {
        assertThat(only(HEAD + "\"Zoë \"\"Zo\"\" Ωmega, night shift\",woman,94,168\n")
                        .name())
                .isEqualTo("Zoë \"Zo\" Ωmega, night shift");
    }

    @Test
    void a_child_carries_its_age() {
        BodyMeasurements child = only("name,figure,age_years,bust_girth_cm,height_cm\nPip,girl,6,60,116\n");
        assertThat(child.isChild()).isTrue();
        assertThat(child.ageYears()).hasValue(6);
    }

    @Test
    void an_empty_file_is_refused() {
        refused("", "crew.csv: must hold a line of column heads and a line for each body; got an empty file");
        refused("\n\n", "crew.csv: must hold a line of column heads and a line for each body; got an empty file");
    }

    @Test
    void a_file_without_bodies_is_refused() {
        refused(HEAD, "crew.csv: must hold at least one body; got column heads and nothing below");
    }

    @Test
    void a_missing_column_is_refused() {
        refused(
                "name,figure,height_cm\nNell,woman,168\n",
                "crew.csv line 1: the columns name, figure, bust_girth, height (in mm, cm or in) must be there for a knit top;"
                        + " got no bust_girth_cm");
        refused(
                "bust_girth_cm\n94\n",
                "crew.csv line 1: the columns name, figure, bust_girth, height (in mm, cm or in) must be there for a knit top;"
                        + " got no name, no figure, no height_cm");
    }

    @Test
    void an_unknown_column_is_refused_and_the_nearest_named() {
        refused(
                "name,figure,bust_grith_cm,height_cm\nNell,woman,94,168\n",
                "crew.csv line 1 column 3: a column must be name, figure, age_years, confirmed, or a measure of ISO 8559-1 and its"
                        + " unit (mm, cm or in); got 'bust_grith_cm'; did you mean 'bust_girth_cm'?");
        refused(
                "name,figure,bust_girth,height_cm\nNell,woman,94,168\n",
                "crew.csv line 1 column 3: a column must be name, figure, age_years, confirmed, or a measure of ISO 8559-1 and its"
                        + " unit (mm, cm or in); got 'bust_girth'; say the unit: 'bust_girth_mm', 'bust_girth_cm' or"
                        + " 'bust_girth_in'");
        refused(
                "name,figure,bust_girth_cm,height_cm,\nNell,woman,94,168,\n",
                "crew.csv line 1 column 5: a column must be name, figure, age_years, confirmed, or a measure of ISO 8559-1 and its"
                        + " unit (mm, cm or in); got ''");
    }

    @Test
    void a_measure_with_two_columns_is_refused() {
        refused(
                "name,figure,bust_girth_cm,height_cm,bust_girth_in\nNell,woman,94,168,37\n",
                "crew.csv line 1 column 5: each measure must have one column; got 'bust_girth_in' beside"
                        + " 'bust_girth_cm'; leave one of them out");
        refused(
                "name,figure,bust_girth_cm,height_cm,chest_girth_cm\nNell,woman,94,168,94\n",
                "crew.csv line 1 column 5: each measure must have one column; got 'chest_girth_cm' beside"
                        + " 'bust_girth_cm'; leave one of them out");
        refused(
                "name,name,figure,bust_girth_cm,height_cm\nNell,Nell,woman,94,168\n",
                "crew.csv line 1 column 2: each measure must have one column; got 'name' beside 'name';"
                        + " leave one of them out");
    }

    @Test
    void semicolons_and_tabs_between_cells_are_refused() {
        refused("name;figure\nNell;woman\n", "crew.csv line 1: cells must be parted by commas; got semicolons");
        refused("name\tfigure\nNell\twoman\n", "crew.csv line 1: cells must be parted by commas; got tabs");
    }

    /** 48.48 cm from 19.086... in, as a program writes it that multiplies in binary. */
    @Test
    void a_number_may_have_as_many_decimals_as_a_program_writes() {
        assertThat(only(HEAD.replace("height_cm", "height_cm,arm_length_cm") + "Nell,woman,94,150,48.480000000000004\n")
                        .armLength())
                .isEqualTo(Length.cm(48.480000000000004));
    }

    @Test
    void a_measure_far_from_the_others_is_asked_about_and_goes_once_it_is_confirmed() {
        String head = "name,figure,bust_girth_cm,height_cm,waist_girth_cm,confirmed\n";
        refused(
                head + "Nell,woman,94,168,44,\n",
                "crew.csv line 2, waist girth of 'Nell': is asked about outside 609.5 to 935.9 mm, 4 spreads of 40.8 mm"
                        + " about 772.7 mm = 0.7767 x bust girth 940.0 mm + 42.6 mm; got 440.0 mm; half of the whole? that"
                        + " would be 880.0 mm; if it is meant, confirm the waist girth (in the column 'confirmed', or all of"
                        + " the file with --confirmed)");
        assertThat(only(head + "Nell,woman,94,168,44,waist_girth\n").waistGirth())
                .isEqualTo(Length.cm(44));
        assertThat(only(head + "Nell,woman,120,168,44,hip_girth Waist_Girth\n").waistGirth())
                .isEqualTo(Length.cm(44));
        assertThat(only(head + "Nell,woman,94,168,44,all\n").waistGirth()).isEqualTo(Length.cm(44));
        refused(
                head + "Nell,woman,94,168,44,waste_girth\n",
                "crew.csv line 2 column confirmed: must be one of all, "
                        + Arrays.stream(BodyMeasure.values())
                                .flatMap(measure -> Stream.concat(
                                        Stream.of(measure.label()),
                                        measure.otherName().stream().map(Name::value)))
                                .map(word -> word.replace(' ', '_'))
                                .collect(Collectors.joining(", "))
                        + "; got 'waste_girth'; did you mean 'waist_girth'?");
    }

    @Test
    void a_whole_file_can_be_confirmed() {
        String content = HEAD.replace("height_cm", "height_cm,waist_girth_cm") + "Nell,woman,94,168,44\n";
        assertThat(BodyFile.parse("crew.csv", content.getBytes(StandardCharsets.UTF_8), true)
                        .bodies()
                        .get(0)
                        .confirmed())
                .extracting(Doubt::measure)
                .containsExactly(BodyMeasure.WAIST_GIRTH);
    }

    @Test
    void what_is_no_number_is_refused() {
        refused(
                HEAD + "Mo,man,104,177\nNell,woman,wide,168\n",
                "crew.csv line 3 column bust_girth_cm: must be a positive number; got 'wide'; write it like 37.5,"
                        + " without a unit, or leave the cell blank if the measure was not taken");
        refused(
                HEAD + "Nell,woman,94cm,168\n",
                "crew.csv line 2 column bust_girth_cm: must be a positive number; got '94cm'; write it like 37.5,"
                        + " without a unit, or leave the cell blank if the measure was not taken");
        refused(
                HEAD + "Nell,woman,\"94,5\",168\n",
                "crew.csv line 2 column bust_girth_cm: must be a positive number; got '94,5'; write decimals with a dot:"
                        + " 94.5");
        refused(
                HEAD + "Nell,woman,NaN,168\n",
                "crew.csv line 2 column bust_girth_cm: must be a positive number; got 'NaN'; write it like 37.5,"
                        + " without a unit, or leave the cell blank if the measure was not taken");
        refused(
                HEAD + "Nell,woman,37 1/2,168\n",
                "crew.csv line 2 column bust_girth_cm: must be a positive number; got '37 1/2'; write it like 37.5,"
                        + " without a unit, or leave the cell blank if the measure was not taken");
    }

    @Test
    void a_negative_number_is_refused() {
        refused(
                HEAD + "Nell,woman,-94,168\n",
                "crew.csv line 2 column bust_girth_cm: must be a positive number; got '-94'; leave out the sign, or leave"
                        + " the cell blank if the measure was not taken");
    }

    @Test
    void an_implausible_value_is_refused_and_the_slip_of_the_unit_suggested() {
        refused(
                "name,figure,bust_girth_mm,height_cm\nNell,woman,94,168\n",
                "crew.csv line 2 column bust_girth_mm, bust girth: must be 486.0 to 1763.0 mm; got 94.0 mm;"
                        + " centimetres read as millimetres? that would be 940.0 mm");
        refused(
                HEAD + "Nell,woman,37,168\n",
                "crew.csv line 2 column bust_girth_cm, bust girth: must be 48.6 to 176.3 cm; got 37.0 cm;"
                        + " inches read as centimetres? that would be 94.0 cm");
        refused(
                HEAD + "Nell,woman,940,168\n",
                "crew.csv line 2 column bust_girth_cm, bust girth: must be 48.6 to 176.3 cm; got 940.0 cm;"
                        + " millimetres read as centimetres? that would be 94.0 cm");
        refused(
                HEAD + "Nell,woman,94,1.68\n",
                "crew.csv line 2 column height_cm, height: must be 98.6 to 239.2 cm; got 1.7 cm;"
                        + " metres read as centimetres? that would be 168.0 cm");
        refused(
                "name,figure,bust_girth_cm,height_cm,shoulder_length_in\nNell,woman,94,168,13.4\n",
                "crew.csv line 2 column shoulder_length_in, shoulder length: must be 2.91 to 8.74 in; got 13.40 in;"
                        + " centimetres read as inches? that would be 5.28 in");
        refused(
                HEAD + "Nell,woman,0,168\n",
                "crew.csv line 2 column bust_girth_cm, bust girth: must be 48.6 to 176.3 cm; got 0.0 cm");
    }

    @Test
    void a_required_cell_left_blank_is_refused() {
        refused(
                HEAD + "Nell,woman,,168\n",
                "crew.csv line 2 column bust_girth_cm: bust girth must be taken for a knit top; got a blank cell;"
                        + " measure horizontal girth of the trunk at the fullest part of the bust or chest");
        refused(HEAD + ",woman,94,168\n", "crew.csv line 2 column name: each body must have a name; got a blank cell");
        refused(
                HEAD + "Nell,,94,168\n",
                "crew.csv line 2 column figure: must be one of woman, man, girl, boy; got a blank cell");
    }

    @Test
    void an_unknown_figure_is_refused_and_the_nearest_named() {
        refused(
                HEAD + "Nell,women,94,168\n",
                "crew.csv line 2 column figure: must be one of woman, man, girl, boy; got 'women'; did you mean 'woman'?");
    }

    @Test
    void an_age_that_does_not_go_with_the_figure_is_refused() {
        String head = "name,figure,age_years,bust_girth_cm,height_cm\n";
        refused(
                head + "Nell,woman,9,70,135\n",
                "crew.csv line 2, age of 'Nell': a woman must be 14 to 120 years; got 9 years;"
                        + " name the figure girl or boy");
        refused(
                head + "Nell,woman,4.5,70,135\n",
                "crew.csv line 2 column age_years: must be a whole number of years; got '4.5'");
    }

    @Test
    void two_bodies_of_one_name_are_refused() {
        refused(
                HEAD + "Nell,woman,94,168\nMo,man,104,177\nNell,woman,90,160\n",
                "crew.csv line 4 column name: each body must have a name of its own; got 'Nell', which is in line 2 too");
    }

    @Test
    void a_line_with_more_or_fewer_cells_than_columns_is_refused() {
        refused(
                HEAD + "Nell,woman,94,5,168\n",
                "crew.csv line 2: must have 4 cells, as many as there are columns; got 5 cells;"
                        + " put a cell that holds a comma in quotes");
        refused(
                HEAD + "Nell,woman,94\n",
                "crew.csv line 2: must have 4 cells, as many as there are columns; got 3 cells;"
                        + " put a cell that holds a comma in quotes");
    }

    @Test
    void a_line_is_numbered_as_an_editor_numbers_it() {
        refused(
                "\n" + HEAD + "\n\nNell,woman,wide,168",
                "crew.csv line 5 column bust_girth_cm: must be a positive number; got 'wide'; write it like 37.5,"
                        + " without a unit, or leave the cell blank if the measure was not taken");
    }

    @Test
    void a_quote_left_open_is_refused() {
        refused(
                HEAD + "\"Nell\"x,woman,94,168\n",
                "crew.csv line 2: a quoted cell must end with a quote before the next comma; got a quote that is not"
                        + " closed");
        refused(
                HEAD + "Mo,man,104,177\n\"Nell,woman,94,168\n",
                "crew.csv line 3: a quoted cell must end with a quote before the next comma; got a quote that is not"
                        + " closed");
    }

    @Test
    void bytes_that_are_no_utf_8_are_refused() {
        byte[] latin = (HEAD + "Zoë,woman,94,168\n").getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> BodyFile.parse("crew.csv", latin, false))
                .isInstanceOf(PatternException.class)
                .hasMessage("crew.csv: must be text in UTF-8; got bytes that are not; save it as CSV UTF-8");
    }

    @Test
    void an_unknown_body_is_refused_and_the_nearest_named() {
        BodyFile crew = BodyFile.nightCrew();
        assertThat(crew.body("Mira").name()).isEqualTo("Mira");
        assertThatThrownBy(() -> crew.body("Mirra"))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "body of night-crew.csv: must be one of Mira, Haldis, Juno, Ines, Oskar, Teodor, Bram, Soren;"
                                + " got 'Mirra'; did you mean 'Mira'?");
        assertThatThrownBy(() -> crew.body("Xanthippe"))
                .hasMessage(
                        "body of night-crew.csv: must be one of Mira, Haldis, Juno, Ines, Oskar, Teodor, Bram, Soren;"
                                + " got 'Xanthippe'");
    }

    @Test
    void a_file_is_read_from_its_path(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("crew.csv");
        Files.writeString(file, HEAD + "Nell,woman,94,168\n");
        assertThat(BodyFile.read(file, false).bodies()).containsExactly(only(HEAD + "Nell,woman,94,168\n"));
    }

    @Test
    void the_example_of_the_page_about_body_files_is_one() throws IOException {
        String page = Files.readString(Path.of("../docs/body-files.md"));
        int from = page.indexOf("```csv\n") + "```csv\n".length();
        String example = page.substring(from, page.indexOf("```", from));
        assertThat(BodyFile.parse("example", example.getBytes(StandardCharsets.UTF_8), false)
                        .bodies())
                .hasSize(2);
    }

    @Test
    void a_file_that_is_not_there_is_refused(@TempDir Path folder) {
        Path missing = folder.resolve("none.csv");
        assertThatThrownBy(() -> BodyFile.read(missing, false))
                .isInstanceOf(PatternException.class)
                .hasMessage("body file: must exist and be readable; got '" + missing + "'");
        assertThatThrownBy(() -> BodyFile.read(folder, false)).isInstanceOf(PatternException.class);
    }

    private static BodyMeasurements only(String content) {
        List<BodyMeasurements> bodies = BodyFile.parse("crew.csv", content.getBytes(StandardCharsets.UTF_8), false)
                .bodies();
        assertThat(bodies).hasSize(1);
        return bodies.get(0);
    }

    private static void refused(String content, String message) {
        assertThatThrownBy(() -> BodyFile.parse("crew.csv", content.getBytes(StandardCharsets.UTF_8), false))
                .isInstanceOf(PatternException.class)
                .hasMessage(message);
    }
}

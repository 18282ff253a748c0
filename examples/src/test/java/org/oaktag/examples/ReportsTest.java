package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.CutList;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** The tables, read back. */
class ReportsTest {

    private static final Garment TOP =
            HoodedTop.recipe(false).applyTo(HoodedTop.block(BodyFile.nightCrew().body("Oskar")));

    /** Whose wrist was not taken. */
    private static final Garment SORENS =
            HoodedTop.recipe(false).applyTo(HoodedTop.block(BodyFile.nightCrew().body("Soren")));

    @Test
    void the_heads_are_as_other_programs_know_them() {
        assertThat(Reports.seams(TOP))
                .startsWith(
                        "seam,side_a,side_b,length_a_mm,length_b_mm,rule,expected_difference_mm,difference_mm,true\n");
        assertThat(Reports.changes(TOP.history())).startsWith("step,quantity,before_mm,after_mm\n");
        assertThat(Reports.finished(TOP)).startsWith("measure,body_mm,garment_mm,ease_mm,body_measure,body_derived\n");
        assertThat(Reports.cutList(CutList.of(TOP))).startsWith("number,piece,cloth,count,mirrored,on_fold\n");
    }

    @Test
    void a_side_of_a_seam_is_a_list_of_edges_whose_lengths_add_up() {
        for (Csv.Row seam : Csv.rows(Reports.seams(TOP))) {
            assertThat(length(seam.text("side_a"))).isCloseTo(seam.number("length_a_mm"), within(1e-4));
            assertThat(length(seam.text("side_b"))).isCloseTo(seam.number("length_b_mm"), within(1e-4));
        }
    }

    private static double length(String side) {
        double sum = 0;
        for (String id : side.split(" ", -1)) {
            sum += TOP.pieces().stream()
                    .flatMap(piece -> piece.edges().stream()
                            .filter(edge -> id.equals(piece.name().hyphenated() + "."
                                    + edge.name().hyphenated())))
                    .mapToDouble(edge -> edge.length().mm())
                    .findFirst()
                    .orElseThrow();
        }
        return sum;
    }

    @Test
    void what_a_step_left_behind_is_what_the_next_one_found() {
        List<Csv.Row> changes = Csv.rows(Reports.changes(TOP.history()));
        assertThat(changes).extracting(row -> row.text("step")).contains("00-draft-the-knit-top", "14-line-the-hood");
        Map<String, String> last = new HashMap<>();
        for (Csv.Row row : changes) {
            String known = last.getOrDefault(row.text("quantity"), "");
            if (!known.isEmpty() && !row.text("before_mm").isEmpty()) {
                assertThat(row.number("before_mm"))
                        .as(row.text("step") + " " + row.text("quantity"))
                        .isCloseTo(Double.parseDouble(known), within(1e-4));
            }
            last.put(row.text("quantity"), row.text("after_mm"));
        }
    }

    @Test
    void ease_is_the_garment_less_the_body() {
        List<Csv.Row> finished = Csv.rows(Reports.finished(TOP));
        assertThat(finished).anyMatch(row -> row.text("body_mm").isEmpty());
        assertThat(finished)
                .filteredOn(row -> !row.text("body_mm").isEmpty())
                .hasSizeGreaterThan(5)
                .allSatisfy(row -> assertThat(row.number("ease_mm"))
                        .isCloseTo(row.number("garment_mm") - row.number("body_mm"), within(2e-4)));
    }

    @Test
    void a_measure_of_the_body_that_was_derived_is_told_beside_the_garments() {
        Set<Name> derived = new HashSet<>();
        BodyFile.nightCrew()
                .body("Soren")
                .derived()
                .forEach(rule -> derived.add(rule.measure().asName()));
        List<Csv.Row> compared = Csv.rows(Reports.finished(SORENS)).stream()
                .filter(row -> !row.text("body_measure").isEmpty())
                .toList();
        assertThat(compared).extracting(row -> row.text("body_derived")).contains("true", "false");
        assertThat(compared)
                .allSatisfy(row -> assertThat(row.text("body_derived"))
                        .isEqualTo(String.valueOf(derived.contains(Name.of(row.text("body_measure"))))));
        assertThat(Csv.rows(Reports.finished(SORENS)))
                .filteredOn(row -> row.text("body_measure").isEmpty())
                .allSatisfy(row -> assertThat(row.text("body_derived")).isEmpty());
    }

    @Test
    void the_flat_sheet_marks_it_too() {
        assertThat(SvgSheet.flat(SORENS).text())
                .containsPattern(">[0-9.]+\\*<")
                .contains("* derived from other measures, not taken");
        Garment measured = new Garment(
                SORENS.title(),
                SORENS.wearer().withDerived(Set.of()),
                SORENS.pieces(),
                SORENS.seams(),
                SORENS.measures(),
                SORENS.checks(),
                SORENS.history());
        assertThat(SvgSheet.flat(measured).text()).doesNotContain("*<").doesNotContain("not taken");
    }

    @Test
    void the_cut_list_says_pairs_and_folds() {
        List<Csv.Row> list = Csv.rows(Reports.cutList(CutList.of(TOP)));
        assertThat(list).hasSameSizeAs(TOP.pieces());
        assertThat(list.get(0).cells().values()).containsExactly("1", "front", "shell", "1", "false", "true");
        assertThat(list)
                .filteredOn(row -> row.text("piece").equals("sleeve lower"))
                .singleElement()
                .satisfies(row -> assertThat(row.cells().values())
                        .containsExactly("4", "sleeve lower", "contrast", "2", "true", "false"));
    }
}

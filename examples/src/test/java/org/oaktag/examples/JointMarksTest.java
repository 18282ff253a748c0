package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.export.drawing.Box;
import org.oaktag.export.drawing.Colours;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.sheet.Nest;
import org.oaktag.export.sheet.Paper;
import org.oaktag.export.sheet.PaperSheet;
import org.oaktag.export.sheet.Placement;
import org.oaktag.export.sheet.Printout;
import org.oaktag.export.sheet.Tiling;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** The marks by which sheets are joined can be read: whole, off the lettering of the pieces and off their lines. */
class JointMarksTest {

    static Stream<Arguments> printouts() {
        List<MadeTop> crew = BodyFile.nightCrew().bodies().stream()
                .map(body -> MadeTop.of(body, HoodedTop.recipe(false)))
                .toList();
        List<Arguments> printouts = new ArrayList<>();
        for (MadeTop top : crew) {
            for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
                printouts.add(Arguments.of(
                        top.body().name() + " on " + paper.name(),
                        Printout.tiled(top.garment(), top.allowances(), Tiling.on(paper))));
            }
        }
        Nest nest = new Nest(crew.subList(0, 4).stream()
                .map(top -> new Nest.Size(top.body().name(), top.garment()))
                .toList());
        printouts.add(
                Arguments.of("four sizes", Printout.nested(nest, crew.get(0).allowances(), Tiling.on(Paper.A4))));
        return printouts.stream();
    }

    private static Label onSheet(Placement placement, Label label) {
        Box box = label.box();
        Point middle = Point.of(box.center().x() + placement.dx(), box.center().y() + placement.dy());
        return new Label(label.block(), new Box(middle, box.width(), box.height(), box.angle()), label.align());
    }

    private static List<Label> labels(Placement placement) {
        List<Label> labels = new ArrayList<>();
        for (Ink ink : placement.figure().inks()) {
            if (ink instanceof Label label) {
                labels.add(onSheet(placement, label));
            }
        }
        return labels;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("printouts")
    void every_number_of_a_joint_is_whole_on_both_sheets_and_on_no_lettering_of_a_piece(
            String what, Printout printout) {
        int numbers = 0;
        for (PaperSheet sheet : printout.sheets()) {
            for (Placement joints : sheet.placements()) {
                if (joints.id().equals("joints")) {
                    Bounds window = joints.window().orElseThrow();
                    for (Label number : labels(joints)) {
                        if (figures(number).bounds().overlaps(window)) {
                            numbers++;
                            assertThat(figures(number).corners())
                                    .as("%s, %s: %s", what, sheet.title(), number.block())
                                    .allMatch(window.expanded(1e-6)::contains);
                            check(number, sheet, what);
                        }
                    }
                }
            }
        }
        assertThat(numbers).isGreaterThan(40);
    }

    /**
     * Whoever joins sheets goes by the numbers alone: a number is on two neighbours and on no other sheet, another for
     * each pair.
     */
    @ParameterizedTest(name = "{0}")
    @MethodSource("printouts")
    void every_joint_has_a_number_of_its_own_that_only_its_two_sheets_show(String what, Printout printout) {
        Pattern place = Pattern.compile("Sheet \\d+ of \\d+, column (\\d+), row (\\d+)");
        Map<String, Set<List<Integer>>> shown = new TreeMap<>();
        Set<List<Integer>> sheets = new HashSet<>();
        for (PaperSheet sheet : printout.sheets()) {
            Matcher found = place.matcher(sheet.title());
            if (found.matches()) {
                List<Integer> at = List.of(Integer.parseInt(found.group(1)), Integer.parseInt(found.group(2)));
                sheets.add(at);
                for (Placement joints : sheet.placements()) {
                    if (joints.id().equals("joints")) {
                        labels(joints).stream()
                                .filter(number -> figures(number)
                                        .bounds()
                                        .overlaps(joints.window().orElseThrow()))
                                .forEach(number -> shown.computeIfAbsent(
                                                number.block().lines().get(0).text(), each -> new HashSet<>())
                                        .add(at));
                    }
                }
            }
        }
        Set<Set<List<Integer>>> neighbours = new HashSet<>();
        for (List<Integer> at : sheets) {
            for (List<Integer> next : List.of(List.of(at.get(0) + 1, at.get(1)), List.of(at.get(0), at.get(1) + 1))) {
                if (sheets.contains(next)) {
                    neighbours.add(Set.of(at, next));
                }
            }
        }
        assertThat(shown.values()).as(what).containsExactlyInAnyOrderElementsOf(neighbours);
    }

    private static void check(Label number, PaperSheet sheet, String what) {
        for (Placement piece : sheet.placements()) {
            if (piece.id().startsWith("piece-")) {
                for (Label label : labels(piece)) {
                    assertThat(label.box().overlaps(figures(number)))
                            .as("%s, %s: %s on %s", what, sheet.title(), number.block(), label.block())
                            .isFalse();
                }
                Transform moved = Transform.translation(piece.dx(), piece.dy());
                for (Ink ink : piece.figure().inks()) {
                    if (ink instanceof Stroke stroke) {
                        assertThat(crosses(stroke.path().transformed(moved), figures(number)))
                                .as("%s, %s: %s on a line of %s", what, sheet.title(), number.block(), piece.id())
                                .isFalse();
                    }
                }
            }
        }
    }

    /** Outlines run across the numbers of the map; a plate of the colour of the paper parts them. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("printouts")
    void every_sheet_has_its_number_on_the_map_and_no_outline_is_drawn_over_it(String what, Printout printout) {
        List<Ink> map = printout.sheets().get(0).placements().stream()
                .map(placement -> placement.figure().inks())
                .filter(inks -> inks.get(0) instanceof Label head
                        && head.block().lines().get(0).text().equals("Map of the sheets"))
                .findFirst()
                .orElseThrow();
        long tiles = printout.sheets().stream()
                .filter(sheet -> sheet.title().matches("Sheet \\d+ of .*"))
                .count();
        List<String> numbers = new ArrayList<>();
        for (int i = 1; i < map.size(); i++) {
            if (map.get(i) instanceof Label number) {
                numbers.add(number.block().lines().get(0).text());
                assertThat(map.get(i - 1)).as(what).isInstanceOfSatisfying(Fill.class, plate -> {
                    assertThat(plate.paint()).isEqualTo(Colours.PAPER);
                    assertThat(figures(number).corners())
                            .allMatch(plate.bounds().expanded(1e-9)::contains);
                });
                assertThat(map.subList(i, map.size()))
                        .noneMatch(ink -> ink instanceof Stroke stroke && crosses(stroke.path(), figures(number)));
            }
        }
        assertThat(numbers)
                .isEqualTo(LongStream.rangeClosed(1, tiles)
                        .mapToObj(Long::toString)
                        .toList());
    }

    /** Figures are 3 mm high, as capitals are; their line is higher. */
    private static Box figures(Label number) {
        Box box = number.box();
        return new Box(box.center(), box.width(), 3, 0);
    }

    private static boolean crosses(Path line, Box figures) {
        if (!line.bounds().overlaps(figures.bounds())) {
            return false;
        }
        for (double at = 0; at <= line.length(); at += 0.5) {
            if (figures.bounds().contains(line.pointAt(at))) {
                return true;
            }
        }
        return false;
    }
}

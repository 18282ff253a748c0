package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * What the cut list says is on the cloth and on paper, as often as it says and no more: counted in the files
 * themselves.
 */
class EverythingOnceTest {

    private static final Pattern TEXT =
            Pattern.compile("\"x\":(-?[\\d.]+),\"y\":(-?[\\d.]+),\"text\":\"(piece \\d+ of \\d+)\"");
    private static final double POINTS_PER_MM = 72 / 25.4;
    private static final Pattern NUMBERED = Pattern.compile("piece (\\d+) of (\\d+)");

    @TempDir
    private static Path folder = Path.of("");

    private static Map<String, String> files = Map.of();
    private static List<Csv.Row> list = List.of();

    @BeforeAll
    static void run() {
        assertThat(Run.into(folder.resolve("out")).code()).isZero();
        files = Run.files(folder.resolve("out"));
        list = Csv.rows(file("cut-list.csv"));
        assertThat(list).hasSize(12);
    }

    private static String file(String name) {
        return files.getOrDefault(name, "");
    }

    private static String cell(Csv.Row row, String column) {
        return row.cells().getOrDefault(column, "");
    }

    @Test
    void every_copy_lies_on_its_cloth_half_of_each_pair_mirrored() {
        Set<String> drawn =
                files.keySet().stream().filter(name -> name.startsWith("lay-")).collect(Collectors.toSet());
        assertThat(drawn)
                .isEqualTo(list.stream()
                        .map(row -> "lay-" + cell(row, "cloth") + ".svg")
                        .collect(Collectors.toSet()));
        for (String lay : drawn) {
            List<String> expected = new ArrayList<>();
            for (Csv.Row row : list) {
                if (lay.equals("lay-" + cell(row, "cloth") + ".svg")) {
                    int count = Integer.parseInt(cell(row, "count"));
                    for (int i = 0; i < count; i++) {
                        String hand = cell(row, "on_fold").equals("true")
                                ? "opened out"
                                : cell(row, "mirrored").equals("true") && i >= count / 2 ? "mirrored" : "as drawn";
                        expected.add(cell(row, "number") + " " + hand);
                    }
                }
            }
            assertThat(laid(lay)).as(lay).containsExactlyInAnyOrderElementsOf(expected);
        }
    }

    /** Number and hand of every piece on a lay: a label begins with them, and with the name where that has room. */
    private static List<String> laid(String lay) {
        List<String> laid = new ArrayList<>();
        String label = "";
        for (SvgReader.Lettering line : SvgReader.read(file(lay)).lettering()) {
            if (line.text().matches("\\d+(\\.|  ).*")) {
                label = line.text().replaceFirst("\\D.*", "");
            }
            String last = line.text().replaceFirst("\\d+\\.  ", "");
            if (last.matches("opened out|as drawn|mirrored|on the fold|through both layers")) {
                laid.add(label + " " + last);
            }
        }
        return laid;
    }

    @Test
    void every_piece_is_once_on_the_pattern() {
        List<String> numbers = SvgReader.read(file("pattern.svg")).lettering().stream()
                .map(SvgReader.Lettering::text)
                .filter(text -> NUMBERED.matcher(text).matches())
                .toList();
        assertThat(numbers).containsExactlyInAnyOrderElementsOf(numbersAsListed());
    }

    @Test
    void every_piece_is_once_on_the_copy_shop_sheets() {
        String text = Reader.MUTOOL.run(List.of(
                "draw",
                "-F",
                "txt",
                folder.resolve("out").resolve("pattern-copy-shop.pdf").toString()));
        List<String> numbers = new ArrayList<>();
        for (Matcher found = NUMBERED.matcher(text); found.find(); ) {
            numbers.add(found.group());
        }
        assertThat(numbers).containsExactlyInAnyOrderElementsOf(numbersAsListed());
    }

    @Test
    void the_first_sheet_has_the_whole_cut_list_and_says_how_many_sheets_are_to_be_joined() {
        String pdf = folder.resolve("out").resolve("pattern-a4.pdf").toString();
        String first = Reader.MUTOOL.run(List.of("draw", "-F", "txt", pdf, "1"));
        for (Csv.Row row : list) {
            assertThat(first).contains(cell(row, "number") + "  " + cell(row, "piece") + ": cut");
        }
        Matcher told = Pattern.compile("the pattern is on the (\\d+) sheets").matcher(first);
        assertThat(told.find()).isTrue();
        String all = Reader.MUTOOL.run(List.of("draw", "-F", "txt", pdf));
        Set<String> sheets = new HashSet<>();
        for (Matcher sheet = Pattern.compile("Sheet (\\d+) of (\\d+)").matcher(all); sheet.find(); ) {
            sheets.add(sheet.group(1));
            assertThat(sheet.group(2)).isEqualTo(told.group(1));
        }
        assertThat(sheets).hasSize(Integer.parseInt(told.group(1)));
    }

    @Test
    void the_length_that_a_lay_takes_is_the_same_in_its_dimension_and_in_words() {
        for (String name : files.keySet()) {
            if (name.startsWith("lay-")) {
                List<String> lettering = SvgReader.read(file(name)).lettering().stream()
                        .map(SvgReader.Lettering::text)
                        .toList();
                String words = String.join(" ", lettering);
                Matcher takes = Pattern.compile("the lay takes ([\\d.]+ mm),").matcher(words);
                assertThat(takes.find()).as(name).isTrue();
                assertThat(lettering).as(name).contains(takes.group(1));
            }
        }
    }

    private static List<String> numbersAsListed() {
        return IntStream.rangeClosed(1, list.size())
                .mapToObj(number -> "piece " + number + " of " + list.size())
                .toList();
    }

    /** The same part of a piece would lie at another place if the piece were on the joined tiles a second time. */
    @Test
    void every_piece_is_at_one_place_on_the_tiles_joined_again() {
        Map<String, Set<List<Long>>> places =
                JoinedTiles.of(file("pattern-a4.html")).places();
        assertThat(places.keySet())
                .isEqualTo(list.stream()
                        .map(row -> cell(row, "piece").replace(' ', '-'))
                        .collect(Collectors.toSet()));
        assertThat(places).allSatisfy((piece, at) -> assertThat(at).hasSize(1));
    }

    /** A label may be on two tiles where they overlap; joined again, both lie at one place. */
    @Test
    void every_piece_is_numbered_at_one_place_on_the_tiles_of_the_pdf_joined_again() {
        String pages = Reader.MUTOOL.run(List.of(
                "draw",
                "-F",
                "stext.json",
                folder.resolve("out").resolve("pattern-a4.pdf").toString()));
        JoinedTiles tiles = JoinedTiles.of(file("pattern-a4.html"));
        Map<String, List<Point>> places = new HashMap<>();
        for (String page : pages.split("\"blocks\"", -1)) {
            Matcher tile = JoinedTiles.TILE.matcher(page);
            if (tile.find()) {
                Vector offset = tiles.offset(Integer.parseInt(tile.group(1)), Integer.parseInt(tile.group(2)));
                for (Matcher text = TEXT.matcher(page); text.find(); ) {
                    Point at = Point.of(
                            Double.parseDouble(text.group(1)) / POINTS_PER_MM,
                            Double.parseDouble(text.group(2)) / POINTS_PER_MM);
                    places.computeIfAbsent(text.group(3), number -> new ArrayList<>())
                            .add(at.plus(offset));
                }
            }
        }
        // A line that runs over the edge of its tile is read as far as it goes; the next tile has it whole, at the same
        // place.
        for (String cut : Set.copyOf(places.keySet())) {
            List<String> whole = numbersAsListed().stream()
                    .filter(number -> !number.equals(cut) && number.startsWith(cut) && places.containsKey(number))
                    .toList();
            if (whole.size() == 1) {
                places.getOrDefault(whole.get(0), List.of()).addAll(places.getOrDefault(cut, List.of()));
                places.remove(cut);
            }
        }
        assertThat(places.keySet()).containsExactlyInAnyOrderElementsOf(numbersAsListed());
        assertThat(places)
                .allSatisfy((number, at) -> assertThat(at)
                        .allSatisfy(
                                each -> assertThat(each.distanceTo(at.get(0))).isLessThan(1)));
    }
}

package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.FlatteningPathIterator;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Piece;

/** The main job for several bodies: one pattern in all their sizes, read back with readers that are not ours. */
class NestedRunTest {

    private static final List<String> CREW = List.of("Mira", "Juno", "Oskar");

    @TempDir
    private static Path folder = Path.of("");

    private static Map<String, String> files = Map.of();
    private static String said = "";
    private static List<MadeTop> tops = List.of();

    @TempDir
    private Path own = Path.of("");

    @BeforeAll
    static void run() {
        Run run = Run.into(out(), bodies(CREW));
        assertThat(run.code()).as(run.err()).isZero();
        said = run.out();
        files = Run.files(out());
        tops = CREW.stream()
                .map(name -> MadeTop.of(BodyFile.nightCrew().body(name), HoodedTop.recipe(false)))
                .toList();
    }

    private static Path out() {
        return folder.resolve("out");
    }

    private static String[] bodies(List<String> names) {
        return names.stream().flatMap(name -> Stream.of("--body", name)).toArray(String[]::new);
    }

    private static String file(String name) {
        return files.getOrDefault(name, "");
    }

    private static List<Piece> pieces() {
        return tops.get(0).garment().pieces();
    }

    /** The identifier of every piece in every size. */
    private static List<String> everySize() {
        return pieces().stream()
                .flatMap(piece -> IntStream.rangeClosed(1, CREW.size())
                        .mapToObj(size -> piece.name().hyphenated() + "-" + size))
                .toList();
    }

    /** An arc length by chords within 1e-5 mm of the curve, which are too short by far less than 1e-3 mm. */
    private static double length(Path2D shape) {
        double sum = 0;
        double[] at = new double[6];
        double[] last = new double[2];
        for (PathIterator each = new FlatteningPathIterator(shape.getPathIterator(null), 1e-5, 20);
                !each.isDone();
                each.next()) {
            if (each.currentSegment(at) == PathIterator.SEG_LINETO) {
                sum += Math.hypot(at[0] - last[0], at[1] - last[1]);
            }
            last[0] = at[0];
            last[1] = at[1];
        }
        return sum;
    }

    /** The bounds of a shape of curves are those of their handles too; these are of chords within 1e-5 mm. */
    private static Path2D flat(Path2D shape) {
        Path2D flat = new Path2D.Double();
        flat.append(shape.getPathIterator(null, 1e-5), false);
        return flat;
    }

    @Test
    void the_svg_has_the_cut_line_of_every_piece_in_every_size_as_the_model_has_it() {
        Map<String, List<SvgReader.Drawn>> groups = new HashMap<>();
        for (SvgReader.Drawn path : SvgReader.read(file("pattern.svg")).paths()) {
            groups.computeIfAbsent(path.group(), group -> new ArrayList<>()).add(path);
        }
        for (Piece piece : pieces()) {
            for (int i = 0; i < tops.size(); i++) {
                MadeTop top = tops.get(i);
                String group = "piece-" + piece.name().hyphenated() + "-" + (i + 1);
                List<SvgReader.Drawn> drawn = groups.getOrDefault(group, List.of());
                List<org.oaktag.geometry.Path> runs = CutLine.of(top.garment().piece(piece.name()), top.allowances())
                        .runs();
                assertThat(drawn).as(group).hasSizeGreaterThanOrEqualTo(runs.size());
                for (int k = 0; k < runs.size(); k++) {
                    Path2D shape = drawn.get(k).shape();
                    assertThat(length(shape)).as(group).isCloseTo(runs.get(k).length(), within(1e-3));
                    assertThat(flat(shape).getBounds2D().getWidth())
                            .as(group)
                            .isCloseTo(runs.get(k).bounds().width(), within(1e-3));
                    assertThat(flat(shape).getBounds2D().getHeight())
                            .as(group)
                            .isCloseTo(runs.get(k).bounds().height(), within(1e-3));
                }
            }
        }
    }

    @Test
    void each_size_of_the_svg_is_one_group_with_every_piece_once() {
        String svg = file("pattern.svg");
        for (int i = 0; i < CREW.size(); i++) {
            assertThat(svg).containsOnlyOnce("<g id=\"size-" + (i + 1) + "\" data-layer=\"size " + CREW.get(i) + "\">");
        }
        for (String id : everySize()) {
            assertThat(svg).containsOnlyOnce("<g id=\"piece-" + id + "\"");
        }
    }

    @Test
    void every_size_has_a_line_of_its_own_and_the_legend_says_which() {
        Map<String, Set<String>> dashes = new TreeMap<>();
        for (String id : everySize()) {
            String group = file("pattern.svg").split("<g id=\"piece-" + id + "\"", -1)[1];
            String line = group.substring(group.indexOf("<path"), group.indexOf("/>"));
            dashes.computeIfAbsent(id.substring(id.length() - 1), size -> new TreeSet<>())
                    .add(line.replaceAll(" d=\"[^\"]*\"", ""));
        }
        assertThat(dashes.values())
                .allSatisfy(lines -> assertThat(lines).hasSize(1))
                .doesNotHaveDuplicates();
        for (String name : List.of("pattern.svg", "pattern-a4.html")) {
            String text = file(name).replace("<!DOCTYPE html>", "");
            List<String> lettering = SvgReader.read(text).lettering().stream()
                    .map(SvgReader.Lettering::text)
                    .toList();
            for (String size : CREW) {
                assertThat(lettering).as(name).anyMatch(line -> line.endsWith("cut line, " + size));
            }
        }
    }

    @Test
    void every_piece_in_every_size_is_at_one_place_on_the_joined_sheets() {
        Map<String, Set<List<Long>>> places =
                JoinedTiles.of(file("pattern-a4.html")).places();
        List<String> all = new ArrayList<>(everySize());
        pieces().forEach(piece -> all.add(piece.name().hyphenated()));
        assertThat(places.keySet()).containsExactlyInAnyOrderElementsOf(all);
        assertThat(places).allSatisfy((piece, at) -> assertThat(at).hasSize(1));
        for (Piece piece : pieces()) {
            String id = piece.name().hyphenated();
            for (int size = 1; size <= CREW.size(); size++) {
                assertThat(places.get(id + "-" + size)).as(id).isEqualTo(places.get(id));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"pattern-a4.pdf", "pattern-copy-shop.pdf"})
    void the_pdf_has_every_piece_of_a_size_in_the_layer_of_that_size(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(out().resolve(name)))) {
            assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
                    .containsExactlyInAnyOrder("size Mira", "size Juno", "size Oskar");
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("night crew hooded top, for sizes Mira, Juno, Oskar");
            Map<String, Set<String>> figures = new TreeMap<>();
            List<String> shown = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                for (Shown each : shown(page)) {
                    each.layer.ifPresent(layer -> {
                        figures.computeIfAbsent(layer, any -> new TreeSet<>()).add(each.figure);
                        shown.add(each.figure);
                    });
                }
            }
            assertThat(figures).hasSize(CREW.size());
            assertThat(figures).allSatisfy((layer, own) -> assertThat(own).hasSize(pieces().size()));
            assertThat(figures.values().stream().flatMap(Set::stream)).doesNotHaveDuplicates();
            if (name.equals("pattern-copy-shop.pdf")) {
                assertThat(shown).hasSize(CREW.size() * pieces().size());
            }
        }
    }

    /** A figure on a page, and the layer in which it is. */
    private record Shown(String figure, Optional<String> layer) {}

    /** Reads marked content (ISO 32000-1, 14.6) as far as a page of figures has it. */
    private static List<Shown> shown(PDPage page) throws IOException {
        List<Shown> shown = new ArrayList<>();
        Optional<String> layer = Optional.empty();
        List<COSName> names = new ArrayList<>();
        for (Object token : new PDFStreamParser(page).parse()) {
            if (token instanceof COSName name) {
                names.add(name);
            } else if (token instanceof Operator operator) {
                switch (operator.getName()) {
                    case "BDC" -> {
                        assertThat(names.get(0)).isEqualTo(COSName.OC);
                        assertThat(page.getResources().getProperties(names.get(1)))
                                .isInstanceOfSatisfying(PDOptionalContentGroup.class, group -> {});
                        layer = Optional.of(
                                ((PDOptionalContentGroup) page.getResources().getProperties(names.get(1))).getName());
                    }
                    case "EMC" -> layer = Optional.empty();
                    case "Do" -> shown.add(new Shown(names.get(0).getName(), layer));
                    default -> {}
                }
                names.clear();
            }
        }
        return shown;
    }

    @Test
    void what_is_of_one_body_alone_is_as_if_it_had_been_made_alone() {
        for (int i = 0; i < CREW.size(); i++) {
            String prefix = (i + 1) + "-" + CREW.get(i).toLowerCase(java.util.Locale.ROOT) + "/";
            Map<String, String> nested = new TreeMap<>();
            files.forEach((name, text) -> {
                if (name.startsWith(prefix)) {
                    nested.put(name.substring(prefix.length()), text);
                }
            });
            Run run = Run.into(own.resolve(CREW.get(i)), "--body", CREW.get(i));
            Map<String, String> alone = Run.files(own.resolve(CREW.get(i)));
            assertThat(alone.keySet().removeIf(name -> name.startsWith("pattern")))
                    .isTrue();
            String account = Optional.ofNullable(nested.remove("account.txt")).orElse("");
            assertThat(run.out()).startsWith(account + "\nFiles in ");
            assertThat(nested).isEqualTo(alone);
        }
    }

    @Test
    void nothing_else_is_written_but_the_pattern_for_all() {
        assertThat(files.keySet().stream().filter(name -> !name.contains("/")))
                .containsExactlyInAnyOrder("pattern.svg", "pattern-a4.pdf", "pattern-a4.html", "pattern-copy-shop.pdf");
        assertThat(files.keySet().stream()
                        .filter(name -> name.contains("/"))
                        .map(name -> name.substring(0, name.indexOf('/')))
                        .distinct())
                .containsExactlyInAnyOrder("1-mira", "2-juno", "3-oskar");
    }

    @Test
    void the_account_sets_the_sizes_beside_each_other() {
        assertThat(said)
                .startsWith("night crew hooded top in 3 sizes")
                .contains("1  Mira (woman): every seam is true", "3  Oskar (man): every seam is true")
                .contains("all sizes over each other: pattern.svg", "1-mira/  2-juno/  3-oskar/");
        assertThat(said.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        for (int i = 0; i < CREW.size(); i++) {
            String prefix = (i + 1) + "-" + CREW.get(i).toLowerCase(java.util.Locale.ROOT) + "/";
            for (Csv.Row row : Csv.rows(file(prefix + "finished.csv"))) {
                String told = said.lines()
                        .filter(line -> line.startsWith("  " + row.text("measure") + "  "))
                        .findFirst()
                        .orElse("");
                String[] cells = told.strip().split(" {2,}", -1);
                assertThat(Double.parseDouble(cells[i + 1]))
                        .as(told)
                        .isCloseTo(row.number("garment_mm"), within(0.0501));
            }
        }
    }

    @Test
    void one_body_takes_the_place_of_several_and_several_that_of_one() {
        Path place = own.resolve("place");
        assertThat(Run.into(place, "--body", "Ines").code()).isZero();
        Map<String, String> alone = Run.files(place);
        Run several = Run.into(place, "--body", "Ines", "--body", "Bram");
        assertThat(several.code()).as(several.err()).isZero();
        assertThat(Run.entries(place)).contains("1-ines", "2-bram").doesNotContain("steps", "flat.svg");
        assertThat(Run.into(place, "--body", "Ines").code()).isZero();
        assertThat(Run.files(place)).isEqualTo(alone);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mira,Mira|'Mira' twice|leave one of them out",
                "Mira,Junno|'Junno'|did you mean 'Juno'?",
                "Mira,Haldis,Juno,Ines,Oskar,Teodor,Bram|2 to 6 sizes; got 7|print the others on sheets of their own"
            })
    void bodies_that_make_no_nest_are_refused_and_nothing_is_written(String line) {
        String[] parts = line.split("\\|", -1);
        Run run = Run.into(own.resolve("out"), bodies(List.of(parts[0].split(",", -1))));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).startsWith("night-crew: ").contains(parts[1], parts[2]);
        assertThat(run.err().lines()).hasSize(1);
        assertThat(run.out()).isEmpty();
        assertThat(Run.entries(own)).isEmpty();
    }

    /**
     * Invented: a woman, a child of eight with every measure that the draft asks for, and two without a latin letter.
     */
    private static final String FAMILY = "name,figure,age_years,bust_girth_cm,waist_girth_cm,hip_girth_cm,"
            + "neck_base_girth_cm,upper_arm_girth_cm,wrist_girth_cm,hand_girth_cm,hand_girth_with_thumb_cm,"
            + "head_girth_cm,shoulder_length_cm,across_back_cm,back_waist_length_cm,waist_to_hip_cm,"
            + "nape_to_armpit_cm,arm_length_cm,height_cm\n"
            + "Nell,woman,,94,,,,,,,,,,,,,,,168\n"
            + "Pip,girl,8,66,58,70,29.5,20,13,16,19,52.5,10,27.5,29,15,12.5,43,128\n"
            + "\u05D0\u05D1,man,,104,,,,,,,,,,,,,,,177\n"
            + "../S\u00F8ren <b>,man,,116,,102,,,,,,,,,,,,,166\n";

    private Run family(String... more) throws IOException {
        Path bodies = Files.writeString(own.resolve("bodies.csv"), FAMILY);
        return Run.into(
                own.resolve("out"),
                Stream.concat(Stream.of("--bodies", bodies.toString()), Stream.of(more))
                        .toArray(String[]::new));
    }

    @Test
    void what_a_child_is_cautioned_of_stands_on_the_sheets_that_it_shares_with_the_grown() throws IOException {
        Run run = family("--body", "Nell", "--body", "Pip");
        assertThat(run.code()).as(run.err()).isZero();
        String caution = "Pip: no cord may be put into this hood";
        assertThat(run.out()).contains("Cautions").contains(caution);
        for (String name : List.of("pattern.svg", "pattern-a4.html")) {
            String text = Run.files(own.resolve("out")).getOrDefault(name, "").replace("<!DOCTYPE html>", "");
            assertThat(String.join(
                            " ",
                            SvgReader.read(text).lettering().stream()
                                    .map(SvgReader.Lettering::text)
                                    .toList()))
                    .as(name)
                    .contains(caution);
        }
    }

    @Test
    void a_drawstring_is_refused_for_all_where_one_is_a_child() throws IOException {
        Run run = family("--body", "Nell", "--body", "Pip", "--hood-drawstring");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).contains("drawstring", "EN 14682", "Pip");
        assertThat(Run.entries(own)).containsExactly("bodies.csv");
    }

    @Test
    void a_folder_has_a_plain_name_whatever_the_body_is_called() throws IOException {
        Run run = family("--body", "\u05D0\u05D1", "--body", "../S\u00F8ren <b>");
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(Run.entries(own.resolve("out"))).contains("1").anyMatch(name -> name.matches("2-s[a-z-]*ren-b"));
    }

    @Test
    void hostile_names_of_sizes_are_shown_harmlessly_and_whole_in_titles_and_layers() throws IOException {
        String name = "</svg><script>alert(1)</script> & ) Tj /JS (x) \u202Eevil\u2066 \u05D0\u05D1 \u001B[31m"
                + "x".repeat(300);
        String shown = "</svg><script>alert(1)</script> & ) Tj /JS (x) \uFFFDevil\uFFFD \u05D0\u05D1 \uFFFD[31m"
                + "x".repeat(300);
        String coat = "\uD83E\uDDE5";
        Path bodies = Files.writeString(
                own.resolve("bodies.csv"),
                "name,figure,bust_girth_cm,height_cm\n\"" + name + "\",woman,94,168\n" + coat + ",woman,104,168\n");
        Run run = Run.into(own.resolve("out"), "--bodies", bodies.toString(), "--body", name, "--body", coat);
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out()).doesNotContain("\u202E", "\u2066", "\u001B");
        assertThat(Run.entries(own)).containsExactly("bodies.csv", "out");
        assertThat(Run.entries(own.resolve("out")).stream().filter(each -> !each.startsWith("pattern")))
                .hasSize(2)
                .allMatch(each -> each.matches("[12](-[a-z0-9-]{1,40})?"));
        Run.files(own.resolve("out")).forEach((file, text) -> {
            if (file.endsWith(".svg") || file.endsWith(".html")) {
                assertThat(text).as(file).doesNotContain("<script", "\u202E", "\u2066", "\u001B");
                SvgReader read = SvgReader.read(text.replace("<!DOCTYPE html>", ""));
                assertThat(read.lettering()).as(file).isNotEmpty();
                if (file.startsWith("pattern")) {
                    assertThat(read.title()).as(file).contains(shown).contains(coat);
                }
            }
        });
        for (String file : List.of("pattern-a4.pdf", "pattern-copy-shop.pdf")) {
            try (PDDocument document =
                    Loader.loadPDF(Files.readAllBytes(own.resolve("out").resolve(file)))) {
                assertThat(document.getDocumentCatalog().getOCProperties().getGroupNames())
                        .containsExactlyInAnyOrder("size " + shown, "size " + coat);
                assertThat(document.getDocumentInformation().getTitle())
                        .isEqualTo("night crew hooded top, for sizes " + shown + ", " + coat);
                assertThat(document.getDocumentCatalog().getOpenAction()).isNull();
                assertThat(document.getDocumentCatalog().getNames()).isNull();
                for (PDPage page : document.getPages()) {
                    assertThat(page.getAnnotations()).isEmpty();
                }
            }
        }
    }

    /**
     * Whoever cuts out one size finds its line by its name: names that begin alike are not cut down to what is alike.
     */
    @Test
    void the_legend_has_names_of_two_words_whole() throws IOException {
        List<String> names = List.of("Hildegard Sonnenberg", "Hildegard Sonnleitner");
        Path bodies = Files.writeString(
                own.resolve("bodies.csv"),
                "name,figure,bust_girth_cm,height_cm\n" + names.get(0) + ",woman,94,168\n" + names.get(1)
                        + ",woman,104,168\n");
        Run run = Run.into(
                own.resolve("out"),
                Stream.concat(Stream.of("--bodies", bodies.toString()), Stream.of(bodies(names)))
                        .toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        for (String file : List.of("pattern.svg", "pattern-a4.html")) {
            String text = Run.files(own.resolve("out")).getOrDefault(file, "").replace("<!DOCTYPE html>", "");
            String all = SvgReader.read(text).lettering().stream()
                    .map(SvgReader.Lettering::text)
                    .collect(Collectors.joining(" "));
            assertThat(all).contains("1  cut line, " + names.get(0)).contains("2  cut line, " + names.get(1));
        }
    }
}

package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.block.Style;
import org.oaktag.body.BodyBuilder;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.export.gallery.GalleryStyle;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Length;

/**
 * Every script in {@code scripts} runs as its reader would run it, with {@code java} and a class path; the seams it
 * says are true are true in the sheet it wrote, and its picture is the one that is shown. After a change that is meant,
 * {@code mvn verify -Doaktag.pictures=write} draws the pictures anew.
 */
class ScriptsTest {

    private static final Path ROOT = root();
    private static final Path SCRIPTS = ROOT.resolve("examples/scripts");
    private static final Path PICTURES = ROOT.resolve("docs/pictures/scripts");
    private static final Pattern SEAM = Pattern.compile("(.+): (.+) ([0-9.]+) mm, (.+) ([0-9.]+) mm, (.+): true");
    private static final Pattern AMOUNT = Pattern.compile("[0-9.]+");

    private static final Pattern TITLE = Pattern.compile("(?:titled|Recipe\\.of)\\(\"([^\"]+)\"");
    private static final Pattern BODY =
            Pattern.compile("name\\(\"(\\w+)\"\\)\\.figure\\(Figure\\.(\\w+)\\)(.*?)\\.build\\(\\)", Pattern.DOTALL);
    private static final Pattern TAKEN = Pattern.compile("\\.(\\w+)\\((cm|inches)\\(([0-9.]+)\\)\\)");

    /** Lengths are printed to 0.01 mm and drawn to 1e-4 mm. */
    private static final double PRINTED = 0.006;

    static List<Path> scripts() throws IOException {
        try (Stream<Path> files = Files.list(SCRIPTS)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void there_are_twelve_and_each_can_be_read_at_a_glance() throws IOException {
        assertThat(scripts())
                .hasSize(12)
                .allSatisfy(script -> assertThat(Files.readAllLines(script)).hasSizeBetween(15, 40));
    }

    @ParameterizedTest
    @MethodSource("scripts")
    void a_script_makes_a_garment_whose_seams_are_true_and_draws_it(Path script, @TempDir Path folder)
            throws IOException {
        Child run = Child.run(
                folder,
                "",
                "java",
                List.of(
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-cp",
                        Child.classPath(),
                        script.toAbsolutePath().toString()));
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isZero();

        Path made = folder.resolve(Run.entries(folder).get(0));
        assertThat(Run.entries(folder)).hasSize(1);
        assertThat(Run.entries(made)).contains("pattern.svg", "flat.svg");
        for (String file : Run.entries(made)) {
            if (file.endsWith(".svg")) {
                assertThat(SvgReader.read(Files.readString(made.resolve(file))).paths())
                        .as(file)
                        .isNotEmpty();
            } else {
                assertThat(Files.readString(made.resolve(file), StandardCharsets.ISO_8859_1))
                        .as(file)
                        .startsWith("%PDF-");
            }
        }
        assertSeamsAreTrue(run.out(), Files.readString(made.resolve("pattern.svg")));
        assertShown(made);
        assertInGallery(script, Files.readString(made.resolve("pattern.svg")));
    }

    /**
     * A style stands in two places, in the script and in the gallery: on the body of the script both have to make the
     * same pattern, to the byte.
     */
    private static void assertInGallery(Path script, String pattern) throws IOException {
        String source = Files.readString(script);
        Matcher title = TITLE.matcher(source);
        assertThat(title.find()).as("a title in %s", script).isTrue();
        List<Style> shown = Gallery.styles().stream()
                .map(GalleryStyle::style)
                .filter(style -> style.title().equals(title.group(1)))
                .toList();
        assertThat(shown).as("styles of the gallery called %s", title.group(1)).hasSize(1);
        Garment garment = shown.get(0).on(body(source));
        String inGallery = SvgSheet.pattern(garment, shown.get(0).block().allowances(garment))
                .text();
        assertThat(inGallery.equals(pattern))
                .as("%s and the gallery make the same of '%s'; change both", script.getFileName(), title.group(1))
                .isTrue();
    }

    /** Reads the body off a script, as it is written in each of them. */
    private static BodyMeasurements body(String source) {
        Matcher named = BODY.matcher(source);
        assertThat(named.find()).as("a body").isTrue();
        BodyBuilder body = BodyMeasurements.builder().name(named.group(1)).figure(Figure.valueOf(named.group(2)));
        Matcher taken = TAKEN.matcher(named.group(3));
        while (taken.find()) {
            double count = Double.parseDouble(taken.group(3));
            Length length = taken.group(2).equals("cm") ? Length.cm(count) : Length.inches(count);
            switch (taken.group(1)) {
                case "bustGirth" -> body.bustGirth(length);
                case "waistGirth" -> body.waistGirth(length);
                case "hipGirth" -> body.hipGirth(length);
                case "waistToHip" -> body.waistToHip(length);
                case "neckBaseGirth" -> body.neckBaseGirth(length);
                case "upperArmGirth" -> body.upperArmGirth(length);
                case "headGirth" -> body.headGirth(length);
                case "shoulderLength" -> body.shoulderLength(length);
                case "height" -> body.height(length);
                default -> throw new AssertionError("unknown measure " + taken.group());
            }
        }
        return body.build();
    }

    /** Every edge is measured again as it is drawn, and the rule of every seam computed again. */
    private static void assertSeamsAreTrue(String walk, String pattern) {
        Map<String, Double> drawn = new HashMap<>();
        SvgReader.read(pattern).paths().stream()
                .filter(path -> path.length() >= 0)
                .forEach(path -> drawn.put(path.id(), ArcLengthOracle.length(path.shape())));
        assertThat(walk.lines()).hasSizeGreaterThan(1).allSatisfy(line -> {
            Matcher seam = SEAM.matcher(line);
            assertThat(seam.matches()).as(line).isTrue();
            double a = Double.parseDouble(seam.group(3));
            double b = Double.parseDouble(seam.group(5));
            assertThat(length(drawn, seam.group(2))).as(line).isCloseTo(a, within(PRINTED));
            assertThat(length(drawn, seam.group(4))).as(line).isCloseTo(b, within(PRINTED));
            assertFollows(seam.group(6), a, b);
        });
    }

    private static double length(Map<String, Double> drawn, String edges) {
        String[] ids = edges.split(" ", -1);
        assertThat(drawn).containsKeys(ids);
        return Arrays.stream(ids).mapToDouble(drawn::get).sum();
    }

    private static void assertFollows(String rule, double a, double b) {
        Matcher amounts = AMOUNT.matcher(rule);
        double amount = amounts.find() ? Double.parseDouble(amounts.group()) : 0;
        String word = rule.split(" ", -1)[0];
        switch (word) {
            case "flat" -> assertThat(b).as(rule).isCloseTo(a, within(0.011));
            // Amounts are told to 0.1 mm and 0.1 %, ratios to 0.01.
            case "eased", "lapped" -> assertThat(b - a).as(rule).isCloseTo(amount, within(0.061));
            case "stretched" -> assertThat(b / a * 100).as(rule).isCloseTo(amount, within(0.06));
            case "gathered" -> assertThat(b / a).as(rule).isCloseTo(amount, within(0.006));
            default -> throw new AssertionError("unknown rule " + rule);
        }
    }

    private static void assertShown(Path made) throws IOException {
        Path shown = PICTURES.resolve(made.getFileName() + ".svg");
        String now = Files.readString(made.resolve("flat.svg"));
        if ("write".equals(System.getProperty("oaktag.pictures"))) {
            Files.createDirectories(PICTURES);
            Files.writeString(shown, now);
        }
        assertThat(shown)
                .as("mvn verify -Doaktag.pictures=write draws it anew")
                .content()
                .isEqualTo(now);
    }

    @Test
    void jshell_starts_with_everything_imported(@TempDir Path folder) {
        List<String> arguments = new ArrayList<>(List.of(
                "-J-Djava.util.prefs.userRoot=" + folder,
                "--class-path",
                Child.classPath(),
                "--startup",
                "DEFAULT",
                "--startup",
                SCRIPTS.resolve("imports.jsh").toAbsolutePath().toString(),
                "-s",
                "-"));
        Child session = Child.run(folder, """
                var mira = BodyMeasurements.builder().name("Mira").figure(Figure.WOMAN).bustGirth(cm(86.5)).height(cm(178)).build()
                var block = KnitTop.draft(mira, TopEase.standard(), Cloth.knit("jersey", percent(30)))
                var top = block.adjust(widenNeckline(mm(10))).adjust(slopeShoulder(degrees(1)))
                System.out.println(top.walkSeams().seam(TopNames.SHOULDER_SEAM).text())
                SvgSheet.flat(top).writeTo(java.nio.file.Path.of("flat.svg"))
                System.out.println(mira.bustGirth().text())
                /exit
                """, "jshell", arguments);
        assertThat(session.err()).doesNotContainIgnoringCase("error").doesNotContain("not found");
        assertThat(session.out()).matches("shoulder: front\\.shoulder .* flat: true\\s+865\\.0 mm\\s+");
        assertThat(folder.resolve("flat.svg")).isNotEmptyFile();
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("DEVELOPERS.md"))
                ? here
                : here.resolve("..").normalize();
    }
}

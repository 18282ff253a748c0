package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.examples.figures.GuideFigures;
import org.oaktag.export.svg.SvgSheet;
import org.oaktag.garment.Garment;

/**
 * What the guides show is what the library draws and prints. After a change that is meant, {@code mvn verify
 * -Doaktag.pictures=write} draws the figures anew; a text that is quoted has to be copied by hand, and read.
 */
class GuidePagesTest {

    private static final Path DOCS = docs();
    private static final Path FIGURES = DOCS.resolve("figures");
    private static final Pattern PRINTED = Pattern.compile("<!-- prints: (\\w+) -->\\s*```\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern FIGURE = Pattern.compile("!\\[[^]]*]\\(figures/([^)]+)\\)");

    private static Map<String, String> drawn() {
        Garment block = HoodedTop.block(BodyFile.nightCrew().body("Juno"));
        Map<String, String> drawn = new TreeMap<>();
        GuideFigures.of(block, TweedSkirt.block(BodyFile.nightCrew().body("Juno")))
                .forEach((name, sheet) -> drawn.put(name + ".svg", sheet.text()));
        GuideFigures.lines(HoodedTop.block(BodyFile.nightCrew().body("Mira")))
                .forEach((name, sheet) -> drawn.put(name + ".svg", sheet.text()));
        Garment top = Tour.made(Tour.fitted(Tour.loosened(Tour.drafted(Tour.measured()))));
        drawn.put(
                "skirt-flat.svg",
                SvgSheet.flat(TweedSkirt.block(BodyFile.nightCrew().body("Juno")))
                        .text());
        drawn.put("tour-flat.svg", SvgSheet.flat(top.titled("hooded top")).text());
        return drawn;
    }

    @Test
    void the_figures_are_those_that_the_library_draws() throws IOException {
        Map<String, String> drawn = drawn();
        if ("write".equals(System.getProperty("oaktag.pictures"))) {
            Files.createDirectories(FIGURES);
            for (Map.Entry<String, String> figure : drawn.entrySet()) {
                Files.writeString(FIGURES.resolve(figure.getKey()), figure.getValue());
            }
        }
        for (Map.Entry<String, String> figure : drawn.entrySet()) {
            assertThat(FIGURES.resolve(figure.getKey()))
                    .as("mvn verify -Doaktag.pictures=write draws it anew")
                    .content()
                    .isEqualTo(figure.getValue());
        }
        assertThat(Run.entries(FIGURES)).containsExactlyElementsOf(drawn.keySet());
    }

    @Test
    void every_figure_is_shown_in_a_guide_and_every_guide_shows_what_there_is() throws IOException {
        List<String> shown = new ArrayList<>();
        for (Path guide : guides()) {
            FIGURE.matcher(Files.readString(guide)).results().forEach(found -> shown.add(found.group(1)));
        }
        assertThat(shown).containsAll(drawn().keySet());
        assertThat(drawn().keySet()).containsAll(shown);
    }

    @Test
    void the_output_quoted_is_what_the_program_prints(@TempDir Path folder) throws IOException {
        int quoted = 0;
        for (Path guide : guides()) {
            for (MatchResult found :
                    PRINTED.matcher(Files.readString(guide)).results().toList()) {
                String quote = "\n" + found.group(2);
                assertThat("\n" + printed(found.group(1), folder))
                        .as("%s quotes %s", guide, found.group(1))
                        .contains(quote);
                quoted++;
            }
        }
        assertThat(quoted).isGreaterThan(5);
    }

    private static String printed(String program, Path folder) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        switch (program) {
            case "Tour" -> Tour.take(out, folder);
            case "CapTable" -> CapTable.print(out);
            default -> throw new AssertionError("no program '" + program + "' prints for the guides");
        }
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }

    @Test
    void the_tour_ends_with_its_sheets(@TempDir Path folder) throws IOException {
        printed("Tour", folder);
        assertThat(Run.entries(folder)).containsExactly("flat.svg", "pattern-a4.pdf", "pattern.svg");
    }

    @Test
    void the_recipe_of_the_tour_makes_what_its_steps_make() {
        Garment block = Tour.drafted(Tour.measured());
        Garment made = Tour.made(Tour.fitted(Tour.loosened(block)));
        assertThat(block.adjust(Tour.recipe())).isEqualTo(made);
    }

    private static List<Path> guides() throws IOException {
        try (Stream<Path> files = Files.walk(DOCS)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .toList();
        }
    }

    private static Path docs() {
        Path here = Path.of("").toAbsolutePath();
        return (Files.exists(here.resolve("DEVELOPERS.md"))
                        ? here
                        : here.resolve("..").normalize())
                .resolve("docs");
    }
}

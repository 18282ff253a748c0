package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the README shows is what the main job makes. After a change that is meant, {@code mvn verify
 * -Doaktag.pictures=write} draws the pictures anew; the text has to be copied by hand, and read.
 */
class ReadmeTest {

    private static final Map<String, String> PICTURES =
            Map.of("flat.svg", "flat.svg", "step-07.svg", "steps/07-fit-the-sleeve-cap-to-the-armhole.svg");

    private static final Path ROOT = root();

    @Test
    void the_pictures_are_those_that_the_main_job_draws(@TempDir Path folder) throws IOException {
        Run.into(folder.resolve("out"));
        Map<String, String> drawn = Run.files(folder.resolve("out"));
        for (Map.Entry<String, String> picture : PICTURES.entrySet()) {
            Path shown = ROOT.resolve("docs/pictures").resolve(picture.getKey());
            String now = drawn.get(picture.getValue());
            if ("write".equals(System.getProperty("oaktag.pictures"))) {
                Files.writeString(shown, now);
            }
            assertThat(shown)
                    .as("mvn verify -Doaktag.pictures=write draws it anew")
                    .content()
                    .isEqualTo(now);
        }
    }

    @Test
    void the_lines_quoted_from_the_account_are_in_it(@TempDir Path folder) throws IOException {
        List<String> account = Run.into(folder.resolve("out")).out().lines().toList();
        List<String> quoted = quotedAccount();
        assertThat(quoted).hasSizeGreaterThan(5);
        assertThat(account).containsAll(quoted);
    }

    private static List<String> quotedAccount() throws IOException {
        try (Stream<String> lines = Files.lines(ROOT.resolve("README.md"))) {
            return lines.dropWhile(line -> !line.startsWith("   7  fit the sleeve cap"))
                    .takeWhile(line -> !line.startsWith("```"))
                    .toList();
        }
    }

    private static Path root() {
        Path here = Path.of("").toAbsolutePath();
        return Files.exists(here.resolve("DEVELOPERS.md"))
                ? here
                : here.resolve("..").normalize();
    }
}

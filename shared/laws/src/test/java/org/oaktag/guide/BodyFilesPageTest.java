package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.Figure;
import org.oaktag.body.PlausibleRange;

/** The page about body files says of every measure what the library knows of it. */
class BodyFilesPageTest {

    private static final Path PAGE = Path.of("../../docs/body-files.md");

    @Test
    void the_table_has_a_line_for_every_measure_and_no_other() throws IOException {
        assertThat(Files.readString(PAGE).lines().filter(line -> line.startsWith("| `")))
                .containsExactlyElementsOf(Arrays.stream(BodyMeasure.values())
                        .map(BodyFilesPageTest::line)
                        .toList());
    }

    @Test
    void the_other_word_for_every_measure_that_has_one_is_named() throws IOException {
        String page = Files.readString(PAGE);
        assertThat(Arrays.stream(BodyMeasure.values())
                        .map(BodyMeasure::otherName)
                        .flatMap(Optional::stream))
                .isNotEmpty()
                .allSatisfy(name -> assertThat(page).contains("`" + underscored(name.value()) + "`"));
    }

    private static String line(BodyMeasure measure) {
        return String.format(
                Locale.ROOT,
                "| `%s` | %s | %s | %s | %s |",
                underscored(measure.label()),
                measure.definition(),
                measure.derivedFrom().isEmpty()
                        ? "never"
                        : "from "
                                + measure.derivedFrom().stream()
                                        .map(BodyMeasure::label)
                                        .collect(Collectors.joining(", ")),
                range(measure, Figure.WOMAN),
                range(measure, Figure.GIRL));
    }

    private static String range(BodyMeasure measure, Figure figure) {
        PlausibleRange range = PlausibleRange.of(measure, figure);
        return String.format(
                Locale.ROOT,
                "%.0f to %.0f",
                range.least().mm(),
                range.greatest().mm());
    }

    private static String underscored(String words) {
        return words.replace(' ', '_');
    }
}

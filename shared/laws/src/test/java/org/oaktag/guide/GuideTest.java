package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Code in a guide that is preceded by {@code <!-- from: some/File.java -->} stands in that file, line for line, and
 * every file to which a guide links exists.
 */
class GuideTest {
    private static final Path ROOT = Path.of("../..");
    private static final Pattern EXCERPT =
            Pattern.compile("<!-- from: (\\S+) -->\\s*```java\\n(.*?)```", Pattern.DOTALL);
    private static final Pattern CODE = Pattern.compile("^```java$", Pattern.MULTILINE);
    private static final Pattern LINK = Pattern.compile("\\]\\((?!https?:|#)([^)#\\s]+)(#[^)]*)?\\)");

    @Test
    void the_guides_are_found() throws IOException {
        assertThat(guides()).contains(ROOT.resolve("DEVELOPERS.md"));
    }

    @ParameterizedTest
    @MethodSource("guides")
    void code_stands_in_the_file_it_is_from(Path guide) throws IOException {
        for (MatchResult excerpt :
                EXCERPT.matcher(Files.readString(guide)).results().toList()) {
            Path source = ROOT.resolve(excerpt.group(1));
            assertThat(source).exists();
            assertThat(unindented(Files.readString(source))).contains(unindented(excerpt.group(2)));
        }
    }

    @ParameterizedTest
    @MethodSource("guides")
    void every_code_is_from_a_file_that_is_compiled(Path guide) throws IOException {
        String text = Files.readString(guide);
        assertThat(EXCERPT.matcher(text).results().count())
                .as("excerpts among the code of %s", guide)
                .isEqualTo(CODE.matcher(text).results().count());
    }

    @ParameterizedTest
    @MethodSource("guides")
    void links_lead_somewhere(Path guide) throws IOException {
        assertThat(LINK.matcher(Files.readString(guide)).results().map(link -> guide.resolveSibling(link.group(1))))
                .allSatisfy(target -> assertThat(target).exists());
    }

    private static String unindented(String code) {
        return code.lines().map(String::strip).collect(Collectors.joining("\n"));
    }

    static List<Path> guides() throws IOException {
        try (Stream<Path> files = Files.walk(ROOT)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .filter(file -> !file.toString().contains("/target/"))
                    .sorted()
                    .toList();
        }
    }
}

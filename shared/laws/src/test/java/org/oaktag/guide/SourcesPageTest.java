package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Every standard and every paper that the library names stands on the page of the sources. */
class SourcesPageTest {

    private static final Path ROOT = Path.of("../..");
    private static final Pattern STANDARD =
            Pattern.compile("\\b(?:ISO|EN|ASTM|JIS|GB/T|NATICK/TR-\\d+|NMSU|C-\\d{3}) ?/?[A-Z]?[ ]?\\d{3,5}\\b");
    private static final Pattern TITLE = Pattern.compile("\"([A-Z][a-z][\\w -]{30,})\", [A-Z]");

    @Test
    void standards_and_papers_of_the_library_stand_on_the_page() throws IOException {
        String page = plain(Files.readString(ROOT.resolve("docs/sources.md")));
        TreeSet<String> named = new TreeSet<>();
        for (JavadocExample.Source source : JavadocExample.sources()) {
            String text = plain(read(source));
            STANDARD.matcher(text).results().map(MatchResult::group).forEach(named::add);
            TITLE.matcher(text).results().map(found -> found.group(1)).forEach(named::add);
        }
        assertThat(named)
                .contains(
                        "ISO 8559",
                        "NATICK/TR-15/007",
                        "Fast neighborhood search for two- and three-dimensional nesting problems");
        assertThat(named).allSatisfy(each -> assertThat(page).contains(each));
    }

    private static String read(JavadocExample.Source source) {
        try {
            return Files.readString(ROOT.resolve(source.path()));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the text as one line, without the stars and the wraps of comments. */
    private static String plain(String text) {
        return String.join(" ", List.of(text.replaceAll("\\R *\\*?/?/? *", " ").split(" +")));
    }
}

package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The bill of materials lists every module that is published, which are those that are Java modules, and no other. */
class BomTest {

    private static final Path ROOT = Path.of("../..");
    private static final Pattern MANAGED = Pattern.compile("<dependency>\\s*<groupId>org\\.oaktag</groupId>\\s*"
            + "<artifactId>([^<]+)</artifactId>\\s*<version>\\$\\{project\\.version}</version>\\s*</dependency>");
    private static final Pattern MODULE = Pattern.compile("<module>([^<]+)</module>");
    private static final Pattern OWN = Pattern.compile("</parent>\\s*<artifactId>([^<]+)</artifactId>");
    private static final Pattern VERSION = Pattern.compile(
            "<groupId>org\\.oaktag</groupId>\\s*<artifactId>[^<]+</artifactId>\\s*<version>([^<]+)</version>");

    @Test
    void every_published_module_is_in_the_bill_of_materials() throws IOException {
        List<String> published = all(MODULE, pom(ROOT)).stream()
                .map(ROOT::resolve)
                .filter(module -> Files.exists(module.resolve("src/main/java/module-info.java")))
                .map(module -> all(OWN, pom(module)).get(0))
                .toList();
        assertThat(published).contains("oaktag-core");
        assertThat(all(MANAGED, pom(ROOT.resolve("bom")))).containsExactlyInAnyOrderElementsOf(published);
    }

    @Test
    void it_has_the_version_of_the_modules() {
        assertThat(all(VERSION, pom(ROOT.resolve("bom"))).get(0))
                .isEqualTo(all(VERSION, pom(ROOT)).get(0));
    }

    private static List<String> all(Pattern pattern, String text) {
        Stream<MatchResult> found = pattern.matcher(text).results();
        return found.map(match -> match.group(1)).toList();
    }

    private static String pom(Path module) {
        try {
            return Files.readString(module.resolve("pom.xml"));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}

package org.oaktag.examples.embed.own;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the guide says of how short a block and a step of one's own are. */
class LinesOfOwnTest {

    private static final Path HERE = Path.of("src/main/java/org/oaktag/examples/embed/own");

    @Test
    void block_and_step_take_less_than_seventy_five_lines_of_code_together() throws IOException {
        List<String> code = new ArrayList<>();
        for (String file : List.of("Gaiter.java", "FlareGaiter.java")) {
            Files.readAllLines(HERE.resolve(file)).stream()
                    .map(String::strip)
                    .filter(LinesOfOwnTest::isCode)
                    .forEach(code::add);
        }
        assertThat(code).hasSizeBetween(30, 74);
        assertThat(code)
                .filteredOn(line -> line.chars().filter(c -> c == ';').count() > 1)
                .as("one statement a line")
                .isEmpty();
    }

    private static boolean isCode(String line) {
        return !(line.isEmpty()
                || line.startsWith("import ")
                || line.startsWith("package ")
                || line.startsWith("/*")
                || line.startsWith("*")
                || line.startsWith("//"));
    }
}

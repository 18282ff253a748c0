package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.oaktag.adjust.AmountKind;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.AmountField.Sort;
import org.oaktag.catalogue.KnownSteps;
import org.oaktag.recipe.json.BodyJson;
import org.oaktag.recipe.json.RecipeJson;

/**
 * The page about recipes as JSON has every step with its amounts, and its examples are read. {@code
 * -Doaktag.schemas=write} writes the table of steps anew.
 */
class RecipeJsonPageTest {

    private static final Path PAGE = Path.of("../../docs/recipe-json.md");
    private static final String HEAD = "| step | amounts |\n|---|---|\n";
    private static final Pattern EXAMPLE = Pattern.compile("```json\n(.*?)```", Pattern.DOTALL);

    @Test
    void the_table_has_a_line_for_every_step_and_no_other() throws IOException {
        String table = KnownSteps.catalogue().kinds().stream()
                .map(RecipeJsonPageTest::line)
                .collect(Collectors.joining("\n", HEAD, "\n"));
        String page = Files.readString(PAGE);
        int start = page.indexOf(HEAD);
        int end = page.indexOf("\n\n", start) < 0 ? page.length() : page.indexOf("\n\n", start) + 1;
        assertThat(start).isPositive();
        if ("write".equals(System.getProperty("oaktag.schemas"))) {
            Files.writeString(PAGE, page.substring(0, start) + table + page.substring(end));
        } else {
            assertThat(page.substring(start, end))
                    .as("mvn verify -Doaktag.schemas=write writes it anew")
                    .isEqualTo(table);
        }
    }

    @Test
    void the_examples_are_read_and_are_written_as_they_stand() throws IOException {
        assertThat(EXAMPLE.matcher(Files.readString(PAGE)).results().map((MatchResult each) -> each.group(1)))
                .hasSize(2)
                .allSatisfy(json -> assertThat(
                                json.contains("oaktag recipe")
                                        ? RecipeJson.standard()
                                                .write(RecipeJson.standard().read(json))
                                        : BodyJson.write(BodyJson.read(json)))
                        .isEqualTo(json));
    }

    private static String line(StepKind kind) {
        return "| `" + kind.name() + "` | "
                + kind.amounts().stream().map(RecipeJsonPageTest::amount).collect(Collectors.joining("; ")) + " |";
    }

    private static String amount(AmountKind amount) {
        String what = !amount.choices().isEmpty() && amount.sort() == Sort.TEXT
                ? String.join(" / ", amount.choices())
                : switch (amount.sort()) {
                    case NUMBER -> "number";
                    case FLAG -> "true / false";
                    case TEXT -> "text";
                    case COMPOUND -> "list or fields";
                };
        return "`" + amount.field() + "` " + what + (amount.optional() ? ", may be left out" : "");
    }
}

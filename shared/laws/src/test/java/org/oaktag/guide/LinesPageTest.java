package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.testkit.lines.LineTable;

/**
 * The page about the lines of the block gives the figures that the block has. {@code LineTable.main} prints the rows of
 * its table over 1,000 adults of each sex; here the first hundred of each are drafted, and the middle of each figure
 * must be that of the page within a twentieth of the page's spread from 1 to 99 %.
 */
class LinesPageTest {

    private static final Path PAGE = Path.of("../../docs/lines.md");
    private static final int OF_EACH = 100;

    /**
     * A row that {@link LineTable} prints has three figures after its name; one of the page has three older ones
     * between.
     */
    private record Row(String name, double one, double half, double ninetyNine, double lastDigit) {

        static Row of(String line) {
            List<String> cells = List.of(line.substring(2, line.length() - 2).split(" \\| "));
            int last = cells.size() - 1;
            String half = cells.get(last - 1);
            int decimals = half.contains(".") ? half.length() - half.indexOf('.') - 1 : 0;
            return new Row(
                    cells.get(0),
                    Double.parseDouble(cells.get(last - 2)),
                    Double.parseDouble(half),
                    Double.parseDouble(cells.get(last)),
                    Math.pow(10, -decimals));
        }
    }

    @Test
    void the_figures_of_the_table_are_those_of_the_block() throws IOException {
        List<String> page = Files.readAllLines(PAGE);
        assertThat(LineTable.rows(OF_EACH)).isNotEmpty().allSatisfy(line -> {
            Row drafted = Row.of(line);
            Row told = Row.of(page.stream()
                    .filter(each -> each.startsWith("| " + drafted.name + " |"))
                    .findFirst()
                    .orElseThrow());
            assertThat(drafted.half)
                    .as(drafted.name)
                    .isCloseTo(told.half, within((told.ninetyNine - told.one) / 20 + told.lastDigit));
        });
    }
}

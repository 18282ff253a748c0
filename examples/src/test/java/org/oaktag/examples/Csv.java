package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the written tables back; a cell with a comma in it stands in quotes (RFC 4180). */
final class Csv {

    private Csv() {}

    /** A line under its head. */
    record Row(Map<String, String> cells) {
        String text(String column) {
            String cell = cells.get(column);
            assertThat(cell).as("column " + column + " of " + cells.keySet()).isNotNull();
            return cell;
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    static List<Row> rows(String table) {
        assertThat(table).endsWith("\n").doesNotContain("\r");
        List<String> lines = table.lines().toList();
        String[] head = cells(lines.get(0));
        List<Row> rows = new ArrayList<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = cells(line);
            assertThat(cells).as(line).hasSameSizeAs(head);
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < head.length; i++) {
                row.put(head[i], cells[i]);
            }
            rows.add(new Row(row));
        }
        return rows;
    }

    private static String[] cells(String line) {
        // A comma parts cells where an even number of quotes follows it.
        return Arrays.stream(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1))
                .map(cell -> cell.startsWith("\"") ? cell.substring(1, cell.length() - 1) : cell)
                .toArray(String[]::new);
    }
}

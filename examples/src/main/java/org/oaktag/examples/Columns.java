package org.oaktag.examples;

import java.util.ArrayList;
import java.util.List;

/** A table for a terminal, its columns as wide as they need to be. The first is flush left, those of numbers right. */
final class Columns {

    private static final String GAP = "  ";

    private final String indent;
    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> right;

    private Columns(String indent, List<Boolean> right) {
        this.indent = indent;
        this.right = right;
    }

    /**
     * Begins a table.
     *
     * @param indent what each line begins with
     * @param alignment a letter for each column, {@code l} for flush left or {@code r} for flush right
     */
    static Columns of(String indent, String alignment) {
        return new Columns(
                indent, alignment.chars().mapToObj(letter -> letter == 'r').toList());
    }

    Columns row(String... cells) {
        if (cells.length != right.size()) {
            throw new IllegalArgumentException("a row must have " + right.size() + " cells, got " + cells.length);
        }
        rows.add(List.of(cells));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Returns the lines, without white space at their ends. */
    List<String> lines() {
        int[] widths = new int[right.size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], width(row.get(i)));
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int i = 0; i < widths.length; i++) {
                String pad = " ".repeat(widths[i] - width(row.get(i)));
                line.append(i == 0 ? "" : GAP).append(right.get(i) ? pad + row.get(i) : row.get(i) + pad);
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}

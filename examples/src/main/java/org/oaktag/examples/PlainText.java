package org.oaktag.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.oaktag.export.drawing.FreeText;

/** Text for a terminal, at most a hundred columns wide: heads, lines, tables, and sentences broken at spaces. */
final class PlainText {

    private static final int WIDTH = 100;

    /** A number and its unit, which stay on one line. */
    private static final Pattern UNIT = Pattern.compile("(\\d) (mm|%)");

    private static final String NO_BREAK = "\u00A0";

    private final List<String> lines = new ArrayList<>();

    /** Writes what it is about, underlined. */
    void title(String text) {
        line(text);
        lines.add("=".repeat(Math.min(WIDTH, lines.get(lines.size() - 1).length())));
    }

    /** Begins a part, below a blank line. */
    void head(String text) {
        blank();
        lines.add(text);
    }

    void blank() {
        lines.add("");
    }

    void line(String text) {
        lines.add(text.replace(NO_BREAK, " ").stripTrailing());
    }

    void add(Columns table) {
        lines.addAll(table.lines());
    }

    /** Breaks at spaces; lines after the first are indented a little further. */
    void wrapped(String indent, String text) {
        StringBuilder line = new StringBuilder(indent);
        boolean first = true;
        for (String word : UNIT.matcher(text).replaceAll("$1" + NO_BREAK + "$2").split(" ", -1)) {
            if (!first && line.length() + 1 + word.length() > WIDTH) {
                line(line.toString());
                line.setLength(0);
                line.append(" ".repeat(indent.length() + 2));
                first = true;
            }
            line.append(first ? "" : " ").append(word);
            first = false;
        }
        line(line.toString());
    }

    /** Writes the cautions, if there are any. */
    void cautions(List<String> cautions) {
        if (!cautions.isEmpty()) {
            head("Cautions");
            cautions.forEach(caution -> wrapped("  ", FreeText.shown(caution)));
        }
    }

    /** Returns all of it, each line ended. */
    String text() {
        return String.join("\n", lines) + "\n";
    }
}

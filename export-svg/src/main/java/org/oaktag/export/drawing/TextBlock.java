package org.oaktag.export.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.oaktag.geometry.Point;

/**
 * Lines of lettering one below the other. Immutable.
 *
 * <pre>{@code
 * TextBlock block = TextBlock.of("front", Font.NAME).above(TextBlock.wrapped("cut 1 on fold", Font.TEXT, 60));
 * block.height();   // mm
 * }</pre>
 *
 * @param lines the lines, top to bottom
 */
public record TextBlock(List<TextLine> lines) {

    /** A number and its unit, which stay on one line. */
    private static final Pattern UNIT = Pattern.compile("(?<=\\d) (?=mm|%|in\\b|\\d+/\\d)");

    private static final String NO_BREAK = "\u00A0";

    /** Copies the list. */
    public TextBlock {
        lines = List.copyOf(lines);
    }

    /** Returns a block of one line. */
    public static TextBlock of(String text, Font font) {
        return new TextBlock(List.of(TextLine.of(text, font)));
    }

    /** Returns the text broken at spaces into lines no wider than that; a longer word is cut short. */
    public static TextBlock wrapped(String text, Font font, double widest) {
        List<TextLine> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String glued : UNIT.matcher(text).replaceAll(NO_BREAK).split(" ", -1)) {
            String word = glued.replace(NO_BREAK, " ");
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && font.width(longer) > widest) {
                lines.add(TextLine.of(line.toString(), font));
                line.setLength(0);
                line.append(font.fitted(word, widest));
            } else {
                line.setLength(0);
                line.append(font.fitted(longer, widest));
            }
        }
        lines.add(TextLine.of(line.toString(), font));
        return new TextBlock(lines);
    }

    /** Returns this block with another below it. */
    public TextBlock above(TextBlock other) {
        List<TextLine> all = new ArrayList<>(lines);
        all.addAll(other.lines);
        return new TextBlock(all);
    }

    /** Returns the width of its widest line, mm. */
    public double width() {
        return lines.stream().mapToDouble(TextLine::width).max().orElse(0);
    }

    /** Returns the height of all its lines, mm. */
    public double height() {
        return lines.stream().mapToDouble(line -> line.font().lineHeight()).sum();
    }

    /** Returns the label that has this block in the middle of a box. */
    public Label in(Box box) {
        return new Label(this, box, Label.Align.MIDDLE);
    }

    /** Returns the label whose top left corner lies there. */
    public Label at(double x, double y) {
        return new Label(
                this, new Box(Point.of(x + width() / 2, y + height() / 2), width(), height(), 0), Label.Align.START);
    }
}

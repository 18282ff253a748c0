package org.oaktag.export.drawing;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.geometry.Point;

/**
 * A table of short texts: a head, a rule, and rows. The first column is flush left, the others flush right. Immutable.
 *
 * <pre>{@code
 * Table measures = new Table(
 *         List.of("measure", "finished"),
 *         List.of(List.of("chest girth", top.finished(CHEST_GIRTH).text())));
 * double height = measures.draw(new Figure(), 0, 0, 120);
 * }</pre>
 *
 * @param head the heads of the columns
 * @param rows the rows, each as long as the head
 */
public record Table(List<String> head, List<List<String>> rows) {

    private static final Font FONT = Font.SMALL;
    private static final Font HEAD_FONT = new Font(FONT.size(), true);
    private static final double GAP = 5;

    /** The gap where the first column would have to be cut short with the usual one, mm. */
    private static final double NARROW = 3;

    private static final double AROUND_RULE = 1;

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a row is not as long as the head
     */
    public Table {
        head = List.copyOf(head);
        List<List<String>> copies = new ArrayList<>();
        for (List<String> row : rows) {
            if (row.size() != head.size()) {
                throw new IllegalArgumentException(
                        "a row must have " + head.size() + " columns, got " + row.size() + ": " + row);
            }
            copies.add(List.copyOf(row));
        }
        rows = List.copyOf(copies);
    }

    /**
     * Draws the table and returns the lower edge.
     *
     * @param x the left edge
     * @param y the upper edge
     * @param width the width to fill: the first column takes what the others leave, its texts cut short if they must be
     */
    public double draw(Figure figure, double x, double y, double width) {
        double gap = isCutShort(columns(width, GAP)[0]) ? NARROW : GAP;
        double[] columns = columns(width, gap);
        double below = row(figure, head, HEAD_FONT, columns, gap, x, y) + AROUND_RULE;
        figure.add(Stroke.line(LineType.RULE, Point.of(x, below), Point.of(x + width, below)));
        below += AROUND_RULE;
        for (List<String> row : rows) {
            below = row(figure, row, FONT, columns, gap, x, below);
        }
        return below;
    }

    private boolean isCutShort(double room) {
        return rows.stream().anyMatch(row -> FONT.width(row.get(0)) > room);
    }

    private double[] columns(double width, double gap) {
        double[] columns = new double[head.size()];
        double left = width;
        for (int i = 1; i < columns.length; i++) {
            columns[i] = HEAD_FONT.width(head.get(i));
            for (List<String> row : rows) {
                columns[i] = Math.max(columns[i], FONT.width(row.get(i)));
            }
            left -= columns[i] + gap;
        }
        columns[0] = left;
        return columns;
    }

    private static double row(
            Figure figure, List<String> texts, Font font, double[] columns, double gap, double x, double y) {
        double at = x;
        for (int i = 0; i < columns.length; i++) {
            TextBlock text = TextBlock.of(font.fitted(texts.get(i), columns[i]), font);
            double from = i == 0 ? at : at + columns[i] - text.width();
            if (!texts.get(i).isEmpty()) {
                figure.add(text.at(from, y));
            }
            at += columns[i] + gap;
        }
        return y + font.lineHeight();
    }
}

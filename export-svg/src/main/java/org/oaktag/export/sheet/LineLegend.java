package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.garment.Mark;
import org.oaktag.geometry.Point;

/** What each line on a piece means. */
final class LineLegend {

    private static final double SAMPLE = 24;

    /** A name of a size is cut short so that the legend stays within its column, mm. */
    private static final double WIDEST = 45;

    private static final List<LineType> ON_PIECES =
            List.of(LineType.CUT, LineType.SEAM, LineType.FOLD, LineType.PLACEMENT, LineType.GRAIN);

    /** Which lengths are written on a piece. */
    static final String LENGTHS = "Lengths on the pieces are those of the seam line.";

    /** Where the seam line of nested sizes lies. */
    static final String NESTED =
            "The seam line of each size lies inside its cut line by the allowance and is not drawn. A number at a notch, a mark"
                    + " or a line inside is that of its size.";

    /** How deep a notch is cut: common practice, so that the seam holds. */
    static final String NOTCHES =
            "Cut notches no deeper than half the allowance. Where neither front nor back meets another, a notch only meets"
                    + " its like.";

    /** How a piece on the fold is drawn. */
    static final String HALVES = "Pieces with a fold are drawn as their half.";

    private LineLegend() {}

    /**
     * Draws the legend and returns its lower edge.
     *
     * @param head the garment, whose marks are explained, and the sizes that are drawn over each other
     * @param others the lines that occur on the sheet beside those of the pieces
     */
    static double draw(Figure figure, PatternHead head, List<LineType> others, double x, double top) {
        List<String> sizes = head.sizes();
        double y = write(figure, TextBlock.of("Lines", Font.HEAD), x, top) + 2;
        for (int i = 0; i < sizes.size(); i++) {
            double middle = y + Font.TEXT.lineHeight() / 2;
            figure.add(Stroke.line(Nest.line(i), Point.of(x, middle), Point.of(x + SAMPLE, middle)));
            String text = (i + 1) + "  " + Nest.line(i).meaning() + ", " + sizes.get(i);
            String fitted = Font.TEXT.fitted(text, 2 * WIDEST);
            y = write(figure, TextBlock.wrapped(fitted, Font.TEXT, WIDEST), x + SAMPLE + 4, y) + 1.5;
        }
        List<LineType> types = new ArrayList<>(ON_PIECES);
        if (!sizes.isEmpty()) {
            types.removeAll(List.of(LineType.CUT, LineType.SEAM));
        }
        types.addAll(others);
        for (LineType type : types) {
            double middle = y + Font.TEXT.lineHeight() / 2;
            Point from = Point.of(x, middle);
            Point to = Point.of(x + SAMPLE, middle);
            figure.add(Stroke.line(type, from, to));
            if (type == LineType.GRAIN) {
                figure.add(Fill.arrowhead(from, from.minus(to), 5, type.colour()));
                figure.add(Fill.arrowhead(to, to.minus(from), 5, type.colour()));
            }
            y = write(figure, TextBlock.of(type.meaning(), Font.TEXT), x + SAMPLE + 4, y) + 1.5;
        }
        y = notchSample(figure, x, y, 1, "single notch: front");
        y = notchSample(figure, x, y, 2, "double notch: back");
        for (Mark.Use use : MarkSign.used(head.garment())) {
            Point at = Point.of(x + SAMPLE / 2, y + Font.TEXT.lineHeight() / 2);
            MarkSign.of(use, at).forEach(line -> figure.add(Stroke.of(LineType.NOTCH, line)));
            y = write(figure, TextBlock.of(MarkSign.meaning(use), Font.TEXT), x + SAMPLE + 4, y) + 1.5;
        }
        return y;
    }

    private static double notchSample(Figure figure, double x, double y, int count, String text) {
        double middle = y + Font.TEXT.lineHeight() / 2;
        figure.add(Stroke.line(LineType.SEAM, Point.of(x, middle + 2.5), Point.of(x + SAMPLE, middle + 2.5)));
        for (int i = 0; i < count; i++) {
            double at = x + SAMPLE / 2 + (i - (count - 1) / 2.0) * 4;
            figure.add(Stroke.line(LineType.NOTCH, Point.of(at, middle + 2.5), Point.of(at, middle - 2.5)));
        }
        return write(figure, TextBlock.of(text, Font.TEXT), x + SAMPLE + 4, y) + 1.5;
    }

    private static double write(Figure figure, TextBlock block, double x, double y) {
        figure.add(block.at(x, y));
        return y + block.height();
    }
}

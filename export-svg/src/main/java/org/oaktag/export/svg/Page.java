package org.oaktag.export.svg;

import java.util.List;
import java.util.stream.Collectors;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.export.drawing.TextLine;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;

/** The page of a picture that is not at true scale: ISO A3, with a title above and a scale bar below. */
final class Page {

    static final double WIDTH = 420;
    static final double HEIGHT = 297;
    static final double MARGIN = 15;

    /** Reductions, one to so many; those of ISO 5455 and the usual steps between them. */
    private static final List<Double> REDUCTIONS =
            List.of(1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 12.0, 15.0, 20.0, 50.0);

    private static final double BAR = 200;

    /** How wide a title may be, mm. */
    private static final double WIDEST = WIDTH - 2 * MARGIN;

    /** A title takes at most so many lines, however long what a maker calls a cloth. */
    private static final int MOST_LINES = 3;

    private final Figure figure = new Figure();
    private final String title;
    private final double top;

    private Page(String title, double top) {
        this.title = title;
        this.top = top;
    }

    /** Begins a page with a title, broken into lines where it is long, and a line below it. */
    static Page titled(String title, String subtitle) {
        TextBlock lines = lines(title);
        double more = lines.height() - Font.NAME.lineHeight();
        Page page = new Page(title, MARGIN + 20 + more);
        page.write(lines, MARGIN, MARGIN - 4);
        page.write(TextBlock.of(Font.TEXT.fitted(subtitle, WIDEST), Font.TEXT), MARGIN, MARGIN + 8 + more);
        return page;
    }

    private static TextBlock lines(String title) {
        List<TextLine> lines = TextBlock.wrapped(title, Font.NAME, WIDEST).lines();
        if (lines.size() <= MOST_LINES) {
            return new TextBlock(lines);
        }
        String rest = lines.stream().skip(MOST_LINES - 1).map(TextLine::text).collect(Collectors.joining(" "));
        return new TextBlock(lines.subList(0, MOST_LINES - 1))
                .above(TextBlock.of(Font.NAME.fitted(rest, WIDEST), Font.NAME));
    }

    /** The upper edge of what lies below the title. */
    double top() {
        return top;
    }

    Figure figure() {
        return figure;
    }

    /** Writes a block and returns its lower edge. */
    double write(TextBlock block, double x, double y) {
        figure.add(block.at(x, y));
        return y + block.height();
    }

    /** Draws a bar of 200 mm and says how far everything is reduced. */
    void scaleBar(double reduction) {
        double y = HEIGHT - MARGIN;
        double end = MARGIN + BAR / reduction;
        figure.add(Stroke.line(LineType.CUT, Point.of(MARGIN, y), Point.of(end, y)));
        for (double x : List.of(MARGIN, (MARGIN + end) / 2, end)) {
            figure.add(Stroke.line(LineType.RULE, Point.of(x, y - 1.5), Point.of(x, y + 1.5)));
        }
        String ratio = reduction == Math.rint(reduction) ? "" + (int) reduction : "" + reduction;
        String text = "the bar is " + (int) BAR + " mm of the garment; scale 1:" + ratio
                + (reduction == 1 ? "" : ", not true size");
        write(TextBlock.of(text, Font.SMALL), end + 4, y - Font.SMALL.lineHeight() / 2);
    }

    /** Returns the least reduction at which a size fits into a room, or the greatest there is. */
    static double reduction(double width, double height, double roomWidth, double roomHeight) {
        return REDUCTIONS.stream()
                .filter(each -> width / each <= roomWidth && height / each <= roomHeight)
                .findFirst()
                .orElse(REDUCTIONS.get(REDUCTIONS.size() - 1));
    }

    /** Returns every reduction there is, least first. */
    static List<Double> reductions() {
        return REDUCTIONS;
    }

    /** Returns the map that reduces and then moves. */
    static Transform reduced(double reduction, double dx, double dy) {
        return Transform.scale(1 / reduction).then(Transform.translation(dx, dy));
    }

    String end(String description, List<ClothPaint> paints) {
        return SvgDocument.begin(WIDTH, HEIGHT, title, description, paints)
                .draw("sheet", figure, 0, 0)
                .end();
    }
}

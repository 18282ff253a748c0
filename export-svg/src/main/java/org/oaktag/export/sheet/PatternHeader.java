package org.oaktag.export.sheet;

import java.util.List;
import java.util.Map;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Font;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.drawing.TextBlock;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Change;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * The head of the pattern sheet: what it is and for whom, the recipe, the scale square, the legend, the cloths.
 *
 * <pre>{@code
 * Figure head = PatternHeader.of(top, allowances, Cloths.of(top), 400);
 * }</pre>
 */
public final class PatternHeader {

    private static final double SQUARE = 100;
    private static final double COLUMN_GAP = 18;
    private static final double LEGEND_WIDTH = 150;

    private final Figure figure = new Figure();
    private final PatternHead head;
    private final Garment garment;

    private PatternHeader(PatternHead head) {
        this.head = head;
        this.garment = head.garment();
    }

    /**
     * Draws the header.
     *
     * @param width the room from left to right, mm; at least 560
     */
    public static Figure of(Garment garment, Allowances allowances, Cloths cloths, double width) {
        return of(PatternHead.of(garment), allowances, cloths, width);
    }

    /**
     * Draws the header of several sizes that are drawn over each other.
     *
     * @param allowances the allowances of every size
     * @param width the room from left to right, mm; at least 560
     */
    public static Figure of(Nest nest, Allowances allowances, Cloths cloths, double width) {
        return of(PatternHead.of(nest), allowances, cloths, width);
    }

    static Figure of(PatternHead head, Allowances allowances, Cloths cloths, double width) {
        PatternHeader header = new PatternHeader(head);
        double notesWidth = 190;
        double titleWidth = width - SQUARE - LEGEND_WIDTH - notesWidth - 3 * COLUMN_GAP;
        double x = header.title(titleWidth) + COLUMN_GAP;
        x = header.square(x) + COLUMN_GAP;
        x = header.legend(x) + COLUMN_GAP;
        header.notes(allowances, cloths, x, width - x);
        double bottom = header.figure.bounds().maxY() + 8;
        header.figure.add(Stroke.line(LineType.RULE, Point.of(0, bottom), Point.of(width, bottom)));
        return header.figure;
    }

    private double title(double width) {
        String title = Font.TITLE.fitted(FreeText.shown(garment.title()), width);
        String wearer = "drafted for " + FreeText.shown(garment.wearer().name());
        double y = write(TextBlock.of(title, Font.TITLE), 0, 0) + 1;
        y = write(TextBlock.of(Font.HEAD.fitted(wearer, width), Font.HEAD), 0, y) + 3;
        int number = 0;
        for (Change change : garment.history()) {
            String step = (number == 0 ? "" : number + "  ") + change.title();
            y = write(TextBlock.wrapped(step, Font.SMALL, width), 0, y);
            number++;
        }
        return width;
    }

    private double square(double x) {
        figure.add(Stroke.of(LineType.RULE, Fill.rim(new Bounds(x, 0, x + SQUARE, SQUARE))));
        TextBlock text = TextBlock.of("100 mm square", Font.HEAD)
                .above(TextBlock.wrapped(
                        "Measure its width and its height before cutting. Print at 100 %.", Font.TEXT, 80));
        write(text, x + (SQUARE - text.width()) / 2, (SQUARE - text.height()) / 2);
        return x + SQUARE;
    }

    private double legend(double x) {
        double y = LineLegend.draw(figure, head, List.of(), x, 0);
        write(
                TextBlock.wrapped(
                        (head.sizes().isEmpty() ? LineLegend.LENGTHS : LineLegend.NESTED) + " " + LineLegend.HALVES
                                + " " + LineLegend.NOTCHES,
                        Font.SMALL,
                        LEGEND_WIDTH),
                x,
                y + 1);
        return x + LEGEND_WIDTH;
    }

    private void notes(Allowances allowances, Cloths cloths, double x, double width) {
        double y = write(TextBlock.of("Cloths", Font.HEAD), x, 0) + 2;
        for (var entry : cloths.paints().entrySet()) {
            Cloth cloth = entry.getKey();
            Bounds swatch = new Bounds(x, y, x + 9, y + 6);
            figure.add(Fill.rectangle(swatch, entry.getValue().paint()));
            figure.add(Stroke.of(LineType.RULE, Fill.rim(swatch)));
            String text = cloth.use() + ": " + FreeText.shown(cloth.description()) + ", stretch "
                    + cloth.stretch().text();
            y = write(TextBlock.wrapped(text, Font.TEXT, width - 13), x + 13, y) + 1.5;
        }
        y = write(TextBlock.of("Allowances (" + allowances.name() + ")", Font.HEAD), x, y + 3) + 1;
        for (Map.Entry<Length, String> each :
                AllowanceNotes.of(garment, allowances).entrySet()) {
            y = write(TextBlock.wrapped(each.getKey().text() + ": " + each.getValue(), Font.TEXT, width), x, y);
        }
        List<String> cautions = head.cautions();
        if (!cautions.isEmpty()) {
            y = write(TextBlock.of("Cautions", Font.HEAD), x, y + 3) + 1;
            for (String caution : cautions) {
                y = write(TextBlock.wrapped(caution, Font.SMALL, width), x, y) + 1;
            }
        }
    }

    /** Returns the lower edge of what was written. */
    private double write(TextBlock block, double x, double y) {
        figure.add(block.at(x, y));
        return y + block.height();
    }
}

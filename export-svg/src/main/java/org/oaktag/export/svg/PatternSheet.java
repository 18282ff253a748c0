package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.layout.Skyline;
import org.oaktag.export.sheet.Cloths;
import org.oaktag.export.sheet.Nest;
import org.oaktag.export.sheet.NestedDrawing;
import org.oaktag.export.sheet.PatternHeader;
import org.oaktag.export.sheet.PieceDrawing;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;

/** Lays out every piece at true scale below a header. */
final class PatternSheet {

    private static final double MARGIN = 20;
    private static final double GAP = 15;

    /** Widths tried for the strip that the pieces are packed on, mm; a wider one only where a piece needs it. */
    private static final double[] WIDTHS = {850, 1000, 1150, 1300, 1450, 1600};

    private final List<Piece> pieces;
    private final List<Bounds> sizes;
    private final List<Bounds> places;
    private final double top;
    private final SvgDocument document;

    private PatternSheet(
            List<Piece> pieces, List<Bounds> sizes, double width, Figure header, String title, Cloths cloths) {
        this.pieces = pieces;
        this.sizes = sizes;
        this.top = MARGIN + header.bounds().maxY() + GAP;
        this.places = Skyline.pack(sizes, width, GAP);
        this.document = SvgDocument.begin(
                width + 2 * MARGIN,
                Math.ceil(top + bottom(places) + MARGIN),
                title,
                "Pattern at true scale: one user unit is one millimetre. Check the 100 mm square before cutting.",
                cloths.used());
        document.draw("sheet-header", header, MARGIN, MARGIN);
    }

    static String draw(Garment garment, Allowances allowances) {
        allowances.check(garment);
        List<Figure> figures = garment.pieces().stream()
                .map(piece -> PieceDrawing.of(garment, piece, allowances))
                .toList();
        List<Bounds> sizes = figures.stream().map(Figure::bounds).toList();
        double width = bestWidth(sizes);
        Cloths cloths = Cloths.of(garment);
        Figure header = PatternHeader.of(garment, allowances, cloths, width);
        String title = FreeText.shown(garment.title()) + ", for "
                + FreeText.shown(garment.wearer().name());
        PatternSheet sheet = new PatternSheet(garment.pieces(), sizes, width, header, title, cloths);
        sheet.draw(figures, "");
        return sheet.document.end();
    }

    static String draw(Nest nest, Allowances allowances) {
        Garment first = nest.sizes().get(0).garment();
        allowances.check(first);
        List<NestedDrawing> drawings = first.pieces().stream()
                .map(piece -> NestedDrawing.of(nest, piece.name(), allowances))
                .toList();
        List<Bounds> sizes =
                drawings.stream().map(each -> each.whole().bounds()).toList();
        double width = bestWidth(sizes);
        Cloths cloths = Cloths.of(first);
        Figure header = PatternHeader.of(nest, allowances, cloths, width);
        PatternSheet sheet = new PatternSheet(first.pieces(), sizes, width, header, nest.title(), cloths);
        sheet.draw(drawings.stream().map(NestedDrawing::shared).toList(), "");
        for (int i = 0; i < nest.sizes().size(); i++) {
            int size = i;
            String end = "-" + (i + 1);
            sheet.document.beginLayer("size" + end, nest.layer(i));
            sheet.draw(drawings.stream().map(each -> each.own().get(size)).toList(), end);
            sheet.document.endLayer();
        }
        return sheet.document.end();
    }

    /** Draws a figure of each piece in the place of that piece. */
    private void draw(List<Figure> figures, String end) {
        for (int i = 0; i < figures.size(); i++) {
            // Whole millimetres, so that the only transform above a piece is exact.
            document.draw(
                    "piece-" + pieces.get(i).name().hyphenated() + end,
                    figures.get(i),
                    Math.rint(MARGIN + places.get(i).minX() - sizes.get(i).minX()),
                    Math.rint(top + places.get(i).minY() - sizes.get(i).minY()));
        }
    }

    /** The width that wastes least paper. */
    private static double bestWidth(List<Bounds> sizes) {
        double widest =
                Math.ceil(sizes.stream().mapToDouble(Bounds::width).max().orElse(0));
        List<Double> widths = new ArrayList<>();
        for (double width : WIDTHS) {
            widths.add(Math.max(width, widest));
        }
        double best = widths.get(0);
        double leastArea = Double.POSITIVE_INFINITY;
        for (double width : widths) {
            double area = width * bottom(Skyline.pack(sizes, width, GAP));
            if (area < leastArea) {
                leastArea = area;
                best = width;
            }
        }
        return best;
    }

    private static double bottom(List<Bounds> places) {
        return places.stream().mapToDouble(Bounds::maxY).max().orElse(0);
    }
}

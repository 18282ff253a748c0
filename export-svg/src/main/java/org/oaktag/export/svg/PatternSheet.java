package org.oaktag.export.svg;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.layout.Skyline;
import org.oaktag.export.sheet.Cloths;
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

    private PatternSheet() {}

    static String draw(Garment garment, Allowances allowances) {
        allowances.check(garment);
        List<Figure> figures = garment.pieces().stream()
                .map(piece -> PieceDrawing.of(garment, piece, allowances))
                .toList();
        List<Bounds> sizes = figures.stream().map(Figure::bounds).toList();
        double width = bestWidth(sizes);
        Cloths cloths = Cloths.of(garment);
        Figure header = PatternHeader.of(garment, allowances, cloths, width);
        double top = MARGIN + header.bounds().maxY() + GAP;
        List<Bounds> places = Skyline.pack(sizes, width, GAP);
        double height = Math.ceil(top + bottom(places) + MARGIN);

        String title = FreeText.shown(garment.title()) + ", for "
                + FreeText.shown(garment.wearer().name());
        SvgDocument document = SvgDocument.begin(
                width + 2 * MARGIN,
                height,
                title,
                "Pattern at true scale: one user unit is one millimetre. Check the 100 mm square before cutting.",
                cloths.used());
        document.draw("sheet-header", header, MARGIN, MARGIN);
        for (int i = 0; i < figures.size(); i++) {
            Piece piece = garment.pieces().get(i);
            // Whole millimetres, so that the only transform above a piece is exact.
            document.draw(
                    "piece-" + piece.name().hyphenated(),
                    figures.get(i),
                    Math.rint(MARGIN + places.get(i).minX() - sizes.get(i).minX()),
                    Math.rint(top + places.get(i).minY() - sizes.get(i).minY()));
        }
        return document.end();
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

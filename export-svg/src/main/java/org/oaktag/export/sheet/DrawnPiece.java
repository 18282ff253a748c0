package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.Ink;
import org.oaktag.export.drawing.Label;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.layout.Polyline;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;
import org.oaktag.geometry.Outline;
import org.oaktag.geometry.Point;

/**
 * A piece drawn and ready to be seated.
 *
 * @param number its place in the garment, counted from 1
 * @param piece the piece
 * @param figure its drawing
 * @param bounds the box that holds the drawing
 * @param cut where it is cut
 * @param lines everything drawn, as corners, to tell which sheets it touches
 */
record DrawnPiece(int number, Piece piece, Figure figure, Bounds bounds, Outline cut, List<Polyline> lines) {

    static List<DrawnPiece> of(Garment garment, Allowances allowances) {
        List<DrawnPiece> drawn = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            Figure figure = PieceDrawing.of(garment, piece, allowances);
            drawn.add(new DrawnPiece(
                    drawn.size() + 1,
                    piece,
                    figure,
                    figure.bounds(),
                    CutLine.of(piece, allowances).outline(),
                    lines(figure)));
        }
        return drawn;
    }

    /** Returns the boxes that hold the drawings. */
    static List<Bounds> sizes(List<DrawnPiece> pieces) {
        return pieces.stream().map(DrawnPiece::bounds).toList();
    }

    private static List<Polyline> lines(Figure figure) {
        List<Polyline> lines = new ArrayList<>();
        for (Ink ink : figure.inks()) {
            if (ink instanceof Stroke stroke) {
                lines.add(Polyline.of(stroke.path()));
            } else if (ink instanceof Fill fill) {
                lines.add(Polyline.of(fill.outline()));
            } else if (ink instanceof Label label) {
                List<Point> corners = new ArrayList<>(label.box().corners());
                corners.add(corners.get(0));
                lines.add(new Polyline(corners));
            }
        }
        return lines;
    }

    /**
     * Returns the placement that has the drawing's box in the upper left corner of a seat.
     *
     * <p>It is moved by whole millimetres, so that moving rounds nothing; to the left and up, so that it stays in its seat.
     */
    Placement in(Bounds seat) {
        return Placement.of(
                        "piece-" + piece.name().hyphenated(),
                        figure,
                        Math.floor(seat.minX() - bounds.minX()),
                        Math.floor(seat.minY() - bounds.minY()))
                .titled(number + "  " + piece.name().value());
    }
}

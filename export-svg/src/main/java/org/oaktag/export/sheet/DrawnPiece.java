package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
 * @param layers the drawing in parts that can be shown and hidden; empty where it is all one
 * @param leftOut what there is no room for on it
 */
record DrawnPiece(
        int number,
        Piece piece,
        Figure figure,
        Bounds bounds,
        Outline cut,
        List<Polyline> lines,
        List<Layer> layers,
        List<LeftOut> leftOut) {

    /**
     * A part of the drawing.
     *
     * @param name what it is shown and hidden by; empty for what is always shown
     * @param figure the part
     */
    record Layer(Optional<String> name, Figure figure) {}

    static List<DrawnPiece> of(Garment garment, Allowances allowances) {
        allowances.check(garment);
        List<DrawnPiece> drawn = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            List<LeftOut> leftOut = new ArrayList<>();
            Figure figure = PieceDrawing.of(garment, piece, allowances, leftOut);
            drawn.add(of(drawn.size() + 1, piece, figure, allowances, List.of(), leftOut));
        }
        return drawn;
    }

    static List<DrawnPiece> of(Nest nest, Allowances allowances) {
        allowances.check(nest.whole());
        List<DrawnPiece> drawn = new ArrayList<>();
        for (Piece first : nest.whole().pieces()) {
            List<Piece> sizes = nest.inEverySize(first.name());
            NestedDrawing nested = NestedDrawing.of(nest, first.name(), allowances);
            List<Layer> layers = new ArrayList<>(List.of(new Layer(Optional.empty(), nested.shared())));
            for (int i = 0; i < sizes.size(); i++) {
                layers.add(new Layer(Optional.of(nest.layer(i)), nested.own().get(i)));
            }
            Piece largest = sizes.stream()
                    .max(Comparator.comparingDouble(piece -> piece.outline().area()))
                    .orElseThrow();
            drawn.add(of(drawn.size() + 1, largest, nested.whole(), allowances, layers, nested.leftOut()));
        }
        return drawn;
    }

    private static DrawnPiece of(
            int number, Piece piece, Figure figure, Allowances allowances, List<Layer> layers, List<LeftOut> leftOut) {
        return new DrawnPiece(
                number,
                piece,
                figure,
                figure.bounds(),
                CutLine.of(piece, allowances).outline(),
                lines(figure),
                layers,
                List.copyOf(leftOut));
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
     * <p>It is moved by whole millimetres, so that moving rounds nothing; to the left and up, so that it stays in its
     * seat.
     */
    Placement in(Bounds seat) {
        return Placement.of(
                        "piece-" + piece.name().hyphenated(),
                        figure,
                        Math.floor(seat.minX() - bounds.minX()),
                        Math.floor(seat.minY() - bounds.minY()))
                .titled(number + "  " + piece.name().value());
    }

    /** Returns a placement of the whole drawing as one of each of its layers. */
    List<Placement> layered(Placement whole) {
        if (layers.isEmpty()) {
            return List.of(whole);
        }
        List<Placement> parts = new ArrayList<>();
        for (Layer layer : layers) {
            parts.add(new Placement(
                    whole.id() + (parts.isEmpty() ? "" : "-" + parts.size()),
                    parts.isEmpty() ? whole.title() : Optional.empty(),
                    layer.figure(),
                    whole.dx(),
                    whole.dy(),
                    whole.window(),
                    layer.name()));
        }
        return parts;
    }
}

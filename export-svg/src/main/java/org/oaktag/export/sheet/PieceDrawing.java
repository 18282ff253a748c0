package org.oaktag.export.sheet;

import java.util.List;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.Fill;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** One piece with all its lines and labels, in its own millimetres. */
public final class PieceDrawing {

    private static final double ARROW = 5;

    /** How far the fold mark lies inside the fold, and how far it stays off the ends of the fold, mm. */
    private static final double FOLD_INSET = 9;

    /** The distance between the cuts of a multiple notch, mm. */
    private static final double NOTCH_PITCH = 4;

    /** The length of a notch on an edge without an allowance, mm. */
    private static final double SHORT_NOTCH = 5;

    private static final double CROSS = 3;

    private final Piece piece;
    private final Figure figure = new Figure();
    private final LabelPlacer placer;

    private PieceDrawing(Piece piece) {
        this.piece = piece;
        this.placer = LabelPlacer.inside(piece.outline());
    }

    /**
     * Draws a piece.
     *
     * @throws org.oaktag.PatternException if an allowance does not fit it
     */
    public static Figure of(Garment garment, Piece piece, Allowances allowances) {
        PieceDrawing drawing = new PieceDrawing(piece);
        drawing.outlines(allowances);
        drawing.insides();
        drawing.notches(allowances);
        PieceLabels labels = new PieceLabels(piece, drawing.figure, drawing.placer);
        if (piece.cut() instanceof Cut.OnFold fold) {
            drawing.foldMark(piece.path(fold.edge()), labels);
        }
        labels.insides();
        labels.block(garment);
        labels.edges();
        return drawing.figure;
    }

    private void outlines(Allowances allowances) {
        for (Path cut : CutLine.of(piece, allowances).runs()) {
            figure.add(Stroke.of(LineType.CUT, cut));
        }
        for (Edge edge : piece.edges()) {
            boolean fold =
                    isOnFold(edge.name()) || allowances.of(piece, edge.name()).isFoldedBack();
            figure.add(Stroke.edge(
                    fold ? LineType.FOLD : LineType.SEAM,
                    edge.path(),
                    EdgeRef.of(piece.name(), edge.name()).id()));
        }
    }

    private boolean isOnFold(Name edge) {
        return piece.cut() instanceof Cut.OnFold fold && fold.edge().equals(edge);
    }

    private void insides() {
        Point top = piece.grainline().top();
        Point bottom = piece.grainline().bottom();
        Vector up = top.minus(bottom);
        line(LineType.GRAIN, top, bottom);
        figure.add(Fill.arrowhead(top, up, ARROW, LineType.GRAIN.colour()));
        figure.add(Fill.arrowhead(bottom, up.negated(), ARROW, LineType.GRAIN.colour()));
        for (InnerLine inner : piece.lines()) {
            LineType type = inner.use() == InnerLine.Use.FOLD ? LineType.FOLD : LineType.PLACEMENT;
            figure.add(Stroke.of(type, inner.path()));
            placer.avoid(inner.path());
        }
        for (Mark mark : piece.marks()) {
            line(
                    LineType.NOTCH,
                    mark.point().plus(Vector.of(-CROSS, 0)),
                    mark.point().plus(Vector.of(CROSS, 0)));
            line(
                    LineType.NOTCH,
                    mark.point().plus(Vector.of(0, -CROSS)),
                    mark.point().plus(Vector.of(0, CROSS)));
        }
    }

    /** A notch runs square from the seam line to the cut line, where the scissors meet it. */
    private void notches(Allowances allowances) {
        for (Notch notch : piece.notches()) {
            Path edge = piece.path(notch.edge());
            double length = edge.length();
            double reach = allowances.on(piece, notch.edge()).mm();
            for (int i = 0; i < notch.count(); i++) {
                double at = notch.fromStart(length) + (i - (notch.count() - 1) / 2.0) * NOTCH_PITCH;
                double inside = Math.min(Math.max(at, 0), length);
                Point foot = edge.pointAt(inside);
                Vector outward = edge.directionAt(inside).leftNormal();
                line(LineType.NOTCH, foot, foot.plus(outward.times(reach > 0 ? reach : -SHORT_NOTCH)));
            }
        }
    }

    /** A bracket whose arrows point at the edge that lies on the fold. */
    private void foldMark(Path fold, PieceLabels labels) {
        double length = fold.length();
        double inset = Math.min(FOLD_INSET * 3, length / 4);
        Vector along = fold.end().minus(fold.start()).unit();
        Vector inward = along.rightNormal().times(FOLD_INSET);
        List<Point> tips = List.of(fold.pointAt(inset), fold.pointAt(length - inset));
        List<Point> bends = tips.stream().map(tip -> tip.plus(inward)).toList();
        line(LineType.GRAIN, bends.get(0), bends.get(1));
        for (int i = 0; i < 2; i++) {
            line(LineType.GRAIN, bends.get(i), tips.get(i));
            figure.add(Fill.arrowhead(tips.get(i), inward.negated(), ARROW, LineType.GRAIN.colour()));
        }
        labels.fold(bends.get(0), bends.get(1), inward.unit());
    }

    private void line(LineType type, Point from, Point to) {
        Path path = Path.polyline(from, to);
        figure.add(Stroke.of(type, path));
        placer.avoid(path);
    }
}

package org.oaktag.export.sheet;

import java.util.ArrayList;
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
import org.oaktag.garment.Piece;
import org.oaktag.garment.Snip;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * One piece with all its lines and labels, in its own millimetres.
 *
 * <pre>{@code
 * Figure front = PieceDrawing.of(top, top.piece(FRONT), allowances);
 * SvgSheet.figure("front", "The front with its cut line.", front).writeTo(Path.of("front.svg"));
 * }</pre>
 */
public final class PieceDrawing {

    private static final double ARROW = 5;

    /** How far the fold mark lies inside the fold, and how far it stays off the ends of the fold, mm. */
    private static final double FOLD_INSET = 9;

    private final Piece piece;
    private final Figure figure;
    private final LabelPlacer placer;

    PieceDrawing(Piece piece, Figure figure, LabelPlacer placer) {
        this.piece = piece;
        this.figure = figure;
        this.placer = placer;
    }

    /**
     * Draws a piece.
     *
     * @throws org.oaktag.PatternException if an allowance does not fit it
     */
    public static Figure of(Garment garment, Piece piece, Allowances allowances) {
        return of(garment, piece, allowances, new ArrayList<>());
    }

    /** Draws a piece and adds what there is no room for on it to the list. */
    static Figure of(Garment garment, Piece piece, Allowances allowances, List<LeftOut> leftOut) {
        PieceDrawing drawing = new PieceDrawing(piece, new Figure(), LabelPlacer.inside(piece.outline()));
        drawing.outlines(garment, allowances);
        drawing.grain();
        drawing.insides();
        PieceLabels labels = new PieceLabels(piece, drawing.figure, drawing.placer);
        if (piece.cut() instanceof Cut.OnFold fold) {
            drawing.foldMark(piece.path(fold.edge()), labels);
        }
        labels.insides();
        labels.block(garment);
        labels.up();
        labels.stretch();
        labels.edges();
        leftOut.addAll(labels.leftOut());
        return drawing.figure;
    }

    private void outlines(Garment garment, Allowances allowances) {
        CutLine cutLine = CutLine.of(piece, allowances);
        cutLine.runs().forEach(cut -> figure.add(Stroke.of(LineType.CUT, cut)));
        for (Edge edge : piece.edges()) {
            EdgeRef ref = EdgeRef.of(piece.name(), edge.name());
            // What is sewn stays a seam, even where its allowance is cut to be pressed back.
            boolean turnedUp = allowances.of(piece, edge.name()).isFoldedBack()
                    && garment.seams().stream().noneMatch(seam -> seam.has(ref));
            LineType type = piece.isOnFold(edge.name()) || turnedUp ? LineType.FOLD : LineType.SEAM;
            figure.add(Stroke.edge(type, edge.path(), ref.id()));
        }
        for (Snip snip : cutLine.snips()) {
            figure.add(Stroke.of(LineType.NOTCH, snip.path()));
            placer.avoid(snip.path());
        }
        for (Point hole : cutLine.drillHoles()) {
            for (Path sign : MarkSign.of(Mark.Use.DRILL, hole)) {
                figure.add(Stroke.of(LineType.NOTCH, sign));
                placer.avoid(sign);
            }
        }
    }

    /** Draws the grainline. */
    void grain() {
        Point top = piece.grainline().top();
        Point bottom = piece.grainline().bottom();
        Vector up = top.minus(bottom);
        line(LineType.GRAIN, top, bottom);
        figure.add(Fill.arrowhead(top, up, ARROW, LineType.GRAIN.colour()));
        figure.add(Fill.arrowhead(bottom, up.negated(), ARROW, LineType.GRAIN.colour()));
    }

    /** Returns the type of an inner line. */
    static LineType type(InnerLine line) {
        return line.use() == InnerLine.Use.FOLD ? LineType.FOLD : LineType.PLACEMENT;
    }

    private void insides() {
        for (InnerLine inner : piece.lines()) {
            figure.add(Stroke.of(type(inner), inner.path()));
            placer.avoid(inner.path());
        }
        for (Mark mark : piece.marks()) {
            for (Path sign : MarkSign.of(mark.use(), mark.point())) {
                figure.add(Stroke.of(LineType.NOTCH, sign));
                placer.avoid(sign);
            }
        }
    }

    /** A bracket whose arrows point at the edge that lies on the fold. */
    void foldMark(Path fold, PieceLabels labels) {
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

package org.oaktag.export.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.oaktag.export.drawing.Figure;
import org.oaktag.export.drawing.LineType;
import org.oaktag.export.drawing.Stroke;
import org.oaktag.export.layout.LabelPlacer;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cut;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.InnerLine;
import org.oaktag.garment.Mark;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Snip;
import org.oaktag.geometry.Path;

/**
 * One piece in several sizes: what all share, and for each size what is its own.
 *
 * <pre>{@code
 * Nest nest = new Nest(List.of(new Nest.Size("Mira", style.on(mira)), new Nest.Size("Juno", style.on(juno))));
 * NestedDrawing front = NestedDrawing.of(nest, Name.of("front"), KnitTop.allowances(style.on(mira)));
 * front.own().size();   // = 2
 * }</pre>
 *
 * <p>Labels lie inside the piece in every size. No lengths are written, as they differ, and no seam lines are drawn, as
 * twice as many lines could not be told apart.
 *
 * @param shared the grainline, the sign of the fold and the labels
 * @param own for each size its cut line, notches, inner lines and marks
 * @param leftOut what there is no room for
 */
public record NestedDrawing(Figure shared, List<Figure> own, List<LeftOut> leftOut) {

    /** Copies the lists. */
    public NestedDrawing {
        Objects.requireNonNull(shared, "shared");
        own = List.copyOf(own);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * Draws the piece of that name in every size of a nest.
     *
     * @param allowances the allowances of every size
     * @throws org.oaktag.PatternException if there is no such piece, or an allowance does not fit one of them
     */
    public static NestedDrawing of(Nest nest, Name piece, Allowances allowances) {
        List<Piece> sizes = nest.inEverySize(piece);
        LabelPlacer placer =
                LabelPlacer.inside(sizes.stream().map(Piece::outline).toList());
        List<CutLine> cuts =
                sizes.stream().map(each -> CutLine.of(each, allowances)).toList();
        List<Figure> own = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            own.add(size(sizes.get(i), Nest.line(i), cuts.get(i), placer));
        }
        Piece smallest = sizes.stream()
                .min(Comparator.comparingDouble(each -> each.outline().area()))
                .orElseThrow();
        Figure shared = new Figure();
        PieceDrawing drawing = new PieceDrawing(smallest, shared, placer);
        drawing.grain();
        PieceLabels labels = new PieceLabels(smallest, shared, placer);
        if (smallest.cut() instanceof Cut.OnFold fold) {
            Path longest = sizes.stream()
                    .map(each -> each.path(fold.edge()))
                    .max(Comparator.comparingDouble(Path::length))
                    .orElseThrow();
            shared.add(Stroke.of(LineType.FOLD, longest));
            drawing.foldMark(smallest.path(fold.edge()), labels);
        }
        List<LeftOut> leftOut = new ArrayList<>(SizeNumbers.write(sizes, cuts, own, shared, placer));
        labels.insides();
        labels.block(nest.whole());
        labels.up();
        labels.stretch();
        leftOut.addAll(labels.leftOut());
        return new NestedDrawing(shared, own, leftOut);
    }

    private static Figure size(Piece piece, LineType type, CutLine cutLine, LabelPlacer placer) {
        Figure figure = new Figure();
        for (Path run : cutLine.runs()) {
            figure.add(Stroke.of(type, run));
            placer.avoid(run);
        }
        List<Path> marks = new ArrayList<>();
        cutLine.snips().stream().map(Snip::path).forEach(marks::add);
        for (Mark mark : piece.marks()) {
            marks.addAll(MarkSign.of(mark.use(), mark.point()));
        }
        cutLine.drillHoles().forEach(hole -> marks.addAll(MarkSign.of(Mark.Use.DRILL, hole)));
        for (Path mark : marks) {
            figure.add(Stroke.of(LineType.NOTCH, mark));
            placer.avoid(mark);
        }
        for (InnerLine line : piece.lines()) {
            figure.add(Stroke.of(PieceDrawing.type(line), line.path()));
            placer.avoid(line.path());
        }
        return figure;
    }

    /** Returns all of it. */
    public Figure whole() {
        Figure whole = new Figure().add(shared);
        own.forEach(whole::add);
        return whole;
    }
}

package org.oaktag.adjust;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.DartInTheWay;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Extends a piece at an edge by an even width, as for a wrap or a stand: the edge is drawn parallel to where it was,
 * and the edges beside it are prolonged straight to meet it. A negative width takes a strip off, and the edges beside
 * it are cut.
 *
 * <pre>{@code
 * Garment longer = block.adjust(extendEdge(EdgeRef.of(SLEEVE, HEM), mm(20)));
 * }</pre>
 *
 * @param edge the edge
 * @param by the width, square to the edge
 */
record ExtendEdge(EdgeRef edge, Length by) implements PieceStep {
    /** Refuses null. */
    public ExtendEdge {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(by, "by");
    }

    @Override
    public String name() {
        return "extend the " + edge.edge() + " of the " + edge.piece();
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("by", by));
    }

    /**
     * Extends a piece by itself.
     *
     * @throws PatternException if the edge lies on the fold, or its parallel does not meet the edges beside it
     */
    @Override
    public Piece on(Piece before) {
        if (before.isOnFold(edge.edge())) {
            throw PatternException.of(
                    name(),
                    "must not work on the fold of the cloth",
                    "edge '" + edge.edge() + "'",
                    "spread the piece along the fold instead");
        }
        if (by.mm() == 0) {
            return before;
        }
        ParallelEdge parallel = ParallelEdge.of(before, edge.edge(), by.mm());
        Piece after = Redrawn.of(
                before,
                Map.of(
                        before.before(edge.edge()).name(), parallel.before(),
                        edge.edge(), parallel.path(),
                        before.after(edge.edge()).name(), parallel.after()));
        if (after.outline().meetsItself()) {
            throw PatternException.of(
                    name(), "must not make the outline cross itself", by.text(), "use a smaller width");
        }
        return after;
    }

    @Override
    public Reshaped reshape(Garment garment) {
        Piece before = garment.piece(edge.piece());
        DartInTheWay.requireWhole(before, edge.edge());
        Piece after = on(before);
        Path path = before.path(edge.edge());
        Point from = path.pointAt(path.length() / 2);
        Point to = after.path(edge.edge()).nearest(from).point();
        Length grown = Length.mm(after.path(edge.edge()).length() - path.length());
        return new Reshaped(
                garment.withPiece(after),
                List.of(Note.rule("parallel to the edge at " + by.text() + ", between its neighbours: it is longer by "
                        + grown.text())),
                List.of(new Dimension(edge.piece(), from, to, by.text())));
    }
}

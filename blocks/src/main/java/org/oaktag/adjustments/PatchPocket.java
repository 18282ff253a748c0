package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Lays a pocket on either half of the front and marks its place. A pocket that is there already is replaced. Immutable.
 *
 * <pre>{@code
 * Garment withNotebook = top.adjust(patchPocket(cm(11), cm(13), cm(5), cm(20)));
 * }</pre>
 *
 * @param width how wide it is, 50 to 250 mm
 * @param height how high it is, 50 to 300 mm
 * @param fromCentre how far its nearer edge lies from centre front, 0 to 300 mm
 * @param belowSideNeck how far its upper edge lies below the side neck point, 80 to 900 mm
 * @param cloth what it is cut from, or empty for the cloth of the front
 */
public record PatchPocket(Length width, Length height, Length fromCentre, Length belowSideNeck, Optional<Cloth> cloth)
        implements Step {

    /**
     * Checks the amounts.
     *
     * @throws org.oaktag.PatternException if one is out of its range
     */
    public PatchPocket {
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(fromCentre, "fromCentre");
        Objects.requireNonNull(belowSideNeck, "belowSideNeck");
        Objects.requireNonNull(cloth, "cloth");
        Range.check("width of the pocket", "must be", width, Length.mm(50), Length.mm(250));
        Range.check("height of the pocket", "must be", height, Length.mm(50), Length.mm(300));
        Range.check("pocket from centre front", "must be", fromCentre, Length.mm(0), Length.mm(300));
        Range.check("pocket below the side neck point", "must be", belowSideNeck, Length.mm(80), Length.mm(900));
    }

    /** Returns the step with a pocket cut from another cloth. */
    public PatchPocket cutFrom(Cloth other) {
        return new PatchPocket(width, height, fromCentre, belowSideNeck, Optional.of(other));
    }

    @Override
    public String name() {
        return "lay a pocket on the front";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>(List.of(
                Amount.of("width", width),
                Amount.of("height", height),
                Amount.of("from centre front", fromCentre),
                Amount.of("below the side neck point", belowSideNeck)));
        cloth.ifPresent(given -> amounts.add(Amount.of("cloth", given.description())));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if the pocket does not lie inside the front
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Point sideNeck =
                TopPieces.half(garment, TopNames.FRONT, TopEdges.SHOULDER).corner(TopEdges.SHOULDER, End.START);
        Piece front = TopPieces.half(garment, TopNames.FRONT, EdgeNames.CENTRE);
        double x = front.corner(EdgeNames.CENTRE, End.END).x() + fromCentre.mm();
        double y = sideNeck.y() + belowSideNeck.mm();
        Point a = Point.of(x, y);
        Point b = a.plus(Vector.of(width.mm(), 0));
        Point c = b.plus(Vector.of(0, height.mm()));
        Point d = a.plus(Vector.of(0, height.mm()));
        Piece pocket = Piece.of(
                FinishNames.POCKET,
                List.of(
                        Edge.straight(EdgeNames.OPENING, a, b).withFinish(EdgeFinish.TURNED_BACK_SQUARE),
                        Edge.straight(BandNames.SIDE, b, c),
                        Edge.straight(EdgeNames.BOTTOM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                new Grainline(
                        a.midpoint(b).plus(Vector.of(0, 0.2 * height.mm())),
                        a.midpoint(b).plus(Vector.of(0, 0.8 * height.mm()))),
                Cut.pair(),
                cloth.orElse(front.cloth()));
        LaidOn laid = new LaidOn(FinishNames.POCKET, Path.polyline(a, b, c, d, a), List.of(a, b, c, d));
        return new Reshaped(
                Assembly.of(garment).put(laid.on(front)).put(pocket).done(),
                List.of(Note.rule("its place is marked on the front, " + fromCentre.text() + " from the centre and "
                        + belowSideNeck.text()
                        + " below the side neck point, to be marked again when the front moves")),
                List.of(
                        new Dimension(TopNames.FRONT, a, b, "width " + width.text()),
                        new Dimension(TopNames.FRONT, a, d, "height " + height.text())));
    }
}

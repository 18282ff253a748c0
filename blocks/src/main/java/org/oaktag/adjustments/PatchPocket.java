package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.draft.ClothStep;
import org.oaktag.draft.Patch;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
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
record PatchPocket(Length width, Length height, Length fromCentre, Length belowSideNeck, Optional<Cloth> cloth)
        implements ClothStep {

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

    @Override
    public ClothStep cutFrom(Cloth other) {
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
        Patch patch = new Patch(FinishNames.POCKET, Point.of(x, y), width, height);
        List<Point> corners = patch.corners();
        return new Reshaped(
                Assembly.of(garment)
                        .put(patch.laidOn().on(front))
                        .put(patch.piece(cloth.orElse(front.cloth())))
                        .done(),
                List.of(Note.rule("its place is marked on the front, " + fromCentre.text() + " from the centre and "
                        + belowSideNeck.text()
                        + " below the side neck point, to be marked again when the front moves")),
                List.of(
                        new Dimension(TopNames.FRONT, corners.get(0), corners.get(1), "width " + width.text()),
                        new Dimension(TopNames.FRONT, corners.get(0), corners.get(3), "height " + height.text())));
    }
}

package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.draft.ClothStep;
import org.oaktag.draft.LaidOn;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Lays a pouch on the centre of the front, cut on the fold, with a slanted opening at either side, and marks its place
 * on the front. Its lower edge runs as the hem does, so that it can be caught in the seam of a hem band. A pouch that
 * is there already is replaced. Immutable.
 *
 * <pre>{@code
 * Garment warmHands = top.adjust(frontPouch(cm(32), cm(19)).raisedBy(cm(2)));
 * }</pre>
 *
 * <p>The upper edge is 0.62 of the lower one and the opening ends at 0.45 of the height above it; both shares are our
 * own.
 *
 * @param width how wide the whole pouch is at its lower edge, 180 to 500 mm
 * @param height how high it is, 120 to 350 mm
 * @param aboveHem how far its lower edge lies above the hem at centre front, 0 to 200 mm
 * @param offSides how far it must stay from the side seams at the hem, 5 to 150 mm: on a narrower front it is made
 *     smaller; empty to have it as large as asked or not at all
 * @param cloth what it is cut from, or empty for the cloth of the front
 */
public record FrontPouch(Length width, Length height, Length aboveHem, Optional<Length> offSides, Optional<Cloth> cloth)
        implements ClothStep {

    private static final double UPPER = 0.62;
    private static final double SIDE = 0.45;

    /**
     * Checks the amounts.
     *
     * @throws org.oaktag.PatternException if one is out of its range
     */
    public FrontPouch {
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(aboveHem, "aboveHem");
        Objects.requireNonNull(offSides, "offSides");
        Objects.requireNonNull(cloth, "cloth");
        Range.check("width of the pouch", "must be", width, Length.mm(180), Length.mm(500));
        Range.check("height of the pouch", "must be", height, Length.mm(120), Length.mm(350));
        Range.check("pouch above the hem", "must be", aboveHem, Length.mm(0), Length.mm(200));
        offSides.ifPresent(least -> Range.check("pouch off the sides", "must be", least, Length.mm(5), Length.mm(150)));
    }

    @Override
    public FrontPouch cutFrom(Cloth other) {
        return new FrontPouch(width, height, aboveHem, offSides, Optional.of(other));
    }

    /**
     * Returns the step with a pouch whose lower edge lies so far above the hem at centre front.
     *
     * @throws org.oaktag.PatternException if that is out of its range
     */
    public FrontPouch raisedBy(Length above) {
        return new FrontPouch(width, height, above, offSides, cloth);
    }

    /**
     * Returns the step with a pouch that is made smaller, in the same shape, where it would come nearer to a side seam.
     *
     * @param least how far its lower edge ends from the side seam at least
     * @throws org.oaktag.PatternException if that is out of its range
     */
    public FrontPouch keptOffSides(Length least) {
        return new FrontPouch(width, height, aboveHem, Optional.of(least), cloth);
    }

    @Override
    public String name() {
        return "lay a pouch on the front";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>(
                List.of(Amount.of("width", width), Amount.of("height", height), Amount.of("above the hem", aboveHem)));
        offSides.ifPresent(least -> amounts.add(Amount.of("off the sides", least)));
        cloth.ifPresent(given -> amounts.add(Amount.of("cloth", given.description())));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws org.oaktag.PatternException if the pouch does not lie inside the front, or had to be smaller than a pouch
     *     may be to keep off the sides
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece front = TopPieces.half(garment, TopNames.FRONT, EdgeNames.HEM, EdgeNames.CENTRE);
        FrontPouch fitted = fitted(front);
        List<Note> notes = new ArrayList<>(List.of(Note.rule("upper edge "
                + fitted.width.times(UPPER).text() + " = 0.62 of " + fitted.width.text()
                + "; its place is marked on the front, to be marked again when the front moves")));
        if (!fitted.equals(this)) {
            notes.add(Note.done("made smaller to keep off the sides: " + fitted.width.text() + " wide and "
                    + fitted.height.text() + " high"));
        }
        return fitted.laid(garment, front, notes);
    }

    private FrontPouch fitted(Piece front) {
        Path hem = front.edge(EdgeNames.HEM).path();
        double half =
                hem.start().x() - hem.end().x() - offSides.orElse(Length.ZERO).mm();
        return offSides.isEmpty() || width.mm() <= 2 * half
                ? this
                : new FrontPouch(Length.mm(2 * half), height.times(2 * half / width.mm()), aboveHem, offSides, cloth);
    }

    private Reshaped laid(Garment garment, Piece front, List<Note> notes) {
        Path bottom = bottom(front);
        Point foot = bottom.end();
        List<Point> at = List.of(
                foot.plus(Vector.of(0, -height.mm())),
                foot.plus(Vector.of(UPPER * width.mm() / 2, -height.mm())),
                foot.plus(Vector.of(width.mm() / 2, -SIDE * height.mm())),
                bottom.start(),
                foot);
        Piece pouch = Piece.of(
                        FinishNames.POUCH,
                        List.of(
                                Edge.straight(EdgeNames.TOP, at.get(0), at.get(1)),
                                Edge.straight(EdgeNames.OPENING, at.get(1), at.get(2))
                                        .withFinish(EdgeFinish.TURNED_BACK_SQUARE),
                                Edge.straight(EdgeNames.SIDE, at.get(2), at.get(3)),
                                new Edge(EdgeNames.BOTTOM, bottom),
                                Edge.straight(EdgeNames.CENTRE, at.get(4), at.get(0))),
                        grain(at),
                        Cut.onFold(EdgeNames.CENTRE),
                        cloth.orElse(front.cloth()))
                .withAspectOf(front);
        LaidOn laid = new LaidOn(
                FinishNames.POUCH,
                Path.polyline(at.get(0), at.get(1), at.get(2), at.get(3)).then(bottom),
                at.subList(1, 4));
        return new Reshaped(
                Assembly.of(garment).put(laid.on(front)).put(pouch).done(),
                notes,
                List.of(
                        new Dimension(TopNames.FRONT, at.get(4), at.get(0), "height " + height.text()),
                        new Dimension(
                                TopNames.FRONT,
                                at.get(4),
                                at.get(3),
                                "half width " + width.times(0.5).text())));
    }

    /**
     * Returns the lower edge: the hem itself, so much higher, from as far from the centre as half the pouch is wide.
     */
    private Path bottom(Piece front) {
        Transform up = Transform.translation(0, -aboveHem.mm());
        Path hem = front.edge(EdgeNames.HEM).path().transformed(up);
        Point side = hem.end().plus(Vector.of(width.mm() / 2, 0));
        return Crossings.pointsOnLine(hem, side, Vector.of(0, 1)).stream()
                .map(hem::nearest)
                .map(crossed -> hem.sub(crossed.distanceAlong(), hem.length()))
                .findFirst()
                .orElseGet(() -> Path.polyline(side, hem.end()));
    }

    private static Grainline grain(List<Point> at) {
        Point top = at.get(0).midpoint(at.get(1));
        double depth = at.get(4).y() - at.get(0).y();
        return new Grainline(top.plus(Vector.of(0, 0.2 * depth)), top.plus(Vector.of(0, 0.8 * depth)));
    }
}

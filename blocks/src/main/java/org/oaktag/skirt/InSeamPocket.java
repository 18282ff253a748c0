package org.oaktag.skirt;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.draft.ClothStep;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Sets a pocket into each side seam: a bag for the front and one for the back, sewn to the opening, and round which the
 * side seam is sewn in one go.
 *
 * <pre>{@code
 * skirt.adjust(inSeamPocket(mm(60), mm(160)));
 * }</pre>
 *
 * @param belowWaist how far below the waist the opening begins, 20 to 150 mm
 * @param opening how long it is, 130 to 220 mm
 * @param cloth what the bag of the front is cut from, or empty for the cloth of the skirt, of which that of the back is
 */
record InSeamPocket(Length belowWaist, Length opening, Optional<Cloth> cloth) implements ClothStep {

    /** How deep the bag reaches from the side seam, mm, and how far it hangs below its opening. */
    private static final double DEEP = 150;

    private static final double HANGS = 100;
    private static final double LEAST_BELOW = 80;
    private static final String REFIT = "set the pocket again";
    private static final Name TOP = Name.of("pocket top");
    private static final Name BOTTOM = Name.of("pocket bottom");

    /**
     * Checks the amounts.
     *
     * @throws PatternException if one is out of its range
     */
    public InSeamPocket {
        Objects.requireNonNull(cloth, "cloth");
        Range.check(
                "pocket in the side seam", "must begin below the waist by", belowWaist, Length.mm(20), Length.mm(150));
        Range.check("opening of the pocket", "must be as long as", opening, Length.mm(130), Length.mm(220));
    }

    @Override
    public ClothStep cutFrom(Cloth other) {
        return new InSeamPocket(belowWaist, opening, Optional.of(other));
    }

    @Override
    public String name() {
        return "set pockets into the side seams";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("below the waist", belowWaist), Amount.of("opening", opening));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the side seam is too short for it or holds a zip or another pocket
     */
    @Override
    public Reshaped reshape(Garment garment) {
        SidePockets.requireRoom(garment, "pocket in the side seam");
        Piece front = Shell.of(garment, SkirtNames.FRONT);
        Piece back = Shell.of(garment, SkirtNames.BACK);
        double side = Math.min(
                front.path(EdgeNames.SIDE).length(), back.path(EdgeNames.SIDE).length());
        Range.check(
                "pocket in the side seam",
                "in a seam of " + Length.mm(side).text() + " its opening must begin below the waist by",
                belowWaist,
                Length.mm(20),
                Length.mm(side - opening.mm() - LEAST_BELOW));
        Name frontBag = SkirtFinishNames.FRONT_BAG;
        Name backBag = SkirtFinishNames.BACK_BAG;
        Seam sewn = garment.seam(SkirtNames.SIDE_SEAM);
        Path edge = opened(front, 1).path(SkirtFinishNames.POCKET_OPENING);
        Finishing finishing = Finishing.of(garment);
        for (Piece half : List.of(front, back)) {
            boolean isFront = half.name().equals(SkirtNames.FRONT);
            Piece opened = opened(half, isFront ? 1 : 2);
            Name bag = isFront ? frontBag : backBag;
            finishing
                    .put(opened)
                    .put(bag(edge, bag, isFront ? cloth.orElse(half.cloth()) : half.cloth())
                            .withAspectOf(half))
                    .sew(Seam.flat(
                            bag,
                            SeamSide.along(half.name(), SkirtFinishNames.POCKET_OPENING),
                            SeamSide.against(bag, SkirtFinishNames.POCKET_OPENING),
                            REFIT))
                    .endingAt(
                            EdgeRef.of(half.name(), EdgeNames.SIDE),
                            EdgeRef.of(half.name(), SkirtFinishNames.POCKET_OPENING))
                    .endingAt(
                            EdgeRef.of(half.name(), EdgeNames.SIDE),
                            EdgeRef.of(half.name(), SkirtFinishNames.SIDE_BELOW))
                    .lengthAs(
                            EdgeRef.of(half.name(), EdgeNames.SIDE),
                            Quantity.lengthOf(half.name(), EdgeNames.SIDE),
                            Quantity.lengthOf(half.name(), SkirtFinishNames.POCKET_OPENING),
                            Quantity.lengthOf(half.name(), SkirtFinishNames.SIDE_BELOW));
        }
        finishing.sew(new Seam(
                sewn.name(),
                round(SkirtNames.FRONT, frontBag),
                round(SkirtNames.BACK, backBag),
                sewn.rule(),
                sewn.smoothAt(),
                sewn.refit()));
        Garment done = finishing.done();
        return new Reshaped(
                done,
                List.of(Note.rule("side seam " + Length.mm(side).text() + " = " + belowWaist.text() + " + opening "
                        + opening.text() + " + "
                        + Length.mm(side - belowWaist.mm() - opening.mm()).text()
                        + "; sewn from the waist down, round the bag and on to the hem")),
                List.of(new Dimension(SkirtNames.FRONT, edge.start(), edge.end(), "opening " + opening.text())));
    }

    private static SeamSide round(Name half, Name bag) {
        return SeamSide.along(half, EdgeNames.SIDE)
                .then(SeamSide.along(bag, SkirtFinishNames.BAG))
                .then(SeamSide.along(half, SkirtFinishNames.SIDE_BELOW));
    }

    private Piece opened(Piece half, int cuts) {
        double top = belowWaist.mm();
        double bottom = top + opening.mm();
        return Shell.parted(
                        half,
                        EdgeNames.SIDE,
                        List.of(EdgeNames.SIDE, SkirtFinishNames.POCKET_OPENING, SkirtFinishNames.SIDE_BELOW),
                        List.of(top, bottom))
                .withNotch(new Notch(TOP, EdgeNames.SIDE, End.END, 0, cuts))
                .withNotch(new Notch(BOTTOM, SkirtFinishNames.SIDE_BELOW, End.START, 0, cuts));
    }

    /** Draws a bag beside the opening of the front, as it lies before it is turned in; that of the back is its like. */
    private static Piece bag(Path opening, Name name, Cloth cloth) {
        Point top = opening.start();
        Point bottom = opening.end();
        double height = bottom.y() - top.y();
        Point outer = Point.of(bottom.x() + DEEP, top.y() + 0.75 * height);
        Point lowest = Point.of(bottom.x() + 0.45 * DEEP, bottom.y() + HANGS);
        Path bag = Path.of(
                Cubic.hermite(top, Vector.of(DEEP, 0), outer, Vector.of(0, height)),
                Cubic.hermite(outer, Vector.of(0, height), lowest, Vector.of(-DEEP, 0)),
                Cubic.hermite(lowest, Vector.of(-DEEP * 0.6, 0), bottom, Vector.of(-DEEP * 0.2, -HANGS)));
        double x = bottom.x() + 0.5 * DEEP;
        return Piece.of(
                name,
                List.of(
                        new Edge(SkirtFinishNames.BAG, bag),
                        new Edge(SkirtFinishNames.POCKET_OPENING, opening.reversed())),
                new Grainline(Point.of(x, top.y() + 0.4 * height), Point.of(x, bottom.y() + 0.5 * HANGS)),
                Cut.pair(),
                cloth);
    }
}

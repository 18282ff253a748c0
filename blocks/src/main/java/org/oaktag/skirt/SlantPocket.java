package org.oaktag.skirt;

import java.util.ArrayList;
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
 * Cuts the corner of the front away for a slanted pocket: a straight edge from the waist to the side seam, a facing
 * that is sewn to it and is the front of the bag, and a side front that fills the corner and is the back of the bag.
 *
 * <pre>{@code
 * skirt.adjust(slantPocket(mm(40), mm(150)));
 * }</pre>
 *
 * @param fromSide how far from the side seam it begins on the waist, 20 to 100 mm
 * @param down how far down the side seam it ends, 110 to 220 mm
 * @param cloth what the facing is cut from, or empty for the cloth of the skirt, of which the side front is
 */
record SlantPocket(Length fromSide, Length down, Optional<Cloth> cloth) implements ClothStep {

    private static final double HANGS = 110;

    /** How far the slant keeps off a dart, mm. */
    private static final double OFF_DART = 8;

    /** How far the bag reaches beyond the upper end of the slant, mm. */
    private static final double BEYOND = 60;

    private static final String REFIT = "cut the pocket again";

    /**
     * Checks the amounts.
     *
     * @throws PatternException if one is out of its range
     */
    public SlantPocket {
        Objects.requireNonNull(cloth, "cloth");
        Range.check("slanted pocket", "must begin from the side by", fromSide, Length.mm(20), Length.mm(100));
        Range.check("slanted pocket", "must end down the side seam by", down, Length.mm(110), Length.mm(220));
    }

    @Override
    public ClothStep cutFrom(Cloth other) {
        return new SlantPocket(fromSide, down, Optional.of(other));
    }

    @Override
    public String name() {
        return "cut slanted pockets";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("from the side", fromSide), Amount.of("down", down));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a dart or the hip lies in the way, or the side seam holds a zip or another pocket
     */
    @Override
    public Reshaped reshape(Garment garment) {
        SidePockets.requireRoom(garment, "slanted pocket");
        SidePockets.requireBareWaist(garment, "slanted pocket");
        Piece front = Shell.of(garment, SkirtNames.FRONT);
        Name stretch = front.before(EdgeNames.SIDE).name();
        Path waist = front.path(stretch);
        Path side = front.path(EdgeNames.SIDE);
        Range.check(
                "slanted pocket",
                "beside a stretch of waist of " + Length.mm(waist.length()).text() + " it must begin from the side by",
                fromSide,
                Length.mm(20),
                Length.mm(waist.length() - OFF_DART));
        Range.check(
                "slanted pocket",
                "above the hip it must end down the side seam by",
                down,
                Length.mm(110),
                Length.mm(aboveHip(front, side)));
        Path.Split top = waist.splitAt(waist.length() - fromSide.mm());
        Path.Split bottom = side.splitAt(down.mm());
        Point from = top.before().end();
        Point to = bottom.before().end();
        Piece cut = cut(front, stretch, top.before(), to, bottom.after().withEnds(to, side.end()));
        Path bag = bag(from, to);
        Piece sideFront = sideFront(top.after().withEnds(from, waist.end()), bottom.before(), bag, front.cloth())
                .withAspectOf(front);
        Piece facing = facing(from, to, bag, cloth.orElse(front.cloth())).withAspectOf(front);
        Seam sewn = garment.seam(SkirtNames.SIDE_SEAM);
        EdgeRef frontSide = EdgeRef.of(SkirtNames.FRONT, EdgeNames.SIDE);
        boolean frontIsA = sewn.a().has(frontSide);
        SeamSide own =
                SeamSide.along(sideFront.name(), EdgeNames.SIDE).then(SeamSide.along(SkirtNames.FRONT, EdgeNames.SIDE));
        Garment done = Finishing.of(garment)
                .put(cut)
                .put(sideFront)
                .put(facing)
                .sew(Seam.flat(
                        Name.of("pocket edge"),
                        SeamSide.along(SkirtNames.FRONT, SkirtFinishNames.SLANT),
                        SeamSide.along(facing.name(), SkirtFinishNames.SLANT),
                        REFIT))
                .sew(Seam.flat(
                        Name.of("pocket bag"),
                        SeamSide.along(sideFront.name(), SkirtFinishNames.BAG),
                        SeamSide.along(facing.name(), SkirtFinishNames.BAG),
                        REFIT))
                .sew(new Seam(
                        sewn.name(),
                        frontIsA ? own : sewn.a(),
                        frontIsA ? sewn.b() : own,
                        sewn.rule(),
                        sewn.smoothAt(),
                        sewn.refit()))
                .lengthAs(
                        EdgeRef.of(SkirtNames.FRONT, stretch),
                        Quantity.lengthOf(SkirtNames.FRONT, stretch),
                        Quantity.lengthOf(sideFront.name(), SkirtNames.WAIST))
                .lengthAs(
                        frontSide,
                        Quantity.lengthOf(sideFront.name(), EdgeNames.SIDE),
                        Quantity.lengthOf(SkirtNames.FRONT, EdgeNames.SIDE))
                .done();
        return new Reshaped(
                done,
                List.of(Note.rule("a straight edge from " + fromSide.text() + " beside the side seam to "
                        + down.text() + " down it, "
                        + Length.mm(from.distanceTo(to)).text()
                        + " long; the side front fills the corner and goes on as the back of the bag")),
                List.of(
                        new Dimension(sideFront.name(), from, waist.end(), fromSide.text()),
                        new Dimension(
                                SkirtNames.FRONT,
                                from,
                                to,
                                "opening " + Length.mm(from.distanceTo(to)).text())));
    }

    private static double aboveHip(Piece front, Path side) {
        return front.notch(EdgeNames.SIDE, SkirtNames.HIP_NOTCH)
                        .map(notch -> notch.fromStart(side.length()))
                        .orElse(side.length() - HANGS)
                - 5;
    }

    private static Piece cut(Piece front, Name stretch, Path waist, Point to, Path side) {
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : front.edges()) {
            if (edge.name().equals(stretch)) {
                edges.add(edge.withPath(waist));
                edges.add(Edge.straight(SkirtFinishNames.SLANT, waist.end(), to));
            } else {
                edges.add(edge.name().equals(EdgeNames.SIDE) ? edge.withPath(side) : edge);
            }
        }
        double off = front.path(EdgeNames.SIDE).length() - side.length();
        List<Notch> notches = new ArrayList<>();
        for (Notch notch : front.notches()) {
            double along = notch.fromStart(front.path(notch.edge()).length());
            if (!notch.edge().equals(EdgeNames.SIDE)) {
                notches.add(notch);
            } else if (along > off) {
                notches.add(new Notch(notch.name(), EdgeNames.SIDE, End.START, along - off, notch.count()));
            }
        }
        return front.withNotches(List.of()).withEdges(edges).withNotches(notches);
    }

    /** Returns the outline of the bag from the lower end of the slant, under the front, up to its upper end. */
    private static Path bag(Point from, Point to) {
        Point lowest = Point.of((from.x() + to.x()) / 2 - BEYOND / 2, to.y() + HANGS);
        Point inner = Point.of(from.x() - BEYOND, to.y());
        double height = to.y() - from.y();
        return Path.of(
                Cubic.hermite(to, Vector.of(-0.1 * HANGS, HANGS), lowest, Vector.of(-HANGS, 0)),
                Cubic.hermite(lowest, Vector.of(-HANGS, 0), inner, Vector.of(0, -HANGS)),
                Cubic.hermite(inner, Vector.of(0, -height), from, Vector.of(BEYOND, -height)));
    }

    private static Piece sideFront(Path waist, Path side, Path bag, Cloth cloth) {
        return Piece.of(
                SkirtFinishNames.SIDE_FRONT,
                List.of(
                        new Edge(SkirtNames.WAIST, waist),
                        new Edge(EdgeNames.SIDE, side.withEnds(waist.end(), side.end())),
                        new Edge(SkirtFinishNames.BAG, bag)),
                grain(bag),
                Cut.pair(),
                cloth);
    }

    private static Piece facing(Point from, Point to, Path bag, Cloth cloth) {
        return Piece.of(
                SkirtFinishNames.POCKET_FACING,
                List.of(Edge.straight(SkirtFinishNames.SLANT, from, to), new Edge(SkirtFinishNames.BAG, bag)),
                grain(bag),
                Cut.pair(),
                cloth);
    }

    private static Grainline grain(Path bag) {
        Point to = bag.start();
        double x = (bag.end().x() + to.x()) / 2 - BEYOND / 2;
        return new Grainline(Point.of(x, to.y() - HANGS / 4), Point.of(x, to.y() + 0.7 * HANGS));
    }
}

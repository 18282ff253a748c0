package org.oaktag.skirt;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * Draws a gored skirt with the waist, the hip and the length that the skirt has: so many equal gores, of which one is
 * drawn, as its half on the fold.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(goreSkirt(GoreCount.SIX, mm(50)));
 * }</pre>
 *
 * <p>At the waist and at the hip a gore is as wide as the girth there divided by their number; there are no darts.
 * Below the hip each of its two edges is spread, which adds 2 x number x spread to the hem, measured along it. The
 * waist of a gore is an arc square to its edges, so that the waist runs on smoothly over the seams, and so is the hem.
 *
 * @param gores how many
 * @param spread how much wider the hem is on each side of a gore than the hip
 */
record GoreSkirt(GoreCount gores, Length spread) implements Step {

    private static final Vector DOWN = Vector.of(0, 1);

    /** The most that an edge is spread, as a share of its length below the hip. */
    private static final double MOST = 0.6;

    /** The most that an edge leans at the waist, radians. */
    private static final double MOST_LEAN = 1;

    private static final double LEVEL = 1e-9;

    /** Refuses null. */
    public GoreSkirt {
        Objects.requireNonNull(gores, "gores");
        Objects.requireNonNull(spread, "spread");
    }

    @Override
    public String name() {
        return "draw a gored skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("gores", "" + gores.count()), Amount.of("spread", spread));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the spread is negative or more than 0.6 of what lies below the hip, or the skirt has
     *     pieces other than front and back already
     */
    @Override
    public Reshaped reshape(Garment garment) {
        NewSkirt skirt = NewSkirt.of(garment);
        double below = skirt.length() - skirt.hipDepth();
        Range.check(
                "spread of the gores",
                "with " + Length.mm(below).text() + " below the hip it must be",
                spread,
                Length.ZERO,
                Length.mm(MOST * below));
        int count = gores.count();
        Piece gore = gore(skirt);
        Seam seam = Seam.flat(
                        SkirtShapeNames.GORE_SEAM,
                        SeamSide.along(gore.name(), EdgeNames.SIDE),
                        SeamSide.along(gore.name(), EdgeNames.SIDE),
                        "draw the gored skirt again")
                .smooth();
        Map<Name, List<Term>> terms = new LinkedHashMap<>();
        terms.put(SkirtNames.WAIST_GIRTH, round(Quantity.lengthOf(gore.name(), SkirtNames.WAIST)));
        terms.put(SkirtNames.HIP_GIRTH, round(skirt.acrossHip(gore.name())));
        terms.put(SkirtNames.HEM_GIRTH, round(Quantity.lengthOf(gore.name(), EdgeNames.HEM)));
        terms.put(SkirtNames.LENGTH, once(Quantity.lengthOf(gore.name(), EdgeNames.CENTRE)));
        terms.put(SkirtNames.SIDE_LENGTH, once(Quantity.lengthOf(gore.name(), EdgeNames.SIDE)));
        Garment made = skirt.made(List.of(gore), List.of(seam), terms);
        List<Note> notes = List.of(
                Note.rule("gore = waist " + Length.mm(skirt.waist()).text() + " / " + count + " = "
                        + Length.mm(skirt.waist() / count).text() + " and hip "
                        + Length.mm(skirt.hip()).text() + " / " + count + " = "
                        + Length.mm(skirt.hip() / count).text() + ", "
                        + Length.mm(skirt.hipDepth()).text() + " below it"),
                Note.rule("hem = hip " + Length.mm(skirt.hip()).text() + " + 2 x " + count + " x " + spread.text()
                        + " = " + made.finished(SkirtNames.HEM_GIRTH).text()));
        Point corner = gore.path(EdgeNames.SIDE).end();
        return new Reshaped(
                made,
                notes,
                List.of(new Dimension(
                        gore.name(), Point.of(skirt.hip() / count / 2, corner.y()), corner, spread.text())));
    }

    private List<Term> round(Quantity quantity) {
        return List.of(FinishedMeasure.times(2 * gores.count(), quantity));
    }

    private static List<Term> once(Quantity quantity) {
        return List.of(FinishedMeasure.times(1, quantity));
    }

    private Piece gore(NewSkirt skirt) {
        double waist = skirt.waist() / gores.count() / 2;
        Point hip = Point.of(skirt.hip() / gores.count() / 2, skirt.hipDepth());
        double lean = RootFinder.solve(
                        tried -> HipCurve.lean(new LevelArc(Point.ORIGIN, waist, tried).end(), hip) - tried,
                        -MOST_LEAN,
                        MOST_LEAN)
                .orElseThrow(() -> PatternException.of(
                        "gores of the skirt",
                        "must lean by less than a right angle from waist to hip",
                        "a waist of " + Length.mm(skirt.waist()).text() + " and a hip of "
                                + Length.mm(skirt.hip()).text(),
                        "take more gores"));
        LevelArc top = new LevelArc(Point.ORIGIN, waist, lean);
        Point corner = top.end();
        Path over = Path.of(HipCurve.between(corner, hip));
        Path straight = over.then(Path.polyline(hip, Point.of(hip.x(), skirt.length())));
        SideLine side = new SideLine(straight, over.length());
        Point hemCentre = Point.of(0, skirt.length());
        double wanted = hip.x() + spread.mm();
        double out = spread.mm() <= LEVEL
                ? 0
                : RootFinder.solve(
                                tried -> hem(side.leaning(tried, false), hemCentre)
                                                .length()
                                        - wanted,
                                0,
                                MOST_LEAN)
                        .orElseThrow();
        SideLine spreadSide = side.leaning(out, false);
        return SkirtPanel.of(
                SkirtShapeNames.GORE,
                SkirtNames.WAIST,
                top.path(),
                spreadSide,
                hem(spreadSide, hemCentre),
                new Cut.OnFold(EdgeNames.CENTRE, gores.count()),
                skirt.cloth());
    }

    private static Path hem(SideLine side, Point centre) {
        return new HalfHem(side.path().end(), side.path().endDirection(), centre, DOWN.negated()).drawn();
    }
}

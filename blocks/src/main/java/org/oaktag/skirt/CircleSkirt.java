package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
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
import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * Draws a circle skirt, or a part of one, with the waist and the length that the skirt has: a sector of a ring.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.adjust(circleSkirt(0.5)).pieces().size();          // = 2
 * skirt.adjust(circleSkirt(1).inQuarters());   // with seams at the centres too
 * }</pre>
 *
 * <p>For the share f of a whole circle, the waist W and the length L, the waist lies on the radius r = W / (2 pi f),
 * the hem is W + 2 pi f L round and the cloth pi f L (2 r + L). Its girth at any depth d is W + 2 pi f d, which at the
 * hip has to go round the wearer.
 *
 * @param share the share of a whole circle, 0.15 to 1
 * @param quarters whether front and back are each cut in two, with a seam at the centre
 */
public record CircleSkirt(double share, boolean quarters) implements Step {

    private static final double LEAST = 0.15;
    private static final double FINE = 1e-5;
    private static final double SQUARE_METRE = 1e6;

    /**
     * Checks the share.
     *
     * @throws PatternException if it is not 0.15 to 1
     */
    public CircleSkirt {
        if (!(share >= LEAST && share <= 1)) {
            throw PatternException.of(
                    "circle skirt",
                    "must be 0.15 to 1 of a whole circle",
                    "" + share,
                    "0.25, 0.5, 0.75 or 1 are usual");
        }
    }

    /** Returns the step with front and back in two pieces each, for cloth that is too narrow for a half. */
    public CircleSkirt inQuarters() {
        return new CircleSkirt(share, true);
    }

    @Override
    public String name() {
        return "draw a circle skirt";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(
                Amount.of("of a circle", String.format(Locale.ROOT, "%.3f", share)),
                Amount.of("in", quarters ? "four quarters" : "front and back"));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the skirt has pieces other than front and back already
     */
    @Override
    public Reshaped reshape(Garment garment) {
        NewSkirt skirt = NewSkirt.of(garment);
        double radius = skirt.waist() / (2 * Math.PI * share);
        Piece front = panel(SkirtNames.FRONT, skirt, radius);
        Piece back = panel(SkirtNames.BACK, skirt, radius);
        List<Seam> seams = new ArrayList<>();
        if (quarters) {
            seams.add(centreSeam(SkirtShapeNames.CENTRE_FRONT_SEAM, SkirtNames.FRONT));
            seams.add(centreSeam(SkirtFinishNames.CENTRE_BACK_SEAM, SkirtNames.BACK));
        }
        seams.add(SkirtBody.sideSeam());
        double hipShare = Math.min(skirt.hipDepth() / skirt.length(), 1);
        Garment made = skirt.made(List.of(front, back), seams, NewSkirt.measures(1, hip(hipShare)));
        double hem = 2 * Math.PI * share * skirt.length();
        double area = Math.PI * share * skirt.length() * (2 * radius + skirt.length());
        String f = String.format(Locale.ROOT, "%.3f", share);
        List<Note> notes = List.of(
                Note.rule("waist radius = " + Length.mm(skirt.waist()).text() + " / (2 pi x " + f + ") = "
                        + Length.mm(radius).text()),
                Note.rule("hem = waist " + Length.mm(skirt.waist()).text() + " + 2 pi x " + f + " x length "
                        + Length.mm(skirt.length()).text() + " = "
                        + Length.mm(skirt.waist() + hem).text()),
                Note.rule(String.format(
                        Locale.ROOT,
                        "cloth = pi x %s x %s x (2 x %s + %s) = %.2f m²",
                        f,
                        Length.mm(skirt.length()).text(),
                        Length.mm(radius).text(),
                        Length.mm(skirt.length()).text(),
                        area / SQUARE_METRE)),
                Note.caution(
                        "let it hang for a day before it is hemmed: where the cloth lies on the bias it grows longer,"
                                + " and its waist stretches until it is stayed"));
        return new Reshaped(
                made,
                notes,
                List.of(new Dimension(
                        SkirtNames.FRONT,
                        front.path(EdgeNames.SIDE).start(),
                        front.path(EdgeNames.SIDE).end(),
                        Length.mm(skirt.length()).text())));
    }

    /** A sector widens evenly, so at a share of its length its girth lies at that share between waist and hem. */
    static List<Term> hip(double shareOfLength) {
        List<Term> terms = new ArrayList<>();
        for (Name half : SkirtBody.HALVES) {
            terms.add(FinishedMeasure.times(2 * (1 - shareOfLength), Quantity.lengthOf(half, SkirtNames.WAIST)));
            terms.add(FinishedMeasure.times(2 * shareOfLength, Quantity.lengthOf(half, EdgeNames.HEM)));
        }
        return terms;
    }

    /** Returns a skirt whose length is to change, its hip, where it is a sector's, measured as deep as before. */
    static Garment hipKept(Garment garment, double shareOfLength) {
        return garment.withMeasures(garment.measures().stream()
                .map(measure -> {
                    OptionalDouble share =
                            measure.name().equals(SkirtNames.HIP_GIRTH) ? shareOfHem(measure) : OptionalDouble.empty();
                    return share.isEmpty()
                            ? measure
                            : new FinishedMeasure(
                                    measure.name(), hip(share.getAsDouble() * shareOfLength), measure.body());
                })
                .toList());
    }

    private static OptionalDouble shareOfHem(FinishedMeasure hip) {
        boolean isSector = hip.terms().stream()
                .anyMatch(term -> term.quantity().equals(Quantity.lengthOf(SkirtNames.FRONT, SkirtNames.WAIST)));
        return isSector
                ? hip.terms().stream()
                        .filter(term -> term.quantity().equals(Quantity.lengthOf(SkirtNames.FRONT, EdgeNames.HEM)))
                        .mapToDouble(term -> term.times() / 2)
                        .findFirst()
                : OptionalDouble.empty();
    }

    private Piece panel(Name name, NewSkirt skirt, double radius) {
        double angle = Math.PI * share / 2;
        Point centre = Point.of(0, -radius);
        Path waist = Arcs.circular(centre, Point.ORIGIN, -angle, FINE);
        Path hem =
                Arcs.circular(centre, Point.of(0, skirt.length()), -angle, FINE).reversed();
        Path side = Path.polyline(waist.end(), hem.start());
        Cut cut = quarters ? Cut.pair() : Cut.onFold(EdgeNames.CENTRE);
        return SkirtPanel.of(
                        name, SkirtNames.WAIST, waist, new SideLine(side, skirt.hipDepth()), hem, cut, skirt.cloth())
                .withAspect(SkirtBody.aspect(name));
    }

    private static Seam centreSeam(Name seam, Name half) {
        return Seam.flat(
                        seam,
                        SeamSide.along(half, EdgeNames.CENTRE),
                        SeamSide.along(half, EdgeNames.CENTRE),
                        "draw the circle skirt again")
                .smooth();
    }
}

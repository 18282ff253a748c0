package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.oaktag.PatternException;
import org.oaktag.adjust.Comparison;
import org.oaktag.adjust.Reshaped;
import org.oaktag.block.Block;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * The straight skirt block: a front and a back, each cut on the fold, with darts from the waist, a hip curve, and below
 * the hip straight down.
 *
 * <pre>{@code
 * Garment skirt = StraightSkirt.BLOCK.draft(mira, SkirtEase.standard(), Cloth.woven("tweed, moss"));
 * skirt.walkSeams().isTrue();   // = true
 * }</pre>
 *
 * <p>The half of the hip girth and its ease is parted with the back 15 mm the wider (WikiEducator, "Handout for
 * drafting skirt block", whose half back is wider than its half front by so much). Half of what the hip is greater than
 * the waist goes into darts, whose number, widths and depths follow from it; the side seams take the rest, solved so
 * that the waist, its darts sewn, equals the waist girth and its ease. Both sides are one curve. The waist is drawn as
 * it lies when the darts are sewn, one smooth line, level at the centre and square to the side seam, raised there by up
 * to 12 mm; so it runs on smoothly from the front to the back. Where the waist is the greater the side leans outwards.
 *
 * <p>A cloth that stretches by 15 % or more needs no darts (common practice): the sides take in what a fair curve
 * takes, 45 mm a quarter, and what the waist is then wider is drawn in by its band.
 *
 * @param length how far down it hangs
 */
public record StraightSkirt(SkirtLength length) implements Block {

    /** The skirt to the knee, of which a style is made. */
    public static final Block BLOCK = new StraightSkirt(SkirtLength.KNEE);

    private static final Set<BodyMeasure> NEEDS =
            Set.of(BodyMeasure.WAIST_GIRTH, BodyMeasure.HIP_GIRTH, BodyMeasure.WAIST_TO_HIP, BodyMeasure.HEIGHT);

    /** How much more of the half hip girth the back takes than the front, mm. */
    private static final double BACK_WIDER = 15;

    /** From this stretch on, in per cent, a skirt is drawn without darts. */
    private static final double STRETCHES = 15;

    /** The least that a skirt reaches below the hip, mm. */
    private static final double LEAST_BELOW_HIP = 100;

    /** How far the shift of the side is looked for to either side of what the plan has, mm. */
    private static final double[] REACHES = {4, 60};

    /** Refuses null. */
    public StraightSkirt {
        Objects.requireNonNull(length, "length");
    }

    /** Returns {@code "straight skirt"}, {@code "straight midi skirt"} or {@code "straight maxi skirt"}. */
    @Override
    public Name name() {
        return Name.of(
                switch (length) {
                    case KNEE -> "straight skirt";
                    case MIDI -> "straight midi skirt";
                    case MAXI -> "straight maxi skirt";
                });
    }

    /** Returns waist girth, hip girth, waist to hip and height. */
    @Override
    public Set<BodyMeasure> needs() {
        return NEEDS;
    }

    /**
     * Drafts the skirt.
     *
     * @throws PatternException if the ease cannot be worn in that cloth, a measure is lacking, the hem would lie less
     *     than 100 mm below the hip, or no side seam takes in what the waist asks for
     */
    @Override
    public Garment draft(BodyMeasurements body, Ease ease, Cloth cloth) {
        SkirtEase.check(ease, body, cloth);
        double waist = body.measure(BodyMeasure.WAIST_GIRTH)
                .plus(ease.at(BodyMeasure.WAIST_GIRTH))
                .mm();
        double hip = body.measure(BodyMeasure.HIP_GIRTH)
                .plus(ease.at(BodyMeasure.HIP_GIRTH))
                .mm();
        double hipDepth = body.measure(BodyMeasure.WAIST_TO_HIP).mm();
        double hem = length.on(body).mm();
        if (hem < hipDepth + LEAST_BELOW_HIP) {
            throw PatternException.of(
                    name() + " of '" + body.name() + "'",
                    "must end at least " + Length.mm(LEAST_BELOW_HIP).text() + " below the hip, which lies "
                            + Length.mm(hipDepth).text() + " below the waist",
                    Length.mm(hem).text() + " from waist to hem",
                    "check waist to hip and height");
        }
        double perQuarter = (hip - waist) / 4;
        boolean stretches = cloth.stretch().percent() >= STRETCHES;
        DartPlan plan = stretches ? DartPlan.without(perQuarter) : DartPlan.of(perQuarter);
        boolean drawnIn = stretches && perQuarter > DartPlan.mostAtSide();
        double in = drawnIn ? DartPlan.mostAtSide() : solve(body, plan, hip, waist, hipDepth, hem);
        SkirtHalf front = half(SkirtNames.FRONT, plan, hip, in, hipDepth, hem);
        SkirtHalf back = half(SkirtNames.BACK, plan, hip, in, hipDepth, hem);
        Garment block = assemble(body, front, back, cloth, hipDepth);
        List<Amount> amounts = List.of(
                Amount.of("at the waist", ease.at(BodyMeasure.WAIST_GIRTH)),
                Amount.of("at the hip", ease.at(BodyMeasure.HIP_GIRTH)),
                Amount.of("length", Length.mm(hem)));
        Reshaped made = new Reshaped(block, notes(body, ease, plan, front, in, drawnIn ? waist : 0), List.of());
        return block.recording(() -> Comparison.beginning("draft the " + name(), amounts, made));
    }

    @Override
    public Ease standardEase() {
        return SkirtEase.standard();
    }

    @Override
    public List<Name> tabled() {
        return List.of(
                SkirtNames.WAIST_GIRTH,
                SkirtNames.HIP_GIRTH,
                SkirtNames.HEM_GIRTH,
                SkirtNames.LENGTH,
                SkirtNames.SIDE_LENGTH);
    }

    /**
     * Returns, for a cloth that stretches, 10 mm on seams and 25 mm on the hem, as makers of knits leave; else
     * {@linkplain SkirtAllowances#woven those of woven skirts}.
     */
    @Override
    public Allowances allowances(Garment garment) {
        boolean stretches = garment.pieces().stream()
                .filter(piece -> piece.cloth().use().equals(Cloth.SHELL))
                .anyMatch(piece -> piece.cloth().stretch().percent() >= STRETCHES);
        if (stretches) {
            return Allowances.of("industry knit", Length.mm(10)).finished(garment, Length.mm(25));
        }
        return SkirtAllowances.woven(garment);
    }

    private static SkirtHalf half(Name half, DartPlan plan, double hip, double in, double hipDepth, double length) {
        return SkirtHalf.of(half, plan, share(half, hip), hip / 4, in, hipDepth, length);
    }

    private static double share(Name half, double hip) {
        return hip / 4 + (half.equals(SkirtNames.BACK) ? BACK_WIDER : -BACK_WIDER) / 2;
    }

    /** Finds how far the sides are taken in so that the sewn waist is as long as asked, near the plan first. */
    private static double solve(
            BodyMeasurements body, DartPlan plan, double hip, double waist, double hipDepth, double length) {
        DoubleUnaryOperator excess = in -> 2 * sewn(SkirtNames.FRONT, plan, hip, in, hipDepth, length)
                + 2 * sewn(SkirtNames.BACK, plan, hip, in, hipDepth, length)
                - waist;
        for (double reach : REACHES) {
            OptionalDouble found = RootFinder.solve(excess, plan.side() - reach, plan.side() + reach);
            if (found.isPresent()) {
                return found.getAsDouble();
            }
        }
        throw PatternException.of(
                "waist of '" + body.name() + "'",
                "must differ from the hip by no more than side seams and darts take in",
                Length.mm(waist).text() + " beside a hip of " + Length.mm(hip).text() + ", both with their ease",
                "check both girths, or give more ease at the waist");
    }

    private static double sewn(Name half, DartPlan plan, double hip, double in, double hipDepth, double length) {
        return SkirtHalf.sewnWaist(half, plan, share(half, hip), hip / 4, in, hipDepth, length);
    }

    private static Garment assemble(
            BodyMeasurements body, SkirtHalf front, SkirtHalf back, Cloth cloth, double hipDepth) {
        List<Piece> pieces = List.of(front.piece(SkirtNames.FRONT, cloth), back.piece(SkirtNames.BACK, cloth));
        List<Seam> seams = new ArrayList<>();
        for (Piece piece : pieces) {
            for (Dart dart : Dart.all(piece)) {
                seams.add(Seam.flat(
                        dart.name(),
                        SeamSide.along(piece.name(), Dart.legA(dart.name())),
                        SeamSide.against(piece.name(), Dart.legB(dart.name())),
                        "open the dart anew"));
            }
        }
        seams.add(SkirtBody.sideSeam());
        return Garment.of("straight skirt", body.wearer(), pieces, seams, SkirtMeasures.all(pieces, hipDepth))
                .withChecks(SkirtChecks.ofBlock())
                .withFlat(new FlatSkirt());
    }

    private static List<Note> notes(
            BodyMeasurements body, Ease ease, DartPlan plan, SkirtHalf front, double in, double drawnInTo) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("waist = waist girth "
                + body.measure(BodyMeasure.WAIST_GIRTH).text() + " + ease "
                + ease.at(BodyMeasure.WAIST_GIRTH).text() + ", hip = hip girth "
                + body.measure(BodyMeasure.HIP_GIRTH).text() + " + ease "
                + ease.at(BodyMeasure.HIP_GIRTH).text() + ", "
                + Length.mm(front.hipDepth()).text() + " below the waist"));
        notes.add(Note.rule("each quarter is "
                + Length.mm(4 * plan.perQuarter()).times(0.25).text()
                + " wider at the hip than at the waist: the side takes in "
                + Length.mm(in).text() + ", " + darts(plan)));
        if (drawnInTo > 0) {
            notes.add(Note.rule("the cloth stretches, so it has no darts: the waist is drawn in to "
                    + Length.mm(drawnInTo).text() + " by its band"));
        }
        return notes;
    }

    private static String darts(DartPlan plan) {
        if (plan.front().isEmpty() && plan.back().isEmpty()) {
            return "no darts";
        }
        return (plan.front().isEmpty() ? "" : "the front " + darts(plan.front()) + ", ") + "the back "
                + darts(plan.back());
    }

    private static String darts(List<Double> widths) {
        return (widths.size() == 1 ? "a dart of " : widths.size() + " darts of ")
                + Length.mm(widths.get(0)).text();
    }
}

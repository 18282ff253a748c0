package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.GrownSleeve;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.body.BodyMeasure;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Grows the sleeve on to front and back, so that there is no armhole: a kimono sleeve, or with a deep curve under the
 * arm a batwing. The shoulder seam runs on over the arm; the way from the side neck point to the wrist and the hem of
 * the sleeve keep their lengths. The underarm seams of front and back are equal: where the shoulders differ, the hem is
 * shared out between front and back, and a little slanted, so that they are.
 *
 * <pre>{@code
 * Garment kimono = block.adjust(kimonoSleeve());
 * Garment batwing = block.adjust(batwingSleeve(cm(12)));   // runs into the side seam 12 cm below the underarm
 * }</pre>
 *
 * @param below how far below the underarm point the underarm curve has run into the side seam
 * @param bend how far the arm turns down from the line of the shoulder, 0 to 40 degrees
 * @param gusset the side of a gusset let in under the arm, or empty for none; with one there is no curve
 */
public record GrowSleeve(Length below, Angle bend, Optional<Length> gusset) implements Step {

    private static final Angle MOST_BEND = Angle.degrees(40);
    private static final double LEAST_CURVE = 30;
    private static final double LEAST_SIDE = 40;
    private static final String REFIT = "grow the sleeve on, with its gusset, after the seams of the body are settled";
    private static final double EQUAL = 1e-9;
    private static final double MOST_SLANT = 40;

    /**
     * Checks the bend and the gusset.
     *
     * @throws PatternException if the bend is not 0 to 40 degrees or the gusset's side not 40 to 160 mm
     */
    public GrowSleeve {
        Objects.requireNonNull(below, "below");
        Range.check("bend of a sleeve grown on", "must be", bend, Angle.degrees(0), MOST_BEND);
        gusset.ifPresent(Gusset::check);
    }

    /** Returns the step with the arm turned down from the line of the shoulder. */
    public GrowSleeve bentBy(Angle angle) {
        return new GrowSleeve(below, angle, gusset);
    }

    /** Returns the step with a gusset of this side let in under the arm; 80 to 100 mm (common practice). */
    public GrowSleeve withGusset(Length side) {
        return new GrowSleeve(below, bend, Optional.of(side));
    }

    @Override
    public String name() {
        return "grow the sleeve on";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        if (gusset.isEmpty()) {
            amounts.add(Amount.of("curve below the underarm point", below));
        }
        if (bend.degrees() != 0) {
            amounts.add(Amount.of("bent to the arm", bend.text()));
        }
        gusset.ifPresent(side -> amounts.add(Amount.of("gusset, side", side)));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if the sleeve is split or cuffed already, the curve does not end on the side seam, or
     *     front or back would overlap itself
     */
    @Override
    public Reshaped reshape(Garment garment) {
        TopPieces.uncuffedSleeve(garment);
        TopPieces.requireFree(garment, EdgeRef.of(TopNames.FRONT, TopEdges.ARMHOLE), TopNames.FRONT_ARMHOLE_SEAM);
        TopPieces.requireFree(garment, EdgeRef.of(TopNames.BACK, TopEdges.ARMHOLE), TopNames.BACK_ARMHOLE_SEAM);
        Length length = garment.finished(TopNames.SLEEVE_LENGTH);
        Length hem = garment.finished(TopNames.SLEEVE_HEM);
        List<Piece> halves = Halves.of(garment, TopEdges.SHOULDER, TopEdges.ARMHOLE, EdgeNames.SIDE, EdgeNames.HEM);
        if (gusset.isEmpty()) {
            Range.checkAll("underarm curve", halves, below, GrowSleeve::limits);
        }
        GrownSleeve front = grown(halves.get(0), length);
        GrownSleeve back = grown(halves.get(1), length);
        Hem shared = Hem.shared(front, back, hem.mm());
        Piece drawnFront = checked(front.drawn(shared.front()));
        Piece drawnBack = checked(back.drawn(shared.back()));
        Assembly assembly = Assembly.of(garment)
                .takeOff(Set.of(TopNames.SLEEVE))
                .put(drawnFront)
                .put(drawnBack);
        Optional<Gusset> let = gusset.map(side -> Gusset.of(side.mm(), drawnFront.cloth()));
        let.ifPresent(each -> each.letIn(assembly, slash(TopNames.FRONT), slash(TopNames.BACK), REFIT));
        Garment done = GrownSeams.of(assembly, garment, gusset.isPresent(), below);
        return new Reshaped(done, notes(garment, done, let), dimensions(drawnFront));
    }

    private static Gusset.Opening slash(Name piece) {
        Corner point = Corner.at(piece, TopEdges.GUSSET_UPPER, End.END);
        return new Gusset.Opening(piece, piece, point, point);
    }

    private static Range.Limits limits(Piece piece) {
        return new Range.Limits(
                "below the underarm point it can end at",
                Length.mm(LEAST_CURVE),
                Length.mm(piece.path(EdgeNames.SIDE).length() - LEAST_SIDE));
    }

    private GrownSleeve grown(Piece piece, Length length) {
        return new GrownSleeve(piece, length.mm(), bend.radians(), below.mm(), gusset.map(Length::mm));
    }

    /** Both halves of the hem. */
    private record Hem(GrownSleeve.HalfHem front, GrownSleeve.HalfHem back) {

        /**
         * Shares the hem so that both underarm edges lie as far from their underarm points, and slants its halves, the
         * one against the other so that it runs on smoothly, until both underarm seams are of one length.
         */
        static Hem shared(GrownSleeve front, GrownSleeve back, double whole) {
            double more = (back.fromUnderarm() - front.fromUnderarm()) / 2;
            Hem square = of(whole, more, 0);
            if (Math.abs(square.excess(front, back)) <= EQUAL) {
                return square;
            }
            OptionalDouble slant =
                    RootFinder.solve(tried -> of(whole, more, tried).excess(front, back), -MOST_SLANT, MOST_SLANT);
            return of(
                    whole,
                    more,
                    slant.orElseThrow(() -> PatternException.of(
                            "sleeve grown on",
                            "front and back must come to underarm seams of one length",
                            Length.mm(front.seam(square.front())).text() + " and "
                                    + Length.mm(back.seam(square.back())).text(),
                            "move the shoulder seams back, or straighten the side seams")));
        }

        /** Both halves slant by one angle, the one down the arm and the other up. */
        private static Hem of(double whole, double more, double slant) {
            double share = 2 * more / whole;
            return new Hem(
                    new GrownSleeve.HalfHem(whole / 2 + more, slant * (1 + share)),
                    new GrownSleeve.HalfHem(whole / 2 - more, -slant * (1 - share)));
        }

        private double excess(GrownSleeve onFront, GrownSleeve onBack) {
            return onFront.seam(front) - onBack.seam(back);
        }
    }

    private Piece checked(Piece drawn) {
        if (drawn.outline().meetsItself()) {
            throw PatternException.of(
                    "sleeve grown on to the " + drawn.name(),
                    "must not make the piece overlap itself",
                    amounts().toString(),
                    "bend the arm less, or end the curve higher");
        }
        return drawn;
    }

    private List<Note> notes(Garment before, Garment after, Optional<Gusset> let) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("the shoulder runs on over the arm by the sleeve's length of "
                + before.finished(TopNames.SLEEVE_LENGTH).text() + ": side neck to wrist stays "
                + after.finished(TopNames.NECK_TO_WRIST).text() + "; the hem of "
                + after.finished(TopNames.SLEEVE_HEM).text() + " is shared by front and back, "
                + hem(after, TopNames.FRONT).text() + " and "
                + hem(after, TopNames.BACK).text()));
        notes.add(Note.rule("at the underarm the sleeve is "
                + after.finished(TopNames.SLEEVE_WIDTH).text() + " round (the sleeve set in was "
                + before.finished(TopNames.SLEEVE_WIDTH).text() + ")"));
        let.ifPresent(each -> notes.add(each.note(after, gusset.orElseThrow(), "slashes of that depth")));
        Length arm = after.wearer().measures().get(BodyMeasure.UPPER_ARM_GIRTH.asName());
        if (arm != null
                && gusset.isEmpty()
                && after.finished(TopNames.SLEEVE_WIDTH).compareTo(arm) < 0) {
            notes.add(Note.caution("the sleeve is narrower than the upper arm of " + arm.text()
                    + ": lower the armhole first, or end the curve lower"));
        }
        return notes;
    }

    private static Length hem(Garment garment, Name piece) {
        return garment.piece(piece).edge(TopEdges.SLEEVE_HEM).length();
    }

    private static List<Dimension> dimensions(Piece front) {
        return List.of(new Dimension(
                TopNames.FRONT,
                front.path(TopEdges.OVER_ARM).start(),
                front.path(TopEdges.OVER_ARM).end(),
                front.edge(TopEdges.OVER_ARM).length().text()));
    }
}

package org.oaktag.adjustments;

import static org.oaktag.garment.FinishedMeasure.times;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.RaglanHalf;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.FromEdge;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/**
 * Makes a raglan of body and sleeve: front and back lose their shoulders along a line from the neckline to the underarm
 * curve of the armhole, and the sleeve, now in two with a seam over shoulder and arm, gains them. The raglan seams of
 * body and sleeve are of one length, and so are both edges of the seam over the arm; the way from the side neck point
 * to the wrist keeps its length, and the sleeve its width.
 *
 * <p>A gusset is let in at the lower end of the raglan seams: its upper sides are sewn to the sleeve, its lower ones to
 * the body, where these were sewn to each other.
 *
 * <pre>{@code
 * Garment raglan = block.adjust(raglanSleeve());
 * raglan.hasPiece(SLEEVE_FRONT);   // = true
 * }</pre>
 *
 * @param onFront how far from the shoulder seam the line begins on the front neckline
 * @param onBack how far from the shoulder seam it begins on the back neckline
 * @param gusset the side of a gusset let in under the arm, or empty for none
 */
public record Raglan(Length onFront, Length onBack, Optional<Length> gusset) implements Step {

    private static final double LEAST = 5;
    private static final double LEAST_NECKLINE = 20;
    private static final String REFIT = "make the raglan after neckline, shoulder, armhole and sleeve are settled";

    /**
     * Checks the gusset.
     *
     * @throws PatternException if its side is not 40 to 160 mm
     */
    public Raglan {
        Objects.requireNonNull(onFront, "onFront");
        Objects.requireNonNull(onBack, "onBack");
        gusset.ifPresent(Gusset::check);
    }

    /** Returns the step with a gusset of this side let in under the arm; 80 to 100 mm (common practice). */
    public Raglan withGusset(Length side) {
        return new Raglan(onFront, onBack, Optional.of(side));
    }

    @Override
    public String name() {
        return "make a raglan sleeve";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(Amount.of("from the shoulder on the front neckline", onFront));
        amounts.add(Amount.of("on the back neckline", onBack));
        gusset.ifPresent(side -> amounts.add(Amount.of("gusset, side", side)));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a line begins off its neckline, something is sewn to the neckline or the sleeve
     *     already, the sleeve is split, the cap does not fit the armhole, or the lines cannot be made of one length
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Piece sleeve = TopPieces.uncuffedSleeve(garment);
        Piece halfFront = half(garment, TopNames.FRONT, onFront);
        Piece halfBack = half(garment, TopNames.BACK, onBack);
        RaglanHalf front = RaglanHalf.front(halfFront, sleeve, onFront);
        RaglanHalf back = RaglanHalf.back(halfBack, sleeve, onBack);
        gusset.ifPresent(given -> Range.check(
                "gusset",
                "beside these raglan lines its side must be",
                given,
                Length.mm(Gusset.LEAST),
                Length.mm(Math.min(front.mostGusset().mm(), back.mostGusset().mm()))));
        OptionalDouble side = gusset.map(Length::mm).map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
        Length reach = garment.finished(TopNames.NECK_TO_WRIST);
        Piece sleeveFront = checked(front.sleeve(TopNames.SLEEVE_FRONT, sleeve, reach, side));
        Piece sleeveBack = checked(back.sleeve(TopNames.SLEEVE_BACK, sleeve, reach, side));
        Assembly assembly = Assembly.of(garment)
                .takeOff(Set.of(TopNames.SLEEVE))
                .undo(TopNames.SHOULDER_SEAM)
                .put(checked(front.body(side)))
                .put(checked(back.body(side)))
                .put(sleeveFront)
                .put(sleeveBack)
                .sew(raglanSeam(TopNames.FRONT_ARMHOLE_SEAM, TopNames.FRONT, TopNames.SLEEVE_FRONT))
                .sew(raglanSeam(TopNames.BACK_ARMHOLE_SEAM, TopNames.BACK, TopNames.SLEEVE_BACK))
                .sew(ofHalves(TopNames.OVER_ARM_SEAM, overArm(TopNames.SLEEVE_FRONT), overArm(TopNames.SLEEVE_BACK)))
                .sew(ofHalves(
                        TopNames.SLEEVE_SEAM,
                        SeamSide.along(TopNames.SLEEVE_FRONT, TopEdges.UNDERARM),
                        SeamSide.along(TopNames.SLEEVE_BACK, TopEdges.UNDERARM)));
        Optional<Gusset> let = gusset.map(each -> Gusset.of(each.mm(), halfFront.cloth()));
        let.ifPresent(each -> each.letIn(
                assembly,
                opening(TopNames.FRONT, TopNames.SLEEVE_FRONT),
                opening(TopNames.BACK, TopNames.SLEEVE_BACK),
                REFIT));
        Garment done = measured(assembly).done();
        Note lines = Note.rule("the raglan line is " + front.lineLength().text() + " long on front and sleeve, "
                + back.lineLength().text() + " on back and sleeve; below that both are the armhole's own curve");
        Note over = Note.rule("the seam over the arm is as long on the front as on the back: side neck to wrist stays "
                + done.finished(TopNames.NECK_TO_WRIST).text());
        List<Note> notes = new ArrayList<>(List.of(lines, over));
        let.ifPresent(each -> notes.add(each.note(
                done,
                gusset.orElseThrow(),
                "the lower ends of the raglan seams, which curve while its sides are straight")));
        Piece body = done.piece(TopNames.FRONT);
        return new Reshaped(
                done,
                notes,
                List.of(new Dimension(
                        TopNames.FRONT,
                        body.path(TopEdges.RAGLAN).start(),
                        body.path(TopEdges.RAGLAN).end(),
                        front.lineLength().text())));
    }

    private static Piece half(Garment garment, Name name, Length on) {
        Piece piece = TopPieces.half(garment, name, EdgeNames.CENTRE, TopEdges.NECKLINE, TopEdges.SHOULDER);
        TopPieces.withArmhole(garment, name);
        for (Name edge : List.of(TopEdges.NECKLINE, TopEdges.SHOULDER, TopEdges.ARMHOLE)) {
            TopPieces.requireFree(
                    garment,
                    EdgeRef.of(name, edge),
                    edge.equals(TopEdges.SHOULDER) ? TopNames.SHOULDER_SEAM : armholeSeam(name));
        }
        Range.check(
                "raglan line of the " + piece.name(),
                "from the shoulder seam it can begin at",
                on,
                Length.mm(LEAST),
                Length.mm(piece.path(TopEdges.NECKLINE).length() - LEAST_NECKLINE));
        return piece;
    }

    private static Name armholeSeam(Name piece) {
        return piece.equals(TopNames.FRONT) ? TopNames.FRONT_ARMHOLE_SEAM : TopNames.BACK_ARMHOLE_SEAM;
    }

    private Piece checked(Piece drawn) {
        if (drawn.outline().meetsItself()) {
            throw PatternException.of(
                    "raglan",
                    "must not make the " + drawn.name() + " overlap itself",
                    amounts().toString(),
                    "begin the line at another place on the neckline");
        }
        return drawn;
    }

    private static Gusset.Opening opening(Name body, Name sleeve) {
        return new Gusset.Opening(
                body,
                sleeve,
                Corner.at(body, TopEdges.GUSSET_LOWER, End.START),
                Corner.at(sleeve, TopEdges.GUSSET_UPPER, End.START));
    }

    private Seam raglanSeam(Name seam, Name body, Name sleeve) {
        return Seam.flat(seam, raglan(body), raglan(sleeve), REFIT).smoothAt(End.START);
    }

    private SeamSide raglan(Name piece) {
        SeamSide raglan = SeamSide.along(piece, TopEdges.RAGLAN);
        return gusset.isPresent() ? raglan : raglan.then(SeamSide.along(piece, TopEdges.ARMHOLE));
    }

    private static SeamSide overArm(Name piece) {
        return SeamSide.along(piece, TopEdges.OVER_ARM).then(SeamSide.along(piece, TopEdges.SHOULDER));
    }

    private static Seam ofHalves(Name seam, SeamSide front, SeamSide back) {
        return Seam.flat(seam, front, back, REFIT).smooth();
    }

    private static Assembly measured(Assembly assembly) {
        return assembly.measure(FinishedMeasure.of(
                                TopNames.NECKLINE_GIRTH,
                                terms(
                                        2,
                                        TopEdges.NECKLINE,
                                        TopNames.FRONT,
                                        TopNames.SLEEVE_FRONT,
                                        TopNames.SLEEVE_BACK,
                                        TopNames.BACK))
                        .against(BodyMeasure.NECK_BASE_GIRTH.asName()))
                .measure(
                        FinishedMeasure.of(TopNames.SHOULDER_LENGTH, terms(1, TopEdges.SHOULDER, TopNames.SLEEVE_FRONT))
                                .against(BodyMeasure.SHOULDER_LENGTH.asName()))
                .measure(FinishedMeasure.of(TopNames.SLEEVE_LENGTH, terms(1, TopEdges.OVER_ARM, TopNames.SLEEVE_FRONT))
                        .against(BodyMeasure.ARM_LENGTH.asName()))
                .measure(FinishedMeasure.of(
                        TopNames.NECK_TO_WRIST,
                        times(1, Quantity.lengthOf(TopNames.SLEEVE_FRONT, TopEdges.SHOULDER)),
                        times(1, Quantity.lengthOf(TopNames.SLEEVE_FRONT, TopEdges.OVER_ARM))))
                .measure(FinishedMeasure.of(
                                TopNames.SLEEVE_HEM,
                                terms(1, EdgeNames.HEM, TopNames.SLEEVE_FRONT, TopNames.SLEEVE_BACK))
                        .against(BodyMeasure.WRIST_GIRTH.asName()))
                .measure(FinishedMeasure.of(
                                TopNames.SLEEVE_WIDTH,
                                times(1, toOverArm(TopNames.SLEEVE_FRONT)),
                                times(1, toOverArm(TopNames.SLEEVE_BACK)))
                        .against(BodyMeasure.UPPER_ARM_GIRTH.asName()))
                .leaveOut(TopNames.ARMHOLE_GIRTH);
    }

    private static FinishedMeasure.Term[] terms(double factor, Name edge, Name... pieces) {
        return Arrays.stream(pieces)
                .map(piece -> times(factor, Quantity.lengthOf(piece, edge)))
                .toArray(FinishedMeasure.Term[]::new);
    }

    private static FromEdge toOverArm(Name piece) {
        return new FromEdge(Corner.at(piece, TopEdges.UNDERARM, End.START), EdgeRef.of(piece, TopEdges.OVER_ARM));
    }
}

package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Comparison;
import org.oaktag.adjust.Reshaped;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * A block for knits: front, back and sleeve without darts.
 *
 * <p>The neckline's depth is solved so that the whole neckline equals the neck base girth and its ease. The sleeve's
 * width comes from the upper arm and its ease, and the height of the cap is solved against the armhole; where no cap of
 * a sensible height exists, the armhole is deepened step by step, and the draft says by how much.
 *
 * <pre>{@code
 * Garment block = KnitTop.draft(body, Ease.standard(), Cloth.knit("brushed knit", percent(35)));
 * }</pre>
 */
public final class KnitTop {

    /** The lowest sensible cap, as a share of the armhole's depth. */
    static final double LEAST_CAP = 0.30;

    /** The highest sensible cap, as a share of the armhole's depth. */
    static final double MOST_CAP = 0.80;

    private static final Length CAP_EASE = Length.mm(6);
    private static final double DEEPENING = 5;
    private static final double MOST_DEEPENING = 80;
    private static final double WORTH_SAYING = 5;

    private KnitTop() {}

    /**
     * Drafts the block.
     *
     * @param body the body
     * @param ease how much larger the top is than the body
     * @param cloth the knit it is made of
     * @return the block, its history holding the draft; every seam is true
     * @throws PatternException if the ease cannot be worn in that cloth, or the measures allow no block; the message
     *     says which measure stands in the way
     */
    public static Garment draft(BodyMeasurements body, Ease ease, Cloth cloth) {
        ease.check(body, cloth);
        double width =
                body.measure(BodyMeasure.UPPER_ARM_GIRTH).mm() + ease.upperArm().mm();
        for (double deepened = 0; deepened <= MOST_DEEPENING; deepened += DEEPENING) {
            BodyDraft draft = BodyDraft.of(body, ease, deepened);
            checkRoom(draft, body);
            CapFit fit = CapFit.of(draft.armhole(BodyHalf.FRONT), draft.armhole(BodyHalf.BACK), CAP_EASE);
            Optional<CapFit.Solved> cap = cap(draft, fit, width);
            if (cap.isPresent()) {
                return assemble(body, ease, cloth, draft, fit, cap.get(), deepened);
            }
        }
        throw PatternException.of(
                "sleeve of '" + body.name() + "'",
                "must find a cap of " + LEAST_CAP + " to " + MOST_CAP + " of the armhole's depth, deepened by "
                        + Length.mm(MOST_DEEPENING).text() + " at the most",
                "a sleeve " + Length.mm(width).text() + " wide",
                "check the upper arm girth, or give more ease at the bust or less at the upper arm");
    }

    /** Solves the height of the cap; empty where even the lowest sensible cap makes the sleeve too narrow. */
    private static Optional<CapFit.Solved> cap(BodyDraft draft, CapFit fit, double width) {
        double least = Math.max(LEAST_CAP * draft.armholeDepth(), fit.leastHeight());
        double most = Math.min(MOST_CAP * draft.armholeDepth(), fit.mostHeight());
        CapFit.Solved lowest = fit.atHeight(least);
        if (lowest.width() < width) {
            return Optional.empty();
        }
        CapFit.Solved highest = fit.atHeight(most);
        return highest.width() >= width ? Optional.of(highest) : fit.atWidth(width, lowest, highest);
    }

    private static Garment assemble(
            BodyMeasurements body,
            Ease ease,
            Cloth cloth,
            BodyDraft draft,
            CapFit fit,
            CapFit.Solved cap,
            double deepened) {
        double length = body.measure(BodyMeasure.ARM_LENGTH).mm();
        double hem = Math.min(
                body.measure(BodyMeasure.WRIST_GIRTH).mm() + ease.wrist().mm(), cap.width());
        Piece front = draft.draw(BodyHalf.FRONT, cloth)
                .withNotch(Notch.single(
                        TopNames.FRONT_NOTCH,
                        EdgeNames.ARMHOLE,
                        End.END,
                        fit.front().notchFromUnderarm()));
        Piece back = draft.draw(BodyHalf.BACK, cloth)
                .withNotch(Notch.paired(
                        TopNames.BACK_NOTCH,
                        EdgeNames.ARMHOLE,
                        End.END,
                        fit.back().notchFromUnderarm()));
        Piece sleeve = SleeveShape.draw(fit, cap, length, hem, cloth);
        Garment block = Garment.of(
                "knit top",
                body.wearer(),
                List.of(front, back, sleeve),
                TopSeams.of(CAP_EASE),
                TopMeasures.all(draft.waist().y()));
        List<Amount> amounts = List.of(
                Amount.of("ease", ease.category().label()),
                Amount.of("at the bust", ease.bust()),
                Amount.of("at the upper arm", ease.upperArm()),
                Amount.of("at the neckline", ease.neckline()));
        Reshaped made = new Reshaped(block, notes(body, ease, draft, cap, deepened), List.of());
        return block.recording(Comparison.beginning("draft the knit top", amounts, made));
    }

    private static List<Note> notes(
            BodyMeasurements body, Ease ease, BodyDraft draft, CapFit.Solved cap, double deepened) {
        List<Note> notes = new ArrayList<>();
        Length neck = body.measure(BodyMeasure.NECK_BASE_GIRTH);
        Length arm = body.measure(BodyMeasure.UPPER_ARM_GIRTH);
        notes.add(Note.rule("neckline = neck base girth " + neck.text() + " + ease "
                + ease.neckline().text() + ": solved by a front neck depth of "
                + Length.mm(draft.frontNeckDepth()).text()));
        notes.add(Note.rule("sleeve width = upper arm girth " + arm.text() + " + ease "
                + Length.mm(cap.width() - arm.mm()).text() + ": solved by a cap height of "
                + Length.mm(cap.height()).text()));
        if (deepened > 0) {
            notes.add(Note.done(
                    "the armhole was deepened by " + Length.mm(deepened).text()
                            + ": above that no cap of at least " + LEAST_CAP
                            + " of its depth makes a sleeve as wide as the upper arm and its ease"));
        }
        double asked = arm.mm() + ease.upperArm().mm();
        if (cap.width() > asked + WORTH_SAYING) {
            notes.add(Note.done("the sleeve is "
                    + Length.mm(cap.width() - asked).text()
                    + " wider than asked: no cap higher than " + MOST_CAP
                    + " of the armhole's depth is drawn"));
        }
        for (BodyHalf half : BodyHalf.values()) {
            double in = draft.pitchMovedIn(half);
            if (draft.isShortAtUnderarm() && in > WORTH_SAYING) {
                notes.add(Note.caution(
                        "the " + half.piece() + " is " + Length.mm(in).text()
                                + " narrower across than the body on each side: so little ease at the bust leaves no more room"
                                + " for an armhole"));
            }
        }
        return notes;
    }

    private static void checkRoom(BodyDraft draft, BodyMeasurements body) {
        double least = draft.sideNeck().x() + 2 * ArmholeShape.INSIDE_UNDERARM;
        if (draft.underarm().x() < least) {
            throw PatternException.of(
                    "body of '" + body.name() + "'",
                    "a quarter of the bust girth and its ease must be at least "
                            + Length.mm(least).text() + " to leave room for neck and armhole",
                    Length.mm(draft.underarm().x()).text(),
                    "check the bust girth and the neck base girth, or give more ease at the bust");
        }
    }
}

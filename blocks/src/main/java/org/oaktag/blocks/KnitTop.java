package org.oaktag.blocks;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.Comparison;
import org.oaktag.adjust.Reshaped;
import org.oaktag.block.Block;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * A block for knits: front, back and sleeve without darts.
 *
 * <p>The neckline's depth is solved so that the whole neckline equals the neck base girth and its ease. The sleeve's
 * width comes from the upper arm and its ease, and the height of the cap is solved against the armhole; where that
 * height would leave the {@linkplain CapBand band} of its kind of sleeve, the armhole is drawn deeper or less deep, and
 * the draft says by how much. Where no depth helps, the cap keeps to its band and a caution gives the figures.
 *
 * <pre>{@code
 * Garment block = KnitTop.draft(body, TopEase.standard(), Cloth.knit("brushed knit", percent(35)));
 * }</pre>
 */
public final class KnitTop {

    /** The block as a value, of which a style is made. */
    public static final Block BLOCK = new KnitTopBlock();

    /** How far above the waist the underarm point must lie, in millimetres, for there to be a side seam. */
    private static final double LEAST_ABOVE_WAIST = 40;

    private static final double ROUNDING = 1e-6;

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
        return draft(body, TopAmounts.of(ease).check(body, cloth), cloth);
    }

    /**
     * Returns the allowances that makers of knits leave on a top (common practice): 10 mm on seams; 6 mm on a neckline,
     * on whatever is sewn to it and on what is sewn to that; 25 mm on a hem that is turned up, its ends folded back,
     * and on the opening of a pouch or a pocket, its ends square. What runs on from a neckline or a hem, as the other
     * half of a piece unfolded or the extension of a vent does, has the same. A hem that is sewn to a band is a seam.
     * The slash of a gusset is cut open, and interfacing fused, and so they have no allowance.
     */
    public static Allowances allowances(Garment garment) {
        return KnitAllowances.of(garment);
    }

    private static Garment draft(BodyMeasurements body, TopAmounts ease, Cloth cloth) {
        double width =
                body.measure(BodyMeasure.UPPER_ARM_GIRTH).mm() + ease.upperArm().mm();
        ArmholeDepth usual = ArmholeDepth.of(ease);
        BodyDraft asked = BodyDraft.of(body, ease, usual.asked());
        checkRoom(asked, body);
        ArmholeDepth depth = usual.upTo(usual.asked() + aboveWaist(asked) - LEAST_ABOVE_WAIST);
        checkLevels(depth.asked() == usual.asked() ? asked : asked.at(body, ease, depth.asked()), body);
        SleeveDraft sleeve = SleeveDraft.of(tried -> asked.at(body, ease, tried), depth, width);
        return assemble(body, ease, cloth, sleeve);
    }

    private static Garment assemble(BodyMeasurements body, TopAmounts ease, Cloth cloth, SleeveDraft drafted) {
        BodyDraft draft = drafted.body();
        CapFit fit = drafted.fit();
        double length = body.measure(BodyMeasure.ARM_LENGTH).mm() - draft.shoulderBeyond();
        double hem = Math.min(
                body.measure(BodyMeasure.WRIST_GIRTH).mm() + ease.wrist().mm(),
                drafted.cap().width());
        Piece front = draft.draw(BodyHalf.FRONT, cloth)
                .withNotch(Notch.single(
                        TopNames.FRONT_NOTCH,
                        TopEdges.ARMHOLE,
                        End.END,
                        fit.front().notchFromUnderarm()));
        Piece back = draft.draw(BodyHalf.BACK, cloth)
                .withNotch(Notch.paired(
                        TopNames.BACK_NOTCH,
                        TopEdges.ARMHOLE,
                        End.END,
                        fit.back().notchFromUnderarm()));
        Piece sleeve = SleeveShape.draw(fit, drafted.cap(), length, hem, cloth);
        Garment block = Garment.of(
                        BLOCK.name().value(),
                        body.wearer(),
                        List.of(front, back, sleeve),
                        TopSeams.of(SleeveDraft.capEase()),
                        TopMeasures.all(draft.waist().y()))
                .withChecks(TopChecks.ofBlock())
                .withFlat(new FlatTop());
        List<Amount> amounts = List.of(
                Amount.of("ease", ease.category().label()),
                Amount.of("at the bust", ease.bust()),
                Amount.of("at the upper arm", ease.upperArm()),
                Amount.of("at the neckline", ease.neckline()));
        Reshaped made = new Reshaped(block, DraftNotes.of(body, ease, drafted), List.of());
        return block.recording(() -> Comparison.beginning("draft the knit top", amounts, made));
    }

    private static void checkRoom(BodyDraft draft, BodyMeasurements body) {
        double least = draft.sideNeck().x() + 2 * ArmholeShape.LEAST_RUN;
        if (draft.underarm().x() < least) {
            throw PatternException.of(
                    "body of '" + body.name() + "'",
                    "a quarter of the bust girth and its ease must be at least "
                            + Length.mm(least).text() + " to leave room for neck and armhole",
                    Length.mm(draft.underarm().x()).text(),
                    "check the bust girth and the neck base girth, or give more ease at the bust");
        }
    }

    private static double aboveWaist(BodyDraft draft) {
        return draft.waist().y() - draft.underarm().y();
    }

    private static void checkLevels(BodyDraft draft, BodyMeasurements body) {
        double room = aboveWaist(draft);
        if (room < LEAST_ABOVE_WAIST - ROUNDING) {
            throw PatternException.of(
                    "armhole of '" + body.name() + "'",
                    "its underarm point must lie at least "
                            + Length.mm(LEAST_ABOVE_WAIST).text() + " above the waist, which lies "
                            + Length.mm(draft.waist().y()).text() + " below the side neck point",
                    Length.mm(draft.underarm().y()).text() + " below the side neck point",
                    "give a scye depth ease of "
                            + Length.mm(draft.depth() + room - LEAST_ABOVE_WAIST)
                                    .roundedDown()
                                    .text()
                            + " at the most, or check back waist length and nape to armpit");
        }
    }
}

package org.oaktag.adjustments;

import static org.oaktag.blocks.TopNames.BACK;
import static org.oaktag.blocks.TopNames.FRONT;

import org.oaktag.adjust.EaseDart;
import org.oaktag.adjust.MoveDart;
import org.oaktag.adjust.OpenDart;
import org.oaktag.adjust.SlashAndSpread;
import org.oaktag.adjust.SplitPiece;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.TrueDartFold;

/**
 * Every kind of step that comes with the library, a line for each, with what is usual for its amounts (common practice
 * of the trade, signs as in the step's own words: negative to narrow, raise or shorten).
 */
public final class KnownSteps {

    private KnownSteps() {}

    /** Returns the catalogue of these kinds; add kinds of your own with {@link StepCatalogue#with}. */
    public static StepCatalogue catalogue() {
        return StepCatalogue.of(
                kind(WidenNeckline.class).usually("along", -10, 40),
                kind(LowerNeckline.class).among("piece", FRONT, BACK).usually("by", -10, 60),
                kind(ReshapeNeckline.class).among("piece", FRONT, BACK),
                kind(BoatNeckline.class).usually("shoulder", 30, 80).usually("depth", 20, 50),
                kind(GrowStand.class).usually("height", 30, 90),
                kind(InsetNeckline.class).usually("width", 10, 40),
                kind(DropShoulder.class).usually("by", -15, 60).usually("bend", 0, 30),
                kind(ExtendShoulder.class).usually("by", -15, 30),
                kind(SlopeShoulder.class).usually("down", -10, 15),
                kind(TurnShoulder.class).usually("down", -5, 5),
                kind(MoveShoulderSeam.class).usually("forward", -15, 25),
                kind(LowerArmhole.class).usually("by", -10, 40),
                kind(ScoopArmhole.class).usually("by", -5, 12),
                kind(WidenArmhole.class).usually("out", -10, 30),
                kind(StraightenSideSeams.class),
                kind(BoxSides.class),
                kind(FlareSides.class).usually("out", -40, 80),
                kind(ShapeWaist.class).usually("in", -30, 40),
                kind(LengthenBody.class).usually("by", -60, 250),
                kind(LengthenAtLine.class).usually("by", -20, 60),
                kind(HighLowHem.class).usually("front up", 0, 60).usually("back down", 0, 80),
                kind(CurveHem.class).usually("rise", 10, 80),
                kind(CutVent.class).usually("height", 60, 180).usually("width", 20, 40),
                kind(FitCap.class).usually("ease", 0, 20).usually("height", 80, 180),
                kind(StraightenSleeve.class),
                kind(SplitSleeve.class).usually("above hem", 120, 180).usually("below stretch", 15, 80),
                kind(HemBand.class)
                        .usually("depth", 30, 90)
                        .usually("lap", 0, 50)
                        .usually("cloth stretch", 15, 80),
                kind(RibCuff.class)
                        .usually("depth", 40, 110)
                        .usually("rib stretch", 40, 120)
                        .usually("girth", 180, 240),
                kind(FitHood.class)
                        .usually("shape strip width", 60, 130)
                        .usually("shape height", 300, 420)
                        .usually("shape depth", 200, 280)
                        .usually("shape rise", 20, 50)
                        .usually("lap", 0, 80),
                kind(LineHood.class).usually("facing", 25, 60).usually("cloth stretch", 15, 80),
                kind(SlashAndSpread.class),
                kind(SplitPiece.class),
                kind(OpenDart.class).usually("width", 10, 40).usually("depth", 60, 140),
                kind(MoveDart.class).usually("share", 0, 1),
                kind(EaseDart.class),
                kind(TrueDartFold.class));
    }

    private static StepKind kind(Class<? extends Step> step) {
        return StepKind.of(step);
    }
}

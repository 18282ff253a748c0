package org.oaktag.adjustments;

import static org.oaktag.blocks.TopNames.BACK;
import static org.oaktag.blocks.TopNames.FRONT;
import static org.oaktag.blocks.TopNames.SHOULDER_SEAM;
import static org.oaktag.blocks.TopNames.SIDE_SEAM;
import static org.oaktag.blocks.TopNames.SLEEVE;
import static org.oaktag.blocks.TopNames.SLEEVE_SEAM;

import java.util.List;
import java.util.stream.Stream;
import org.oaktag.adjust.GeneralSteps;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.TopEdges;
import org.oaktag.garment.EdgeNames;

/**
 * Every kind of step for a top, and every general one, a line for each, with what is usual for its amounts (common
 * practice of the trade, signs as in the step's own words: negative to narrow, raise or shorten).
 *
 * <pre>{@code
 * StepCatalogue all = TopSteps.catalogue();
 * all.kinds().stream().map(StepKind::name).toList();   // "widen neckline", "lower armhole" ...
 * }</pre>
 */
public final class TopSteps {

    private static final List<StepKind> OWN = List.of(
            kind(WidenNeckline.class).usually("along", -10, 40),
            kind(LowerNeckline.class).among("piece", FRONT, BACK).usually("by", -10, 60),
            kind(ReshapeNeckline.class).among("piece", FRONT, BACK),
            kind(BoatNeckline.class).usually("shoulder", 30, 80).usually("depth", 30, 60),
            kind(GrowStand.class).usually("height", 30, 90),
            kind(InsetNeckline.class).usually("width", 10, 40),
            kind(DropShoulder.class).usually("by", -15, 40).usually("bend", 0, 30),
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
            kind(SplitBody.class).usually("above hem", 150, 300).usually("below stretch", 15, 80),
            kind(CurveHem.class).usually("rise", 10, 80),
            kind(CutVent.class).usually("height", 60, 180).usually("width", 20, 40),
            kind(FitCap.class).usually("ease", 0, 20).usually("height", 80, 180),
            kind(RaiseCap.class).usually("by", -30, 20),
            kind(PuffCap.class).usually("ratio", 1.1, 1.8).usually("height", 10, 40),
            kind(WidenSleeve.class).usually("by", -20, 60),
            kind(SlashSleeve.class)
                    .usually("by", 10, 80)
                    .among("on cap edge", TopEdges.CAP_FRONT, TopEdges.CAP_BACK)
                    .usually("on cap share", 0, 0.6)
                    .usually("on cap further", 0, 20)
                    .among("on hem edge", EdgeNames.HEM)
                    .usually("on hem share", 0.25, 0.75)
                    .usually("on hem further", 0, 10),
            kind(StraightenSleeve.class).usually("hem", 220, 340),
            kind(ShapeSleeveHem.class).usually("hem", 200, 420).usually("flare from", 100, 400),
            kind(PuffHem.class)
                    .usually("ratio", 1.2, 2)
                    .usually("cuff depth", 40, 110)
                    .usually("cuff rib stretch", 40, 120)
                    .usually("cuff girth", 180, 240),
            kind(LengthenSleeve.class).usually("by", -80, 60),
            kind(GrowSleeve.class)
                    .usually("below", 10, 80)
                    .usually("bend", 15, 40)
                    .usually("gusset", 60, 140),
            kind(Raglan.class)
                    .usually("on front", 20, 60)
                    .usually("on back", 15, 45)
                    .usually("gusset", 60, 140),
            kind(CutSleeve.class).usually("share", 0.2, 0.8).usually("further", -20, 20),
            kind(SplitSleeve.class).usually("above hem", 120, 180).usually("below stretch", 15, 80),
            kind(HemBand.class).usually("depth", 30, 90).usually("lap", 0, 50).usually("cloth stretch", 15, 80),
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
            kind(FaceNeckline.class).usually("width", 40, 80).usually("cloth stretch", 15, 80),
            kind(LineBody.class).usually("pleat", 0, 25).usually("cloth stretch", 15, 80),
            kind(RibNeckband.class).usually("depth", 12, 40).usually("rib stretch", 40, 120),
            kind(InterfacePiece.class).among("piece", FRONT, BACK).usually("cloth stretch", 0, 30),
            kind(FrontPouch.class)
                    .usually("width", 280, 380)
                    .usually("height", 170, 230)
                    .usually("above hem", 0, 40)
                    .usually("off sides", 20, 60)
                    .usually("cloth stretch", 15, 80),
            kind(PatchPocket.class)
                    .usually("width", 90, 150)
                    .usually("height", 100, 180)
                    .usually("from centre", 20, 80)
                    .usually("below side neck", 180, 320)
                    .usually("cloth stretch", 15, 80),
            kind(LineHood.class).usually("facing", 25, 60).usually("cloth stretch", 15, 80));

    private TopSteps() {}

    /** Returns the catalogue of these kinds; add kinds of your own with {@link StepCatalogue#with}. */
    public static StepCatalogue catalogue() {
        return new StepCatalogue(Stream.concat(
                        OWN.stream(), GeneralSteps.catalogue().kinds().stream().map(TopSteps::ofTop))
                .toList());
    }

    private static StepKind ofTop(StepKind general) {
        return switch (general.name()) {
            case "cut from", "mirror piece" -> general.among("piece", FRONT, BACK, SLEEVE);
            case "unfold piece" -> general.among("piece", FRONT, BACK);
            case "true corner" -> general.among("seam", SHOULDER_SEAM, SIDE_SEAM, SLEEVE_SEAM);
            default -> general;
        };
    }

    private static StepKind kind(Class<? extends Step> step) {
        return StepKind.of(step);
    }
}

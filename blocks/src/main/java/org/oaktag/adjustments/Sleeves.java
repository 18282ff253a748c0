package org.oaktag.adjustments;

import java.util.Optional;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.TopEdges;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Adjustments of the sleeve and its cap.
 *
 * <pre>{@code
 * block.adjust(lowerArmhole(mm(12)))
 *         .adjust(fitCapToArmhole(mm(6)))
 *         .adjust(straightenSleeve())
 *         .adjust(splitSleeve(cm(14), contrast));
 * }</pre>
 */
public final class Sleeves {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(FitCap.class).usually("ease", 0, 20).usually("height", 80, 180),
            StepKind.of(RaiseCap.class).usually("by", -30, 20),
            StepKind.of(PuffCap.class).usually("ratio", 1.1, 1.8).usually("height", 10, 40),
            StepKind.of(WidenSleeve.class).usually("by", -20, 60),
            StepKind.of(SlashSleeve.class)
                    .usually("by", 10, 80)
                    .among("on cap edge", TopEdges.CAP_FRONT, TopEdges.CAP_BACK)
                    .usually("on cap share", 0, 0.6)
                    .usually("on cap further", 0, 20)
                    .among("on hem edge", EdgeNames.HEM)
                    .usually("on hem share", 0.25, 0.75)
                    .usually("on hem further", 0, 10),
            StepKind.of(StraightenSleeve.class).usually("hem", 220, 340),
            StepKind.of(ShapeSleeveHem.class).usually("hem", 200, 420).usually("flare from", 100, 400),
            StepKind.of(PuffHem.class)
                    .usually("ratio", 1.2, 2)
                    .usually("cuff depth", 40, 110)
                    .usually("cuff rib stretch", 40, 120)
                    .usually("cuff girth", 180, 240),
            StepKind.of(LengthenSleeve.class).usually("by", -80, 60),
            StepKind.of(GrowSleeve.class)
                    .usually("below", 10, 80)
                    .usually("bend", 15, 40)
                    .usually("gusset", 60, 140),
            StepKind.of(Raglan.class)
                    .usually("on front", 20, 60)
                    .usually("on back", 15, 45)
                    .usually("gusset", 60, 140),
            StepKind.of(LeaveOutSleeves.class),
            StepKind.of(CutSleeve.class).usually("share", 0.2, 0.8).usually("further", -20, 20),
            StepKind.of(SplitSleeve.class).usually("above hem", 120, 180).usually("below stretch", 15, 80));

    private Sleeves() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /**
     * Fits the cap to the armhole at the height that it has; {@link FitCap#atHeight} asks for another.
     *
     * @param ease by how much the cap is longer than the armhole; 0 to 20 mm for knits (common practice)
     */
    public static CapStep fitCapToArmhole(Length ease) {
        return new FitCap(ease, Optional.empty());
    }

    /** Draws the sleeve straight down from its underarm points. */
    public static Step straightenSleeve() {
        return new StraightenSleeve(Optional.empty());
    }

    /**
     * Draws the sleeve straight from its underarm points to a hem of this length.
     *
     * @param hem how long the hem shall be; up to one and a half times the cuff in heavy cloth (common practice)
     */
    public static Step straightenSleeve(Length hem) {
        return new StraightenSleeve(Optional.of(hem));
    }

    /**
     * Splits the sleeve along a level style line and cuts what lies below it from another cloth.
     *
     * @param aboveHem how far above the hem the line lies; 12 to 18 cm (common practice)
     * @param below the cloth below it
     */
    public static Step splitSleeve(Length aboveHem, Cloth below) {
        return new SplitSleeve(aboveHem, below);
    }

    /** Raises the cap at its length: the sleeve becomes narrower. */
    public static Step raiseCap(Length by) {
        return new RaiseCap(by);
    }

    /** Lowers the cap at its length: the sleeve becomes wider. */
    public static Step lowerCap(Length by) {
        return new RaiseCap(by.negated());
    }

    /** Adds to the upper arm; the cap keeps its length and becomes lower. */
    public static Step addToUpperArm(Length by) {
        return new WidenSleeve(by);
    }

    /** Slashes the sleeve from the top of the cap straight down to the hem and spreads it parallel. */
    public static SlashSleeve spreadSleeve(Length by) {
        return SlashSleeve.atTheMiddle(by, SlashSleeve.Hinge.NONE);
    }

    /** Slashes the sleeve from the top of the cap straight down to the hem and opens it at the cap. */
    public static SlashSleeve spreadSleeveAtCap(Length by) {
        return SlashSleeve.atTheMiddle(by, SlashSleeve.Hinge.HEM);
    }

    /** Slashes the sleeve from the top of the cap straight down to the hem and opens it at the hem. */
    public static SlashSleeve spreadSleeveAtHem(Length by) {
        return SlashSleeve.atTheMiddle(by, SlashSleeve.Hinge.CAP);
    }

    /** Tapers the sleeve to a hem of this length; one wider than the sleeve flares. */
    public static Step taperSleeve(Length hem) {
        return new ShapeSleeveHem(hem, Optional.empty());
    }

    /**
     * Flares the sleeve into a bell with a hem of this length; {@link ShapeSleeveHem#from} begins the flare further
     * down.
     */
    public static ShapeSleeveHem bellSleeve(Length hem) {
        return new ShapeSleeveHem(hem, Optional.empty());
    }

    /**
     * Gathers the cap; {@link PuffCap#atHeight} makes the puff stand up.
     *
     * @param ratio how many times as long as the armhole the cap is; 1.3 to 2 (common practice)
     */
    public static CapStep puffCap(double ratio) {
        return new PuffCap(ratio, Optional.empty());
    }

    /**
     * Widens the hem and gathers it onto a cuff.
     *
     * @param ratio how many times as long as the cuff the hem is; 1.3 to 2.5 (common practice)
     * @param cuff the cuff, as {@link Bands#ribCuff} makes it
     */
    public static Step puffHem(double ratio, RibCuff cuff) {
        return new PuffHem(ratio, cuff);
    }

    /** Lengthens the sleeve; its hem keeps its width. */
    public static Step lengthenSleeve(Length by) {
        return new LengthenSleeve(by);
    }

    /** Shortens the sleeve; its hem keeps its width. */
    public static Step shortenSleeve(Length by) {
        return new LengthenSleeve(by.negated());
    }

    /** Cuts the sleeve off at a length from the top of its cap. */
    public static Step cutSleeve(Length length) {
        return new CutSleeve(0, length);
    }

    /** Cuts the sleeve off at three quarters of its length. */
    public static Step threeQuarterSleeve() {
        return new CutSleeve(0.75, Length.ZERO);
    }

    /** Cuts the sleeve off at two fifths of its length (common practice), between underarm and elbow. */
    public static Step shortSleeve() {
        return new CutSleeve(0.4, Length.ZERO);
    }

    /**
     * Grows the sleeve on as a kimono sleeve, with a curve that ends 60 mm below the underarm point;
     * {@link GrowSleeve#withGusset} lets a gusset in instead.
     */
    public static GrowSleeve kimonoSleeve() {
        return new GrowSleeve(Length.mm(60), Angle.degrees(0), Optional.empty());
    }

    /** Grows the sleeve on as a batwing, with a curve that ends so far below the underarm point; 150 to 250 mm. */
    public static GrowSleeve batwingSleeve(Length below) {
        return new GrowSleeve(below, Angle.degrees(0), Optional.empty());
    }

    /** Makes a raglan whose lines begin 30 mm from the shoulder on the front neckline and 20 mm on the back. */
    public static Raglan raglanSleeve() {
        return raglanSleeve(Length.mm(30), Length.mm(20));
    }

    /**
     * Makes a raglan; {@link Raglan#withGusset} lets a gusset in under the arm.
     *
     * @param onFront how far from the shoulder seam the line begins on the front neckline
     * @param onBack how far from the shoulder seam it begins on the back neckline
     */
    public static Raglan raglanSleeve(Length onFront, Length onBack) {
        return new Raglan(onFront, onBack, Optional.empty());
    }

    /** Leaves out the sleeves that are set in; the armholes are raw until they are banded, faced or turned back. */
    public static Step sleeveless() {
        return new LeaveOutSleeves();
    }
}

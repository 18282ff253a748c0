package org.oaktag.examples;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.adjust.Recipe;
import org.oaktag.adjustments.FitHood;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;

/**
 * The warm hooded layer of the night crew: a knit top block and the steps that make the garment of it.
 *
 * <p>Change an amount here, run the main job again, and see what it does to every seam.
 */
public final class HoodedTop {

    private static final Cloth NIGHT_BLUE = Cloth.knit("brushed stretch knit, night blue", percent(50));
    private static final Cloth RUST =
            Cloth.knit("brushed stretch knit, rust", percent(50)).as(Cloth.CONTRAST);
    private static final Cloth MIST =
            Cloth.knit("light jersey, mist", percent(50)).as(Cloth.LINING);
    private static final Cloth RIB = Cloth.rib("ribbed knit, rust", percent(80));

    private HoodedTop() {}

    /**
     * Drafts the block for a body.
     *
     * @throws org.oaktag.PatternException if the measures allow no block
     */
    public static Garment block(BodyMeasurements body) {
        return KnitTop.draft(body, Ease.standard(), NIGHT_BLUE);
    }

    /**
     * Returns the steps from the block to the hooded top.
     *
     * @param drawstring whether the hood gets eyelets for a cord; refused for a child
     */
    public static Recipe recipe(boolean drawstring) {
        FitHood hood = hood(HoodShape.threePanel()).lapped(cm(5));
        return Recipe.of(
                "hooded top for the night crew",
                widenNeckline(mm(10)),
                dropShoulder(mm(25)),
                lowerArmhole(mm(12)),
                straightenSideSeams(),
                lengthenBody(mm(40)),
                fitCapToArmhole(mm(8)),
                straightenSleeve(),
                splitSleeve(cm(14), RUST),
                hemBand(cm(6), cm(5)),
                ribCuff(cm(6), RIB),
                drawstring ? hood.withDrawstring() : hood,
                lineHood(cm(4), MIST));
    }
}

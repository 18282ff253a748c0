package org.oaktag.examples;

import static org.oaktag.adjust.Pieces.notchSeams;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Finishes.frontPouch;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.garment.Cloth.Weight.HEAVY;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.adjust.Recipe;
import org.oaktag.adjustments.FitHood;
import org.oaktag.block.Style;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.lay.Spread;

/**
 * The warm layer of the night crew: a hooded top to be worn over a shirt in an unheated dome.
 *
 * <p>This file is made to be changed: alter an amount, run the main job again, and see what moves.
 */
public final class HoodedTop {

    private static final Cloth SHELL =
            Cloth.knit("brushed fleece, night blue", percent(45)).weighing(HEAVY);
    private static final Cloth CONTRAST =
            Cloth.knit("brushed fleece, amber", percent(45)).weighing(HEAVY).as(Cloth.CONTRAST);
    private static final Cloth LINING = Cloth.knit("single jersey, cream", percent(60));
    private static final Cloth RIB = Cloth.rib("2 x 2 rib, dark blue", percent(90));

    private HoodedTop() {}

    /** Returns the top as a style: its block, ease, cloth and steps, the hood without a cord. */
    public static Style style() {
        return new Style(KnitTop.BLOCK, TopEase.standard(), SHELL, recipe(false));
    }

    /**
     * Returns the basic block of a body.
     *
     * @throws org.oaktag.PatternException if the measures allow no block
     */
    public static Garment block(BodyMeasurements body) {
        return style().draft(body);
    }

    /**
     * Returns the steps from the block to the top.
     *
     * @param drawstring whether the hood gets eyelets for a cord; refused for a child
     */
    public static Recipe recipe(boolean drawstring) {
        FitHood hood = hood(HoodShape.threePanel()).lapped(cm(5));
        return Recipe.of(
                "night crew hooded top",
                widenNeckline(mm(22)),
                lowerFrontNeckline(mm(30)),
                dropShoulder(mm(25)),
                lowerArmhole(mm(12)),
                straightenSideSeams(),
                lengthenBody(cm(4)),
                fitCapToArmhole(mm(6)),
                straightenSleeve(cm(23.2)),
                ribCuff(cm(7), RIB),
                splitSleeve(cm(7), CONTRAST),
                frontPouch(cm(34), cm(23)).keptOffSides(cm(4)),
                hemBand(cm(6), cm(3)).cutFrom(CONTRAST),
                drawstring ? hood.withDrawstring() : hood,
                lineHood(cm(4), LINING),
                notchSeams());
    }

    /**
     * Returns how one of its cloths is sold and spread: the fleece 150 cm wide and with a pile that lies one way, the
     * jersey washed before it is cut, the rib 100 cm wide.
     */
    public static Spread spread(Cloth cloth) {
        if (cloth.use().equals(Cloth.LINING)) {
            return Spread.single(cm(150)).shrinking(percent(5), percent(3));
        }
        return cloth.use().equals(Cloth.RIB)
                ? Spread.single(cm(100))
                : Spread.single(cm(150)).withNap();
    }
}

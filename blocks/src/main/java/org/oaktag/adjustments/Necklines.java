package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.NeckStyle;
import org.oaktag.blocks.TopNames;
import org.oaktag.measure.Length;

/**
 * Adjustments of the neckline.
 *
 * <pre>{@code
 * block.adjust(widenNeckline(mm(8)))
 *         .adjust(lowerFrontNeckline(mm(20)))
 *         .adjust(reshapeNeckline(NeckStyle.V));
 * }</pre>
 */
public final class Necklines {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(WidenNeckline.class).usually("along", -10, 40),
            StepKind.of(LowerNeckline.class)
                    .among("piece", TopNames.FRONT, TopNames.BACK)
                    .usually("by", -10, 60),
            StepKind.of(ReshapeNeckline.class).among("piece", TopNames.FRONT, TopNames.BACK),
            StepKind.of(BoatNeckline.class).usually("shoulder", 30, 80).usually("depth", 30, 60),
            StepKind.of(GrowStand.class).usually("height", 30, 90),
            StepKind.of(InsetNeckline.class).usually("width", 10, 40));

    private Necklines() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /**
     * Widens the neckline of front and back along the shoulder.
     *
     * @param along how far the side neck point moves along the shoulder; 5 to 10 mm for a layer (common practice)
     */
    public static Step widenNeckline(Length along) {
        return new WidenNeckline(along);
    }

    /**
     * Narrows the neckline of front and back along the shoulder.
     *
     * @param along how far the side neck point moves back
     */
    public static Step narrowNeckline(Length along) {
        return new WidenNeckline(along.negated());
    }

    /** Lowers the neckline at centre front. */
    public static Step lowerFrontNeckline(Length by) {
        return new LowerNeckline(TopNames.FRONT, by);
    }

    /** Raises the neckline at centre front. */
    public static Step raiseFrontNeckline(Length by) {
        return new LowerNeckline(TopNames.FRONT, by.negated());
    }

    /** Lowers the neckline at centre back. */
    public static Step lowerBackNeckline(Length by) {
        return new LowerNeckline(TopNames.BACK, by);
    }

    /** Raises the neckline at centre back. */
    public static Step raiseBackNeckline(Length by) {
        return new LowerNeckline(TopNames.BACK, by.negated());
    }

    /** Draws the front neckline in another style between the points that it has; widen and lower it as you like. */
    public static Step reshapeNeckline(NeckStyle style) {
        return new ReshapeNeckline(TopNames.FRONT, style);
    }

    /** Draws the back neckline in another style between the points that it has. */
    public static Step reshapeBackNeckline(NeckStyle style) {
        return new ReshapeNeckline(TopNames.BACK, style);
    }

    /**
     * Draws a boat neckline, front and back.
     *
     * @param shoulder how much of the shoulder seam is left
     * @param depth how deep the front lies below the new side neck point
     */
    public static Step boatNeckline(Length shoulder, Length depth) {
        return new BoatNeckline(shoulder, depth);
    }

    /**
     * Grows a stand on to front and back, as for a funnel neck; widen the neckline before it.
     *
     * @param height how high it is above the side neck point
     */
    public static Step growStand(Length height) {
        return new GrowStand(height);
    }

    /**
     * Moves the seam line of the neckline in, so that the finished edge of a band lies where the neckline is now.
     *
     * @param finishedWidth the finished width of the band
     */
    public static Step insetNecklineForBand(Length finishedWidth) {
        return new InsetNeckline(finishedWidth);
    }
}

package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.blocks.HoodShape;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

/**
 * Steps that put a hood on a top.
 *
 * <pre>{@code
 * top.adjust(hood(HoodShape.threePanel()).lapped(cm(5)))
 *         .adjust(lineHood(cm(4), lining));
 * block.adjust(hood(HoodShape.twoPiece()));
 * }</pre>
 */
public final class Hoods {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(FitHood.class)
                    .usually("shape strip width", 60, 130)
                    .usually("shape height", 300, 420)
                    .usually("shape depth", 200, 280)
                    .usually("shape rise", 20, 50)
                    .usually("lap", 0, 80),
            StepKind.of(LineHood.class).usually("facing", 25, 60).usually("cloth stretch", 15, 80));

    private Hoods() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /**
     * Returns the step that fits a hood of this shape to the neckline, edge to edge at centre front, without a cord.
     */
    public static FitHood hood(HoodShape shape) {
        return new FitHood(shape, Length.ZERO, false);
    }

    /**
     * Returns the step that lines the hood and gives its shell a facing, cut on at the face.
     *
     * @param facing how wide the facing is
     * @param cloth what the lining is cut from
     * @throws org.oaktag.PatternException if the facing is narrower than 15 mm
     */
    public static Step lineHood(Length facing, Cloth cloth) {
        return new LineHood(facing, cloth);
    }
}

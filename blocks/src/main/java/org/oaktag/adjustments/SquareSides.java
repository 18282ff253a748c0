package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;

/**
 * Draws the side seams upright from the underarm points, as for a box: the hem is as wide as the chest.
 *
 * <pre>{@code
 * Garment box = block.adjust(squareSideSeams());   // straight down from the underarm point
 * }</pre>
 *
 * @param sleeveFollows whether the cap is fitted to the new armhole in the same step
 */
record SquareSides(boolean sleeveFollows) implements BodyStep {

    @Override
    public BodyStep withSleeve() {
        return new SquareSides(true);
    }

    @Override
    public String name() {
        return "square the side seams";
    }

    @Override
    public List<Amount> amounts() {
        return SleeveFollows.amounts(sleeveFollows);
    }

    @Override
    public Reshaped reshape(Garment garment) {
        StraightSides.checkUnderarms(garment);
        return StraightSides.drawn(
                garment,
                garment.piece(TopNames.FRONT).corner(EdgeNames.SIDE, End.START).x(),
                sleeveFollows);
    }
}

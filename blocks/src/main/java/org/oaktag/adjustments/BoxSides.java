package org.oaktag.adjustments;

import java.util.List;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;

/**
 * Draws the side seams upright from the underarm points, as for a box: the hem is as wide as the chest.
 *
 * <pre>{@code
 * Garment box = block.adjust(boxSideSeams());   // straight down from the underarm point
 * }</pre>
 */
public record BoxSides() implements Step {

    @Override
    public String name() {
        return "box the side seams";
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    @Override
    public Reshaped reshape(Garment garment) {
        StraightSides.checkUnderarms(garment);
        return StraightSides.drawn(
                garment,
                garment.piece(TopNames.FRONT).corner(EdgeNames.SIDE, End.START).x());
    }
}

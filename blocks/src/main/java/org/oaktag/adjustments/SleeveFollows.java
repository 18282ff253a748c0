package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Dimension;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.SeamRule;
import org.oaktag.measure.Length;

/**
 * What a step that changes the armhole does when the sleeve is to follow: the cap is fitted anew, with the ease that it
 * has.
 */
final class SleeveFollows {

    private SleeveFollows() {}

    static List<Amount> amounts(boolean follows, Amount... own) {
        List<Amount> amounts = new ArrayList<>(List.of(own));
        if (follows) {
            amounts.add(Amount.of("sleeve", "follows"));
        }
        return amounts;
    }

    /**
     * Fits the cap to what the step made of the armhole, where the sleeve is to follow; else it stays and its seams
     * tell.
     *
     * @throws org.oaktag.PatternException if no cap fits it, or the garment has no sleeve
     */
    static Reshaped after(Reshaped step, boolean follows) {
        return follows ? fitted(step) : step;
    }

    private static Reshaped fitted(Reshaped step) {
        Garment garment = step.garment();
        Length ease = ease(garment, TopNames.FRONT_ARMHOLE_SEAM).plus(ease(garment, TopNames.BACK_ARMHOLE_SEAM));
        Reshaped fitted = new FitCap(ease, Optional.empty()).reshape(garment);
        List<Note> notes = new ArrayList<>(step.notes());
        notes.addAll(fitted.notes());
        List<Dimension> dimensions = new ArrayList<>(step.dimensions());
        dimensions.addAll(fitted.dimensions());
        return new Reshaped(fitted.garment(), notes, dimensions);
    }

    private static Length ease(Garment garment, Name seam) {
        return garment.seam(seam).rule() instanceof SeamRule.Eased eased ? eased.least() : Length.ZERO;
    }
}

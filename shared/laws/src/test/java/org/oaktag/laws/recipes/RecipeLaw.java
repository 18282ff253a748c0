package org.oaktag.laws.recipes;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Garment;
import org.oaktag.testkit.laws.StepLaws;

/**
 * What holds of a garment after every step of any recipe: each seam is true or named with what mends it, no outline
 * crosses itself, and the history is what a measurement of before and after finds. A step that cannot be done is
 * refused with its reason and leaves everything as it was.
 */
final class RecipeLaw {

    private final Tally refusals = new Tally();
    private int done;

    /** Plays the steps one after another, a refused one left out, and checks what each did. */
    Garment check(Garment block, List<Step> steps) {
        StepLaws laws = new StepLaws();
        Garment garment = block;
        for (Step step : steps) {
            try {
                garment = laws.assertKept(garment, step);
                done++;
            } catch (PatternException refused) {
                Told.assertReadable(refused);
                refusals.count(step.getClass().getSimpleName() + ": " + refused.rule(), refused.toString());
            }
        }
        laws.assertAddsUp(block, garment);
        return garment;
    }

    int done() {
        return done;
    }

    /** Returns how often steps were refused, by kind and rule. */
    Tally refusals() {
        return refusals;
    }
}

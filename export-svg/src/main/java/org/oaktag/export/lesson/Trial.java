package org.oaktag.export.lesson;

import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Garment;

/**
 * A step that is tried on a garment. Immutable.
 *
 * <pre>{@code
 * Recipe.Played played = new Trial(block, widenNeckline(mm(8))).played();
 * played.after().finished(NECKLINE_GIRTH).minus(played.before().finished(NECKLINE_GIRTH));
 * }</pre>
 *
 * @param before the garment before it
 * @param step the step
 */
public record Trial(Garment before, Step step) {

    /**
     * Plays the step.
     *
     * @throws org.oaktag.PatternException if it cannot be done
     */
    public Recipe.Played played() {
        return new Recipe.Played(step, before, before.adjust(step));
    }
}

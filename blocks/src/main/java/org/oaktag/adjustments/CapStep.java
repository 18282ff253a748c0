package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.measure.Length;

/**
 * A step that draws the cap of the sleeve anew, as high as its armhole asks for or as high as the maker wants it.
 *
 * <pre>{@code
 * Garment flat = block.adjust(fitCapToArmhole(mm(4)).atHeight(mm(110)));   // the width follows
 * }</pre>
 */
public interface CapStep extends Step {

    /** Returns the step that draws a cap of this height, from its top straight down to the underarm points. */
    CapStep atHeight(Length wanted);
}

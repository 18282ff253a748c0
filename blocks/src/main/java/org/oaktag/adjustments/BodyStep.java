package org.oaktag.adjustments;

import org.oaktag.adjust.Step;

/**
 * A step on the body of a top that moves its armhole, and can take the sleeve with it.
 *
 * <pre>{@code
 * Garment roomier = block.adjust(lowerArmhole(mm(20)).withSleeve());   // the cap is fitted to the lower armhole
 * }</pre>
 */
public interface BodyStep extends Step {

    /** Returns the step with a cap that is fitted to the new armhole, with the ease that it has. */
    BodyStep withSleeve();
}

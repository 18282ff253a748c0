package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.measure.Length;

/** Adjustments of the body of a top: its side seams and its length. */
public final class Bodies {

    private Bodies() {}

    /** Draws the side seams straight, the front copied to the back. */
    public static Step straightenSideSeams() {
        return new StraightenSideSeams();
    }

    /** Lengthens front and back at the hem. */
    public static Step lengthenBody(Length by) {
        return new LengthenBody(by);
    }

    /** Shortens front and back at the hem. */
    public static Step shortenBody(Length by) {
        return new LengthenBody(by.negated());
    }
}

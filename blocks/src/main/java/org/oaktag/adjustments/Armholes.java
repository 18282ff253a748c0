package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.measure.Length;

/** Adjustments of the armhole. */
public final class Armholes {

    private Armholes() {}

    /** Lowers the armholes of front and back; 6 to 15 mm for a looser layer (common practice). */
    public static Step lowerArmhole(Length by) {
        return new LowerArmhole(by);
    }

    /** Raises the armholes of front and back. */
    public static Step raiseArmhole(Length by) {
        return new LowerArmhole(by.negated());
    }
}

package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.measure.Length;

/** Adjustments of the neckline. */
public final class Necklines {

    private Necklines() {}

    /**
     * Widens the neckline of front and back along the shoulder.
     *
     * @param along how far the side neck point moves along the shoulder; 5 to 10 mm for a layer (common practice)
     */
    public static Step widenNeckline(Length along) {
        return new WidenNeckline(along);
    }

    /**
     * Narrows the neckline of front and back along the shoulder.
     *
     * @param along how far the side neck point moves back
     */
    public static Step narrowNeckline(Length along) {
        return new WidenNeckline(along.negated());
    }
}

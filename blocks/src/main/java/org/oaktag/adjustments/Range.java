package org.oaktag.adjustments;

import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/** The amounts that a step can do. */
final class Range {

    /** By how far an amount may lie outside its range through rounding, in millimetres. */
    private static final double ROUNDING = 1e-6;

    private Range() {}

    /**
     * Checks that an amount can be done.
     *
     * @param thing what is changed, such as {@code "armhole of the front"}
     * @param rule what limits it, such as {@code "between its pitch point and its side seam it can be lowered by"}
     * @param by the amount
     * @param least the least that works, in millimetres
     * @param most the most
     * @throws PatternException if the amount is out of the range
     */
    static void check(String thing, String rule, Length by, double least, double most) {
        if (by.mm() < least - ROUNDING || by.mm() > most + ROUNDING) {
            throw PatternException.of(
                    thing,
                    rule + " " + Length.mm(least).text() + " to "
                            + Length.mm(most).text(),
                    by.text(),
                    "");
        }
    }
}

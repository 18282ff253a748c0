package org.oaktag.geometry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.function.DoublePredicate;

/**
 * What a refused offset quotes: a distance in tenths of a millimetre (below one millimetre to two digits) that works
 * while the next tenth does not. Both were tried. Where offsets fail, work again and fail again as the distance grows,
 * it is the greatest before one of the failures.
 */
final class GreatestDistance {
    private static final int DIGITS = 4;

    private GreatestDistance() {}

    /** Returns the remedy for a distance in mm that fails. */
    static String remedy(double failing, DoublePredicate works) {
        int decimals = Math.min(Math.max(1, 1 - (int) Math.floor(Math.log10(failing))), 300);
        double stepsInOne = Math.pow(10, decimals);
        double good = 0;
        double bad = Math.ceil(failing * stepsInOne);
        while (bad - good > 1) {
            double middle = Math.floor(0.5 * (good + bad));
            if (works.test(middle / stepsInOne)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return String.format(
                Locale.ROOT,
                good == 0 ? "use less than %." + decimals + "f mm" : "use at most %." + decimals + "f mm",
                (good == 0 ? 1 : good) / stepsInOne);
    }

    /** Returns a distance in mm as a reader wants it: to four digits, and no zeros after them but one. */
    static String told(double distance) {
        BigDecimal rounded =
                new BigDecimal(distance).round(new MathContext(DIGITS)).stripTrailingZeros();
        return rounded.setScale(Math.max(rounded.scale(), 1)).toPlainString() + " mm";
    }
}

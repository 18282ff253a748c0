package org.oaktag.body;

import java.util.Arrays;
import java.util.Comparator;
import org.oaktag.measure.Length;

/** Units that are taken for one another: what a value would be, had it been meant in another unit than it was read in. */
enum UnitSlip {
    CM_AS_MM(10, "centimetres read as millimetres"),
    MM_AS_CM(0.1, "millimetres read as centimetres"),
    INCHES_AS_CM(2.54, "inches read as centimetres"),
    CM_AS_INCHES(1 / 2.54, "centimetres read as inches"),
    INCHES_AS_MM(25.4, "inches read as millimetres"),
    MM_AS_INCHES(1 / 25.4, "millimetres read as inches"),
    M_AS_CM(100, "metres read as centimetres"),
    M_AS_MM(1000, "metres read as millimetres");

    private final double factor;
    private final String words;

    UnitSlip(double factor, String words) {
        this.factor = factor;
        this.words = words;
    }

    /**
     * Returns the question that the likeliest slip suggests, or an empty string where none makes the value plausible.
     * The likeliest is the one that brings the value nearest, in proportion, to the middle of the range.
     */
    static String explaining(Length value, PlausibleRange range) {
        double middle = Math.sqrt(range.least().mm() * range.greatest().mm());
        return Arrays.stream(values())
                .filter(slip -> range.includes(value.times(slip.factor)))
                .min(Comparator.comparingDouble(
                        slip -> Math.abs(Math.log(value.times(slip.factor).mm() / middle))))
                .map(slip -> slip.words + "? that would be "
                        + value.times(slip.factor).text())
                .orElse("");
    }
}

package org.oaktag.measure;

/**
 * Writes numbers to a tenth, with a dot whatever the locale. By hand: a history holds hundreds, and a formatter takes a
 * microsecond each.
 */
final class Tenths {

    private Tenths() {}

    /**
     * Returns the number rounded to a tenth, half up, and its unit: {@code "-7.5 mm"}; what rounds to none has no sign.
     */
    static String text(double value, String unit) {
        long rounded = Math.round(value * 10);
        long size = Math.abs(rounded);
        return (rounded < 0 ? "-" : "") + size / 10 + "." + size % 10 + unit;
    }
}

package org.oaktag.export.xml;

/**
 * Writes numbers as every reader of SVG reads them, whatever the locale.
 *
 * <pre>{@code
 * Decimal.text(1.0 / 3);   // = 0.333333
 * Decimal.text(210.0);     // = 210
 * }</pre>
 */
public final class Decimal {

    /** A millionth of a millimetre: a path of a hundred curves read back is as long as it was to 1e-4 mm. */
    private static final double PER_MM = 1e6;

    private static final int DIGITS = 6;

    private Decimal() {}

    /**
     * Returns the value to six decimals, without trailing zeros.
     *
     * @throws IllegalArgumentException if it is not finite or beyond 1e9
     */
    public static String text(double value) {
        if (!(Math.abs(value) <= 1e9)) {
            throw new IllegalArgumentException("a coordinate must lie within -1e9 to 1e9, got " + value);
        }
        long scaled = Math.round(value * PER_MM);
        long size = Math.abs(scaled);
        String fraction = Long.toString(size % (long) PER_MM);
        StringBuilder text = new StringBuilder(scaled < 0 ? "-" : "").append(size / (long) PER_MM);
        if (size % (long) PER_MM != 0) {
            text.append('.').append("0".repeat(DIGITS - fraction.length())).append(fraction);
            while (text.charAt(text.length() - 1) == '0') {
                text.setLength(text.length() - 1);
            }
        }
        return text.toString();
    }
}

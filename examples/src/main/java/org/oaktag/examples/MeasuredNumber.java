package org.oaktag.examples;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.oaktag.PatternException;
import org.oaktag.body.LengthUnit;

/** Reads a number as it stands in a cell: decimals behind a dot, and for inches a common fraction as on the tape. */
final class MeasuredNumber {

    /** A program that converts units writes as many decimals as a double has: 48.480000000000004. */
    private static final Pattern DECIMAL = Pattern.compile("\\d{1,6}(\\.\\d{1,20})?");

    private static final Pattern WITH_COMMA = Pattern.compile("\\d{1,6},\\d{1,20}");
    private static final Pattern NEGATIVE = Pattern.compile("-\\d{1,6}(\\.\\d{1,20})?");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,3})[ -])?(\\d{1,2})/([1-9]\\d?)");

    private MeasuredNumber() {}

    /**
     * Reads the number.
     *
     * @param where the place, for the message
     * @throws PatternException if the cell holds no positive number
     */
    static double parse(String where, String cell, LengthUnit unit) {
        Matcher fraction = FRACTION.matcher(cell);
        if (unit == LengthUnit.INCH && fraction.matches()) {
            double whole = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            return whole + Double.parseDouble(fraction.group(2)) / Double.parseDouble(fraction.group(3));
        }
        if (!DECIMAL.matcher(cell).matches()) {
            throw PatternException.of(where, "must be a positive number", "'" + cell + "'", remedy(cell, unit));
        }
        return Double.parseDouble(cell);
    }

    private static String remedy(String cell, LengthUnit unit) {
        if (WITH_COMMA.matcher(cell).matches()) {
            return "write decimals with a dot: " + cell.replace(',', '.');
        }
        if (NEGATIVE.matcher(cell).matches()) {
            return "leave out the sign, or leave the cell blank if the measure was not taken";
        }
        return "write it like " + (unit == LengthUnit.INCH ? "14.625 or 14 5/8" : "37.5")
                + ", without a unit, or leave the cell blank if the measure was not taken";
    }
}

package org.oaktag.body;

import java.util.Locale;
import org.oaktag.measure.Length;

/**
 * A unit in which a body is measured.
 *
 * <pre>{@code
 * LengthUnit.INCH.of(37);              // = 939.8 mm
 * LengthUnit.CM.count(mm(940));        // = 94.0
 * }</pre>
 */
public enum LengthUnit {
    /** Millimetres. */
    MM("mm", "millimetres", 1),
    /** Centimetres. */
    CM("cm", "centimetres", 10),
    /** Metres, for heights. */
    M("m", "metres", 1000),
    /** Inches of exactly 25.4 mm. */
    INCH("in", "inches", Length.MM_PER_INCH);

    private final String symbol;
    private final String words;
    private final double mm;

    LengthUnit(String symbol, String words, double mm) {
        this.symbol = symbol;
        this.words = words;
        this.mm = mm;
    }

    /** Returns the symbol, such as {@code "cm"}. */
    public String symbol() {
        return symbol;
    }

    /** Returns the plural of the unit in words, such as {@code "centimetres"}. */
    public String words() {
        return words;
    }

    /** Returns the length of so many of these units. */
    public Length of(double count) {
        return Length.mm(count * mm);
    }

    /** Returns how many of these units a length has. */
    public double count(Length length) {
        return length.mm() / mm;
    }

    /**
     * Returns a length in this unit as a maker types it into a table: {@code "94.0 cm"}, to a tenth, inches to a
     * hundredth. What is read off a tape is told by {@link Length#text()} and {@link Length#textInInches()}.
     */
    public String text(Length length) {
        String format = this == INCH ? "%.2f %s" : "%.1f %s";
        return String.format(Locale.ROOT, format, count(length), symbol);
    }
}

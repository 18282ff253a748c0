package org.oaktag.measure;

import java.util.Objects;
import java.util.function.Predicate;

/**
 * A length, kept in millimetres. May be negative where it says by how much something changed.
 *
 * <pre>{@code
 * Length drop = mm(25);
 * Length lap = cm(5);
 * drop.plus(lap).cm();       // = 7.5
 * inches(0.625).text();      // = 15.9 mm
 * mm(84).textInInches();     // = 3 5/16 in
 * }</pre>
 *
 * <p>Immutable and safe to share between threads. {@code equals} is exact; use {@link #isCloseTo} for nearness.
 *
 * @param mm the length in millimetres; finite
 */
public record Length(double mm) implements Comparable<Length> {

    /** Millimetres in an inch, exact by definition (international yard and pound agreement, 1959). */
    public static final double MM_PER_INCH = 25.4;

    /** No length. */
    public static final Length ZERO = new Length(0);

    /**
     * Checks that the length is a number.
     *
     * @throws IllegalArgumentException if {@code mm} is not finite
     */
    public Length {
        if (!Double.isFinite(mm)) {
            throw new IllegalArgumentException("length must be finite, got " + mm + " mm");
        }
    }

    /** Returns a length given in millimetres. */
    public static Length mm(double millimetres) {
        return new Length(millimetres);
    }

    /** Returns a length given in centimetres. */
    public static Length cm(double centimetres) {
        return new Length(centimetres * 10);
    }

    /** Returns a length given in inches of exactly 25.4 mm. */
    public static Length inches(double inches) {
        return new Length(inches * MM_PER_INCH);
    }

    /** Returns this length in centimetres. */
    public double cm() {
        return mm / 10;
    }

    /** Returns this length in inches of exactly 25.4 mm. */
    public double inches() {
        return mm / MM_PER_INCH;
    }

    /** Returns the sum of both lengths. */
    public Length plus(Length other) {
        return new Length(mm + other.mm);
    }

    /** Returns this length less the other. */
    public Length minus(Length other) {
        return new Length(mm - other.mm);
    }

    /** Returns this length times a factor. */
    public Length times(double factor) {
        return new Length(mm * factor);
    }

    /** Returns this length with its sign changed. */
    public Length negated() {
        return new Length(-mm);
    }

    /**
     * Returns the tenth of a millimetre at or next above, so that a least still is enough as {@link #text} shows it.
     */
    public Length roundedUp() {
        return new Length(Math.ceil(mm * 10) / 10);
    }

    /** Returns the tenth of a millimetre at or next below, so that a most is not too much as {@link #text} shows it. */
    public Length roundedDown() {
        return new Length(Math.floor(mm * 10) / 10);
    }

    /**
     * Returns the greatest whole tenth of a millimetre below a length that fails which works while the next tenth does
     * not, such as a refusal quotes; zero where none works. Both were tried; where lengths work, fail and work again it
     * is the greatest before one of the failures.
     *
     * @param failing a length above zero that does not work
     * @param works tells whether another one does
     */
    public static Length greatestTenth(Length failing, Predicate<Length> works) {
        Objects.requireNonNull(works, "works");
        long good = 0;
        long bad = (long) Math.ceil(failing.mm * 10);
        while (bad - good > 1) {
            long middle = (good + bad) / 2;
            if (works.test(mm(middle / 10.0))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return mm(good / 10.0);
    }

    /** Tells whether the two lengths differ by no more than the tolerance. */
    public boolean isCloseTo(Length other, Length tolerance) {
        return Math.abs(mm - other.mm) <= tolerance.mm;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }

    /**
     * Returns the length as a maker writes it: millimetres to a tenth, with a dot, whatever the locale: {@code "7.5
     * mm"}.
     */
    public String text() {
        return Tenths.text(mm, " mm");
    }

    /**
     * Returns the length as a maker who works in inches reads it off the tape: to the nearest sixteenth, one that lies
     * halfway between two to the greater, whatever the sign; as a common fraction in its lowest terms: {@code "3 5/16
     * in"}, {@code "-1/2 in"}, {@code "0 in"}. For an exact value take {@link #inches()}.
     */
    public String textInInches() {
        long sixteenths = Math.round(Math.abs(inches()) * 16);
        long whole = sixteenths / 16;
        long over = 16;
        long part = sixteenths % 16;
        while (part != 0 && part % 2 == 0) {
            part /= 2;
            over /= 2;
        }
        String sign = mm < 0 && sixteenths > 0 ? "-" : "";
        String fraction = part == 0 ? "" : part + "/" + over;
        String between = whole > 0 && part > 0 ? " " : "";
        return sign + (whole > 0 || part == 0 ? whole : "") + between + fraction + " in";
    }

    /** Returns the exact value in millimetres, such as {@code "7.5 mm"}. */
    @Override
    public String toString() {
        return mm + " mm";
    }
}

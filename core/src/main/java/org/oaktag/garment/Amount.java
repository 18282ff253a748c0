package org.oaktag.garment;

import java.util.Objects;

/**
 * An amount that a step was asked for, as the maker reads it. Immutable.
 *
 * <pre>{@code
 * Amount.of("along the shoulder", mm(8)).text();   // = 8.0 mm
 * }</pre>
 *
 * @param name what it is, such as {@code "along the shoulder"}
 * @param text its value with its unit, such as {@code "10.0 mm"}
 */
public record Amount(String name, String text) {
    /** Refuses null. */
    public Amount {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(text, "text");
    }

    /** Returns a length as an amount. */
    public static Amount of(String name, org.oaktag.measure.Length length) {
        return new Amount(name, length.text());
    }

    /** Returns an amount in other words. */
    public static Amount of(String name, String text) {
        return new Amount(name, text);
    }

    @Override
    public String toString() {
        return name + " " + text;
    }
}

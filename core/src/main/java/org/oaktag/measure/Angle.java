package org.oaktag.measure;

/**
 * An angle, kept in degrees, as a maker reads it from a set square. The geometry below computes in radians.
 *
 * <pre>{@code
 * Angle slope = degrees(20);
 * slope.radians();   // = 0.349
 * slope.text();      // = 20.0°
 * }</pre>
 *
 * <p>Immutable and safe to share between threads.
 *
 * @param degrees the angle in degrees; finite
 */
public record Angle(double degrees) implements Comparable<Angle> {

    /**
     * Checks that the angle is a number.
     *
     * @throws IllegalArgumentException if {@code degrees} is not finite
     */
    public Angle {
        if (!Double.isFinite(degrees)) {
            throw new IllegalArgumentException("angle must be finite, got " + degrees + " degrees");
        }
    }

    /** Returns an angle given in degrees. */
    public static Angle degrees(double degrees) {
        return new Angle(degrees);
    }

    /** Returns an angle given in radians. */
    public static Angle radians(double radians) {
        return new Angle(Math.toDegrees(radians));
    }

    /** Returns this angle in radians. */
    public double radians() {
        return Math.toRadians(degrees);
    }

    /** Returns the tenth of a degree at or next above, so that a least still is enough as {@link #text} shows it. */
    public Angle roundedUp() {
        return new Angle(Math.ceil(degrees * 10) / 10);
    }

    /** Returns the tenth of a degree at or next below, so that a most is not too much as {@link #text} shows it. */
    public Angle roundedDown() {
        return new Angle(Math.floor(degrees * 10) / 10);
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(degrees, other.degrees);
    }

    /** Returns the angle to a tenth of a degree, with a dot, whatever the locale: {@code "92.5°"}. */
    public String text() {
        return Tenths.text(degrees, "°");
    }
}

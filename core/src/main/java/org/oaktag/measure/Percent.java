package org.oaktag.measure;

/**
 * A share in hundredths: the stretch of a cloth, a gathering ratio.
 *
 * <pre>{@code
 * Percent stretch = percent(45);
 * stretch.fraction();                      // = 0.45
 * cm(36).times(1 + stretch.fraction());    // = 522.0 mm
 * }</pre>
 *
 * <p>Immutable and safe to share between threads.
 *
 * @param percent the share in hundredths; finite
 */
public record Percent(double percent) implements Comparable<Percent> {

    /**
     * Checks that the share is a number.
     *
     * @throws IllegalArgumentException if {@code percent} is not finite
     */
    public Percent {
        if (!Double.isFinite(percent)) {
            throw new IllegalArgumentException("percent must be finite, got " + percent);
        }
    }

    /** Returns a share given in hundredths. */
    public static Percent percent(double percent) {
        return new Percent(percent);
    }

    /** Returns this share as a fraction of one: 20 percent is 0.2. */
    public double fraction() {
        return percent / 100;
    }

    /** Returns the tenth at or next above, so that a least still is enough as {@link #text} shows it. */
    public Percent roundedUp() {
        return new Percent(Math.ceil(percent * 10) / 10);
    }

    @Override
    public int compareTo(Percent other) {
        return Double.compare(percent, other.percent);
    }

    /** Returns the share to a tenth, with a dot, whatever the locale: {@code "19.5 %"}. */
    public String text() {
        return Tenths.text(percent, " %");
    }
}

package org.oaktag.garment;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * How the two sides of a seam are sewn to each other. Side b is the one that is made to fit: it is eased or gathered
 * in, stretched on, or lapped.
 *
 * <pre>{@code
 * SeamRule cap = SeamRule.eased(mm(6));             // b is 6 mm longer, eased in
 * SeamRule cuff = SeamRule.stretchedOn(0.8);        // b is 0.8 of a, stretched on
 * SeamRule ruffle = SeamRule.gathered(1.5);         // b is 1.5 of a, gathered
 * }</pre>
 *
 * <p>A rule answers one question: by how much is b longer than a when the seam is true? A closed family of immutable
 * values.
 */
public sealed interface SeamRule {

    /**
     * Returns the true difference, length of b less length of a, nearest to the one found.
     *
     * @param lengthA the length of side a in millimetres
     * @param difference the difference found, in millimetres
     */
    double expectedDifference(double lengthA, double difference);

    /**
     * Returns one word for a table: {@code flat}, {@code eased}, {@code gathered}, {@code stretched on}, {@code
     * lapped}.
     */
    String word();

    /** Returns the rule with its amounts, as a maker reads it. */
    String text();

    /** Returns the rule of two sides of equal length. */
    static SeamRule flat() {
        return new Flat();
    }

    /** Returns the rule of a side b that is longer by just this much, the ease spread over the whole seam. */
    static SeamRule eased(Length ease) {
        return new Eased(ease, ease, Optional.empty());
    }

    /** Returns the rule of a side b that is longer by just this much, the ease lying between two notches or ends. */
    static SeamRule eased(Length ease, Span within) {
        return new Eased(ease, ease, Optional.of(within));
    }

    /** Returns the rule of a side b that is gathered onto side a and is this many times as long. */
    static SeamRule gathered(double ratio) {
        return new Gathered(ratio);
    }

    /** Returns the rule of a side b that is stretched onto side a and is cut at this share of its length. */
    static SeamRule stretchedOn(double ratio) {
        return new StretchedOn(ratio);
    }

    /** Returns the rule of a side b that laps over itself and is longer by the lap. */
    static SeamRule lapped(Length lap) {
        return new Lapped(lap);
    }

    /**
     * The part of a seam between two places on it. An empty end is the end of the seam.
     *
     * @param from the notch at which it begins, or empty for the start of the seam
     * @param to the notch at which it ends, or empty for the end of the seam
     */
    record Span(Optional<Name> from, Optional<Name> to) {
        /** Refuses null. */
        public Span {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        /** Returns the part from the start of the seam to a notch. */
        public static Span upTo(Name notch) {
            return new Span(Optional.empty(), Optional.of(notch));
        }

        /** Returns the part from a notch to the end of the seam. */
        public static Span from(Name notch) {
            return new Span(Optional.of(notch), Optional.empty());
        }

        /** Returns the part between two notches. */
        public static Span between(Name from, Name to) {
            return new Span(Optional.of(from), Optional.of(to));
        }
    }

    /** Both sides are of equal length. */
    record Flat() implements SeamRule {
        @Override
        public double expectedDifference(double lengthA, double difference) {
            return 0;
        }

        @Override
        public String word() {
            return "flat";
        }

        @Override
        public String text() {
            return "flat";
        }
    }

    /**
     * Side b is longer and is eased in.
     *
     * @param least the least ease
     * @param most the most ease
     * @param within where the ease lies; empty where it is spread over the whole seam
     */
    record Eased(Length least, Length most, Optional<Span> within) implements SeamRule {
        /**
         * Checks the range.
         *
         * @throws PatternException if the least is more than the most
         */
        public Eased {
            Objects.requireNonNull(within, "within");
            if (least.compareTo(most) > 0) {
                throw PatternException.of(
                        "eased seam", "least ease must not exceed the most, " + most.text(), least.text(), "");
            }
        }

        @Override
        public double expectedDifference(double lengthA, double difference) {
            return Math.min(Math.max(difference, least.mm()), most.mm());
        }

        @Override
        public String word() {
            return "eased";
        }

        @Override
        public String text() {
            return least.equals(most) ? "eased by " + least.text() : "eased by " + least.text() + " to " + most.text();
        }
    }

    /**
     * Side b is gathered onto side a.
     *
     * @param ratio length of b over length of a, 1 or more
     */
    record Gathered(double ratio) implements SeamRule {
        /**
         * Checks the ratio.
         *
         * @throws PatternException if the ratio is not 1 to 5
         */
        public Gathered {
            if (!(ratio >= 1 && ratio <= 5)) {
                throw PatternException.of("gathered seam", "ratio must be 1 to 5", "" + ratio, "");
            }
        }

        @Override
        public double expectedDifference(double lengthA, double difference) {
            return lengthA * (ratio - 1);
        }

        @Override
        public String word() {
            return "gathered";
        }

        @Override
        public String text() {
            return String.format(Locale.ROOT, "gathered %.2f to 1", ratio);
        }
    }

    /**
     * Side b is stretched onto side a.
     *
     * @param ratio length of b over length of a, 1 or less
     */
    record StretchedOn(double ratio) implements SeamRule {
        /**
         * Checks the ratio.
         *
         * @throws PatternException if the ratio is not 0.3 to 1
         */
        public StretchedOn {
            if (!(ratio >= 0.3 && ratio <= 1)) {
                throw PatternException.of("stretched seam", "ratio must be 0.3 to 1", "" + ratio, "");
            }
        }

        @Override
        public double expectedDifference(double lengthA, double difference) {
            return lengthA * (ratio - 1);
        }

        @Override
        public String word() {
            return "stretched on";
        }

        @Override
        public String text() {
            return String.format(Locale.ROOT, "stretched on at %.1f %%", ratio * 100);
        }
    }

    /**
     * Side b is longer by a lap.
     *
     * @param lap the lap, not negative
     */
    record Lapped(Length lap) implements SeamRule {
        /**
         * Checks the lap.
         *
         * @throws PatternException if the lap is negative
         */
        public Lapped {
            if (lap.mm() < 0) {
                throw PatternException.of("lapped seam", "lap must be 0 mm or more", lap.text(), "");
            }
        }

        @Override
        public double expectedDifference(double lengthA, double difference) {
            return lap.mm();
        }

        @Override
        public String word() {
            return "lapped";
        }

        @Override
        public String text() {
            return "lapped by " + lap.text();
        }
    }
}

package org.oaktag.adjust;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.geometry.Fit;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * How the gap that a slash leaves in an edge is closed. A closed family of immutable values.
 *
 * <pre>{@code
 * Slash cut = Slash.of(
 *         LineAcross.straight(Place.share(HEM, 0.5), Place.share(SHOULDER, 0.5)), Spread.hinged(End.END, degrees(4)));
 * new SlashAndSpread(FRONT, List.of(cut), Closing.straight());       // two straight lines beside the gap
 * new SlashAndSpread(FRONT, List.of(cut), Closing.smooth(mm(60)));   // redrawn within 60 mm of it
 * }</pre>
 */
public sealed interface Closing {

    /**
     * An edge with its gap closed. Immutable.
     *
     * @param before what is left of the edge before the gap
     * @param gap what is drawn anew
     * @param after what is left of the edge after it
     */
    record Bridged(Path before, Path gap, Path after) {
        /** Refuses null. */
        public Bridged {
            Objects.requireNonNull(before, "before");
            Objects.requireNonNull(gap, "gap");
            Objects.requireNonNull(after, "after");
        }
    }

    /**
     * Closes the gap.
     *
     * @param before the edge up to the gap
     * @param after the edge after it
     * @throws PatternException if more of the edge would be drawn anew than there is
     */
    Bridged across(Path before, Path after);

    /** Returns the word for it. */
    String text();

    /** Returns a gap closed by a straight line, as it comes; the corners are left to be trued. */
    static Closing straight() {
        return new Straight();
    }

    /** Returns a gap closed by a curve that leaves and arrives in the directions of the edge. */
    static Closing smooth() {
        return new Smooth(Length.ZERO);
    }

    /**
     * Returns a gap closed by a curve that is smooth at both ends and takes in so much of the edge on either side.
     *
     * @throws PatternException if the reach is negative
     */
    static Closing smooth(Length reach) {
        return new Smooth(reach);
    }

    /** A straight line. */
    record Straight() implements Closing {
        @Override
        public Bridged across(Path before, Path after) {
            return new Bridged(before, Path.polyline(before.end(), after.start()), after);
        }

        @Override
        public String text() {
            return "straight";
        }
    }

    /**
     * A smooth curve.
     *
     * @param reach how much of the edge on either side is drawn anew
     */
    record Smooth(Length reach) implements Closing {

        private static final double LEAST_LEFT = 1;

        /**
         * Checks the reach.
         *
         * @throws PatternException if it is negative
         */
        public Smooth {
            if (reach.mm() < 0) {
                throw PatternException.of("reach of a smooth closing", "must be 0 mm or more", reach.text(), "");
            }
        }

        @Override
        public Bridged across(Path before, Path after) {
            if (reach.mm() == 0) {
                return new Bridged(before, Path.of(Fit.blend(before, after)), after);
            }
            double most = Math.min(before.length(), after.length()) - LEAST_LEFT;
            Length inside = Length.mm(Math.max(most, 0));
            Range.check(
                    "reach of a smooth closing",
                    "inside the edge on either side it can be",
                    reach,
                    Length.ZERO,
                    inside);
            Path kept = before.sub(0, before.length() - reach.mm());
            Path rest = after.sub(reach.mm(), after.length());
            return new Bridged(kept, Path.of(Fit.blend(kept, rest)), rest);
        }

        @Override
        public String text() {
            return reach.mm() == 0 ? "smooth" : "smooth within " + reach.text();
        }
    }
}

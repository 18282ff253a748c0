package org.oaktag.garment;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.measure.Percent;

/**
 * What a piece is cut from. Immutable.
 *
 * <pre>{@code
 * Cloth fleece = Cloth.knit("brushed fleece, night blue", percent(45));
 * Cloth warm = fleece.weighing(Cloth.Weight.HEAVY);
 * Cloth amber = Cloth.knit("brushed fleece, amber", percent(45)).as(Cloth.CONTRAST);
 * Cloth tweed = Cloth.woven("tweed, moss");
 * Cloth cuffs = Cloth.rib("2 x 2 rib, dark blue", percent(90));
 * }</pre>
 *
 * @param use the part that the cloth plays in the garment: {@code shell}, {@code contrast}, {@code lining},
 *     {@code rib} ...
 * @param description the maker's own words for it; free text
 * @param stretch how far it stretches across the body, (stretched - rest) / rest; 0 for a woven
 * @param weight how heavy it is, if the maker says; see {@link #gathersAs}
 */
public record Cloth(Name use, String description, Percent stretch, Optional<Weight> weight) {

    /** How heavy a cloth is, as a shop sorts them. */
    public enum Weight {
        /** Single jersey, lawn, voile. */
        LIGHT("light", 3),
        /** Interlock, shirting, double knit. */
        MEDIUM("medium", 2),
        /** Fleece, loop terry, denim. */
        HEAVY("heavy", 1.5);

        private final String label;
        private final double mostGathers;

        Weight(String label, double mostGathers) {
            this.label = label;
            this.mostGathers = mostGathers;
        }

        /** Returns the word for it. */
        public String label() {
            return label;
        }

        /**
         * Returns how many times its finished length a cloth of this weight is gathered at the most before it lies in
         * folds: 1.5 heavy, 2 medium, 3 light (common practice).
         */
        public double mostGathers() {
            return mostGathers;
        }
    }

    /** The cloth of the outside. */
    public static final Name SHELL = Name.of("shell");

    /** A second cloth of the outside. */
    public static final Name CONTRAST = Name.of("contrast");

    /** The cloth of the inside. */
    public static final Name LINING = Name.of("lining");

    /** Ribbed knit for cuffs and bands. */
    public static final Name RIB = Name.of("rib");

    /** What is laid behind the cloth of the outside to make it firm. */
    public static final Name INTERFACING = Name.of("interfacing");

    private static final double MOST_STRETCH = 200;

    /**
     * Checks the stretch.
     *
     * @throws PatternException if the stretch is not 0 to 200 percent
     */
    public Cloth {
        Objects.requireNonNull(use, "use");
        Objects.requireNonNull(description, "description");
        Objects.requireNonNull(weight, "weight");
        if (!(stretch.percent() >= 0 && stretch.percent() <= MOST_STRETCH)) {
            throw PatternException.of(
                    "stretch of '" + description + "'",
                    "must be 0 to " + (int) MOST_STRETCH + " %, (stretched - rest) / rest",
                    stretch.text(),
                    "");
        }
    }

    /** Makes a cloth of which it is not said how heavy it is. */
    public Cloth(Name use, String description, Percent stretch) {
        this(use, description, stretch, Optional.empty());
    }

    /** Returns a knit for the outside of a garment. */
    public static Cloth knit(String description, Percent stretch) {
        return new Cloth(SHELL, description, stretch);
    }

    /** Returns a woven cloth for the outside of a garment, which does not stretch. */
    public static Cloth woven(String description) {
        return new Cloth(SHELL, description, Percent.percent(0));
    }

    /** Returns a ribbed knit. */
    public static Cloth rib(String description, Percent stretch) {
        return new Cloth(RIB, description, stretch);
    }

    /** Returns the same cloth, light, medium or heavy. */
    public Cloth weighing(Weight other) {
        return new Cloth(use, description, stretch, Optional.of(other));
    }

    /** Returns the weight by which it is gathered: medium where it is not said how heavy it is. */
    public Weight gathersAs() {
        return weight.orElse(Weight.MEDIUM);
    }

    /** Returns the same cloth in another part: {@code knit("jersey", percent(30)).as(LINING)}. */
    public Cloth as(Name otherUse) {
        return new Cloth(otherUse, description, stretch, weight);
    }

    /** Tells whether it is fused to another cloth, and so has no allowance and needs no finish. */
    public boolean isInterfacing() {
        return use.equals(INTERFACING);
    }
}

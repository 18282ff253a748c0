package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.measure.Percent;

/**
 * What a piece is cut from. Immutable.
 *
 * <pre>{@code
 * Cloth fleece = Cloth.knit("brushed fleece, night blue", percent(45));
 * Cloth amber = Cloth.knit("brushed fleece, amber", percent(45)).as(Cloth.CONTRAST);
 * Cloth cuffs = Cloth.rib("2 x 2 rib, dark blue", percent(90));
 * }</pre>
 *
 * @param use the part that the cloth plays in the garment: {@code shell}, {@code contrast}, {@code lining},
 *     {@code rib} ...
 * @param description the maker's own words for it; free text
 * @param stretch how far it stretches across the body, (stretched - rest) / rest; 0 for a woven
 */
public record Cloth(Name use, String description, Percent stretch) {

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
        if (!(stretch.percent() >= 0 && stretch.percent() <= MOST_STRETCH)) {
            throw PatternException.of(
                    "stretch of '" + description + "'",
                    "must be 0 to " + (int) MOST_STRETCH + " %, (stretched - rest) / rest",
                    stretch.text(),
                    "");
        }
    }

    /** Returns a knit for the outside of a garment. */
    public static Cloth knit(String description, Percent stretch) {
        return new Cloth(SHELL, description, stretch);
    }

    /** Returns a ribbed knit. */
    public static Cloth rib(String description, Percent stretch) {
        return new Cloth(RIB, description, stretch);
    }

    /** Returns the same cloth in another part: {@code knit("jersey", percent(30)).as(LINING)}. */
    public Cloth as(Name otherUse) {
        return new Cloth(otherUse, description, stretch);
    }
}

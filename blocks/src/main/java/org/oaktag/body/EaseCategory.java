package org.oaktag.body;

import org.oaktag.measure.Length;

/**
 * How closely a knit garment is meant to sit, by its ease at the bust. The bands are common practice of the trade for
 * knits; a woven needs more (NMSU guide C-228: 3 to 4 in at the bust).
 *
 * <pre>{@code
 * EaseCategory.of(mm(80));             // = STANDARD
 * EaseCategory.LOOSE.least().text();   // = 100.0 mm
 * }</pre>
 */
public enum EaseCategory {
    /**
     * On the body, or less than the body in a cloth that stretches: from a tenth of the girth below it up to nothing.
     */
    VERY_CLOSE("very close", -170, 0),
    /** 25 to 50 mm. */
    CLOSE("close", 25, 50),
    /** 50 to 100 mm. */
    STANDARD("standard", 50, 100),
    /** 100 to 150 mm. */
    LOOSE("loose", 100, 150),
    /** Over 150 mm. */
    OVERSIZED("oversized", 150, 600);

    private final String label;
    private final double leastMm;
    private final double greatestMm;

    EaseCategory(String label, double leastMm, double greatestMm) {
        this.label = label;
        this.leastMm = leastMm;
        this.greatestMm = greatestMm;
    }

    /** Returns the words for it, in lower case. */
    public String label() {
        return label;
    }

    /** Returns the least ease at the bust that still goes by this name. */
    public Length least() {
        return Length.mm(leastMm);
    }

    /** Returns the greatest ease at the bust that still goes by this name. */
    public Length greatest() {
        return Length.mm(greatestMm);
    }

    /**
     * Returns the category of an ease at the bust: the closest whose upper end it does not pass. Between nothing and 25
     * mm it is close.
     */
    public static EaseCategory of(Length bustEase) {
        for (EaseCategory category : values()) {
            if (bustEase.mm() <= category.greatestMm) {
                return category;
            }
        }
        return OVERSIZED;
    }
}

package org.oaktag.body;

import java.util.Arrays;
import java.util.Optional;
import org.oaktag.measure.Length;

/**
 * The letters by which EN 13402-3 codes men's sizes after the chest girth.
 *
 * <pre>{@code
 * MensLetter.of(teo.bustGirth());   // = Optional[M]
 * }</pre>
 */
public enum MensLetter {
    /** 86 to 94 cm. */
    S(86, 94),
    /** 94 to 102 cm. */
    M(94, 102),
    /** 102 to 110 cm. */
    L(102, 110),
    /** 110 to 118 cm. */
    XL(110, 118),
    /** 118 to 129 cm. */
    XXL(118, 129);

    private final int fromCm;
    private final int toCm;

    MensLetter(int fromCm, int toCm) {
        this.fromCm = fromCm;
        this.toCm = toCm;
    }

    /** Returns the least chest girth that has this letter. */
    public Length from() {
        return Length.cm(fromCm);
    }

    /** Returns the chest girth at which the next letter begins. */
    public Length to() {
        return Length.cm(toCm);
    }

    /** Returns the letter of a chest girth, or empty where the standard has none. */
    public static Optional<MensLetter> of(Length chestGirth) {
        return Arrays.stream(values())
                .filter(letter -> chestGirth.compareTo(letter.from()) >= 0 && chestGirth.compareTo(letter.to()) < 0)
                .findFirst();
    }
}

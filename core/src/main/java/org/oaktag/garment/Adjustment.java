package org.oaktag.garment;

import java.util.Objects;

/**
 * A way to make one garment into another: {@code garment.adjust(lowerArmhole(mm(18)))}.
 *
 * <pre>{@code
 * Adjustment roomier = garment -> garment.adjust(widenNeckline(mm(7))).adjust(lowerArmhole(mm(18)));
 * Garment forOverAJumper = block.adjust(roomier);
 * }</pre>
 *
 * <p>It is a function without side effects. It never repairs silently: whatever it does stands in the history of the
 * garment that it returns.
 */
@FunctionalInterface
public interface Adjustment {

    /**
     * Returns the adjusted garment; the one given stays as it is.
     *
     * @throws org.oaktag.PatternException if it cannot be done on this garment; the message says what would work
     */
    Garment applyTo(Garment garment);

    /** Returns this adjustment followed by another. */
    default Adjustment then(Adjustment next) {
        Objects.requireNonNull(next, "next");
        return garment -> next.applyTo(applyTo(garment));
    }

    /** Returns the adjustment that changes nothing and leaves no trace in the history. */
    static Adjustment none() {
        return garment -> garment;
    }
}

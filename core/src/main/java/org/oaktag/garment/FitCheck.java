package org.oaktag.garment;

import java.util.Optional;

/**
 * A question that a garment asks of itself at every step: whether the body gets into it and has room in it. A value, so
 * that two garments with the same checks are equal. It says what the numbers say and no more: seams, thread and comfort
 * are not counted.
 *
 * <pre>{@code
 * for (Fit fit : block.fit()) {
 *     String line = fit.verdict() + ": " + fit.text();
 * }
 * }</pre>
 */
public interface FitCheck {

    /** Returns what is checked, unique among the checks of a garment: {@code "neck opening"}. */
    Name name();

    /** Returns the answer; empty where the garment has nothing to check, or the wearer was not measured there. */
    Optional<Fit> of(Garment garment);

    /**
     * Tells whether the answer that an earlier garment gave holds for one that was made from it, because nothing on
     * which it rests is another. A check that cannot tell at little cost says false, and is asked anew.
     */
    default boolean standsSince(Garment earlier, Garment garment) {
        return false;
    }
}

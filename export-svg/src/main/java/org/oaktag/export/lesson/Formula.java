package org.oaktag.export.lesson;

import org.oaktag.adjust.Recipe;

/**
 * A formula that is shown with its values filled in: what is measured on the pieces, and what is computed. Immutable.
 *
 * <pre>{@code
 * Formula shoulder = Formula.exact(
 *         Term.length("shoulder", played -> played.after().finished(SHOULDER_LENGTH)),
 *         Term.length("shoulder before", played -> played.before().finished(SHOULDER_LENGTH))
 *                 .minus(Term.length("along the shoulder", mm(8))));
 * shoulder.agrees(new Trial(block, widenNeckline(mm(8))).played());   // = true
 * }</pre>
 *
 * @param measured what it is about, a length as it is measured on the pieces
 * @param computed how it is computed
 * @param exact whether the two must agree; a rule of thumb shows by how much they differ
 * @param remark a sentence about it, or an empty text
 */
public record Formula(Term.Quantity measured, Term computed, boolean exact, String remark) {

    /** How far a computed length may lie from the measured one where they must agree, mm: that of a true seam. */
    public static final double AGREEMENT = 0.01;

    /**
     * Returns a formula that must agree with what is measured in every position.
     *
     * @throws IllegalArgumentException if what is measured is no length that goes by a name
     */
    public static Formula exact(Term measured, Term computed) {
        return new Formula(named(measured), computed, true, "");
    }

    /**
     * Returns a rule of thumb.
     *
     * @param remark why it is not exact
     * @throws IllegalArgumentException if what is measured is no length that goes by a name
     */
    public static Formula rough(Term measured, Term computed, String remark) {
        return new Formula(named(measured), computed, false, remark);
    }

    /** Returns by how much the computed length exceeds the measured one, mm. */
    public double difference(Recipe.Played played) {
        return computed.of(played) - measured.of(played);
    }

    /** Tells whether the two lengths agree. */
    public boolean agrees(Recipe.Played played) {
        return Math.abs(difference(played)) <= AGREEMENT;
    }

    private static Term.Quantity named(Term measured) {
        if (measured instanceof Term.Quantity quantity && quantity.kind() == Slider.Kind.LENGTH) {
            return quantity;
        }
        throw new IllegalArgumentException("a formula must begin with a length that has a name, got " + measured);
    }
}

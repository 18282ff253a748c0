package org.oaktag.garment;

/**
 * How the cloth of darts is cut.
 *
 * <pre>{@code
 * Allowances slit = allowances.darts(DartCut.SLIT);
 * }</pre>
 */
public enum DartCut {
    /**
     * The cloth stays in the dart and is folded when the legs are sewn. The cut line runs outside the
     * {@linkplain FoldedDart#peak() peak} that meets the edge once the cloth is laid to one side, each leg is notched,
     * and a hole is drilled short of the apex. A dart in an edge that is itself folded back is slit all the same.
     */
    FOLDED,
    /** The cut line follows the legs, each at its own allowance, as for a dart that is pressed open. */
    SLIT
}

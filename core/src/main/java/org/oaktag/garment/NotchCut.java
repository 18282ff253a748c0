package org.oaktag.garment;

/**
 * How a notch is cut into the allowance.
 *
 * <pre>{@code
 * Allowances slit = allowances.notched(NotchCut.SLIT);
 * }</pre>
 */
public enum NotchCut {
    /** One straight cut from the edge of the cloth towards the seam line, no deeper than half the allowance. */
    SLIT,
    /** A small wedge taken out of the edge of the cloth, for cloths in which a slit would not be seen or would run. */
    VEE
}

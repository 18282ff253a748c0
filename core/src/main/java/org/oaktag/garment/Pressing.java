package org.oaktag.garment;

/**
 * Which way the allowances of a seam are pressed once it is sewn.
 *
 * <pre>{@code
 * Allowances narrow = allowances.pressed(block.seam(SIDE_SEAM), mm(15), Pressing.OPEN);
 * }</pre>
 */
public enum Pressing {
    /** Apart, each back on to its own piece. */
    OPEN,
    /** Both on to the piece of side a. */
    TOWARDS_A,
    /** Both on to the piece of side b. */
    TOWARDS_B
}

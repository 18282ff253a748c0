package org.oaktag.garment;

/**
 * What becomes of an edge of a piece that no seam takes in.
 *
 * <pre>{@code
 * front.edge(HEM).finish();    // = TURNED_BACK
 * front.edge(SIDE).finish();   // = PLAIN
 * }</pre>
 */
public enum EdgeFinish {
    /** Nothing yet: it is there to be sewn to another, and raw as long as it is not. */
    PLAIN,

    /** Left as it is cut, on purpose. */
    RAW,

    /** Kept from fraying by itself, as the loose edge of a facing is. */
    NEATENED,

    /** Folded in half and sewn to itself, as the end of a folded band is. */
    CLOSED,

    /** Folded away and held by the seams next to it, as the top of a pleat is. */
    TAKEN_IN,

    /** Held by what fastens the garment, as the edge that takes a zip is. */
    FASTENED,

    /** Turned back and stitched down, its ends folded with it, as a hem is. */
    TURNED_BACK,

    /** Turned back and stitched down, its ends square, as the opening of a pocket is. */
    TURNED_BACK_SQUARE,

    /** One side of a slash that is cut open: it has no allowance. */
    SLASHED;

    /** Tells whether it is turned back and stitched down. */
    public boolean isTurnedBack() {
        return this == TURNED_BACK || this == TURNED_BACK_SQUARE;
    }
}

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
    /** Nothing: it is there to be sewn to another, or is left as it is cut. */
    PLAIN,

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

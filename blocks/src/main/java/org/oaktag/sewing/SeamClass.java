package org.oaktag.sewing;

/**
 * Seam classes of ISO 4916, those that are suggested here.
 *
 * <pre>{@code
 * SeamClass.SUPERIMPOSED.number();   // = 1
 * }</pre>
 */
public enum SeamClass {
    /** Plies laid on each other, edges together, and joined. */
    SUPERIMPOSED(1, "superimposed"),
    /** Stitched on to the face of a ply, such as a pocket (class and use from memory). */
    DECORATIVE(5, "decorative"),
    /** The edge of one ply, turned or finished by itself. */
    EDGE_FINISHING(6, "edge finishing");

    private final int number;
    private final String label;

    SeamClass(int number, String label) {
        this.number = number;
        this.label = label;
    }

    /** Returns its number in ISO 4916. */
    public int number() {
        return number;
    }

    /** Returns what it is called. */
    public String label() {
        return label;
    }
}

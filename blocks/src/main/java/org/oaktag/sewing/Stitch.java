package org.oaktag.sewing;

/**
 * Stitch types of ISO 4915, those that are suggested here.
 *
 * <pre>{@code
 * Stitch.FOUR_THREAD_OVEREDGE.number();   // = 514
 * }</pre>
 */
public enum Stitch {
    /** Lockstitch: two threads, hardly stretches. */
    LOCKSTITCH("301", "lockstitch"),
    /** Three-thread overedge: keeps a raw edge from fraying. */
    OVEREDGE("504", "three-thread overedge"),
    /**
     * Two-needle four-thread overedge: joins and trims, and stretches with a knit. Not 516, which joins by a chain of its
     * own beside the overedge and stretches less (from memory).
     */
    FOUR_THREAD_OVEREDGE("514", "four-thread overedge"),
    /** Two-needle cover stitch: hems a knit. */
    COVER("406", "two-needle cover stitch");

    private final String number;
    private final String label;

    Stitch(String number, String label) {
        this.number = number;
        this.label = label;
    }

    /** Returns its number in ISO 4915. */
    public String number() {
        return number;
    }

    /** Returns what it is called. */
    public String label() {
        return label;
    }
}

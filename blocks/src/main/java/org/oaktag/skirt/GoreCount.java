package org.oaktag.skirt;

/**
 * How many gores a skirt has.
 *
 * <pre>{@code
 * GoreCount.SIX.count();   // = 6
 * }</pre>
 */
public enum GoreCount {
    /** Four. */
    FOUR(4),
    /** Six. */
    SIX(6),
    /** Eight. */
    EIGHT(8);

    private final int count;

    GoreCount(int count) {
        this.count = count;
    }

    /** Returns the number. */
    public int count() {
        return count;
    }
}

package org.oaktag.garment;

/**
 * One end of an edge or of a seam, in the direction in which it runs.
 *
 * <pre>{@code
 * Point shoulderPoint = front.corner(SHOULDER, End.END);
 * End.END.opposite();   // = START
 * }</pre>
 */
public enum End {
    /** Where it begins. */
    START,
    /** Where it ends. */
    END;

    /** Returns the other end. */
    public End opposite() {
        return this == START ? END : START;
    }
}

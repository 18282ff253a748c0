package org.oaktag.garment;

/** One end of an edge or of a seam, in the direction in which it runs. */
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

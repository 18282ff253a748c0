package org.oaktag.adjust;

/**
 * A cut into a piece and how far it is opened. Immutable.
 *
 * @param line where the piece is cut
 * @param spread how far it is opened
 */
public record Slash(LineAcross line, Spread spread) {

    /** Returns the slash along a line, opened so far. */
    public static Slash of(LineAcross line, Spread spread) {
        return new Slash(line, spread);
    }
}

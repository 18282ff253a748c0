package org.oaktag.adjust;

import java.util.Objects;

/**
 * A cut into a piece and how far it is opened. Immutable.
 *
 * <pre>{@code
 * Slash opened = Slash.of(
 *         LineAcross.straight(Place.share(HEM, 0.5), Place.share(SHOULDER, 0.5)), Spread.hinged(End.END, degrees(4)));
 * }</pre>
 *
 * @param line where the piece is cut
 * @param spread how far it is opened
 */
public record Slash(LineAcross line, Spread spread) {
    /** Refuses null. */
    public Slash {
        Objects.requireNonNull(line, "line");
        Objects.requireNonNull(spread, "spread");
    }

    /** Returns the slash along a line, opened so far. */
    public static Slash of(LineAcross line, Spread spread) {
        return new Slash(line, spread);
    }
}

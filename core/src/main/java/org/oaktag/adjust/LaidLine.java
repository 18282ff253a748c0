package org.oaktag.adjust;

import java.util.Objects;
import org.oaktag.geometry.Path;

/**
 * A cutting line as it lies on one piece, from outline to outline. Immutable.
 *
 * <pre>{@code
 * LaidLine yoke = LineAcross.square(Place.along(SIDE, End.START, mm(40)), Place.share(CENTRE, 0.5)).on(front);
 * yoke.path().length();
 * }</pre>
 *
 * @param path where it runs
 * @param from the place at which it begins
 * @param to the place at which it ends
 */
public record LaidLine(Path path, Place from, Place to) {
    /** Refuses null. */
    public LaidLine {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}

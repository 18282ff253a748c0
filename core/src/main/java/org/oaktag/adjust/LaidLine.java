package org.oaktag.adjust;

import org.oaktag.geometry.Path;

/**
 * A cutting line as it lies on one piece, from outline to outline. Immutable.
 *
 * @param path where it runs
 * @param from the place at which it begins
 * @param to the place at which it ends
 */
public record LaidLine(Path path, Place from, Place to) {

    /** Returns the straight distance between its ends, in millimetres. */
    double chord() {
        return path.start().distanceTo(path.end());
    }
}

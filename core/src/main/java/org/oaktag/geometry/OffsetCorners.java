package org.oaktag.geometry;

import java.util.Collections;
import java.util.List;

/**
 * How the parallels of the edges of an outline are joined.
 *
 * @param within the style of the corners within an edge
 * @param after the style of the corner after each edge
 * @param allCarried whether the greater of two different distances is carried round every corner between them, and not
 *     only inner ones
 */
record OffsetCorners(CornerStyle within, List<CornerStyle> after, boolean allCarried) {
    /** A turn to the left of less than this, radians, makes no inner corner. */
    private static final double INNER = 1e-6;

    OffsetCorners {
        after = List.copyOf(after);
    }

    static OffsetCorners all(CornerStyle style, int count) {
        return new OffsetCorners(style, Collections.nCopies(count, style), false);
    }

    OffsetCorners withAllCarried() {
        return new OffsetCorners(within, after, true);
    }

    /** Tells whether the greater distance is carried round a corner, from its parallel up to the other. */
    boolean carries(Vector arriving, Vector leaving, double d1, double d2) {
        return d1 != d2 && (allCarried || arriving.angleTo(leaving) < -INNER);
    }
}

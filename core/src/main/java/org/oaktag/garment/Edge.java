package org.oaktag.garment;

import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * A named run of the outline of a piece, on the seam line. Immutable.
 *
 * <pre>{@code
 * Edge armhole = front.edge(ARMHOLE);
 * armhole.length();            // along the seam line
 * armhole.path().turning();    // how far it turns, radians
 * }</pre>
 *
 * @param name the edge's name, unique in its piece
 * @param path where it runs, in millimetres, clockwise round the piece
 */
public record Edge(Name name, Path path) {

    /** Returns the length of the edge along the seam line. */
    public Length length() {
        return Length.mm(path.length());
    }

    /** Returns the edge of the same name that runs along another path. */
    public Edge withPath(Path other) {
        return new Edge(name, other);
    }
}

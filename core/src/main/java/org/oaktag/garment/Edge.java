package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A named run of the outline of a piece, on the seam line. Immutable.
 *
 * <pre>{@code
 * Edge armhole = front.edge(ARMHOLE);
 * armhole.length();            // along the seam line
 * armhole.path().turning();    // how far it turns, radians
 * Edge.straight(HEM, Point.of(300, 400), Point.of(0, 400)).length();   // = 300.0 mm
 * }</pre>
 *
 * @param name the edge's name, unique in its piece
 * @param path where it runs, in millimetres, clockwise round the piece
 */
public record Edge(Name name, Path path) {
    /** Refuses null. */
    public Edge {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(path, "path");
    }

    /** Returns an edge that runs straight from one point to another. */
    public static Edge straight(Name name, Point from, Point to) {
        return new Edge(name, Path.of(new Line(from, to)));
    }

    /** Returns the length of the edge along the seam line. */
    public Length length() {
        return Length.mm(path.length());
    }

    /** Returns the edge of the same name that runs along another path. */
    public Edge withPath(Path other) {
        return new Edge(name, other);
    }
}

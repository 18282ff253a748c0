package org.oaktag.garment;

import java.util.Objects;
import java.util.Optional;
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
 * @param finish what becomes of it where no seam takes it in
 * @param aspect the side of the garment at which it lies, where its piece lies at neither or at the other; empty where
 *     it lies as its piece does
 */
public record Edge(Name name, Path path, EdgeFinish finish, Optional<Aspect> aspect) {
    /** Refuses null. */
    public Edge {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(finish, "finish");
        Objects.requireNonNull(aspect, "aspect");
    }

    /** Makes an edge that lies as its piece does. */
    public Edge(Name name, Path path, EdgeFinish finish) {
        this(name, path, finish, Optional.empty());
    }

    /** Makes a plain edge. */
    public Edge(Name name, Path path) {
        this(name, path, EdgeFinish.PLAIN);
    }

    /** Returns a plain edge that runs straight from one point to another. */
    public static Edge straight(Name name, Point from, Point to) {
        return new Edge(name, Path.of(new Line(from, to)));
    }

    /** Returns the length of the edge along the seam line. */
    public Length length() {
        return Length.mm(path.length());
    }

    /** Returns what the edge is called where it is told apart: {@code "face, front"}, but {@code "cap front"}. */
    public String label() {
        return aspect.map(Aspect::label)
                .filter(side -> !name.value().endsWith(" " + side))
                .map(side -> name + ", " + side)
                .orElse(name.value());
    }

    /** Returns the edge of the same name, finish and aspect that runs along another path. */
    public Edge withPath(Path other) {
        return new Edge(name, other, finish, aspect);
    }

    /** Returns the edge under another name. */
    public Edge withName(Name other) {
        return new Edge(other, path, finish, aspect);
    }

    /** Returns the edge with another finish. */
    public Edge withFinish(EdgeFinish other) {
        return new Edge(name, path, other, aspect);
    }

    /** Returns the edge at that side of the garment, wherever its piece lies. */
    public Edge withAspect(Aspect other) {
        return new Edge(name, path, finish, Optional.of(Objects.requireNonNull(other, "other")));
    }
}

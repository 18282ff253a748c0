package org.oaktag.garment;

import java.util.Objects;

/**
 * What is watched from step to step: the length of an edge, a finished measure, or the error of a seam. A closed family
 * of immutable values.
 *
 * <pre>{@code
 * Watched neckline = Watched.edge(EdgeRef.of(FRONT, NECKLINE));
 * neckline.text();   // = front.neckline
 * }</pre>
 */
public sealed interface Watched {

    /** Returns what a table writes: {@code "front.neckline"}, {@code "chest girth"}, {@code "seam side, error"}. */
    String text();

    /** Returns the length of an edge. */
    static Watched edge(EdgeRef edge) {
        return new OfEdge(edge);
    }

    /** Returns the finished measure of that name. */
    static Watched measure(Name measure) {
        return new OfMeasure(measure);
    }

    /** Returns by how much the sides of the seam of that name differ from what its rule wants. */
    static Watched seam(Name seam) {
        return new OfSeam(seam);
    }

    /** Tells whether it is the error of a seam, which is nothing that a maker would measure. */
    default boolean isOfSeam() {
        return this instanceof OfSeam;
    }

    /**
     * The length of an edge.
     *
     * @param edge the edge
     */
    record OfEdge(EdgeRef edge) implements Watched {
        /** Refuses null. */
        public OfEdge {
            Objects.requireNonNull(edge, "edge");
        }

        @Override
        public String text() {
            return edge.id();
        }

        @Override
        public String toString() {
            return text();
        }
    }

    /**
     * A finished measure.
     *
     * @param measure its name
     */
    record OfMeasure(Name measure) implements Watched {
        /** Refuses null. */
        public OfMeasure {
            Objects.requireNonNull(measure, "measure");
        }

        @Override
        public String text() {
            return measure.value();
        }

        @Override
        public String toString() {
            return text();
        }
    }

    /**
     * The error of a seam.
     *
     * @param seam its name
     */
    record OfSeam(Name seam) implements Watched {
        /** Refuses null. */
        public OfSeam {
            Objects.requireNonNull(seam, "seam");
        }

        @Override
        public String text() {
            return "seam " + seam + ", error";
        }

        @Override
        public String toString() {
            return text();
        }
    }
}

package org.oaktag.garment;

import java.util.List;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** Something that can be measured on the pieces of a garment. A closed family of immutable values. */
public sealed interface Quantity {

    /**
     * Measures it, in millimetres.
     *
     * @throws org.oaktag.PatternException if the garment lacks a piece or an edge
     */
    double of(Garment garment);

    /**
     * A corner of a piece.
     *
     * @param edge the edge
     * @param end which end of it
     */
    record Corner(EdgeRef edge, End end) {
        /** Returns the corner at an end of an edge. */
        public static Corner at(Name piece, Name edge, End end) {
            return new Corner(EdgeRef.of(piece, edge), end);
        }

        Point point(Garment garment) {
            return garment.piece(edge.piece()).corner(edge.edge(), end);
        }
    }

    /** The length of an edge along the seam line. */
    record EdgeLength(EdgeRef edge) implements Quantity {
        @Override
        public double of(Garment garment) {
            return garment.piece(edge.piece()).path(edge.edge()).length();
        }
    }

    /** The straight distance between two corners of one piece. */
    record Distance(Corner from, Corner to) implements Quantity {
        @Override
        public double of(Garment garment) {
            return from.point(garment).distanceTo(to.point(garment));
        }
    }

    /** The distance of a corner from the straight line through the ends of an edge, such as a centre on the fold. */
    record FromEdge(Corner corner, EdgeRef edge) implements Quantity {
        @Override
        public double of(Garment garment) {
            Path line = garment.piece(edge.piece()).path(edge.edge());
            Vector along = line.end().minus(line.start()).unit();
            return Math.abs(along.cross(corner.point(garment).minus(line.start())));
        }
    }

    /** The distance of a corner from the straight line through two others, where no single edge runs along that line. */
    record FromLine(Corner corner, Corner from, Corner to) implements Quantity {
        @Override
        public double of(Garment garment) {
            Point start = from.point(garment);
            Vector along = to.point(garment).minus(start).unit();
            return Math.abs(along.cross(corner.point(garment).minus(start)));
        }
    }

    /** How far one corner lies below another on paper, along y; negative where it lies above. */
    record Drop(Corner from, Corner to) implements Quantity {
        @Override
        public double of(Garment garment) {
            return to.point(garment).y() - from.point(garment).y();
        }
    }

    /**
     * How far the lowest point of some edges lies below a corner on paper, along y: the length of a sleeve over its
     * middle, where the hem hangs lower than at the underarm.
     *
     * @param from the corner
     * @param to the edges, at least one
     */
    record Fall(Corner from, List<EdgeRef> to) implements Quantity {
        /** Copies the list. */
        public Fall {
            to = List.copyOf(to);
        }

        @Override
        public double of(Garment garment) {
            double lowest = to.stream()
                    .mapToDouble(edge -> garment.piece(edge.piece())
                            .path(edge.edge())
                            .bounds()
                            .maxY())
                    .max()
                    .orElseThrow();
            return lowest - from.point(garment).y();
        }
    }
}

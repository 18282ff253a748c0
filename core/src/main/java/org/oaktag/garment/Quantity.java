package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.oaktag.PatternException;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Something that can be measured on the pieces of a garment. A closed family of immutable values.
 *
 * <pre>{@code
 * Quantity armhole = Quantity.lengthOf(FRONT, ARMHOLE);
 * double length = armhole.of(block);   // mm, on this garment
 * }</pre>
 */
public sealed interface Quantity {

    /**
     * Measures it, in millimetres.
     *
     * @throws PatternException if the garment lacks a piece or an edge, or what is measured is not there
     */
    double of(Garment garment);

    /**
     * Measures it, in millimetres; empty where a garment with all its pieces and edges has nothing to measure there, as
     * a cropped top has no waist.
     *
     * @throws PatternException if the garment lacks a piece or an edge
     */
    default OptionalDouble taken(Garment garment) {
        return OptionalDouble.of(of(garment));
    }

    /** Returns the length of an edge of a piece. */
    static Quantity lengthOf(Name piece, Name edge) {
        return new EdgeLength(EdgeRef.of(piece, edge));
    }

    /** Returns the corners that it is measured from and to; none where edges alone tell. */
    List<Corner> corners();

    /** Returns the quantity measured from and to other corners, each in the place of its own; itself where it has none. */
    default Quantity withCorners(UnaryOperator<Corner> to) {
        Objects.requireNonNull(to, "to");
        return this;
    }

    /** Returns the edges that it is measured along or to. */
    List<EdgeRef> edges();

    /** Returns the pieces whose whole outlines it depends on; none where corners and edges tell. */
    default List<Name> outlines() {
        return List.of();
    }

    /**
     * A corner of a piece.
     *
     * @param edge the edge
     * @param end which end of it
     */
    record Corner(EdgeRef edge, End end) {
        /** Refuses null. */
        public Corner {
            Objects.requireNonNull(edge, "edge");
            Objects.requireNonNull(end, "end");
        }

        /** Returns the corner at an end of an edge. */
        public static Corner at(Name piece, Name edge, End end) {
            return new Corner(EdgeRef.of(piece, edge), end);
        }

        /**
         * Returns where it lies on its piece.
         *
         * @throws PatternException if the garment lacks the piece or the edge
         */
        public Point point(Garment garment) {
            return garment.piece(piece()).corner(edge.edge(), end);
        }

        private Name piece() {
            return edge.piece();
        }
    }

    /** The length of an edge along the seam line. */
    record EdgeLength(EdgeRef edge) implements Quantity {
        /** Refuses null. */
        public EdgeLength {
            Objects.requireNonNull(edge, "edge");
        }

        @Override
        public List<Corner> corners() {
            return List.of();
        }

        @Override
        public List<EdgeRef> edges() {
            return List.of(edge);
        }

        @Override
        public double of(Garment garment) {
            return garment.piece(edge.piece()).path(edge.edge()).length();
        }
    }

    /** The straight distance between two corners of one piece. */
    record Distance(Corner from, Corner to) implements Quantity {
        /** Refuses null. */
        public Distance {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public Distance withCorners(UnaryOperator<Corner> to) {
            return new Distance(to.apply(from), to.apply(this.to));
        }

        @Override
        public List<Corner> corners() {
            return List.of(from, to);
        }

        @Override
        public List<EdgeRef> edges() {
            return List.of();
        }

        @Override
        public double of(Garment garment) {
            return from.point(garment).distanceTo(to.point(garment));
        }
    }

    /** The distance of a corner from the straight line through the ends of an edge, such as a centre on the fold. */
    record FromEdge(Corner corner, EdgeRef edge) implements Quantity {
        /** Refuses null. */
        public FromEdge {
            Objects.requireNonNull(corner, "corner");
            Objects.requireNonNull(edge, "edge");
        }

        @Override
        public FromEdge withCorners(UnaryOperator<Corner> to) {
            return new FromEdge(to.apply(corner), edge);
        }

        @Override
        public List<Corner> corners() {
            return List.of(corner);
        }

        @Override
        public List<EdgeRef> edges() {
            return List.of(edge);
        }

        @Override
        public double of(Garment garment) {
            Path line = garment.piece(edge.piece()).path(edge.edge());
            Vector along = line.end().minus(line.start()).unit();
            return Math.abs(along.cross(corner.point(garment).minus(line.start())));
        }
    }

    /**
     * The distance of a corner from the straight line through two others, where no single edge runs along that line.
     */
    record FromLine(Corner corner, Corner from, Corner to) implements Quantity {
        /** Refuses null. */
        public FromLine {
            Objects.requireNonNull(corner, "corner");
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public FromLine withCorners(UnaryOperator<Corner> to) {
            return new FromLine(to.apply(corner), to.apply(from), to.apply(this.to));
        }

        @Override
        public List<Corner> corners() {
            return List.of(corner, from, to);
        }

        @Override
        public List<EdgeRef> edges() {
            return List.of();
        }

        @Override
        public double of(Garment garment) {
            Point start = from.point(garment);
            Point end = to.point(garment);
            if (start.equals(end)) {
                throw PatternException.of(
                        "distance from a line",
                        "must have two corners that differ to draw the line through",
                        from + " and " + to,
                        "");
            }
            Vector along = end.minus(start).unit();
            return Math.abs(along.cross(corner.point(garment).minus(start)));
        }
    }

    /** How far one corner lies below another on paper, along y; negative where it lies above. */
    record Drop(Corner from, Corner to) implements Quantity {
        /** Refuses null. */
        public Drop {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
        }

        @Override
        public Drop withCorners(UnaryOperator<Corner> to) {
            return new Drop(to.apply(from), to.apply(this.to));
        }

        @Override
        public List<Corner> corners() {
            return List.of(from, to);
        }

        @Override
        public List<EdgeRef> edges() {
            return List.of();
        }

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
            Objects.requireNonNull(from, "from");
            to = List.copyOf(to);
        }

        @Override
        public Fall withCorners(UnaryOperator<Corner> to) {
            return new Fall(to.apply(from), this.to);
        }

        @Override
        public List<Corner> corners() {
            return List.of(from);
        }

        @Override
        public List<EdgeRef> edges() {
            return to;
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

    /**
     * How wide a garment is along a level: from a centre, square to it, to the first of some edges that the level
     * meets, less what is cut out between, such as a dart. The crossings are those with the curves themselves. There is
     * nothing to measure where the level does not meet both the centre and one of the edges.
     *
     * @param from one end of the centre
     * @param to its other end
     * @param through a point of the level
     * @param edges where the width ends, such as a side seam
     * @param pieces the pieces between; those that are parts of one piece lie as they lay in the whole
     */
    record Across(Corner from, Corner to, Point through, List<EdgeRef> edges, List<Name> pieces) implements Quantity {
        /** Copies the lists. */
        public Across {
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(to, "to");
            Objects.requireNonNull(through, "through");
            edges = List.copyOf(edges);
            pieces = List.copyOf(pieces);
        }

        /** Returns the width that ends at this edge too, where the level meets it first. */
        public Across endingAt(EdgeRef edge) {
            List<EdgeRef> all = new ArrayList<>(edges);
            all.add(edge);
            return new Across(from, to, through, all, pieces);
        }

        @Override
        public Across withCorners(UnaryOperator<Corner> to) {
            return new Across(to.apply(from), to.apply(this.to), through, edges, pieces);
        }

        @Override
        public List<Corner> corners() {
            return List.of(from, to);
        }

        /** Returns the pieces that it goes across. */
        @Override
        public List<Name> outlines() {
            return pieces;
        }

        @Override
        public double of(Garment garment) {
            return taken(garment)
                    .orElseThrow(() -> PatternException.of(
                            "width across "
                                    + String.join(
                                            " and ",
                                            pieces.stream().map(Name::value).toList()),
                            "must be taken at a level that meets the centre and one of "
                                    + edges.stream().map(EdgeRef::id).toList(),
                            "a level that misses them",
                            "lengthen the piece first"));
        }

        @Override
        public OptionalDouble taken(Garment garment) {
            return LevelWidth.of(garment, this);
        }
    }
}

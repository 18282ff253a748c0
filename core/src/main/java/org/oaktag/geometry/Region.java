package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * A part of the plane within curved outlines, with holes, perhaps in several pieces, perhaps empty; and what two of
 * them have together, in common, and one without the other. Immutable and thread-safe.
 *
 * <pre>{@code
 * Outline cloth = Outline.of(Path.polyline(
 *         Point.of(0, 0), Point.of(100, 0), Point.of(100, 80), Point.of(0, 80), Point.of(0, 0)));
 * Outline patch = cloth.transformed(Transform.translation(60, 40));
 * Region.of(cloth).intersection(Region.of(patch)).area();   // = 1600.0
 * Region.of(cloth).union(Region.of(patch)).area();          // = 14400.0
 * }</pre>
 *
 * <p><b>Edges.</b> Nothing is flattened. Each edge is a piece of a curve of one of the outlines that the region was
 * made of, and says which, and from where to where; where it was not cut it has the curve's own ends, else its ends are
 * moved by up to a millionth of a millimetre to where they meet. Of edges that run along each other one is kept, that
 * of the first region. Outer loops run clockwise on the table, holes the other way.
 *
 * <p><b>Limits.</b> Places within 1e-6 mm are one, curves that stay within 1e-7 mm of each other run along each other,
 * and a loop that is not as thick as that on the average is left out; more where the coordinates are so large that a
 * {@code double} is coarser.
 *
 * <p><b>Cost.</b> For n curves that meet k times O((n + k) log n), if long runs of the outlines lie apart.
 *
 * @param loops the outer loops and the holes, in the order in which their first curves came
 */
public record Region(List<Loop> loops) {
    /** The region without a point. */
    public static final Region EMPTY = new Region(List.of());

    /** Copies the list. */
    public Region {
        loops = List.copyOf(loops);
    }

    /**
     * A piece of a curve of an outline that a region was made of.
     *
     * @param curve the piece, as it runs round the region
     * @param source the outline that it comes from
     * @param index which of the outline's curves
     * @param from the parameter on that curve at which the piece starts
     * @param to the parameter at which it ends; less than {@code from} if it runs against the curve
     */
    public record Edge(Curve curve, Outline source, int index, double from, double to) {
        /** Refuses null. */
        public Edge {
            Objects.requireNonNull(curve, "curve");
            Objects.requireNonNull(source, "source");
        }
    }

    /** A closed run of edges. */
    public static final class Loop {
        private final List<Edge> edges;

        /** Joined on first use. Two threads may both do it; they come to the same outline, and either may be kept. */
        private volatile @Nullable Outline outline;

        /**
         * Copies the list.
         *
         * @param edges in order, the region on the right of each
         */
        public Loop(List<Edge> edges) {
            this.edges = List.copyOf(edges);
        }

        /** Returns the edges in order, the region on the right of each. */
        public List<Edge> edges() {
            return edges;
        }

        /** Returns the closed path of the edges. */
        public Outline outline() {
            Outline joined = outline;
            if (joined == null) {
                joined = Outline.of(Path.of(edges.stream().map(Edge::curve).toList()));
                outline = joined;
            }
            return joined;
        }

        /** Tells whether the region lies around this loop and not in it. */
        public boolean isHole() {
            return outline().signedArea() < 0;
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return this == other || (other instanceof Loop loop && edges.equals(loop.edges));
        }

        @Override
        public int hashCode() {
            return edges.hashCode();
        }

        @Override
        public String toString() {
            return "Loop" + edges;
        }
    }

    /**
     * A connected piece of a region; two that touch in single points are two.
     *
     * @param outer what it lies in
     * @param holes what is cut out of it
     */
    public record Piece(Loop outer, List<Loop> holes) {
        /** Copies the list. */
        public Piece {
            Objects.requireNonNull(outer, "outer");
            holes = List.copyOf(holes);
        }
    }

    /** Returns what the outline winds round. */
    public static Region of(Outline outline) {
        return of(List.of(outline), WindingRule.NON_ZERO);
    }

    /**
     * Returns what is inside by the rule, the windings of all the outlines added; they may cross themselves and each
     * other.
     */
    public static Region of(List<Outline> outlines, WindingRule rule) {
        Objects.requireNonNull(rule, "rule");
        return new Region(Overlay.of(List.copyOf(outlines), rule));
    }

    /** Returns what is in this region or the other. */
    public Region union(Region other) {
        return new Region(Overlay.of(this, other, (mine, theirs) -> mine || theirs));
    }

    /** Returns what is in both regions. */
    public Region intersection(Region other) {
        return new Region(Overlay.of(this, other, (mine, theirs) -> mine && theirs));
    }

    /** Returns what is in this region and not in the other. */
    public Region minus(Region other) {
        return new Region(Overlay.of(this, other, (mine, theirs) -> mine && !theirs));
    }

    /** Returns what is in one of the regions and not in both: in two versions of a piece, what changed. */
    public Region symmetricDifference(Region other) {
        return new Region(Overlay.of(this, other, (mine, theirs) -> mine != theirs));
    }

    public boolean isEmpty() {
        return loops.isEmpty();
    }

    /** Returns the area, mm², that of the holes taken off; exact to rounding and to what the limits leave of edges. */
    public double area() {
        return loops.stream().mapToDouble(loop -> loop.outline().signedArea()).sum();
    }

    /** Tells whether the point lies in the region or on its edge, as {@link Outline#contains} does. */
    public boolean contains(Point point) {
        int winding = 0;
        for (Loop loop : loops) {
            Outline outline = loop.outline();
            if (outline.isOnLine(point)) {
                return true;
            }
            winding += outline.windingNumber(point);
        }
        return winding != 0;
    }

    /** Returns the connected pieces, each with its holes, in the order of their outer loops. */
    public List<Piece> pieces() {
        List<Loop> outers = loops.stream().filter(loop -> !loop.isHole()).toList();
        List<List<Loop>> holes = new ArrayList<>();
        outers.forEach(outer -> holes.add(new ArrayList<>()));
        for (Loop loop : loops) {
            if (loop.isHole()) {
                holes.get(innermostRound(loop, outers)).add(loop);
            }
        }
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < outers.size(); i++) {
            pieces.add(new Piece(outers.get(i), holes.get(i)));
        }
        return pieces;
    }

    /** The least outer loop that holds a place beside the hole, off its line, on which the region lies. */
    private static int innermostRound(Loop hole, List<Loop> outers) {
        Curve curve = hole.edges().get(0).curve();
        Point beside =
                curve.pointAt(0.5).plus(curve.directionAt(0.5).rightNormal().times(Overlay.BESIDE));
        int innermost = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outers.size(); i++) {
            Outline outline = outers.get(i).outline();
            if (outline.area() < least && outline.windingNumber(beside) != 0) {
                innermost = i;
                least = outline.area();
            }
        }
        return innermost;
    }
}

package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.oaktag.PatternException;

/**
 * One side of a seam: the edges that make it up, in the order in which they are sewn.
 *
 * <pre>{@code
 * SeamSide neckline = SeamSide.along(FRONT, NECKLINE).then(SeamSide.along(BACK, NECKLINE));
 * neckline.runs().size();   // = 2
 * }</pre>
 *
 * <p>Both sides of a seam run in the same direction along the garment. As outlines run clockwise, an edge often has to
 * be followed backwards, which its {@link Run} says. Immutable.
 *
 * @param runs the edges, at least one
 */
public record SeamSide(List<Run> runs) {

    /**
     * An edge followed forwards, from its start to its end, or backwards.
     *
     * @param edge which edge of which piece
     * @param backwards whether it is followed from its end to its start
     */
    public record Run(EdgeRef edge, boolean backwards) {
        /** Refuses null. */
        public Run {
            Objects.requireNonNull(edge, "edge");
        }

        /** Returns the corner of the piece at which this run begins or ends. */
        public End cornerAt(End end) {
            return backwards ? end.opposite() : Objects.requireNonNull(end, "end");
        }
    }

    /**
     * Copies the list.
     *
     * @throws PatternException if there is no edge
     */
    public SeamSide {
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw PatternException.of("side of a seam", "must have at least one edge", "none", "");
        }
    }

    /** Returns a side of one edge that is followed forwards. */
    public static SeamSide along(Name piece, Name edge) {
        return new SeamSide(List.of(new Run(EdgeRef.of(piece, edge), false)));
    }

    /** Returns a side of one edge that is followed backwards. */
    public static SeamSide against(Name piece, Name edge) {
        return new SeamSide(List.of(new Run(EdgeRef.of(piece, edge), true)));
    }

    /** Returns this side with another run sewn after it. */
    public SeamSide then(SeamSide next) {
        List<Run> all = new ArrayList<>(runs);
        all.addAll(next.runs);
        return new SeamSide(all);
    }

    /** Returns its edges, in the order in which they are sewn. */
    public List<EdgeRef> edges() {
        return runs.stream().map(Run::edge).toList();
    }

    /** Returns the run at one end of the side. */
    public Run runAt(End end) {
        return Objects.requireNonNull(end, "end") == End.START ? runs.get(0) : runs.get(runs.size() - 1);
    }

    /** Tells whether the edge is part of this side. */
    public boolean has(EdgeRef edge) {
        Objects.requireNonNull(edge, "edge");
        for (Run run : runs) {
            if (run.edge().equals(edge)) {
                return true;
            }
        }
        return false;
    }

    /** Returns this side with one piece's edges taken from another piece, or of another name. */
    public SeamSide replacing(EdgeRef edge, EdgeRef other) {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(other, "other");
        return new SeamSide(runs.stream()
                .map(run -> run.edge().equals(edge) ? new Run(other, run.backwards()) : run)
                .toList());
    }

    /** Returns the edges as they are written in a table: {@code "front.neckline back.neckline"}. */
    public String text() {
        return runs.stream().map(run -> run.edge().id()).collect(Collectors.joining(" "));
    }
}

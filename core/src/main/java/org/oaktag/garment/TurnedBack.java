package org.oaktag.garment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;

/**
 * The runs of a piece that are turned back and stitched down. Neighbours of one finish are one run, as both halves of a
 * hem that was unfolded are, and where a seam takes in one of them, the run is sewn and not turned back.
 */
final class TurnedBack {

    private final Piece piece;
    private final Predicate<EdgeRef> sewn;

    TurnedBack(Piece piece, Predicate<EdgeRef> sewn) {
        this.piece = piece;
        this.sewn = sewn;
    }

    /** Returns every edge that is turned back, in alphabetical order. */
    List<EdgeRef> edges() {
        return piece.edges().stream()
                .map(this::ref)
                .filter(edge -> !with(edge).isEmpty())
                .sorted()
                .toList();
    }

    /** Returns the run of which an edge is part, clockwise; empty where it is not turned back. */
    List<EdgeRef> with(EdgeRef edge) {
        Edge own = piece.edge(edge.edge());
        if (!isTurnable(own)) {
            return List.of();
        }
        List<EdgeRef> run = new ArrayList<>();
        for (Edge at = own; isOneWith(own, at) && !run.contains(ref(at)); at = piece.before(at.name())) {
            run.add(ref(at));
        }
        Collections.reverse(run);
        for (Edge at = piece.after(own.name());
                isOneWith(own, at) && !run.contains(ref(at));
                at = piece.after(at.name())) {
            run.add(ref(at));
        }
        return run.stream().anyMatch(sewn) ? List.of() : List.copyOf(run);
    }

    private boolean isOneWith(Edge own, Edge other) {
        return isTurnable(other) && other.finish() == own.finish();
    }

    private boolean isTurnable(Edge edge) {
        return edge.finish().isTurnedBack() && !piece.isOnFold(edge.name());
    }

    private EdgeRef ref(Edge edge) {
        return EdgeRef.of(piece.name(), edge.name());
    }
}

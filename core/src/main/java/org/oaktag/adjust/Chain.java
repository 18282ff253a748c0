package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/** The outline of a piece opened at an edge. */
final class Chain {

    private Chain() {}

    /** Returns the other edges, clockwise from the end of this one to its start. */
    static List<Edge> without(Piece piece, Name edge) {
        List<Edge> chain = new ArrayList<>();
        for (Edge next = piece.after(edge); !next.name().equals(edge); next = piece.after(next.name())) {
            chain.add(next);
        }
        return chain;
    }
}

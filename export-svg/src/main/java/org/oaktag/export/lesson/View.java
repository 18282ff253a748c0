package org.oaktag.export.lesson;

import java.util.List;
import java.util.stream.Stream;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Bounds;

/**
 * A piece as a lesson shows it. Immutable.
 *
 * <pre>{@code
 * View neckline = View.closeUp(FRONT, NECKLINE, SHOULDER);   // large, and no more than those edges
 * }</pre>
 *
 * @param piece the piece
 * @param edges the edges that a close-up shows, or none for the whole piece
 */
public record View(Name piece, List<Name> edges) {

    /** Copies the list. */
    public View {
        edges = List.copyOf(edges);
    }

    /** Returns the view of a whole piece. */
    public static View of(Name piece) {
        return new View(piece, List.of());
    }

    /** Returns a close-up of some edges of a piece. */
    public static View closeUp(Name piece, Name... edges) {
        return new View(piece, List.of(edges));
    }

    /** Returns the boxes of what is looked at in a piece of that name. */
    Stream<Bounds> bounds(Piece seen) {
        return edges.isEmpty()
                ? Stream.of(seen.outline().bounds())
                : edges.stream()
                        .filter(seen::hasEdge)
                        .map(edge -> seen.path(edge).bounds());
    }
}

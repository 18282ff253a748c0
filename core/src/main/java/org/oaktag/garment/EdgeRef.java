package org.oaktag.garment;

import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * Says which edge of which piece, written {@code "front.neckline"}. Immutable.
 *
 * <pre>{@code
 * EdgeRef neckline = EdgeRef.of(FRONT, NECKLINE);
 * neckline.id();                      // = front.neckline
 * block.edge(neckline).length();
 * }</pre>
 *
 * @param piece the piece's name
 * @param edge the edge's name
 */
public record EdgeRef(Name piece, Name edge) implements Comparable<EdgeRef> {
    /** Refuses null. */
    public EdgeRef {
        Objects.requireNonNull(piece, "piece");
        Objects.requireNonNull(edge, "edge");
    }

    /** Returns the reference to an edge of a piece. */
    public static EdgeRef of(Name piece, Name edge) {
        return new EdgeRef(piece, edge);
    }

    /** Returns the reference as an identifier, {@code "sleeve.cap-front"}. */
    public String id() {
        return piece.hyphenated() + "." + edge.hyphenated();
    }

    /** By hand: what was measured and sewn is looked for by it all the time. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof EdgeRef ref && edge.equals(ref.edge) && piece.equals(ref.piece));
    }

    @Override
    public int hashCode() {
        return 31 * piece.hashCode() + edge.hashCode();
    }

    @Override
    public int compareTo(EdgeRef other) {
        int byPiece = piece.compareTo(other.piece);
        return byPiece != 0 ? byPiece : edge.compareTo(other.edge);
    }

    @Override
    public String toString() {
        return id();
    }
}

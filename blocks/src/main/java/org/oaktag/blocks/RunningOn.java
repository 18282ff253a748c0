package org.oaktag.blocks;

import java.util.Set;
import java.util.TreeSet;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Vector;

/**
 * The edges of a piece that go straight on where another ends and are sewn to nothing, as the other half of a neckline
 * that was unfolded.
 */
final class RunningOn {

    /** The sine of the turn, 5 degrees, up to which an edge runs on. */
    private static final double STRAIGHT = Math.sin(Math.toRadians(5));

    private final Piece piece;
    private final Set<EdgeRef> sewn;

    RunningOn(Piece piece, Set<EdgeRef> sewn) {
        this.piece = piece;
        this.sewn = sewn;
    }

    /**
     * Returns the edges beside an edge of this name that run on from it, or none where it is not there or sewn itself.
     */
    Set<EdgeRef> from(Name edge) {
        Set<EdgeRef> found = new TreeSet<>();
        if (piece.hasEdge(edge) && !sewn.contains(EdgeRef.of(piece.name(), edge))) {
            Edge at = piece.edge(edge);
            while (found.size() < piece.edges().size() && isOneWith(at, piece.after(at.name()))) {
                at = piece.after(at.name());
                found.add(EdgeRef.of(piece.name(), at.name()));
            }
            at = piece.edge(edge);
            while (found.size() < piece.edges().size() && isOneWith(piece.before(at.name()), at)) {
                at = piece.before(at.name());
                found.add(EdgeRef.of(piece.name(), at.name()));
            }
        }
        return found;
    }

    private boolean isOneWith(Edge edge, Edge next) {
        Vector arriving = edge.path().endDirection();
        Vector leaving = next.path().startDirection();
        boolean straight = arriving.dot(leaving) > 0 && Math.abs(arriving.cross(leaving)) <= STRAIGHT;
        return straight && isFree(edge) && isFree(next);
    }

    private boolean isFree(Edge edge) {
        return !sewn.contains(EdgeRef.of(piece.name(), edge.name())) && !piece.isOnFold(edge.name());
    }
}

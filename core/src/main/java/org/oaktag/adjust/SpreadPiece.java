package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/**
 * A piece that was slashed and spread, and by how much it grew. Immutable.
 *
 * <pre>{@code
 * SlashAndSpread flare = slashAndSpread(
 *         FRONT,
 *         Slash.of(LineAcross.straight(Place.share(HEM, 0.5), Place.share(SHOULDER, 0.5)),
 *                 Spread.hinged(End.END, degrees(4))));
 * SpreadPiece made = flare.spread(front);
 * made.added(SHOULDER);   // = 0.0 mm
 * made.added(HEM);        // the chord that the hinge opens
 * }</pre>
 *
 * @param piece the piece
 * @param added by how much each edge is longer than it was, in the order of the edges
 * @param addedArea by how much its area is greater, in square millimetres
 */
public record SpreadPiece(Piece piece, List<Added> added, double addedArea) {

    /** Less than this, in millimetres, is rounding. */
    static final double ROUNDING = 1e-6;

    /**
     * By how much an edge is longer.
     *
     * @param edge the edge
     * @param by by how much; zero where it is as long as it was
     */
    public record Added(Name edge, Length by) {
        /** Refuses null. */
        public Added {
            Objects.requireNonNull(edge, "edge");
            Objects.requireNonNull(by, "by");
        }
    }

    /** Copies the list. */
    public SpreadPiece {
        Objects.requireNonNull(piece, "piece");
        added = List.copyOf(added);
    }

    static SpreadPiece of(Piece before, Piece after) {
        List<Added> added = new ArrayList<>();
        for (Edge edge : after.edges()) {
            double by = edge.path().length() - before.path(edge.name()).length();
            added.add(new Added(edge.name(), Math.abs(by) <= ROUNDING ? Length.ZERO : Length.mm(by)));
        }
        return new SpreadPiece(
                after, added, after.outline().signedArea() - before.outline().signedArea());
    }

    /** Returns by how much an edge is longer; zero for one that does not exist. */
    public Length added(Name edge) {
        Objects.requireNonNull(edge, "edge");
        return added.stream()
                .filter(each -> each.edge().equals(edge))
                .map(Added::by)
                .findFirst()
                .orElse(Length.ZERO);
    }
}

package org.oaktag.adjust;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.oaktag.PatternException;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;

/**
 * Says what becomes of edges that no seam takes in: turned back and stitched down, neatened, or left raw on purpose.
 * The seam line stays as it is; what is cut beyond it follows from the finish. Immutable.
 *
 * <pre>{@code
 * Garment bare = block.adjust(leaveRaw(EdgeRef.of(FRONT, NECKLINE), EdgeRef.of(BACK, NECKLINE)));
 * bare.rawEdges();   // = []
 * }</pre>
 *
 * @param edges the edges, at least one
 * @param finish what becomes of them
 */
record FinishEdges(List<EdgeRef> edges, EdgeFinish finish) implements Step {

    /**
     * Copies the list.
     *
     * @throws PatternException if there is no edge
     */
    FinishEdges {
        Objects.requireNonNull(finish, "finish");
        edges = List.copyOf(edges);
        if (edges.isEmpty()) {
            throw PatternException.of("edges to be finished", "must be at least one", "none", "");
        }
    }

    @Override
    public String name() {
        return switch (finish) {
                    case RAW -> "leave raw";
                    case TURNED_BACK, TURNED_BACK_SQUARE -> "turn back";
                    case NEATENED -> "neaten";
                    case PLAIN, CLOSED, TAKEN_IN, FASTENED, SLASHED -> "finish";
                }
                + " the "
                + edges.stream().map(edge -> edge.piece() + " " + edge.edge()).collect(Collectors.joining(" and the "));
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if there is no such edge, it lies on a fold, or a seam takes it in; the message names
     *     the seam
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Garment finished = garment;
        for (EdgeRef edge : edges) {
            Piece piece = finished.piece(edge.piece());
            piece.edge(edge.edge());
            if (piece.isOnFold(edge.edge())) {
                throw refused(edge, "the fold of the cloth");
            }
            for (Seam seam : garment.seams()) {
                if (seam.has(edge)) {
                    throw refused(edge, "seam '" + seam.name() + "' along it");
                }
            }
            finished = finished.withPiece(piece.withFinish(edge.edge(), finish));
        }
        return Reshaped.of(finished, rule(garment));
    }

    private Note rule(Garment garment) {
        String lengths = edges.stream()
                .map(edge -> edge.piece() + " " + edge.edge() + " "
                        + garment.edge(edge).length().text())
                .collect(Collectors.joining(", "));
        String how = switch (finish) {
            case RAW -> " is cut at the seam line and left: a knit does not fray, a woven does";
            case TURNED_BACK, TURNED_BACK_SQUARE -> " is turned back and stitched down";
            case NEATENED -> " is kept from fraying by itself";
            case PLAIN -> " is there to be sewn";
            case CLOSED, TAKEN_IN, FASTENED, SLASHED ->
                " is " + finish.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
        return Note.rule(lengths + how);
    }

    private static PatternException refused(EdgeRef edge, String given) {
        return PatternException.of(
                "finish of the " + edge.piece() + "'s " + edge.edge(),
                "needs an edge that nothing takes in",
                given,
                "");
    }
}

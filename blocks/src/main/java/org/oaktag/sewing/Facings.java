package org.oaktag.sewing;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;

/** The loose edges that are neatened, in one over the seams between facings. Used up by one order. */
final class Facings {

    private final List<FreeEdges> left;
    private final List<Name> facings;

    private Facings(List<FreeEdges> left, List<Name> facings) {
        this.left = left;
        this.facings = facings;
    }

    static Facings of(Garment garment, Glue glue) {
        List<List<EdgeRef>> runs = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            piece.edges().stream()
                    .filter(edge -> edge.finish() == EdgeFinish.NEATENED)
                    .map(edge -> EdgeRef.of(piece.name(), edge.name()))
                    .filter(edge -> garment.seams().stream().noneMatch(seam -> seam.has(edge)))
                    .forEach(edge -> runs.add(List.of(edge)));
        }
        return new Facings(
                new ArrayList<>(FreeEdges.joined(garment, glue, runs)),
                runs.stream().map(run -> run.get(0).piece()).distinct().toList());
    }

    /** Returns, once, the loose edges of what a seam sews to something that is no facing. */
    List<FreeEdges> before(Seam seam) {
        List<Name> pieces = seam.edges().stream().map(EdgeRef::piece).toList();
        if (facings.containsAll(pieces)) {
            return List.of();
        }
        List<FreeEdges> now = left.stream()
                .filter(loose -> loose.edges().stream().anyMatch(edge -> pieces.contains(edge.piece())))
                .toList();
        left.removeAll(now);
        return now;
    }
}

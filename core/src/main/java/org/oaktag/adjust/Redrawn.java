package org.oaktag.adjust;

import java.util.List;
import java.util.Map;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;

/** A piece with some of its edges drawn anew; the notches on these go to the nearest point of what is drawn. */
final class Redrawn {

    private Redrawn() {}

    static Piece of(Piece piece, Map<Name, Path> redrawn) {
        List<CarriedNotches.Carried> carried = piece.notches().stream()
                .map(notch -> CarriedNotches.Carried.of(piece, notch, piece.pointOf(notch)))
                .toList();
        List<Edge> edges = piece.edges().stream()
                .map(edge -> edge.withPath(redrawn.getOrDefault(edge.name(), edge.path())))
                .toList();
        return piece.withNotches(List.of()).withEdges(edges).withNotches(CarriedNotches.on(carried, edges, List::of));
    }
}

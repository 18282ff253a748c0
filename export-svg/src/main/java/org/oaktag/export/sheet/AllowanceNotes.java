package org.oaktag.export.sheet;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/** Says in words how wide the allowances of a garment are. */
final class AllowanceNotes {

    private AllowanceNotes() {}

    /**
     * Returns the widths that occur but zero, each with the names of the edges that have it; an edge goes by its piece
     * too where another of its name is cut with another width.
     */
    static SortedMap<Length, String> of(Garment garment, Allowances allowances) {
        Map<Name, Set<Length>> widthsOf = new HashMap<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                widthsOf.computeIfAbsent(edge.name(), name -> new HashSet<>()).add(allowances.on(piece, edge.name()));
            }
        }
        SortedMap<Length, SortedSet<String>> edges = new TreeMap<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                boolean alike = widthsOf.getOrDefault(edge.name(), Set.of()).size() == 1;
                edges.computeIfAbsent(allowances.on(piece, edge.name()), width -> new TreeSet<>())
                        .add(alike ? edge.name().value() : piece.name() + " " + edge.name());
            }
        }
        edges.remove(Length.ZERO);
        SortedMap<Length, String> widths = new TreeMap<>();
        edges.forEach((width, names) ->
                widths.put(width, width.equals(allowances.standard()) ? "all other seams" : String.join(", ", names)));
        return widths;
    }
}

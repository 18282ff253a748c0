package org.oaktag.export.sheet;

import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Edge;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Length;

/** Says in words how wide the allowances of a garment are. */
final class AllowanceNotes {

    private AllowanceNotes() {}

    /** Returns the widths that occur but zero, each with the names of the edges that have it. */
    static SortedMap<Length, String> of(Garment garment, Allowances allowances) {
        SortedMap<Length, SortedSet<Name>> edges = new TreeMap<>();
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                edges.computeIfAbsent(allowances.on(piece, edge.name()), width -> new TreeSet<>())
                        .add(edge.name());
            }
        }
        edges.remove(Length.ZERO);
        SortedMap<Length, String> widths = new TreeMap<>();
        edges.forEach((width, names) -> widths.put(
                width,
                width.equals(allowances.standard())
                        ? "all other seams"
                        : names.stream().map(Name::value).collect(Collectors.joining(", "))));
        return widths;
    }
}

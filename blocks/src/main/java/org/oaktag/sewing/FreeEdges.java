package org.oaktag.sewing;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * The runs of free edges that are finished in one go, over the seams between them: front and back hem are one hem.
 *
 * @param edges the edges, those of one piece clockwise
 * @param inTheRound whether the run closes on itself
 */
record FreeEdges(List<EdgeRef> edges, boolean inTheRound) {

    /** A longer name of an operation would not be read. */
    private static final int LONGEST_NAME = 50;

    /** A run of one piece and the corners at which it begins and ends. */
    private record Run(List<EdgeRef> edges, Corner begin, Corner end) {

        static Run of(Garment garment, List<EdgeRef> edges) {
            Piece piece = garment.piece(edges.get(0).piece());
            Edge after = piece.after(edges.get(edges.size() - 1).edge());
            return new Run(
                    edges, new Corner(piece.name(), edges.get(0).edge()), new Corner(piece.name(), after.name()));
        }

        /** Returns the edges next to the run: the one before it and the one after it. */
        List<Edge> neighbours(Garment garment) {
            Piece piece = garment.piece(begin.piece());
            return List.of(piece.before(begin.edge()), piece.edge(end.edge()));
        }
    }

    FreeEdges {
        edges = List.copyOf(edges);
    }

    /**
     * Returns the runs that are finished in one, each once, in the order of the garment.
     *
     * @param runs the runs of single pieces
     */
    static List<FreeEdges> joined(Garment garment, Glue glue, List<List<EdgeRef>> runs) {
        List<Run> left = new ArrayList<>(
                runs.stream().map(edges -> Run.of(garment, edges)).toList());
        List<FreeEdges> joined = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Run> row = new ArrayList<>(List.of(left.remove(0)));
            for (int i = 0; i < row.size(); i++) {
                Run at = row.get(i);
                List<Run> next =
                        left.stream().filter(other -> meets(glue, at, other)).toList();
                row.addAll(next);
                left.removeAll(next);
            }
            List<EdgeRef> edges =
                    row.stream().flatMap(run -> run.edges().stream()).toList();
            joined.add(new FreeEdges(edges, row.stream().allMatch(run -> isClosed(garment, run))));
        }
        return joined;
    }

    private static boolean meets(Glue glue, Run one, Run other) {
        for (Corner from : List.of(one.begin, one.end)) {
            for (Corner to : List.of(other.begin, other.end)) {
                if (glue.between(from, to, Set.of()).isPresent()) {
                    return true;
                }
            }
        }
        return false;
    }

    /** At either end the run goes on over a seam, or into its other half at the fold of the cloth. */
    private static boolean isClosed(Garment garment, Run run) {
        Piece piece = garment.piece(run.begin.piece());
        return run.neighbours(garment).stream()
                .map(Edge::name)
                .allMatch(end -> piece.isOnFold(end)
                        || garment.seams().stream().anyMatch(seam -> seam.has(EdgeRef.of(piece.name(), end))));
    }

    /** Returns what the run is called: its edges, or the name that all of them bear where that is too long. */
    Name name() {
        EdgeRef first = edges.stream().min(EdgeRef::compareTo).orElseThrow();
        if (edges.stream().allMatch(edge -> edge.piece().equals(first.piece()))) {
            return named(first);
        }
        String all = edges.stream().map(edge -> named(edge).value()).collect(Collectors.joining(" and "));
        return all.length() <= LONGEST_NAME ? Name.of(all) : first.edge();
    }

    private static Name named(EdgeRef edge) {
        return edge.piece().with(edge.edge().value());
    }
}

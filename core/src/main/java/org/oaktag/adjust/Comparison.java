package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Change;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.measure.Length;

/**
 * Finds what a step did by measuring the garment before and after it.
 *
 * <pre>{@code
 * List<Moved> moved = Comparison.moved(block, top);
 * moved.get(0).quantity();   // = front.neckline
 * }</pre>
 */
public final class Comparison {

    /** A smaller movement than this is rounding. */
    private static final Length MOVED = Length.mm(1e-6);

    private Comparison() {}

    /**
     * Returns the change from one garment to the next: every edge length, finished measure and seam error that moved
     * by more than a millionth of a millimetre, in the order of the garment after, what is gone last.
     *
     * @param step the step's name
     * @param amounts what it was asked for
     * @param before the garment before it
     * @param reshaped what it made
     */
    public static Change change(String step, List<Amount> amounts, Garment before, Reshaped reshaped) {
        Garment after = reshaped.garment();
        return new Change(
                step,
                amounts,
                reshaped.notes(),
                reshaped.dimensions(),
                moved(before, after),
                redrawn(before, after),
                after.walkSeamsSince(before).seams().stream()
                        .filter(seam -> !seam.isTrue())
                        .map(seam -> seam.seam().name() + ": " + seam.mend().orElse(""))
                        .toList());
    }

    /**
     * Returns what is not the same in two garments, such as the block and what became of it, or two variants on one body:
     * every edge length, finished measure and seam error that differs by more than a millionth of a millimetre, in the
     * order of the second, what only the first has last.
     */
    public static List<Moved> moved(Garment before, Garment after) {
        List<Moved> moved = new ArrayList<>();
        addEdges(before, after, moved);
        compare(measures(before), measures(after), moved);
        compare(
                errors(before.walkSeams().seams()),
                errors(after.walkSeamsSince(before).seams()),
                moved);
        return List.copyOf(moved);
    }

    /** Returns every edge length and finished measure of a garment as the change that made it out of nothing. */
    public static Change beginning(String step, List<Amount> amounts, Reshaped made) {
        Garment nothing = Garment.of("", made.garment().wearer(), List.of(), List.of(), List.of());
        return change(step, amounts, nothing, made);
    }

    /** Compares the edges of those pieces that are not the same in both garments. */
    private static void addEdges(Garment before, Garment after, List<Moved> moved) {
        for (Piece piece : after.pieces()) {
            Optional<Piece> old = before.findPiece(piece.name());
            if (!old.equals(Optional.of(piece))) {
                for (Edge edge : piece.edges()) {
                    add(piece, edge, old.flatMap(each -> length(each, edge.name())), length(edge), moved);
                }
            }
        }
        for (Piece piece : before.pieces()) {
            Optional<Piece> now = after.findPiece(piece.name());
            if (!now.equals(Optional.of(piece))) {
                for (Edge edge : piece.edges()) {
                    if (now.filter(each -> each.hasEdge(edge.name())).isEmpty()) {
                        add(piece, edge, length(edge), Optional.empty(), moved);
                    }
                }
            }
        }
    }

    private static void add(
            Piece piece, Edge edge, Optional<Length> before, Optional<Length> after, List<Moved> moved) {
        boolean stays = before.isPresent() && after.isPresent() && before.get().isCloseTo(after.get(), MOVED);
        if (!stays) {
            moved.add(new Moved(EdgeRef.of(piece.name(), edge.name()).id(), before, after));
        }
    }

    private static Optional<Length> length(Edge edge) {
        return Optional.of(edge.length());
    }

    private static Optional<Length> length(Piece piece, Name edge) {
        return piece.hasEdge(edge) ? length(piece.edge(edge)) : Optional.empty();
    }

    private static void compare(Map<String, Length> before, Map<String, Length> after, List<Moved> moved) {
        after.forEach((quantity, now) -> {
            Length old = before.get(quantity);
            if (old == null || !now.isCloseTo(old, MOVED)) {
                moved.add(new Moved(quantity, Optional.ofNullable(old), Optional.of(now)));
            }
        });
        before.forEach((quantity, old) -> {
            if (!after.containsKey(quantity)) {
                moved.add(new Moved(quantity, Optional.of(old), Optional.empty()));
            }
        });
    }

    private static Map<String, Length> measures(Garment garment) {
        Map<String, Length> lengths = new LinkedHashMap<>();
        for (FinishedMeasure measure : garment.measures()) {
            measure.taken(garment)
                    .ifPresent(length -> lengths.put(measure.name().value(), length));
        }
        return lengths;
    }

    private static Map<String, Length> errors(List<WalkedSeam> seams) {
        Map<String, Length> errors = new LinkedHashMap<>();
        for (WalkedSeam walked : seams) {
            Length error = walked.error();
            errors.put(
                    "seam " + walked.seam().name() + ", error",
                    error.isCloseTo(Length.ZERO, MOVED) ? Length.ZERO : error);
        }
        return errors;
    }

    private static List<Name> redrawn(Garment before, Garment after) {
        return after.pieces().stream()
                .filter(piece -> !isPieceOf(before, piece))
                .map(Piece::name)
                .toList();
    }

    private static boolean isPieceOf(Garment garment, Piece piece) {
        return garment.findPiece(piece.name()).equals(Optional.of(piece));
    }
}

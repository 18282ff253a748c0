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

/** Finds what a step did by measuring the garment before and after it. */
public final class Comparison {

    /** A smaller movement than this, in millimetres, is rounding. */
    private static final double MOVED = 1e-6;

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
        List<WalkedSeam> walkedBefore = before.walkSeams().seams();
        List<WalkedSeam> walkedAfter = after.walkSeams().seams();
        List<Moved> moved = new ArrayList<>();
        compare(edgesOtherThanIn(before, after), edgesOtherThanIn(after, before), moved);
        compare(measures(before), measures(after), moved);
        compare(errors(walkedBefore), errors(walkedAfter), moved);
        return new Change(
                step,
                amounts,
                reshaped.notes(),
                reshaped.dimensions(),
                moved,
                redrawn(before, after),
                walkedAfter.stream()
                        .filter(seam -> !seam.isTrue())
                        .map(seam -> seam.seam().name() + ": " + seam.mend().orElse(""))
                        .toList());
    }

    /** Returns every edge length and finished measure of a garment as the change that made it out of nothing. */
    public static Change beginning(String step, List<Amount> amounts, Reshaped made) {
        Garment nothing = Garment.of("", made.garment().wearer(), List.of(), List.of(), List.of());
        return change(step, amounts, nothing, made);
    }

    private static void compare(Map<String, Double> before, Map<String, Double> after, List<Moved> moved) {
        after.forEach((quantity, now) -> {
            Double old = before.get(quantity);
            if (old == null) {
                moved.add(new Moved(quantity, Optional.empty(), Optional.of(Length.mm(now))));
            } else if (Math.abs(now - old) > MOVED) {
                moved.add(new Moved(quantity, Optional.of(Length.mm(old)), Optional.of(Length.mm(now))));
            }
        });
        before.forEach((quantity, old) -> {
            if (!after.containsKey(quantity)) {
                moved.add(new Moved(quantity, Optional.of(Length.mm(old)), Optional.empty()));
            }
        });
    }

    /** Returns the edge lengths of those pieces of a garment that are not the same in the other. */
    private static Map<String, Double> edgesOtherThanIn(Garment garment, Garment other) {
        Map<String, Double> lengths = new LinkedHashMap<>();
        for (Piece piece : garment.pieces()) {
            if (isPieceOf(other, piece)) {
                continue;
            }
            for (Edge edge : piece.edges()) {
                lengths.put(
                        EdgeRef.of(piece.name(), edge.name()).id(), edge.path().length());
            }
        }
        return lengths;
    }

    private static Map<String, Double> measures(Garment garment) {
        Map<String, Double> lengths = new LinkedHashMap<>();
        for (FinishedMeasure measure : garment.measures()) {
            lengths.put(measure.name().value(), measure.of(garment).mm());
        }
        return lengths;
    }

    private static Map<String, Double> errors(List<WalkedSeam> seams) {
        Map<String, Double> errors = new LinkedHashMap<>();
        for (WalkedSeam walked : seams) {
            double error = walked.error().mm();
            errors.put("seam " + walked.seam().name() + ", error", Math.abs(error) <= MOVED ? 0 : error);
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

package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Piece;

/**
 * What a step that moves a neckline, a shoulder or an armhole says of a line that it leaves no longer fair: which, from
 * what amount on, and what helps. Such a line is drawn all the same; nothing is repaired silently.
 */
final class FairLines {

    /** No seam allowance and no band lies flat round a tighter bend of a neckline, in millimetres (common practice). */
    static final double LEAST_NECK_RADIUS = 12;

    /** An armhole that bends more tightly than this, in millimetres, hooks. */
    static final double LEAST_ARMHOLE_RADIUS = 14;

    private static final int HALVINGS = 12;

    private FairLines() {}

    /** A step taken by a share of its amount. */
    interface Part {

        /** Returns the garment after the step was taken by a share, 0 to 1, of its amount. */
        Garment at(double share);
    }

    /**
     * Adds a caution for each line that was fair before the step and is not any more.
     *
     * @param part the step by a share of its amount
     * @param amount the amount at a share, as text
     */
    static Reshaped told(Garment before, Reshaped done, Part part, DoubleFunction<String> amount) {
        return told(before, done, (name, edge) -> "from " + amount.apply(from(part, name, edge)) + " on ");
    }

    /** Adds a caution for each line that was fair before a step without an amount and is not any more. */
    static Reshaped told(Garment before, Reshaped done) {
        return told(before, done, (name, edge) -> "");
    }

    private static Reshaped told(Garment before, Reshaped done, BiFunction<Name, Name, String> since) {
        List<Note> notes = new ArrayList<>(done.notes());
        for (Name name : TopBody.HALVES) {
            for (Name edge : List.of(TopEdges.NECKLINE, TopEdges.ARMHOLE)) {
                if (moved(before, done.garment(), name, edge)
                        && !isFair(done.garment(), name, edge)
                        && isFair(before, name, edge)) {
                    notes.add(caution(done.garment().piece(name), edge, since.apply(name, edge)));
                }
            }
        }
        return new Reshaped(done.garment(), notes, done.dimensions());
    }

    private static boolean moved(Garment before, Garment after, Name name, Name edge) {
        return before.hasPiece(name)
                && after.hasPiece(name)
                && before.piece(name).hasEdge(edge)
                && after.piece(name).hasEdge(edge)
                && !before.piece(name).path(edge).equals(after.piece(name).path(edge));
    }

    private static boolean isFair(Garment garment, Name name, Name edge) {
        Fairness line = Fairness.of(garment.piece(name), edge);
        return line.changes() == 0 && line.leastRadius() >= least(edge);
    }

    private static double least(Name edge) {
        return edge.equals(TopEdges.NECKLINE) ? LEAST_NECK_RADIUS : LEAST_ARMHOLE_RADIUS;
    }

    /** The share of the amount from which on the line is not fair. */
    private static double from(Part part, Name name, Name edge) {
        double fair = 0;
        double unfair = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double tried = (fair + unfair) / 2;
            if (isFairAt(part, tried, name, edge)) {
                fair = tried;
            } else {
                unfair = tried;
            }
        }
        return unfair;
    }

    private static boolean isFairAt(Part part, double share, Name name, Name edge) {
        try {
            return isFair(part.at(share), name, edge);
        } catch (PatternException refused) {
            return true;
        }
    }

    private static Note caution(Piece piece, Name edge, String since) {
        Fairness line = Fairness.of(piece, edge);
        String how = line.changes() > 0
                ? "bends both ways"
                : String.format(Locale.ROOT, "bends to a radius of %.1f mm", line.leastRadius());
        String helps = edge.equals(TopEdges.NECKLINE)
                ? "lower it at the centre"
                : "lower the armhole, or give more ease at the bust";
        return Note.caution(since + "the " + edge + " of the " + piece.name() + " " + how
                + ", and no curve ruler lies to it: take the step by less, or " + helps);
    }
}

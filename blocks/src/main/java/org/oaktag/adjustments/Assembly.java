package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.oaktag.blocks.TopChecks;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FitCheck;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;

/**
 * A garment while parts are fitted to it: what is put on replaces what bears its name. The garment is made once, when
 * all is in place, as a seam must never lack its edges. Not thread-safe; lives within one step.
 */
final class Assembly {

    private final Garment garment;
    private final List<Piece> pieces;
    private final List<Seam> seams;
    private final List<FinishedMeasure> measures;
    private List<FitCheck> checks;

    private Assembly(Garment garment) {
        this.garment = garment;
        this.pieces = new ArrayList<>(garment.pieces());
        this.seams = new ArrayList<>(garment.seams());
        this.measures = new ArrayList<>(garment.measures());
        this.checks = garment.checks();
    }

    /** Begins with all that the garment has. */
    static Assembly of(Garment garment) {
        return new Assembly(garment);
    }

    /** Takes pieces off, as far as they are there, and undoes every seam that joins them. */
    Assembly takeOff(Set<Name> names) {
        pieces.removeIf(piece -> names.contains(piece.name()));
        seams.removeIf(seam -> seam.edges().stream().anyMatch(edge -> names.contains(edge.piece())));
        return this;
    }

    Assembly put(Piece piece) {
        for (int i = 0; i < pieces.size(); i++) {
            if (pieces.get(i).name().equals(piece.name())) {
                pieces.set(i, piece);
                return this;
            }
        }
        pieces.add(piece);
        return this;
    }

    Assembly sew(Seam seam) {
        for (int i = 0; i < seams.size(); i++) {
            if (seams.get(i).name().equals(seam.name())) {
                seams.set(i, seam);
                return this;
            }
        }
        seams.add(seam);
        return this;
    }

    Assembly measure(FinishedMeasure measure) {
        for (int i = 0; i < measures.size(); i++) {
            if (measures.get(i).name().equals(measure.name())) {
                measures.set(i, measure);
                return this;
            }
        }
        measures.add(measure);
        return this;
    }

    /** Undoes a seam, if it is there. */
    Assembly undo(Name seam) {
        seams.removeIf(each -> each.name().equals(seam));
        return this;
    }

    /** Leaves out a finished measure, if it is there. */
    Assembly leaveOut(Name measure) {
        measures.removeIf(each -> each.name().equals(measure));
        return this;
    }

    /** Counts a quantity into a finished measure, if the garment has that measure and does not count it yet. */
    Assembly lengthen(Name measure, double times, Quantity quantity) {
        FinishedMeasure.Term term = FinishedMeasure.times(times, quantity);
        measures.replaceAll(
                each -> each.name().equals(measure) && !each.terms().contains(term) ? with(each, term) : each);
        return this;
    }

    /** Asks a question of the fit, in the place of the one of its name, if any. */
    Assembly check(FitCheck check) {
        checks = TopChecks.with(checks, check);
        return this;
    }

    Garment done() {
        Garment made = garment.with(pieces, seams, measures);
        return checks.equals(made.checks()) ? made : made.withChecks(checks);
    }

    private static FinishedMeasure with(FinishedMeasure measure, FinishedMeasure.Term term) {
        List<FinishedMeasure.Term> terms = new ArrayList<>(measure.terms());
        terms.add(term);
        return new FinishedMeasure(measure.name(), terms, measure.body());
    }
}

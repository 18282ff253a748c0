package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.FinishedMeasure.Term;
import org.oaktag.garment.FitCheck;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Across;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.Distance;
import org.oaktag.garment.Quantity.EdgeLength;
import org.oaktag.garment.Seam;

/**
 * A skirt while it is finished: what is put on replaces what bears its name, and the garment is made once, when all is
 * in place, as a seam must never lack its edges. Not thread-safe; lives within one step.
 */
final class Finishing {

    private final Garment garment;
    private final List<Piece> pieces;
    private final List<Seam> seams;
    private final List<FinishedMeasure> measures;
    private final List<FitCheck> checks;

    private Finishing(Garment garment) {
        this.garment = garment;
        this.pieces = new ArrayList<>(garment.pieces());
        this.seams = new ArrayList<>(garment.seams());
        this.measures = new ArrayList<>(garment.measures());
        this.checks = new ArrayList<>(garment.checks());
    }

    static Finishing of(Garment garment) {
        return new Finishing(garment);
    }

    /** Takes pieces off, as far as they are there, and undoes every seam that joins them. */
    Finishing takeOff(Set<Name> names) {
        pieces.removeIf(piece -> names.contains(piece.name()));
        seams.removeIf(seam -> seam.edges().stream().anyMatch(edge -> names.contains(edge.piece())));
        return this;
    }

    Finishing put(Piece piece) {
        return in(pieces, Piece::name, piece);
    }

    Finishing sew(Seam seam) {
        return in(seams, Seam::name, seam);
    }

    /** Sews a seam before another one, if that is there: of two that could be sewn next, the earlier comes first. */
    Finishing sewBefore(Name other, Seam seam) {
        sew(seam);
        for (int i = 0; i < seams.size(); i++) {
            if (seams.get(i).name().equals(other)) {
                seams.remove(seam);
                seams.add(i, seam);
                return this;
            }
        }
        return this;
    }

    Finishing measure(FinishedMeasure measure) {
        return in(measures, FinishedMeasure::name, measure);
    }

    Finishing check(FitCheck check) {
        return in(checks, FitCheck::name, check);
    }

    private <T> Finishing in(List<T> all, Function<T, Name> nameOf, T thing) {
        for (int i = 0; i < all.size(); i++) {
            if (nameOf.apply(all.get(i)).equals(nameOf.apply(thing))) {
                all.set(i, thing);
                return this;
            }
        }
        all.add(thing);
        return this;
    }

    /** Has every measure that is taken at one corner taken at another, which lies in its place. */
    Finishing cornerAt(Corner old, Corner other) {
        return taking(quantity -> quantity.withCorners(corner -> corner.equals(old) ? other : corner));
    }

    private Finishing taking(UnaryOperator<Quantity> other) {
        measures.replaceAll(measure -> measure.taking(other));
        return this;
    }

    /**
     * Has what was taken at the centre of a half, which is no edge any more, taken between the ends of its waist and its
     * hem there.
     */
    Finishing centreBetweenEnds(Name half) {
        Corner hem = Corner.at(half, EdgeNames.HEM, End.END);
        Corner waist = Corner.at(half, SkirtNames.WAIST, End.START);
        return cornerAt(Corner.at(half, EdgeNames.CENTRE, End.START), hem)
                .cornerAt(Corner.at(half, EdgeNames.CENTRE, End.END), waist)
                .lengthAs(EdgeRef.of(half, EdgeNames.CENTRE), new Distance(waist, hem));
    }

    /** Has the length of an edge measured in another way. */
    Finishing lengthAs(EdgeRef edge, Quantity... instead) {
        measures.replaceAll(measure -> new FinishedMeasure(
                measure.name(),
                measure.terms().stream()
                        .flatMap(term -> term.quantity().equals(new EdgeLength(edge))
                                ? Arrays.stream(instead).map(quantity -> FinishedMeasure.times(term.times(), quantity))
                                : Stream.of(term))
                        .toList(),
                measure.body()));
        return this;
    }

    /** Has a width that ends at an edge end at a further one too, which was part of it. */
    Finishing endingAt(EdgeRef edge, EdgeRef further) {
        return taking(
                quantity -> quantity instanceof Across across && across.edges().contains(edge)
                        ? across.endingAt(further)
                        : quantity);
    }

    /** Counts a quantity into a measure, if the garment has that measure. */
    Finishing lengthen(Name name, double times, Quantity quantity) {
        measures.replaceAll(measure -> {
            if (!measure.name().equals(name)) {
                return measure;
            }
            List<Term> terms = new ArrayList<>(measure.terms());
            terms.add(FinishedMeasure.times(times, quantity));
            return new FinishedMeasure(measure.name(), terms, measure.body());
        });
        return this;
    }

    Garment done() {
        return garment.with(pieces, seams, measures).withChecks(checks);
    }
}

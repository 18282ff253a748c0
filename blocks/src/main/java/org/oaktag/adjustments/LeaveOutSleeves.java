package org.oaktag.adjustments;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Note;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Seam;

/**
 * Leaves out the sleeves that are set in, with all that is sewn to them and with their measures. The armholes stay as
 * they are drawn, without the notches of the sleeve, and are raw until they are finished. Immutable.
 *
 * <pre>{@code
 * Garment tank = block.adjust(sleeveless())
 *         .adjust(armholeBand(mm(20), rib));
 * }</pre>
 */
record LeaveOutSleeves() implements Step {

    @Override
    public String name() {
        return "leave out the sleeves";
    }

    @Override
    public List<Amount> amounts() {
        return List.of();
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if there is no sleeve that is set into an armhole
     */
    @Override
    public Reshaped reshape(Garment garment) {
        if (!garment.hasPiece(TopNames.SLEEVE)) {
            throw PatternException.of(
                    "sleeves to be left out",
                    "must be set into an armhole",
                    "the pieces "
                            + garment.pieces().stream().map(each -> each.name()).toList(),
                    "leave them out before they become one with the body");
        }
        Set<Name> gone = sleeve(garment);
        Assembly assembly = Assembly.of(garment).takeOff(gone);
        for (Name body : List.of(TopNames.FRONT, TopNames.BACK)) {
            assembly.put(TopPieces.body(garment, body, TopEdges.ARMHOLE).withoutNotchesOn(TopEdges.ARMHOLE));
        }
        garment.measures().stream()
                .filter(measure -> isTakenOn(measure, gone))
                .forEach(measure -> assembly.leaveOut(measure.name()));
        Note raw = Note.rule("the armholes are left as they were drawn, "
                + garment.finished(TopNames.ARMHOLE_GIRTH).text() + " round, and raw: band, face or turn them back");
        Note room = Note.rule("an armhole without a sleeve is usually raised by 10 to 20 mm and the shoulder drawn in"
                + " (common practice): take those steps before this one");
        return Reshaped.of(assembly.done(), raw, room);
    }

    /** Returns the sleeve and what hangs on it by seams other than those of the armhole. */
    private static Set<Name> sleeve(Garment garment) {
        Set<Name> found = new HashSet<>(Set.of(TopNames.SLEEVE));
        boolean grown = true;
        while (grown) {
            grown = false;
            for (Seam seam : garment.seams()) {
                List<Name> pieces = seam.edges().stream().map(EdgeRef::piece).toList();
                if (pieces.stream().anyMatch(found::contains)
                        && !pieces.contains(TopNames.FRONT)
                        && !pieces.contains(TopNames.BACK)) {
                    grown |= found.addAll(pieces);
                }
            }
        }
        return found;
    }

    private static boolean isTakenOn(FinishedMeasure measure, Set<Name> gone) {
        return measure.terms().stream()
                .map(FinishedMeasure.Term::quantity)
                .flatMap(LeaveOutSleeves::pieces)
                .anyMatch(gone::contains);
    }

    private static Stream<Name> pieces(Quantity quantity) {
        return Stream.of(
                        quantity.edges().stream().map(EdgeRef::piece),
                        quantity.corners().stream().map(corner -> corner.edge().piece()),
                        quantity.outlines().stream())
                .flatMap(each -> each);
    }
}

package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.CapBand;
import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.CapShare;
import org.oaktag.blocks.SleeveCap;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * Draws the sleeve cap anew so that it walks round the armhole with an ease. The lower part of each half is the
 * armhole's own underarm curve, a smooth crown joins them, and each half is solved against its own half
 * of the armhole, so that the top lands on the shoulder seam. What is solved is the width, at the height that the cap
 * has or at one that is asked for: a lower cap makes a wider sleeve. Where the height that it has cannot be kept, or
 * leaves the {@linkplain CapBand band} of its kind of sleeve, the cap is raised or lowered to the nearest that does,
 * and the step says so; a height that is asked for is kept or refused, with a caution where it leaves the band.
 *
 * <pre>{@code
 * Garment fitted = block.adjust(lowerArmhole(mm(12))).adjust(fitCapToArmhole(mm(6)));
 * fitted.walkSeams().seam(FRONT_ARMHOLE_SEAM).isTrue();   // = true
 * }</pre>
 *
 * @param ease by how much the cap is longer than the armhole, all of it above the notches; 0 to 20 mm for knits
 *     (common practice)
 * @param height the height that the cap shall have, or empty for the one that it has
 */
record FitCap(Length ease, Optional<Length> height) implements CapStep {

    private static final double LEAST_EASE = -10;
    private static final double MOST_EASE = 60;
    private static final double MOVED = 1e-6;

    /**
     * Checks the ease.
     *
     * @throws PatternException if it is not -10 to 60 mm
     */
    public FitCap {
        Objects.requireNonNull(height, "height");
        if (ease.mm() < LEAST_EASE || ease.mm() > MOST_EASE) {
            throw PatternException.of(
                    "cap ease", "must be -10 to 60 mm (knits 0 to 20, tailored wovens 25 to 40)", ease.text(), "");
        }
    }

    @Override
    public CapStep atHeight(Length wanted) {
        return new FitCap(ease, Optional.of(wanted));
    }

    @Override
    public String name() {
        return "fit the sleeve cap to the armhole";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>(List.of(Amount.of("ease", ease)));
        height.ifPresent(wanted -> amounts.add(Amount.of("height", wanted)));
        return amounts;
    }

    @Override
    public Reshaped reshape(Garment garment) {
        CapFit fit = CapFit.of(
                TopPieces.withArmhole(garment, TopNames.FRONT).path(TopEdges.ARMHOLE),
                TopPieces.withArmhole(garment, TopNames.BACK).path(TopEdges.ARMHOLE),
                ease);
        SleeveCap cap = SleeveCap.of(TopPieces.sleeveWithCap(garment));
        CapFit.Solved solved = height.isPresent()
                ? fit.atHeight(height.get().mm())
                : fit.nearest(CapShare.of(garment, cap.height()).nearestInBand().mm());
        Garment fitted = NewCap.on(SleeveCap.easedBy(garment, ease), fit, solved);
        return new Reshaped(fitted, notes(garment, fitted, fit, cap, solved), List.of(NewCap.width(fitted, solved)));
    }

    private List<Note> notes(Garment before, Garment after, CapFit fit, SleeveCap cap, CapFit.Solved solved) {
        List<Note> notes = new ArrayList<>();
        notes.add(Note.rule("cap = armhole "
                + after.finished(TopNames.ARMHOLE_GIRTH).text() + " + ease " + ease.text() + " = "
                + Length.mm(fit.frontLength() + fit.backLength()).text()
                + ", each half against its own: at a height of "
                + Length.mm(solved.height()).text() + " the sleeve is "
                + Length.mm(solved.front()).text() + " + "
                + Length.mm(solved.back()).text() + " = "
                + Length.mm(solved.width()).text() + " wide (it was "
                + before.finished(TopNames.SLEEVE_WIDTH).text() + ")"));
        notes.add(Note.rule("the ease lies above the notches, none under the arm"));
        double raised = solved.height() - cap.height().mm();
        if (height.isEmpty() && Math.abs(raised) > MOVED) {
            notes.add(Note.done(CapShare.of(before, cap.height()).text() + "; it was "
                    + (raised > 0 ? "raised" : "lowered") + " by "
                    + Length.mm(Math.abs(raised)).text() + ", and the sleeve is as much "
                    + (raised > 0 ? "longer" : "shorter")));
        }
        return notes;
    }
}

package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.SleeveCap;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.measure.Length;

/**
 * Draws a gathered cap: each half is so many times as long as its armhole. Below the notches the cap lies on the
 * armhole as before, so that all the gathers lie above them; the sleeve widens towards the cap, and its hem keeps its
 * width. {@link Sleeves#fitCapToArmhole} draws a plain cap again.
 *
 * <pre>{@code
 * Garment puffed = block.adjust(puffCap(1.3));
 * }</pre>
 *
 * @param ratio how many times as long as the armhole the cap is, 1.05 to 3
 * @param height the height that the cap shall have, or empty for the one that it has: a higher cap stands up in a
 *     rounder puff, a wider sleeve falls in folds
 */
record PuffCap(double ratio, Optional<Length> height) implements CapStep {

    private static final double LEAST = 1.05;
    private static final double MOST = 3;

    /**
     * Checks the ratio.
     *
     * @throws PatternException if it is not 1.05 to 3
     */
    public PuffCap {
        Objects.requireNonNull(height, "height");
        if (!(ratio >= LEAST && ratio <= MOST)) {
            throw PatternException.of("gathered cap", "must be 1.05 to 3 times as long as the armhole", "" + ratio, "");
        }
    }

    @Override
    public CapStep atHeight(Length wanted) {
        return new PuffCap(ratio, Optional.of(wanted));
    }

    @Override
    public String name() {
        return "puff the sleeve at its cap";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(Amount.of("gathered", String.format(Locale.ROOT, "%.2f to 1", ratio)));
        height.ifPresent(wanted -> amounts.add(Amount.of("height", wanted)));
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a cap of that height cannot be drawn; the message gives the heights that work
     */
    @Override
    public Reshaped reshape(Garment garment) {
        CapFit plain = CapFit.of(
                TopPieces.withArmhole(garment, TopNames.FRONT).path(TopEdges.ARMHOLE),
                TopPieces.withArmhole(garment, TopNames.BACK).path(TopEdges.ARMHOLE),
                Length.ZERO);
        CapFit fit = new CapFit(plain.front(), plain.back(), plain.frontLength() * ratio, plain.backLength() * ratio);
        Length wanted = height.orElseGet(
                () -> SleeveCap.of(TopPieces.sleeveWithCap(garment)).height());
        CapFit.Solved solved = fit.atHeight(wanted.mm());
        Garment puffed = NewCap.on(gathered(garment), fit, solved);
        Note rule = Note.rule(String.format(
                Locale.ROOT,
                "cap = %.2f x armhole %s = %s, the gathers above the notches: at a height of %s the sleeve is %s wide"
                        + " (it was %s)",
                ratio,
                puffed.finished(TopNames.ARMHOLE_GIRTH).text(),
                Length.mm(fit.frontLength() + fit.backLength()).text(),
                wanted.text(),
                Length.mm(solved.width()).text(),
                garment.finished(TopNames.SLEEVE_WIDTH).text()));
        return new Reshaped(puffed, List.of(rule), List.of(NewCap.width(puffed, solved)));
    }

    private Garment gathered(Garment garment) {
        EdgeRef front = EdgeRef.of(TopNames.SLEEVE, TopEdges.CAP_FRONT);
        EdgeRef back = EdgeRef.of(TopNames.SLEEVE, TopEdges.CAP_BACK);
        return garment.withSeams(garment.seams().stream()
                .map(seam -> seam.has(front) || seam.has(back)
                        ? new Seam(
                                seam.name(),
                                seam.a(),
                                seam.b(),
                                SeamRule.gathered(ratio),
                                seam.smoothAt(),
                                "puff the sleeve again, or fit a plain cap")
                        : seam)
                .toList());
    }
}

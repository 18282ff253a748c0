package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.SleeveCap;
import org.oaktag.blocks.SleeveEnd;
import org.oaktag.blocks.TopNames;
import org.oaktag.blocks.TopPieces;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * Adds to the upper arm: the sleeve is spread at its middle, and the cap sinks by as much as it must to keep the length
 * of each of its halves, so that its seams stay as true as they are. The hem keeps its width, and the sleeve its length
 * from the top of the cap to the hem.
 *
 * <pre>{@code
 * Garment easier = block.adjust(addToUpperArm(mm(20)));
 * easier.finished(SLEEVE_WIDTH).minus(block.finished(SLEEVE_WIDTH)).text();   // = 20.0 mm
 * }</pre>
 *
 * @param by how much wider the sleeve becomes at its underarm points; negative for narrower
 */
record WidenSleeve(Length by) implements Step {
    /** Refuses null. */
    public WidenSleeve {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "take in the upper arm" : "add to the upper arm";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("round the upper arm", by));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if no cap of that length makes a sleeve of that width; the message gives the range
     */
    @Override
    public Reshaped reshape(Garment garment) {
        CapFit fit = NewCap.ofItsLength(garment);
        Length height = SleeveCap.of(TopPieces.sleeveWithCap(garment)).height();
        Length width = garment.finished(TopNames.SLEEVE_WIDTH);
        CapFit.Solved lowest = fit.atHeight(fit.leastHeight());
        CapFit.Solved highest = fit.atHeight(Math.min(
                fit.mostHeight(),
                height.plus(SleeveEnd.of(TopPieces.sleeveWithCap(garment)).mostShortening())
                        .mm()));
        Optional<CapFit.Solved> found = fit.atWidth(width.plus(by).mm(), lowest, highest);
        CapFit.Solved solved = found.orElseThrow(() -> PatternException.of(
                "sleeve " + width.text() + " wide",
                "a cap of its length allows a change of "
                        + Length.mm(highest.width() - width.mm()).roundedUp().text() + " to "
                        + Length.mm(lowest.width() - width.mm()).roundedDown().text(),
                by.text(),
                "lower the armhole first, or slash and spread the sleeve and gather its cap"));
        Garment widened = NewCap.on(garment, fit, solved);
        Length raised = Length.mm(solved.height()).minus(height);
        Garment done =
                widened.withPiece(SleeveEnd.of(widened.piece(TopNames.SLEEVE)).shortenedBy(raised));
        Note rule = Note.rule("the sleeve is "
                + Length.mm(solved.width()).text() + " wide (it was " + width.text() + "); its cap keeps its length of "
                + Length.mm(fit.frontLength() + fit.backLength()).text()
                + " and is " + Length.mm(solved.height()).text() + " high (it was " + height.text()
                + "); side neck to wrist stays "
                + done.finished(TopNames.NECK_TO_WRIST).text());
        return new Reshaped(done, List.of(rule), List.of(NewCap.width(done, solved)));
    }
}

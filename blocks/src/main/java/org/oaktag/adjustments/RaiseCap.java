package org.oaktag.adjustments;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.adjust.Range;
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
 * Raises or lowers the sleeve cap while each of its halves keeps its length, so that its seams stay as true as they
 * are: a higher cap makes a narrower sleeve, a lower one a wider sleeve. The sleeve keeps its length from the top of
 * the cap to the hem; its underarm edges lose what the cap gains.
 *
 * <pre>{@code
 * Garment lower = block.adjust(lowerCap(mm(10)));   // wider, for the arm to be raised
 * lower.finished(SLEEVE_WIDTH).compareTo(block.finished(SLEEVE_WIDTH));   // = 1
 * }</pre>
 *
 * @param by how much higher the cap becomes; negative to lower it
 */
record RaiseCap(Length by) implements Step {
    /** Refuses null. */
    public RaiseCap {
        Objects.requireNonNull(by, "by");
    }

    @Override
    public String name() {
        return by.mm() < 0 ? "lower the sleeve cap" : "raise the sleeve cap";
    }

    @Override
    public List<Amount> amounts() {
        return List.of(Amount.of("cap height", by));
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException if a cap of that height cannot have that length, or the underarm edges are too short to
     *     lose so much
     */
    @Override
    public Reshaped reshape(Garment garment) {
        CapFit fit = NewCap.ofItsLength(garment);
        Length height = SleeveCap.of(TopPieces.sleeveWithCap(garment)).height();
        double most =
                SleeveEnd.of(TopPieces.sleeveWithCap(garment)).mostShortening().mm();
        Range.check(
                "sleeve cap " + height.text() + " high",
                "at its length it can be raised (lowered: negative) by",
                by,
                Length.mm(fit.leastHeight() - height.mm()),
                Length.mm(Math.min(fit.mostHeight() - height.mm(), most)));
        CapFit.Solved solved = fit.atHeight(height.plus(by).mm());
        Garment raised = NewCap.on(garment, fit, solved);
        Garment done =
                raised.withPiece(SleeveEnd.of(raised.piece(TopNames.SLEEVE)).shortenedBy(by));
        Note rule = Note.rule("at a constant cap length of "
                + Length.mm(fit.frontLength() + fit.backLength()).text() + " a cap "
                + Length.mm(solved.height()).text() + " high (it was " + height.text() + ") makes a sleeve "
                + Length.mm(solved.front()).text() + " + "
                + Length.mm(solved.back()).text() + " = "
                + Length.mm(solved.width()).text() + " wide (it was "
                + garment.finished(TopNames.SLEEVE_WIDTH).text()
                + "); side neck to wrist stays "
                + done.finished(TopNames.NECK_TO_WRIST).text());
        return new Reshaped(done, List.of(rule), List.of(NewCap.width(done, solved)));
    }
}

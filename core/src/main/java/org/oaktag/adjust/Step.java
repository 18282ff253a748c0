package org.oaktag.adjust;

import java.util.List;
import org.oaktag.garment.Adjustment;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;

/**
 * An adjustment with a name and amounts, which leaves a {@link org.oaktag.garment.Change} in the history.
 *
 * <pre>{@code
 * Step step = lowerArmhole(mm(12));
 * step.name();                         // = lower the armhole
 * Garment roomier = block.adjust(step);
 * }</pre>
 *
 * <p>Whoever writes one implements {@link #reshape}; what moved is found by comparison, so that the history tells what
 * happened and not what was meant.
 */
public interface Step extends Adjustment {

    /** Returns the step as a phrase in the imperative, such as {@code "lower the armhole"}. */
    String name();

    /** Returns the amounts that the step was asked for. */
    List<Amount> amounts();

    /**
     * Makes the new garment. The history must be left as it is.
     *
     * @throws org.oaktag.PatternException if it cannot be done on this garment; the message says what would work
     */
    Reshaped reshape(Garment garment);

    /**
     * {@inheritDoc} A grainline that would run out of a piece drawn anew is moved inside it, in its direction, and a
     * mark that would lie beside the piece is left out; both are told.
     *
     * <p>Where {@link #reshape} finds a {@link org.oaktag.garment.DartInTheWay dart in the way}, the dart is turned into
     * another edge, the step is taken, and the dart comes back to where its line meets the outline.
     *
     * <p>What the step did is told by comparing the garment before and after it, when that is first read.
     *
     * @throws org.oaktag.PatternException if it cannot be done, the outline of a piece that it has drawn anew crosses
     *     itself, or it leaves a finished measure without the piece or the edge that it speaks of
     */
    @Override
    default Garment applyTo(Garment garment) {
        String name = name();
        List<Amount> amounts = List.copyOf(amounts());
        Reshaped reshaped = SoundPieces.of(name, garment, HeldDarts.reshape(this, garment));
        reshaped.garment().takeMeasuresSince(garment);
        return reshaped.garment().recording(() -> Comparison.change(name, amounts, garment, reshaped));
    }
}

package org.oaktag.adjustments;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * Widens the hem of the sleeve and gathers it onto a rib cuff, which takes the place of the sleeve's end.
 *
 * <pre>{@code
 * Garment gathered = block.adjust(puffHem(1.4, ribCuff(cm(7), rib)));
 * }</pre>
 *
 * @param ratio how many times as long as the cuff the hem is, 1 to 5
 * @param cuff the cuff
 */
record PuffHem(double ratio, RibCuff cuff) implements Step {

    /**
     * Checks the ratio.
     *
     * @throws PatternException if it is not 1 to 5
     */
    public PuffHem {
        Objects.requireNonNull(cuff, "cuff");
        if (!(ratio >= 1 && ratio <= 5)) {
            throw PatternException.of("gathered hem of a sleeve", "must be 1 to 5 times its cuff", "" + ratio, "");
        }
    }

    @Override
    public String name() {
        return "puff the sleeve at its hem";
    }

    @Override
    public List<Amount> amounts() {
        List<Amount> amounts = new ArrayList<>();
        amounts.add(Amount.of("gathered", String.format(Locale.ROOT, "%.2f to 1", ratio)));
        amounts.addAll(cuff.amounts());
        return amounts;
    }

    /**
     * {@inheritDoc}
     *
     * @throws PatternException as {@link RibCuff#reshape} and {@link ShapeSleeveHem#reshape}
     */
    @Override
    public Reshaped reshape(Garment garment) {
        Length hem = cuff.around(garment).times(ratio);
        Reshaped wide = new ShapeSleeveHem(hem, Optional.empty()).reshape(garment);
        Reshaped cuffed = cuff.reshape(wide.garment());
        List<Note> notes = new ArrayList<>(wide.notes());
        notes.addAll(cuffed.notes());
        return new Reshaped(cuffed.garment(), notes, cuffed.dimensions());
    }
}

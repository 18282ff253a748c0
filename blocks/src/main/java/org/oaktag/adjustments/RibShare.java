package org.oaktag.adjustments;

import java.util.Locale;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Note;
import org.oaktag.measure.Length;

/**
 * How long a folded band of rib is cut, as a share of the opening on which it is stretched.
 *
 * <p>Bands of rib are cut at 75 to 90 % of the opening, the less the further the cloth stretches (common practice). The
 * line between the two is our own: 90 % for a rib that stretches by 25 % or less, 75 % from 100 % on, in proportion
 * between them.
 */
final class RibShare {

    private static final double LONGEST = 0.9;
    private static final double SHORTEST = 0.75;
    private static final double STABLE = 0.25;
    private static final double STRETCHY = 1;

    private RibShare() {}

    static double of(Cloth rib) {
        double along = (rib.stretch().fraction() - STABLE) / (STRETCHY - STABLE);
        return LONGEST - (LONGEST - SHORTEST) * Math.min(Math.max(along, 0), 1);
    }

    /** Returns the rule with its numbers filled in. */
    static Note rule(String band, String opening, double whole, Cloth rib) {
        return Note.rule(String.format(
                Locale.ROOT,
                "%s = %.1f %% of the %s %s for a rib that stretches by %s = %s (75 to 90 %%: common practice)",
                band,
                of(rib) * 100,
                opening,
                Length.mm(whole).text(),
                rib.stretch().text(),
                Length.mm(of(rib) * whole).text()));
    }
}

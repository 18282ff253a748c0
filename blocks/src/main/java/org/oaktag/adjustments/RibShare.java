package org.oaktag.adjustments;

import org.oaktag.garment.Cloth;

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
}

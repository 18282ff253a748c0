package org.oaktag.adjustments;

import java.util.Optional;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

/**
 * Steps that finish an edge with a folded band.
 *
 * <pre>{@code
 * top.adjust(hemBand(cm(6), cm(3)).cutFrom(contrast))
 *         .adjust(ribCuff(cm(7), rib));
 * }</pre>
 */
public final class Bands {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(HemBand.class)
                    .usually("depth", 30, 90)
                    .usually("lap", 0, 50)
                    .usually("cloth stretch", 15, 80),
            StepKind.of(RibCuff.class)
                    .usually("depth", 40, 110)
                    .usually("rib stretch", 40, 120)
                    .usually("girth", 180, 240),
            StepKind.of(ArmholeBand.class).usually("depth", 15, 40).usually("rib stretch", 40, 120));

    private Bands() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /**
     * Returns the step that bands the hem of front and back, in the cloth of the front.
     *
     * @param depth how deep the finished band is
     * @param lap by how much front and back band lap over each other at each side seam; 0 for edge to edge
     * @throws org.oaktag.PatternException if the depth or the lap is out of its range
     */
    public static HemBand hemBand(Length depth, Length lap) {
        return new HemBand(depth, lap, Optional.empty());
    }

    /**
     * Returns the step that gathers the sleeve onto a cuff of the wrist girth and 15 mm of ease (common practice). The
     * sleeve is cut shorter by the cuff's depth; {@link RibCuff#addedBelow()} leaves it.
     *
     * @param depth how deep the finished cuff is
     * @param rib what it is cut from
     * @throws org.oaktag.PatternException if the depth is out of its range
     */
    public static RibCuff ribCuff(Length depth, Cloth rib) {
        return new RibCuff(depth, rib, Optional.empty(), false);
    }

    /**
     * Returns the step that sets a folded band of rib, stretched on, round armholes without sleeves.
     *
     * @param depth how deep the finished band is
     * @param rib what it is cut from
     * @throws org.oaktag.PatternException if the depth is out of its range
     */
    public static Step armholeBand(Length depth, Cloth rib) {
        return new ArmholeBand(depth, rib);
    }
}

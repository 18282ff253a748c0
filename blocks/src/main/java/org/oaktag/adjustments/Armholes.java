package org.oaktag.adjustments;

import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.measure.Length;

/**
 * Adjustments of the armhole. The sleeve stays as it is, and its seams are reported, unless it is asked to follow:
 * {@code lowerArmhole(mm(18)).withSleeve()}.
 *
 * <pre>{@code
 * block.adjust(lowerArmhole(mm(12)))
 *         .adjust(widenArmhole(mm(5)))
 *         .adjust(scoopFrontArmhole(mm(4)));
 * }</pre>
 */
public final class Armholes {

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(LowerArmhole.class).usually("by", -10, 40),
            StepKind.of(ScoopArmhole.class).usually("by", -5, 12),
            StepKind.of(WidenArmhole.class).usually("out", -10, 30));

    private Armholes() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Lowers the armholes of front and back; 6 to 15 mm for a looser layer (common practice). */
    public static BodyStep lowerArmhole(Length by) {
        return new LowerArmhole(by, false);
    }

    /** Raises the armholes of front and back. */
    public static BodyStep raiseArmhole(Length by) {
        return new LowerArmhole(by.negated(), false);
    }

    /** Scoops the front armhole out at its pitch point. */
    public static BodyStep scoopFrontArmhole(Length by) {
        return new ScoopArmhole(by, false);
    }

    /** Widens the armholes through the side; the chest girth grows four times as much. */
    public static BodyStep widenArmhole(Length out) {
        return new WidenArmhole(out, false);
    }

    /** Narrows the armholes through the side; the chest girth shrinks four times as much. */
    public static BodyStep narrowArmhole(Length in) {
        return new WidenArmhole(in.negated(), false);
    }
}

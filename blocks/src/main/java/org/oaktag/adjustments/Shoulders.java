package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * Adjustments of the shoulder. Where they change the armhole the cap is not fitted to it, and its seams are reported,
 * unless the sleeve is asked to follow: {@code extendShoulder(mm(12)).withSleeve()}.
 *
 * <pre>{@code
 * block.adjust(moveShoulderForward(mm(10)))
 *         .adjust(dropShoulder(mm(25), degrees(8)));   // bent to the arm
 * }</pre>
 */
public final class Shoulders {

    private static final Angle STRAIGHT = Angle.degrees(0);

    private static final StepCatalogue STEPS = StepCatalogue.of(
            StepKind.of(DropShoulder.class).usually("by", -15, 40).usually("bend", 0, 30),
            StepKind.of(ExtendShoulder.class).usually("by", -15, 30),
            StepKind.of(SlopeShoulder.class).usually("down", -10, 15),
            StepKind.of(TurnShoulder.class).usually("down", -5, 5),
            StepKind.of(MoveShoulderSeam.class).usually("forward", -15, 25));

    private Shoulders() {}

    /** Returns the kinds of these steps, with what is usual for their amounts (common practice of the trade). */
    public static StepCatalogue steps() {
        return STEPS;
    }

    /** Drops the shoulder along its own line; the cap loses what the shoulder gains. */
    public static BodyStep dropShoulder(Length by) {
        return new DropShoulder(by, STRAIGHT, false);
    }

    /** Drops the shoulder, the new part bent down to the arm by an angle of 0 to 45 degrees. */
    public static BodyStep dropShoulder(Length by, Angle bend) {
        return new DropShoulder(by, bend, false);
    }

    /** Takes the shoulder back along its own line; the cap gains what the shoulder loses. */
    public static BodyStep takeShoulderBack(Length by) {
        return new DropShoulder(by.negated(), STRAIGHT, false);
    }

    /** Lengthens the shoulder seam along its own line; the sleeve stays as it is. */
    public static BodyStep extendShoulder(Length by) {
        return new ExtendShoulder(by, false);
    }

    /** Shortens the shoulder seam along its own line; the sleeve stays as it is. */
    public static BodyStep shortenShoulder(Length by) {
        return new ExtendShoulder(by.negated(), false);
    }

    /** Slopes the shoulders of front and back more, by an angle. */
    public static BodyStep slopeShoulder(Angle by) {
        return new TurnShoulder(by, false);
    }

    /** Squares the shoulders of front and back by an angle. */
    public static BodyStep squareShoulder(Angle by) {
        return new TurnShoulder(Angle.degrees(-by.degrees()), false);
    }

    /** Slopes the shoulders of front and back more, by so much at the shoulder point. */
    public static BodyStep slopeShoulder(Length by) {
        return new SlopeShoulder(by, false);
    }

    /** Squares the shoulders of front and back by so much at the shoulder point. */
    public static BodyStep squareShoulder(Length by) {
        return new SlopeShoulder(by.negated(), false);
    }

    /** Moves the shoulder seam forward: the front loses what the back gains; 5 to 25 mm (common practice). */
    public static Step moveShoulderForward(Length by) {
        return new MoveShoulderSeam(by);
    }

    /** Moves the shoulder seam back: the back loses what the front gains. */
    public static Step moveShoulderBack(Length by) {
        return new MoveShoulderSeam(by.negated());
    }
}

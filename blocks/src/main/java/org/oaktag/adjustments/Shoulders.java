package org.oaktag.adjustments;

import org.oaktag.adjust.Step;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/** Adjustments of the shoulder. */
public final class Shoulders {

    private static final Angle STRAIGHT = Angle.degrees(0);

    private Shoulders() {}

    /** Drops the shoulder along its own line; the cap loses what the shoulder gains. */
    public static Step dropShoulder(Length by) {
        return new DropShoulder(by, STRAIGHT);
    }

    /** Drops the shoulder, the new part bent down to the arm by an angle of 0 to 45 degrees. */
    public static Step dropShoulder(Length by, Angle bend) {
        return new DropShoulder(by, bend);
    }

    /** Takes the shoulder back along its own line; the cap gains what the shoulder loses. */
    public static Step takeShoulderBack(Length by) {
        return new DropShoulder(by.negated(), STRAIGHT);
    }
}

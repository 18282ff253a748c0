package org.oaktag.testkit.bodies;

import java.util.Locale;

/** The measures of the survey that a body for a top is made of, under the survey's own names. */
public enum SurveyMeasure {
    STATURE,
    CERVICALE_HEIGHT,
    AXILLA_HEIGHT,
    /** At the navel. */
    WAIST_HEIGHT_OMPHALION,
    BUTTOCK_HEIGHT,
    CHEST_CIRCUMFERENCE,
    /** At the navel. */
    WAIST_CIRCUMFERENCE,
    BUTTOCK_CIRCUMFERENCE,
    NECK_CIRCUMFERENCE_BASE,
    BICEPS_CIRCUMFERENCE_FLEXED,
    WRIST_CIRCUMFERENCE,
    /** Without the thumb. */
    HAND_CIRCUMFERENCE,
    HEAD_CIRCUMFERENCE,
    SHOULDER_LENGTH,
    /** Across the back, midway down the armhole. */
    INTERSCYE_II,
    /** From the nape to the level of the navel. */
    WAIST_BACK_LENGTH,
    /** From acromion to wrist. */
    SLEEVE_OUTSEAM;

    /** Returns the name of the measure in the survey's tables. */
    String column() {
        return name().replace("_", "").toLowerCase(Locale.ROOT);
    }
}

package org.oaktag.skirt;

import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.measure.Length;

/**
 * How far down a skirt hangs, as a share of the height of the body.
 *
 * <pre>{@code
 * SkirtLength.KNEE.text();   // = to the middle of the knee
 * }</pre>
 *
 * <p>The shares are differences of levels of the body: the natural waist of women lies at 0.649 of their height (1988
 * US Army survey, Gordon et al., NATICK/TR-89/044: 1056.5 of 1629 mm), the middle of the knee at 0.276, the fullest
 * part of the calf at 0.19 and the ankle bone at 0.055 (2012 survey, NATICK/TR-15/007). Those of men differ by less
 * than 0.01.
 */
public enum SkirtLength {
    /** To the middle of the knee. */
    KNEE("to the middle of the knee", 0.373),
    /** To the fullest part of the calf. */
    MIDI("to the fullest part of the calf", 0.459),
    /** To the ankle bone. */
    MAXI("to the ankle bone", 0.594);

    private final String text;
    private final double shareOfHeight;

    SkirtLength(String text, double shareOfHeight) {
        this.text = text;
        this.shareOfHeight = shareOfHeight;
    }

    /** Returns where it ends, in words. */
    public String text() {
        return text;
    }

    /** Returns the share of the height from the waist to the hem. */
    public double shareOfHeight() {
        return shareOfHeight;
    }

    /**
     * Returns the length from the waist of a body to the hem.
     *
     * @throws org.oaktag.PatternException if the height was not taken
     */
    public Length on(BodyMeasurements body) {
        return body.measure(BodyMeasure.HEIGHT).times(shareOfHeight);
    }
}

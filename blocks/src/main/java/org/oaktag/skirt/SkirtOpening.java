package org.oaktag.skirt;

/**
 * Where a skirt opens with a zip.
 *
 * <pre>{@code
 * SkirtOpening.CENTRE_BACK.text();   // = centre back
 * }</pre>
 */
public enum SkirtOpening {
    /** In the seam at the centre of the back. */
    CENTRE_BACK("centre back"),
    /** In the left side seam. */
    LEFT_SIDE("left side");

    private final String text;

    SkirtOpening(String text) {
        this.text = text;
    }

    /** Returns the place in words. */
    public String text() {
        return text;
    }
}

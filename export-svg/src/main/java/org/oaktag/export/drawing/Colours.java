package org.oaktag.export.drawing;

/**
 * The colours of lines and lettering. They differ in lightness, so that they stay apart in grey.
 *
 * <pre>{@code
 * TextLine faint = new TextLine("2 of 9", Font.SMALL, Colours.FAINT);
 * }</pre>
 */
public final class Colours {

    /** Lines and lettering. */
    public static final String INK = "#1a1a1a";

    /** What was there before. */
    public static final String BEFORE = "#8fa9bf";

    /** Dimensions. */
    public static final String AMOUNT = "#a4400c";

    /** Lettering that stands back. */
    public static final String FAINT = "#5c6670";

    /** The ribs of a knit: ink at a third on {@link ClothPaint#RIBBED}. */
    public static final String RIB = "#314764";

    /** What darkens the inside of a garment, laid on thinly. */
    static final String SHADE = "#101820";

    /** The ground of the sheet. */
    public static final String PAPER = "#ffffff";

    private Colours() {}
}

package org.oaktag.export.drawing;

/**
 * One line of lettering. Immutable.
 *
 * <pre>{@code
 * TextLine.of("scale 1 : 1", Font.SMALL).width();   // mm
 * }</pre>
 *
 * @param text what it says
 * @param font in which face
 * @param colour in which colour
 */
public record TextLine(String text, Font font, String colour) {

    /** Returns a line in ink. */
    public static TextLine of(String text, Font font) {
        return new TextLine(text, font, Colours.INK);
    }

    /** Returns its width, mm. */
    public double width() {
        return font.width(text);
    }
}

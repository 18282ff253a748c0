package org.oaktag.export.svg.drawing;

import java.util.Locale;

/**
 * The ways in which a cloth is shown: a colour and, so that meaning does not rest on colour alone, a texture.
 *
 * <p>The colours are at least 8 apart in lightness (CIELAB L*), so that they stay distinct in grey and for every kind of
 * colour vision, and light enough that a seam line shows on them.
 */
public enum ClothPaint {
    /** Plain blue: the outside. */
    PLAIN("#6c9ac6", ""),
    /** Yellow with rising lines. */
    RISING("#f0c05a", "M -1 1 L 1 -1 M 0 4 L 4 0 M 3 5 L 5 3"),
    /** Dark blue with upright ribs. */
    RIBBED("#3d5f8c", "M 1 0 L 1 4 M 3 0 L 3 4"),
    /** Cream with dots. */
    DOTTED("#efe8da", "M 0.8 1 L 1.2 1 M 2.8 3 L 3.2 3"),
    /** Rust with level lines. */
    LEVEL("#b3623a", "M 0 2 L 4 2"),
    /** Grey-green with falling lines. */
    FALLING("#a0bba0", "M -1 3 L 1 5 M 0 0 L 4 4 M 3 -1 L 5 1");

    /** The size of the tile that is repeated, mm. */
    private static final double TILE = 4;

    private final String colour;
    private final String texture;

    ClothPaint(String colour, String texture) {
        this.colour = colour;
        this.texture = texture;
    }

    /** Returns the colour as {@code #rrggbb}. */
    public String colour() {
        return colour;
    }

    /** Returns what to fill a shape with. */
    public String paint() {
        return texture.isEmpty() ? colour : "url(#" + id() + ")";
    }

    /** Writes the definition that {@link #paint()} refers to, if any. */
    public void writeDefinition(XmlWriter xml) {
        if (texture.isEmpty()) {
            return;
        }
        xml.begin("pattern")
                .attribute("id", id())
                .attribute("width", TILE)
                .attribute("height", TILE)
                .attribute("patternUnits", "userSpaceOnUse");
        xml.begin("rect")
                .attribute("width", TILE)
                .attribute("height", TILE)
                .attribute("fill", colour)
                .end();
        xml.begin("path")
                .attribute("d", texture)
                .attribute("fill", "none")
                .attribute("stroke", Colours.INK)
                .attribute("stroke-width", 0.3)
                .attribute("stroke-opacity", 0.35)
                .end();
        xml.end();
    }

    private String id() {
        return "texture-" + name().toLowerCase(Locale.ROOT);
    }
}

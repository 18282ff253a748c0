package org.oaktag.export.drawing;

import java.util.Locale;

/**
 * The ways in which a cloth is shown: a colour and, so that meaning does not rest on colour alone, a texture.
 *
 * <pre>{@code
 * ClothPaint.DOTTED.colour();   // = #efe8da
 * }</pre>
 *
 * <p>The colours are at least 8 apart in lightness (CIELAB L*), so that they stay distinct in grey and for every kind
 * of colour vision, and light enough that a seam line shows on them.
 */
public enum ClothPaint {
    /** Plain blue: the outside. */
    PLAIN("#6494c2", ""),
    /** Yellow with rising lines. */
    RISING("#f0c05a", "M -1 1 L 1 -1 M 0 4 L 4 0 M 3 5 L 5 3"),
    /** Dark blue with upright ribs. */
    RIBBED("#3d5f8c", "M 1 0 L 1 4 M 3 0 L 3 4"),
    /** Cream with dots. */
    DOTTED("#efe8da", "M 0.8 1 L 1.2 1 M 2.8 3 L 3.2 3"),
    /** Rust with level lines. */
    LEVEL("#b3623a", "M 0 2 L 4 2"),
    /** Grey-green with falling lines. */
    FALLING("#96b096", "M -1 3 L 1 5 M 0 0 L 4 4 M 3 -1 L 5 1");

    /** The size of the tile that is repeated, mm. */
    public static final double TILE = 4;

    /** The width of the lines of a texture, mm. */
    public static final double TEXTURE_WIDTH = 0.3;

    /** How much the lines of a texture hide, 0 to 1. */
    public static final double TEXTURE_OPACITY = 0.35;

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

    /** Returns the name under which {@link #paint()} refers to the texture. */
    public String id() {
        return "texture-" + name().toLowerCase(Locale.ROOT);
    }

    /** Returns the lines of one tile of the texture as path data of absolute M and L, mm; empty for a plain colour. */
    public String texture() {
        return texture;
    }
}

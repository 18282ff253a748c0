package org.oaktag.export.drawing;

import java.util.List;

/**
 * The types of line, each with one meaning. Widths and dashes follow ISO 128: a dash is 12 line widths long, a long
 * dash 24, a gap 3, a dot a half.
 *
 * <pre>{@code
 * Stroke fold = Stroke.line(LineType.FOLD, Point.of(0, 0), Point.of(0, 600));
 * }</pre>
 */
public enum LineType {
    /** Where the cloth is cut: continuous wide. */
    CUT("cut line", 0.5, List.of(), Colours.INK),
    /** Where the first of several sizes is cut: continuous wide. */
    SIZE_1("cut line", 0.5, List.of(), Colours.INK),
    /** The second: dashed. */
    SIZE_2("cut line", 0.5, List.of(6.0, 1.5), Colours.INK),
    /** The third: long-dashed short-dashed. */
    SIZE_3("cut line", 0.5, List.of(12.0, 1.5, 3.0, 1.5), Colours.INK),
    /** The fourth: dotted. */
    SIZE_4("cut line", 0.5, List.of(0.25, 1.5), Colours.INK),
    /** The fifth: dashed double-dotted. */
    SIZE_5("cut line", 0.5, List.of(6.0, 1.5, 0.25, 1.5, 0.25, 1.5), Colours.INK),
    /** The sixth: dashed, spaced. */
    SIZE_6("cut line", 0.5, List.of(6.0, 9.0), Colours.INK),
    /** Where it is sewn: continuous narrow. */
    SEAM("seam line", 0.25, List.of(), Colours.INK),
    /** Where it is folded, and where a half piece lies on the fold of the cloth: long-dashed dotted. */
    FOLD("fold", 0.35, List.of(8.4, 1.05, 0.175, 1.05), Colours.INK),
    /** Where a piece may be parted, or something laid on: dashed. */
    PLACEMENT("style line, placement", 0.25, List.of(3.0, 0.75), Colours.INK),
    /** The direction of the warp or the wales: continuous narrow, with arrows. */
    GRAIN("grainline", 0.25, List.of(), Colours.INK),
    /** A cut into the allowance, or a mark inside. */
    NOTCH("notch", 0.5, List.of(), Colours.INK),
    /** A dimension, its extension lines, a frame: continuous narrow. */
    DIMENSION("dimension", 0.18, List.of(), Colours.AMOUNT),
    /** What was there before a step: dashed, light. */
    BEFORE("before the step", 0.35, List.of(4.2, 1.05), Colours.BEFORE),
    /** What is there after it: continuous wide, dark. */
    AFTER("after the step", 0.5, List.of(), Colours.INK),
    /** What a figure is about: continuous, wider than any other line. */
    SUBJECT("what is spoken of", 0.9, List.of(), Colours.AMOUNT),
    /** Drawn below a garment so that half of it shows round the whole: continuous, twice as wide as it looks. */
    SILHOUETTE("outline of the garment", 1.2, List.of(), Colours.INK),
    /** A rib of a knit, along its wales: continuous narrow, dark on the cloth's colour. */
    RIB("rib of a knit", 0.3, List.of(), Colours.RIB),
    /** Where one sheet of paper ends on the next: long-dashed double-dotted. */
    JOINT("joint of two sheets", 0.18, List.of(4.32, 0.54, 0.09, 0.54, 0.09, 0.54), Colours.FAINT),
    /** Table rules and the frame of the scale square. */
    RULE("", 0.25, List.of(), Colours.INK);

    private final String meaning;
    private final double width;

    @SuppressWarnings("ImmutableEnumChecker") // made by List.of
    private final List<Double> dashes;

    private final String colour;

    LineType(String meaning, double width, List<Double> dashes, String colour) {
        this.meaning = meaning;
        this.width = width;
        this.dashes = dashes;
        this.colour = colour;
    }

    /** Returns what the legend says of it. */
    public String meaning() {
        return meaning;
    }

    /** Returns its width, mm. */
    public double width() {
        return width;
    }

    /** Returns its colour. */
    public String colour() {
        return colour;
    }

    /** Returns its dashes and gaps in turn, mm; empty for a continuous line. */
    public List<Double> dashes() {
        return dashes;
    }
}

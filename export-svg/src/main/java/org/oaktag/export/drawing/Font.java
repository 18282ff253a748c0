package org.oaktag.export.drawing;

/**
 * The face and size of lettering, with the widths of its characters, so that a label can be measured before it is
 * drawn.
 *
 * <pre>{@code
 * Font.TEXT.width("front, cut 1 on fold");           // mm
 * Font.TEXT.fitted("a very long name of a cloth", 30);   // cut short to 30 mm
 * }</pre>
 *
 * <p>The widths are those of Liberation Sans 2, which was made to the widths of Helvetica and Arial; all three are
 * named in the sheet, in that order of preference. A character outside the table counts as one em, in the supplementary
 * planes (emoji, rare scripts) as one and a half: no common font is wider, so that a label may come out too roomy but
 * not too tight.
 *
 * @param size the size of the face, mm: about 1.4 times the height of its capitals
 * @param bold whether it is bold
 */
public record Font(double size, boolean bold) {

    /** The faces, of equal widths, first choice first. */
    public static final String FAMILY = "Liberation Sans, Arial, Helvetica, sans-serif";

    /** The smallest lettering: capitals are 3 mm high. */
    public static final Font SMALL = new Font(4.2, false);

    /** Ordinary lettering. */
    public static final Font TEXT = new Font(5, false);

    /** The name of a piece, the head of a column. */
    public static final Font HEAD = new Font(5, true);

    /** The name of a large piece. */
    public static final Font NAME = new Font(9, true);

    /** The title of a sheet. */
    public static final Font TITLE = new Font(12, true);

    /** The height of a line of text in sizes. */
    private static final double LEADING = 1.25;

    /** How far the baseline lies below the top of its line, in sizes. */
    private static final double BASELINE = 0.97;

    private static final double EM = 1000;
    private static final int FIRST = ' ';

    private static final short[] REGULAR = {
        278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, //
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556, //
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778, //
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, //
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, //
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584
    };

    private static final short[] BOLD = {
        278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, //
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 333, 333, 584, 584, 584, 611, //
        975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833, 722, 778, //
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, //
        333, 556, 611, 556, 611, 556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, //
        611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389, 280, 389, 584
    };

    /** Returns the width of a line of text, mm. */
    public double width(String text) {
        short[] table = bold ? BOLD : REGULAR;
        double sum = text.codePoints()
                .mapToDouble(c -> c >= FIRST && c < FIRST + table.length
                        ? table[c - FIRST]
                        : Character.isSupplementaryCodePoint(c) ? 1.5 * EM : EM)
                .sum();
        return sum / EM * size;
    }

    /** Returns the height of a line of text, mm. */
    public double lineHeight() {
        return LEADING * size;
    }

    /** Returns how far the baseline lies below the top of its line, mm. */
    public double baseline() {
        return BASELINE * size;
    }

    /** Returns the text, cut short with three dots where it is wider than that. */
    public String fitted(String text, double widest) {
        if (width(text) <= widest) {
            return text;
        }
        int[] characters = text.codePoints().toArray();
        for (int kept = characters.length - 1; kept > 0; kept--) {
            String shortened = new String(characters, 0, kept).stripTrailing() + "...";
            if (width(shortened) <= widest) {
                return shortened;
            }
        }
        return "...";
    }
}

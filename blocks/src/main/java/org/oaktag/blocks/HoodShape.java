package org.oaktag.blocks;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * What a hood shall look like: two side panels, and over the middle either a strip from the face to the nape (a
 * three-panel hood) or the seam of the two (a two-piece hood).
 *
 * <pre>{@code
 * HoodShape.threePanel().withStripWidth(cm(10)).withRise(mm(25));
 * HoodShape.twoPiece().withHeight(cm(36));
 * }</pre>
 *
 * <p>What is not given follows from the head and the neckline when the hood is fitted. Immutable.
 *
 * @param stripWidth the whole width of the strip, 30 to 200 mm, or 0 where there is none
 * @param height how high the top of the crown of a side panel lies above the shoulder, or empty for half the tape from
 *     side neck point over the crown to side neck point, and ease, less half the strip
 * @param depth how far a side panel reaches back from the face at its widest, or empty for a share of the head girth
 * @param rise how much higher the neck edge lies at the nape than at the front, 0 to 60 mm; 20 to 50 mm is common
 *     practice
 */
public record HoodShape(Length stripWidth, Optional<Length> height, Optional<Length> depth, Length rise) {

    static final Length LEAST_STRIP = Length.mm(30);
    private static final Length MOST_STRIP = Length.mm(200);
    private static final Length MOST_RISE = Length.mm(60);

    /**
     * Checks the strip and the rise; height and depth are checked against the head and the neckline when the hood is
     * fitted.
     *
     * @throws PatternException if the strip or the rise is out of its range
     */
    public HoodShape {
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(depth, "depth");
        if (!stripWidth.equals(Length.ZERO)) {
            check("strip of the hood", stripWidth, LEAST_STRIP, MOST_STRIP);
        }
        check("rise of the hood's neck edge", rise, Length.ZERO, MOST_RISE);
    }

    /** Returns a shape with a strip of 90 mm and a neck edge that rises by 30 mm, made to the head. */
    public static HoodShape threePanel() {
        return new HoodShape(Length.mm(90), Optional.empty(), Optional.empty(), Length.mm(30));
    }

    /** Returns a shape of two panels sewn to each other, with a neck edge that rises by 30 mm, made to the head. */
    public static HoodShape twoPiece() {
        return new HoodShape(Length.ZERO, Optional.empty(), Optional.empty(), Length.mm(30));
    }

    /** Tells whether there is a strip over the middle. */
    public boolean hasStrip() {
        return !stripWidth.equals(Length.ZERO);
    }

    /**
     * Returns the shape with a strip of another width.
     *
     * @throws PatternException if the width is neither 30 to 200 mm nor 0
     */
    public HoodShape withStripWidth(Length width) {
        return new HoodShape(width, height, depth, rise);
    }

    /** Returns the shape with side panels whose crown lies this high above the shoulder. */
    public HoodShape withHeight(Length given) {
        return new HoodShape(stripWidth, Optional.of(given), depth, rise);
    }

    /** Returns the shape with side panels that reach this far back from the face. */
    public HoodShape withDepth(Length given) {
        return new HoodShape(stripWidth, height, Optional.of(given), rise);
    }

    /**
     * Returns the shape with a neck edge of another rise.
     *
     * @throws PatternException if the rise is not 0 to 60 mm
     */
    public HoodShape withRise(Length given) {
        return new HoodShape(stripWidth, height, depth, given);
    }

    private static void check(String thing, Length given, Length least, Length most) {
        if (given.compareTo(least) < 0 || given.compareTo(most) > 0) {
            throw PatternException.of(thing, "must be " + least.text() + " to " + most.text(), given.text(), "");
        }
    }
}

package org.oaktag.lay;

import org.oaktag.PatternException;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * How a cloth is sold and spread on the cutting table. Immutable.
 *
 * <pre>{@code
 * Spread fleece = Spread.single(cm(150)).withNap().shrinking(percent(4), percent(2));
 * }</pre>
 *
 * @param width from selvage to selvage as sold, less what of the selvages is not used; 100 to 5000 mm
 * @param folded whether it is folded lengthwise, selvage on selvage, and cut through both layers
 * @param nap whether every piece must lie with its top the same way, as on a pile or a print with an up and a down
 * @param gap the least room between two pieces; 0 to 50 mm
 * @param shrinksAlong by how much of its length it shrinks when it is washed before it is cut; 0 to 30 percent
 * @param shrinksAcross by how much of its width it shrinks then; 0 to 30 percent
 * @param repeat the length of a pattern that has to match, or zero for none
 * @param soldBy the step in which it is sold; more than 0
 */
public record Spread(
        Length width,
        boolean folded,
        boolean nap,
        Length gap,
        Percent shrinksAlong,
        Percent shrinksAcross,
        Length repeat,
        Length soldBy) {

    private static final Length NARROWEST = Length.mm(100);
    private static final Length WIDEST = Length.mm(5000);
    private static final Length MOST_GAP = Length.mm(50);
    private static final Length MOST_REPEAT = Length.mm(2000);
    private static final double MOST_SHRINKAGE = 30;

    /** Scissors need no more between two pieces (common practice). */
    private static final Length GAP = Length.mm(3);

    /** Cloth is cut off the roll by the tenth of a metre (common practice). */
    private static final Length TENTH = Length.cm(10);

    /**
     * Checks every amount.
     *
     * @throws PatternException if one is out of its range
     */
    public Spread {
        check("width of the cloth", width, NARROWEST, WIDEST);
        check("gap between pieces", gap, Length.ZERO, MOST_GAP);
        check("repeat of the cloth", repeat, Length.ZERO, MOST_REPEAT);
        check("step in which the cloth is sold", soldBy, Length.mm(1), WIDEST);
        checkShrinkage("along", shrinksAlong);
        checkShrinkage("across", shrinksAcross);
    }

    /**
     * Returns cloth spread in a single layer, without nap.
     *
     * @throws PatternException if the width is not 100 to 5000 mm
     */
    public static Spread single(Length width) {
        Percent none = Percent.percent(0);
        return new Spread(width, false, false, GAP, none, none, Length.ZERO, TENTH);
    }

    /**
     * Returns cloth folded lengthwise, selvage on selvage, without nap.
     *
     * @param width the whole width, as sold
     * @throws PatternException if the width is not 100 to 5000 mm
     */
    public static Spread folded(Length width) {
        Percent none = Percent.percent(0);
        return new Spread(width, true, false, GAP, none, none, Length.ZERO, TENTH);
    }

    /** Returns the cloth with a nap: no piece is turned upside down. */
    public Spread withNap() {
        return new Spread(width, folded, true, gap, shrinksAlong, shrinksAcross, repeat, soldBy);
    }

    /**
     * Returns the same with another room between the pieces.
     *
     * @throws PatternException if it is not 0 to 50 mm
     */
    public Spread withGap(Length other) {
        return new Spread(width, folded, nap, other, shrinksAlong, shrinksAcross, repeat, soldBy);
    }

    /**
     * Returns the cloth with another shrinkage.
     *
     * @param along by how much of its length
     * @param across by how much of its width
     * @throws PatternException if one is not 0 to 30 percent
     */
    public Spread shrinking(Percent along, Percent across) {
        return new Spread(width, folded, nap, gap, along, across, repeat, soldBy);
    }

    /**
     * Returns the cloth with a pattern that repeats along its length.
     *
     * @throws PatternException if the repeat is not 0 to 2000 mm
     */
    public Spread repeating(Length every) {
        return new Spread(width, folded, nap, gap, shrinksAlong, shrinksAcross, every, soldBy);
    }

    /**
     * Returns the cloth as it is sold by another step.
     *
     * @throws PatternException if the step is not 1 to 5000 mm
     */
    public Spread soldBy(Length step) {
        return new Spread(width, folded, nap, gap, shrinksAlong, shrinksAcross, repeat, step);
    }

    /** Returns the width of the cloth after it has shrunk, all layers counted. */
    public Length shrunkWidth() {
        return width.times(1 - shrinksAcross.fraction());
    }

    /** Returns the width of the table that it covers after it has shrunk: half of it where it is folded. */
    public Length tableWidth() {
        return folded ? shrunkWidth().times(0.5) : shrunkWidth();
    }

    /**
     * Returns how much of the cloth to buy for a lay of this length: what it is before it shrinks; with a repeat, whole
     * repeats and one more for matching (common practice); rounded up to the step in which it is sold.
     */
    public Length toBuy(Length laid) {
        double length = laid.mm() / (1 - shrinksAlong.fraction());
        if (repeat.mm() > 0) {
            length = (stepsUp(length, repeat) + 1) * repeat.mm();
        }
        return Length.mm(stepsUp(length, soldBy) * soldBy.mm());
    }

    /** A length that is a whole number of steps but for rounding is no step more. */
    private static double stepsUp(double length, Length step) {
        return Math.ceil(length / step.mm() - 1e-9);
    }

    private static void check(String thing, Length given, Length least, Length most) {
        if (given.compareTo(least) < 0 || given.compareTo(most) > 0) {
            throw PatternException.of(thing, "must be " + least.text() + " to " + most.text(), given.text(), "");
        }
    }

    private static void checkShrinkage(String direction, Percent given) {
        if (!(given.percent() >= 0 && given.percent() <= MOST_SHRINKAGE)) {
            throw PatternException.of(
                    "shrinkage " + direction + " the cloth",
                    "must be 0 to " + (int) MOST_SHRINKAGE + " %",
                    given.text(),
                    "");
        }
    }
}

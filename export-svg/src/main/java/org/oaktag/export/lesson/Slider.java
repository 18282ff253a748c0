package org.oaktag.export.lesson;

import java.util.List;
import java.util.stream.IntStream;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * What the learner moves: an amount, from its least to its most in even steps. Immutable.
 *
 * <pre>{@code
 * Slider slope = Slider.angles("slope", degrees(0), degrees(6), degrees(2), degrees(2));
 * slope.amounts();         // = [0.0, 2.0, 4.0, 6.0]
 * slope.firstPosition();   // = 1
 * }</pre>
 *
 * @param label what the amount is, such as {@code "height of the cap"}
 * @param kind of what kind it is
 * @param least the least amount, in mm, degrees or percent
 * @param most the most
 * @param step from one position to the next
 * @param first where the slider stands when the page is opened; one of the positions
 */
public record Slider(String label, Kind kind, double least, double most, double step, double first) {

    /** The kinds of amount. */
    public enum Kind {
        /** A length, in mm. */
        LENGTH,
        /** An angle, in degrees. */
        ANGLE,
        /** A share, in percent. */
        SHARE
    }

    private static final int MOST_POSITIONS = 61;
    private static final double ROUNDING = 1e-9;

    /**
     * Checks that the steps lead from the least to the most and pass the first.
     *
     * @throws IllegalArgumentException if they do not, or make fewer than 2 or more than 61 positions
     */
    public Slider {
        if (!(step > 0) || !isWhole((most - least) / step) || !isWhole((first - least) / step)) {
            throw new IllegalArgumentException("slider '" + label + "' must go from " + least + " to " + most
                    + " in steps that pass " + first + ", got " + step);
        }
        long count = Math.round((most - least) / step) + 1;
        if (count < 2 || count > MOST_POSITIONS || first < least || first > most) {
            throw new IllegalArgumentException("slider '" + label + "' must have 2 to " + MOST_POSITIONS
                    + " positions, the first among them, got " + count);
        }
    }

    /** Returns a slider of lengths. */
    public static Slider lengths(String label, Length least, Length most, Length step, Length first) {
        return new Slider(label, Kind.LENGTH, least.mm(), most.mm(), step.mm(), first.mm());
    }

    /** Returns a slider of angles. */
    public static Slider angles(String label, Angle least, Angle most, Angle step, Angle first) {
        return new Slider(label, Kind.ANGLE, least.degrees(), most.degrees(), step.degrees(), first.degrees());
    }

    /** Returns a slider of shares. */
    public static Slider shares(String label, Percent least, Percent most, Percent step, Percent first) {
        return new Slider(label, Kind.SHARE, least.percent(), most.percent(), step.percent(), first.percent());
    }

    /** Returns the amount at each position, the least first. */
    public List<Double> amounts() {
        return IntStream.rangeClosed(0, (int) Math.round((most - least) / step))
                .mapToObj(i -> least + i * step)
                .toList();
    }

    /** Returns the position at which the slider stands first, counted from 0. */
    public int firstPosition() {
        return (int) Math.round((first - least) / step);
    }

    private static boolean isWhole(double count) {
        return Math.abs(count - Math.rint(count)) < ROUNDING;
    }
}

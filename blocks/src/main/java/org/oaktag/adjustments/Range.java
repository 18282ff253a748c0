package org.oaktag.adjustments;

import java.util.List;
import java.util.function.Function;
import org.oaktag.PatternException;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * The amounts that a step can do. A refusal quotes them to the tenth inside the range, so that either end works as it is
 * written.
 */
final class Range {

    /** By how far an amount may lie outside its range through rounding, in millimetres or degrees. */
    private static final double ROUNDING = 1e-6;

    private Range() {}

    /**
     * What one piece allows.
     *
     * @param rule what limits it, such as {@code "between its pitch point and its side seam it can be lowered by"}
     * @param least the least that works, in millimetres
     * @param most the most
     */
    record Limits(String rule, double least, double most) {}

    /**
     * Checks that an amount can be done.
     *
     * @param thing what is changed, such as {@code "armhole of the front"}
     * @param rule what limits it
     * @param by the amount
     * @param least the least that works, in millimetres
     * @param most the most
     * @throws PatternException if the amount is out of the range
     */
    static void check(String thing, String rule, Length by, double least, double most) {
        if (isOutside(by.mm(), least, most)) {
            throw PatternException.of(
                    thing,
                    rule + " " + Length.mm(least).roundedUp().text() + " to "
                            + Length.mm(most).roundedDown().text(),
                    by.text(),
                    "");
        }
    }

    /**
     * Checks that an angle can be done.
     *
     * @throws PatternException if it is out of the range
     */
    static void check(String thing, String rule, Angle by, Angle least, Angle most) {
        if (isOutside(by.degrees(), least.degrees(), most.degrees())) {
            throw PatternException.of(
                    thing,
                    rule + " " + least.roundedUp().text() + " to "
                            + most.roundedDown().text(),
                    by.text(),
                    "");
        }
    }

    /**
     * Checks that an amount can be done on every one of some pieces; the message quotes what works on all, and names the
     * piece that forbids the amount.
     *
     * @param thing what is changed, such as {@code "armhole"}
     * @throws PatternException if the amount is out of the range of one
     */
    static void checkAll(String thing, List<Piece> pieces, Length by, Function<Piece, Limits> limits) {
        double least = Double.NEGATIVE_INFINITY;
        double most = Double.POSITIVE_INFINITY;
        for (Piece piece : pieces) {
            Limits own = limits.apply(piece);
            least = Math.max(least, own.least);
            most = Math.min(most, own.most);
        }
        for (Piece piece : pieces) {
            Limits own = limits.apply(piece);
            if (isOutside(by.mm(), own.least, own.most)) {
                check(thing + " of the " + piece.name(), own.rule, by, least, most);
            }
        }
    }

    private static boolean isOutside(double by, double least, double most) {
        return by < least - ROUNDING || by > most + ROUNDING;
    }
}

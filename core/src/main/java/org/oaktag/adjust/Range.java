package org.oaktag.adjust;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.oaktag.PatternException;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * The amounts that a step can do. A refusal quotes them to the tenth inside the range, so that either end works as it
 * is written.
 *
 * <pre>{@code
 * Range.check("pocket", "its width must be", mm(120), mm(50), mm(250));
 * }</pre>
 */
public final class Range {

    /** By how far an amount may lie outside its range through rounding, in millimetres or degrees. */
    private static final double ROUNDING = 1e-6;

    private Range() {}

    /**
     * What one piece allows.
     *
     * <pre>{@code
     * Range.Limits sides = new Range.Limits("can be flared by", Length.ZERO, mm(80));
     * }</pre>
     *
     * @param rule what limits it, such as {@code "between its pitch point and its side seam it can be lowered by"}
     * @param least the least that works
     * @param most the most
     */
    public record Limits(String rule, Length least, Length most) {
        /** Refuses null. */
        public Limits {
            Objects.requireNonNull(rule, "rule");
            Objects.requireNonNull(least, "least");
            Objects.requireNonNull(most, "most");
        }
    }

    /**
     * Checks that an amount can be done.
     *
     * @param thing what is changed, such as {@code "armhole of the front"}
     * @param rule what limits it, to be followed by the range
     * @param by the amount
     * @param least the least that works
     * @param most the most
     * @throws PatternException if the amount is out of the range by more than a millionth of a millimetre
     */
    public static void check(String thing, String rule, Length by, Length least, Length most) {
        Objects.requireNonNull(thing, "thing");
        Objects.requireNonNull(rule, "rule");
        if (isOutside(by.mm(), least.mm(), most.mm())) {
            throw refusal(
                    thing,
                    rule,
                    by.text(),
                    least.roundedUp().text(),
                    most.roundedDown().text());
        }
    }

    /**
     * Checks that an angle can be done.
     *
     * @param thing what is changed, such as {@code "shoulder of the front"}
     * @param rule what limits it, to be followed by the range
     * @param by the angle
     * @param least the least that works
     * @param most the most
     * @throws PatternException if it is out of the range by more than a millionth of a degree
     */
    public static void check(String thing, String rule, Angle by, Angle least, Angle most) {
        Objects.requireNonNull(thing, "thing");
        Objects.requireNonNull(rule, "rule");
        if (isOutside(by.degrees(), least.degrees(), most.degrees())) {
            throw refusal(
                    thing,
                    rule,
                    by.text(),
                    least.roundedUp().text(),
                    most.roundedDown().text());
        }
    }

    /**
     * Checks that an amount can be done on every one of some pieces; the message quotes what works on all, and names
     * the piece that forbids the amount.
     *
     * @param thing what is changed, such as {@code "armhole"}
     * @param pieces the pieces, at least one
     * @param by the amount
     * @param limits what each piece allows
     * @throws PatternException if the amount is out of the range of one
     */
    public static void checkAll(String thing, List<Piece> pieces, Length by, Function<Piece, Limits> limits) {
        List<Limits> each = pieces.stream().map(limits).toList();
        Length least = each.stream().map(Limits::least).max(Length::compareTo).orElse(by);
        Length most = each.stream().map(Limits::most).min(Length::compareTo).orElse(by);
        for (int i = 0; i < each.size(); i++) {
            Limits own = each.get(i);
            if (isOutside(by.mm(), own.least.mm(), own.most.mm())) {
                check(thing + " of the " + pieces.get(i).name(), own.rule, by, least, most);
            }
        }
    }

    private static PatternException refusal(String thing, String rule, String by, String least, String most) {
        return PatternException.of(thing, rule + " " + least + " to " + most, by, "");
    }

    private static boolean isOutside(double by, double least, double most) {
        return by < least - ROUNDING || by > most + ROUNDING;
    }
}

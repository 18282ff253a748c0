package org.oaktag.body;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.oaktag.measure.Length;

/**
 * A value that was meant in one unit and read in another.
 *
 * @param meant the unit that was meant
 * @param readAs the unit it was read in; never metres, in which no body is read
 */
record UnitSlip(LengthUnit meant, LengthUnit readAs) {

    /** Returns every slip, or those that start from the unit in which the value was read. */
    private static Stream<UnitSlip> from(List<LengthUnit> readAs) {
        return readAs.stream()
                .flatMap(read -> Arrays.stream(LengthUnit.values())
                        .filter(meant -> meant != read)
                        .map(meant -> new UnitSlip(meant, read)));
    }

    /**
     * Returns the question that the likeliest slip suggests, or an empty string where none makes the value plausible.
     * The likeliest is the one that brings the value nearest, in proportion, to the middle of the range.
     *
     * @param readAs the units in which it may have been read
     */
    static String explaining(Length value, PlausibleRange range, List<LengthUnit> readAs) {
        double middle = Math.sqrt(range.least().mm() * range.greatest().mm());
        return from(readAs)
                .filter(slip -> range.includes(slip.undone(value)))
                .min(Comparator.comparingDouble(
                        slip -> Math.abs(Math.log(slip.undone(value).mm() / middle))))
                .map(slip -> slip.question(value))
                .orElse("");
    }

    private Length undone(Length value) {
        return meant.of(readAs.count(value));
    }

    private String question(Length value) {
        return meant.words() + " read as " + readAs.words() + "? that would be " + readAs.text(undone(value));
    }
}

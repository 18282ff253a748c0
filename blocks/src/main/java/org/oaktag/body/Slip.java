package org.oaktag.body;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.oaktag.measure.Length;

/**
 * What may have gone wrong when a measure was written down.
 *
 * @param words what may have happened, without a question mark
 * @param meant the measure that was meant, then
 * @param unit the unit in which the maker speaks
 */
record Slip(String words, Length meant, LengthUnit unit) {

    /** Returns every slip of the unit that starts from one of those in which the value may have been read. */
    static Stream<Slip> ofUnit(Length value, List<LengthUnit> readAs) {
        return readAs.stream()
                .flatMap(read -> Arrays.stream(LengthUnit.values())
                        .filter(meant -> meant != read)
                        .map(meant -> new Slip(
                                meant.words() + " read as " + read.words(), meant.of(read.count(value)), read)));
    }

    /** Returns the slips of one who measures one half of a body and doubles it, once too seldom or too often. */
    static Stream<Slip> ofHalf(Length value) {
        return Stream.of(
                new Slip("half of the whole", value.times(2), LengthUnit.MM),
                new Slip("twice the whole", value.times(0.5), LengthUnit.MM));
    }

    /**
     * Returns the question that the likeliest slip suggests, or an empty string where none makes the value plausible.
     * The likeliest is the one that brings the value nearest, in proportion, to the middle of the range.
     */
    static String likeliest(Stream<Slip> slips, PlausibleRange range) {
        double middle = Math.sqrt(range.least().mm() * range.greatest().mm());
        return slips.filter(slip -> range.includes(slip.meant()))
                .min(Comparator.comparingDouble(
                        slip -> Math.abs(Math.log(slip.meant().mm() / middle))))
                .map(Slip::question)
                .orElse("");
    }

    private String question() {
        return words + "? that would be " + unit.text(meant);
    }
}

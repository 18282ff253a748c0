package org.oaktag.examples;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.LengthUnit;
import org.oaktag.garment.Name;
import org.oaktag.garment.Spelling;

/**
 * A column of a body file, as its head says it: {@code name}, {@code figure}, {@code age_years}, {@code confirmed},
 * or a measure and its unit, {@code bust_girth_cm}.
 *
 * @param head the head, in lower case
 * @param measured the measure and the unit, or empty for one of the other columns
 */
record BodyColumn(String head, Optional<Measured> measured) {

    static final String NAME = "name";
    static final String FIGURE = "figure";
    static final String AGE_YEARS = "age_years";
    static final String CONFIRMED = "confirmed";

    private static final String ALL = "all";
    private static final List<LengthUnit> UNITS = List.of(LengthUnit.MM, LengthUnit.CM, LengthUnit.INCH);

    /**
     * A measure in a unit.
     *
     * @param measure what is measured
     * @param unit in which unit
     */
    record Measured(BodyMeasure measure, LengthUnit unit) {}

    /**
     * Reads the head of a column.
     *
     * @param where the place, for the message
     * @throws PatternException if there is no such column; the message names the nearest one
     */
    static BodyColumn parse(String where, String written) {
        String head = written.strip().toLowerCase(Locale.ROOT);
        if (List.of(NAME, FIGURE, AGE_YEARS, CONFIRMED).contains(head)) {
            return new BodyColumn(head, Optional.empty());
        }
        for (BodyMeasure measure : BodyMeasure.values()) {
            for (LengthUnit unit : UNITS) {
                if (heads(measure, unit).anyMatch(head::equals)) {
                    return new BodyColumn(head, Optional.of(new Measured(measure, unit)));
                }
            }
        }
        throw PatternException.of(
                where,
                "a column must be name, figure, age_years, confirmed, or a measure of ISO 8559-1 and its unit (mm, cm or in)",
                "'" + written + "'",
                nearest(head));
    }

    private static String nearest(String head) {
        boolean lacksItsUnit = known().anyMatch(known -> known.equals(head + "_cm"));
        return lacksItsUnit
                ? "say the unit: '" + head + "_mm', '" + head + "_cm' or '" + head + "_in'"
                : Spelling.meant(head, known().toList());
    }

    private static Stream<String> known() {
        return Stream.concat(
                Stream.of(NAME, FIGURE, AGE_YEARS, CONFIRMED),
                Arrays.stream(BodyMeasure.values())
                        .flatMap(measure -> UNITS.stream().flatMap(unit -> heads(measure, unit))));
    }

    private static Stream<String> heads(BodyMeasure measure, LengthUnit unit) {
        return words(measure).map(word -> word + "_" + unit.symbol());
    }

    /**
     * Reads the measures that a cell of the column {@code confirmed} names: by blanks between them, or {@code all}.
     *
     * @param where the place, for the message
     * @throws PatternException if there is no such measure; the message names the nearest one
     */
    static List<BodyMeasure> confirmed(String where, String cell) {
        if (cell.strip().equalsIgnoreCase(ALL)) {
            return List.of(BodyMeasure.values());
        }
        return Arrays.stream(cell.strip().toLowerCase(Locale.ROOT).split("[\\s;]+"))
                .map(word -> Arrays.stream(BodyMeasure.values())
                        .filter(measure -> words(measure).anyMatch(word::equals))
                        .findFirst()
                        .orElseThrow(() -> Spelling.unknown(
                                where,
                                word,
                                Stream.concat(
                                                Stream.of(ALL),
                                                Arrays.stream(BodyMeasure.values())
                                                        .flatMap(BodyColumn::words))
                                        .toList())))
                .toList();
    }

    private static Stream<String> words(BodyMeasure measure) {
        return Stream.concat(Stream.of(measure.asName()), measure.otherName().stream())
                .map(BodyColumn::underscored);
    }

    private static String underscored(Name name) {
        return name.value().replace(' ', '_');
    }
}

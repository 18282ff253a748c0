package org.oaktag.examples;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.oaktag.PatternException;
import org.oaktag.block.Block;
import org.oaktag.body.BodyBuilder;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.body.PlausibleRange;
import org.oaktag.garment.Spelling;
import org.oaktag.measure.Length;

/** Turns the lines of a body file into bodies, and says line and column of whatever is none. */
final class BodyTable {

    /**
     * A line of the file that is not blank.
     *
     * @param number which one, from 1; the last where a quoted cell runs over several
     * @param cells what stands between the commas, without the blanks around it
     */
    record Line(long number, List<String> cells) {
        Line {
            cells = List.copyOf(cells);
        }
    }

    private final String file;
    private final List<BodyColumn> columns;
    private final Block block;
    private final boolean confirmed;

    private BodyTable(String file, Line head, Block block, boolean confirmed) {
        this.file = file;
        this.block = block;
        this.columns = columns(head);
        this.confirmed = confirmed;
        checkNoneMissing(head);
    }

    /**
     * Returns the table under a line of column heads, to be read line by line.
     *
     * @param block what is drafted for the bodies: its measures must be there
     * @param confirmed whether every measure is meant as it is, so that nothing is asked about
     * @throws PatternException if a head is unknown or one that must be there is missing
     */
    static BodyTable under(String file, Line head, Block block, boolean confirmed) {
        return new BodyTable(file, head, block, confirmed);
    }

    /**
     * Reads the bodies.
     *
     * @param file the name of the file, for messages
     * @param lines the head and a line for each body
     * @param block what is drafted for the bodies: its measures must be there
     * @param confirmed whether every measure is meant as it is, so that nothing is asked about
     * @throws PatternException if a line is no body
     */
    static List<BodyMeasurements> read(String file, List<Line> lines, Block block, boolean confirmed) {
        if (lines.isEmpty()) {
            throw PatternException.of(
                    file, "must hold a line of column heads and a line for each body", "an empty file", "");
        }
        BodyTable table = new BodyTable(file, lines.get(0), block, confirmed);
        if (lines.size() == 1) {
            throw PatternException.of(file, "must hold at least one body", "column heads and nothing below", "");
        }
        Map<String, Long> lineOf = new HashMap<>();
        List<BodyMeasurements> bodies = new ArrayList<>();
        for (Line line : lines.subList(1, lines.size())) {
            BodyMeasurements body = table.body(line);
            Long earlier = lineOf.putIfAbsent(body.name(), line.number());
            if (earlier != null) {
                throw PatternException.of(
                        table.place(line, BodyColumn.NAME),
                        "each body must have a name of its own",
                        "'" + body.name() + "', which is in line " + earlier + " too",
                        "");
            }
            bodies.add(body);
        }
        return bodies;
    }

    private List<BodyColumn> columns(Line head) {
        if (head.cells().size() == 1 && head.cells().get(0).matches(".*[;\t].*")) {
            throw PatternException.of(
                    file + " line " + head.number(),
                    "cells must be parted by commas",
                    head.cells().get(0).contains(";") ? "semicolons" : "tabs",
                    "");
        }
        List<BodyColumn> read = new ArrayList<>();
        Map<Object, String> headOf = new HashMap<>();
        for (int i = 0; i < head.cells().size(); i++) {
            String where = file + " line " + head.number() + " column " + (i + 1);
            BodyColumn column = BodyColumn.parse(where, head.cells().get(i));
            Object content =
                    column.measured().<Object>map(BodyColumn.Measured::measure).orElse(column.head());
            String earlier = headOf.putIfAbsent(content, column.head());
            if (earlier != null) {
                throw PatternException.of(
                        where,
                        "each measure must have one column",
                        "'" + column.head() + "' beside '" + earlier + "'",
                        "leave one of them out");
            }
            read.add(column);
        }
        return List.copyOf(read);
    }

    private void checkNoneMissing(Line head) {
        Set<String> heads = columns.stream().map(BodyColumn::head).collect(Collectors.toSet());
        Set<BodyMeasure> measures = columns.stream()
                .flatMap(column -> column.measured().stream())
                .map(BodyColumn.Measured::measure)
                .collect(Collectors.toSet());
        List<String> missing = new ArrayList<>();
        Stream.of(BodyColumn.NAME, BodyColumn.FIGURE)
                .filter(column -> !heads.contains(column))
                .forEach(missing::add);
        block.missing(measures).forEach(measure -> missing.add(column(measure) + "_cm"));
        if (!missing.isEmpty()) {
            throw PatternException.of(
                    file + " line " + head.number(),
                    "the columns "
                            + Stream.concat(
                                            Stream.of(BodyColumn.NAME, BodyColumn.FIGURE),
                                            block.missing(Set.of()).stream().map(BodyTable::column))
                                    .collect(Collectors.joining(", "))
                            + " (in mm, cm or in) must be there for a " + block.name(),
                    "no " + String.join(", no ", missing),
                    "");
        }
    }

    private static String column(BodyMeasure measure) {
        return measure.label().replace(' ', '_');
    }

    /**
     * Reads one body.
     *
     * @throws PatternException if the line is no body, or asked about; the message names line and column
     */
    BodyMeasurements body(Line line) {
        return built(gathered(line), line);
    }

    /**
     * Gathers what one line says of a body, before it is asked about.
     *
     * @throws PatternException if a cell is none of its column; the message names line and column
     */
    BodyBuilder gathered(Line line) {
        if (line.cells().size() != columns.size()) {
            throw PatternException.of(
                    file + " line " + line.number(),
                    "must have " + columns.size() + " cells, as many as there are columns",
                    line.cells().size() + " cells",
                    "put a cell that holds a comma in quotes");
        }
        String name = name(line);
        if (name.isEmpty()) {
            throw PatternException.of(place(line, BodyColumn.NAME), "each body must have a name", "a blank cell", "");
        }
        Figure figure = figure(line);
        BodyBuilder builder = BodyMeasurements.builder().name(name).figure(figure);
        for (int i = 0; i < columns.size(); i++) {
            BodyColumn column = columns.get(i);
            String cell = line.cells().get(i);
            if (cell.isEmpty()) {
                column.measured().ifPresent(measured -> checkNotNeeded(measured.measure(), line, column));
            } else if (column.head().equals(BodyColumn.AGE_YEARS)) {
                builder.ageYears(age(line, cell));
            } else if (column.head().equals(BodyColumn.CONFIRMED)) {
                BodyColumn.confirmed(place(line, BodyColumn.CONFIRMED), cell).forEach(builder::confirmed);
            } else {
                column.measured()
                        .ifPresent(measured -> builder.measure(
                                measured.measure(), length(measured, figure, place(line, column.head()), cell)));
            }
        }
        if (confirmed) {
            Stream.of(BodyMeasure.values()).forEach(builder::confirmed);
        }
        return builder;
    }

    /** Returns the name of a body, blank where its cell is. */
    String name(Line line) {
        return cell(line, BodyColumn.NAME);
    }

    private Figure figure(Line line) {
        String cell = cell(line, BodyColumn.FIGURE).toLowerCase(Locale.ROOT);
        List<String> known = Arrays.stream(Figure.values()).map(Figure::label).toList();
        return Arrays.stream(Figure.values())
                .filter(figure -> figure.label().equals(cell))
                .findFirst()
                .orElseThrow(() -> cell.isEmpty()
                        ? blankFigure(line, known)
                        : Spelling.unknown(place(line, BodyColumn.FIGURE), cell, known));
    }

    private PatternException blankFigure(Line line, List<String> known) {
        return PatternException.of(
                place(line, BodyColumn.FIGURE), "must be one of " + String.join(", ", known), "a blank cell", "");
    }

    private int age(Line line, String cell) {
        if (!cell.matches("\\d{1,3}")) {
            throw PatternException.of(
                    place(line, BodyColumn.AGE_YEARS), "must be a whole number of years", "'" + cell + "'", "");
        }
        return Integer.parseInt(cell);
    }

    private static Length length(BodyColumn.Measured measured, Figure figure, String place, String cell) {
        Length length = measured.unit().of(MeasuredNumber.parse(place, cell, measured.unit()));
        return PlausibleRange.of(measured.measure(), figure)
                .check(place + ", " + measured.measure().label(), length, measured.unit());
    }

    private void checkNotNeeded(BodyMeasure measure, Line line, BodyColumn column) {
        if (block.needs().contains(measure)) {
            throw PatternException.of(
                    place(line, column.head()),
                    measure.label() + " must be taken for a " + block.name(),
                    "a blank cell",
                    "measure " + measure.definition());
        }
    }

    /** What is wrong with the body as a whole is said with its line. */
    private BodyMeasurements built(BodyBuilder builder, Line line) {
        try {
            return builder.build();
        } catch (PatternException e) {
            String where = e.remedy().contains("confirm ")
                    ? " (in the column 'confirmed', or all of the file with --confirmed)"
                    : "";
            throw PatternException.of(
                    file + " line " + line.number() + ", " + e.thing(), e.rule(), e.given(), e.remedy() + where);
        }
    }

    private String cell(Line line, String head) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).head().equals(head)) {
                return line.cells().get(i);
            }
        }
        throw new IllegalStateException("no column " + head);
    }

    private String place(Line line, String head) {
        return file + " line " + line.number() + " column " + head;
    }
}

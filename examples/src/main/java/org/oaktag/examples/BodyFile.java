package org.oaktag.examples;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.oaktag.PatternException;
import org.oaktag.blocks.KnitTop;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Spelling;

/**
 * A table of bodies, read from a file of comma-separated values (RFC 4180, UTF-8).
 *
 * <p>The first line names the columns: {@code name} and {@code figure} (woman, man, girl, boy), {@code age_years} if
 * you like, and measures by their ISO 8559-1 names with their unit, such as {@code bust_girth_cm} or {@code
 * shoulder_length_in}. Bust girth and height are required. A blank cell is a measure not taken.
 *
 * @param name the name of the file, for messages
 * @param bodies the bodies, in the order of the file
 */
record BodyFile(String name, List<BodyMeasurements> bodies) {

    private static final String SHIPPED = "night-crew.csv";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    /** Copies the bodies. */
    BodyFile {
        bodies = List.copyOf(bodies);
    }

    /** Returns the night crew: eight invented grown people. */
    static BodyFile nightCrew() {
        try (InputStream stream = Objects.requireNonNull(BodyFile.class.getResourceAsStream(SHIPPED), SHIPPED)) {
            return parse(SHIPPED, stream.readAllBytes(), false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Reads a file.
     *
     * @param confirmed whether every measure in it is meant as it is, so that nothing is asked about
     * @throws PatternException if it cannot be read, or if anything in it is no body; the message names the line, the
     *     column, the value and what it may be
     */
    static BodyFile read(Path file, boolean confirmed) {
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(file);
        } catch (IOException e) {
            throw PatternException.of("body file", "must exist and be readable", "'" + file + "'", "");
        }
        return parse(String.valueOf(file.getFileName()), bytes, confirmed);
    }

    /**
     * Reads the content of a file.
     *
     * @param name the name of the file, for messages
     * @param confirmed as for {@link #read}
     * @throws PatternException as {@link #read}
     */
    static BodyFile parse(String name, byte[] utf8, boolean confirmed) {
        return new BodyFile(name, BodyTable.read(name, lines(name, decoded(name, utf8)), KnitTop.BLOCK, confirmed));
    }

    /**
     * Returns the body of that name.
     *
     * @throws PatternException if there is none; the message names the nearest
     */
    BodyMeasurements body(String wanted) {
        List<String> names = bodies.stream().map(BodyMeasurements::name).toList();
        return bodies.stream()
                .filter(body -> body.name().equals(wanted.strip()))
                .findFirst()
                .orElseThrow(() -> Spelling.unknown("body of " + name, wanted.strip(), names));
    }

    private static String decoded(String name, byte[] utf8) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(utf8))
                    .toString();
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw PatternException.of(name, "must be text in UTF-8", "bytes that are not", "save it as CSV UTF-8");
        }
    }

    /** Parts the text into lines and cells; lines that are blank or hold nothing but commas are left out. */
    private static List<BodyTable.Line> lines(String name, String text) {
        List<BodyTable.Line> lines = new ArrayList<>();
        try (CSVParser parser =
                CSVParser.parse(text, CSVFormat.RFC4180.builder().setTrim(true).get())) {
            long last = 0;
            try {
                for (CSVRecord row : parser) {
                    last = Math.max(parser.getCurrentLineNumber(), last + 1);
                    if (row.stream().anyMatch(cell -> !cell.isBlank())) {
                        lines.add(new BodyTable.Line(last, row.toList()));
                    }
                }
            } catch (UncheckedIOException e) {
                throw PatternException.of(
                        name + " line " + (last + 1),
                        "a quoted cell must end with a quote before the next comma",
                        "a quote that is not closed",
                        "");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return lines;
    }
}

package org.oaktag.examples;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.oaktag.PatternException;

/**
 * The lines of a file of bodies, read one at a time, so that a file of any length fits.
 *
 * <p>Each line is parted into cells by itself: a quote that is not closed breaks its own line and no other.
 */
final class BodyLines implements Closeable {

    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setTrim(true).get();
    private static final String BYTE_ORDER_MARK = "\uFEFF";
    /** What stands in for bytes that are no UTF-8. */
    private static final String REPLACEMENT = "\uFFFD";

    private final String file;
    private final BufferedReader reader;
    private long number;

    private BodyLines(String file, BufferedReader reader) {
        this.file = file;
        this.reader = reader;
    }

    /**
     * A line that is not blank, as it is written.
     *
     * @param file the name of the file, for messages
     * @param number which one, from 1
     * @param text what it says
     */
    record Written(String file, long number, String text) {

        /**
         * Returns its cells.
         *
         * @throws PatternException if it is no line of such a file
         */
        BodyTable.Line cells() {
            if (text.contains(REPLACEMENT)) {
                throw PatternException.of(
                        place(), "must be text in UTF-8", "bytes that are not", "save it as CSV UTF-8");
            }
            try (CSVParser parser = CSVParser.parse(text, FORMAT)) {
                List<CSVRecord> rows = parser.getRecords();
                return new BodyTable.Line(number, rows.get(0).toList());
            } catch (IOException | UncheckedIOException e) {
                throw PatternException.of(
                        place(),
                        "a quoted cell must end, in its line, with a quote before the next comma",
                        "a quote that is not closed, or text behind it",
                        "");
            }
        }

        private String place() {
            return file + " line " + number;
        }
    }

    /**
     * Opens a file.
     *
     * @throws PatternException if it cannot be read
     */
    static BodyLines of(Path file) {
        try {
            return new BodyLines(
                    String.valueOf(file.getFileName()),
                    new BufferedReader(new InputStreamReader(Files.newInputStream(file), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw PatternException.of("file of bodies", "must exist and be readable", "'" + file + "'", "");
        }
    }

    /** Returns the next line that holds more than blanks and commas, or empty at the end. */
    Optional<Written> next() throws IOException {
        for (String line = reader.readLine(); line != null; line = reader.readLine()) {
            number++;
            String text = number == 1 && line.startsWith(BYTE_ORDER_MARK) ? line.substring(1) : line;
            if (holdsAnything(text)) {
                return Optional.of(new Written(file, number, text));
            }
        }
        return Optional.empty();
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }

    private static boolean holdsAnything(String text) {
        return text.chars().anyMatch(each -> each != ',' && !Character.isWhitespace(each));
    }
}

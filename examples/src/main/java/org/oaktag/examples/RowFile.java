package org.oaktag.examples;

import java.io.BufferedInputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.oaktag.PatternException;

/**
 * The file that the rows go to. A row is a line, so that a run that was interrupted can be gone on with.
 *
 * @param file where it is
 * @param heads the column heads
 */
record RowFile(Path file, List<String> heads) {

    RowFile {
        heads = List.copyOf(heads);
    }

    /**
     * How far a run got that was interrupted.
     *
     * @param rows how many rows are there, the heads not counted
     * @param lastLine the line of the file of bodies that the last is about, or 0 where there is none
     */
    record Reached(long rows, long lastLine) {}

    /** Returns a row as it is written. */
    static String row(List<String> cells) {
        return CSVFormat.RFC4180.format(cells.toArray()) + "\n";
    }

    /**
     * Cuts off a row that was not finished, and tells how far the rows go.
     *
     * @throws PatternException if the file holds rows of another style
     */
    Reached reached() throws IOException {
        if (!Files.exists(file)) {
            return new Reached(0, 0);
        }
        cutOffUnfinished();
        try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            String first = reader.readLine();
            if (first == null) {
                return new Reached(0, 0);
            }
            if (!first.equals(row(heads).stripTrailing())) {
                throw PatternException.of(
                        "'" + file + "'",
                        "must have the heads of this style to be gone on with",
                        first,
                        "leave out --resume");
            }
            long rows = 0;
            String last = "0,";
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                rows++;
                last = line;
            }
            return new Reached(rows, lineNumber(last));
        }
    }

    /** Opens the file, to be written behind what is there or anew. */
    BufferedWriter writer(boolean behind) throws IOException {
        if (behind) {
            return Files.newBufferedWriter(file, StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        }
        BufferedWriter writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        writer.write(row(heads));
        return writer;
    }

    private void cutOffUnfinished() throws IOException {
        long kept = 0;
        try (BufferedInputStream bytes = new BufferedInputStream(Files.newInputStream(file))) {
            long at = 0;
            for (int next = bytes.read(); next >= 0; next = bytes.read()) {
                at++;
                kept = next == '\n' ? at : kept;
            }
        }
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            bytes.setLength(kept);
        }
    }

    private long lineNumber(String row) {
        String cell = row.substring(0, Math.max(0, row.indexOf(',')));
        if (!cell.matches("\\d{1,18}")) {
            throw PatternException.of(
                    "'" + file + "'", "must hold rows that begin with a line number", row, "leave out --resume");
        }
        return Long.parseLong(cell);
    }
}

package org.oaktag.examples;

import java.io.BufferedInputStream;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.blocks.Style;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Name;
import org.oaktag.recipe.json.RecipeJson;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * Makes one style for every body of a file of any length, a row a body, in the order of the file: finished measures,
 * seams, the greatest seam error, the ease of the cap, or the reason for refusal.
 *
 * <p>Bodies are read as they are needed, and as many are at work as keep the threads busy; so memory does not grow with the
 * file, and the rows are the same for any number of threads.
 */
@Command(
        name = "draft-many",
        mixinStandardHelpOptions = true,
        description = "Makes one style for every body of a CSV file, a row a body.")
public final class DraftMany implements Callable<Integer> {

    private static final int INTERRUPTED = 130;
    private static final int WAITING_FOR_EACH_THREAD = 64;

    @Parameters(index = "0", paramLabel = "IN.csv", description = "a CSV file of bodies")
    private Path in = Path.of("");

    @Parameters(index = "1", paramLabel = "OUT.csv", description = "the rows; replaced if it is there")
    private Path out = Path.of("");

    @Option(names = "--recipe", paramLabel = "FILE", description = "a style as JSON; if left out, the hooded top")
    private @Nullable Path recipe;

    @Option(names = "--threads", paramLabel = "N", defaultValue = "1", description = "threads (${DEFAULT-VALUE})")
    private int threads = 1;

    @Option(names = "--resume", description = "go on behind the rows that OUT.csv holds from an interrupted run")
    private boolean resume;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final AtomicBoolean stop = new AtomicBoolean();
    private final SortedMap<String, Long> counts = new TreeMap<>();

    /** Runs it. */
    public static void main(String[] args) {
        int code = run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                args);
        if (code != 0 && code != INTERRUPTED) {
            System.exit(code);
        }
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(new DraftMany())
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((e, command, parsed) -> {
                    if (e instanceof PatternException) {
                        command.getErr().println("draft-many: " + e.getMessage());
                        return CommandLine.ExitCode.SOFTWARE;
                    }
                    throw e;
                })
                .execute(args);
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (threads < 1) {
            throw PatternException.of("threads", "must be 1 or more", "" + threads, "");
        }
        Style style = recipe == null ? HoodedTop.style() : RecipeJson.standard().read(read(recipe));
        Thread worker = Thread.currentThread();
        Thread hook = new Thread(() -> finish(worker));
        Runtime.getRuntime().addShutdownHook(hook);
        try {
            return drafted(style);
        } finally {
            if (!stop.get()) {
                Runtime.getRuntime().removeShutdownHook(hook);
            }
        }
    }

    /** When the machine is told to stop, what is at work is still written. */
    private void finish(Thread worker) {
        stop.set(true);
        try {
            worker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private int drafted(Style style) throws IOException, InterruptedException {
        List<Name> measures = measures(style);
        List<String> heads = DraftedRow.heads(measures);
        long skipped = resume ? Resumed.rows(out, String.join(",", heads)) : 0;
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        long done = skipped;
        try (CSVParser rows = parser();
                BufferedWriter writer = writer(skipped > 0);
                Progress progress = Progress.of(spec.commandLine().getErr())) {
            Iterator<CSVRecord> iterator = rows.iterator();
            BodyTable table = BodyTable.under(name(), nextLine(rows, iterator).orElseThrow(this::empty));
            if (skipped == 0) {
                writer.write(row(heads));
            }
            for (long i = 0; i < skipped; i++) {
                nextLine(rows, iterator);
            }
            Queue<Future<DraftedRow>> window = new ArrayDeque<>();
            Optional<BodyTable.Line> line = nextLine(rows, iterator);
            while (line.isPresent() || !window.isEmpty()) {
                while (line.isPresent() && window.size() < threads * WAITING_FOR_EACH_THREAD && !stop.get()) {
                    BodyTable.Line next = line.get();
                    window.add(pool.submit(() -> DraftedRow.of(table, next, style, measures)));
                    line = nextLine(rows, iterator);
                }
                if (window.isEmpty()) {
                    break;
                }
                write(window.remove(), writer);
                done++;
                progress.at(done);
            }
        } finally {
            pool.shutdownNow();
        }
        return told(done, skipped);
    }

    private void write(Future<DraftedRow> future, BufferedWriter writer) throws IOException, InterruptedException {
        try {
            DraftedRow row = future.get();
            writer.write(row(row.cells()));
            counts.merge(row.outcome() + (row.rule().isEmpty() ? "" : ": " + row.rule()), 1L, Long::sum);
        } catch (ExecutionException e) {
            throw new IllegalStateException("a row failed outside its own care", e.getCause());
        }
    }

    private static String row(List<String> cells) {
        return CSVFormat.RFC4180.format(cells.toArray()) + "\n";
    }

    private int told(long done, long skipped) {
        PrintWriter say = spec.commandLine().getOut();
        say.println(done - skipped + " rows written to " + out
                + (skipped == 0 ? "" : " behind " + skipped + " that were there"));
        counts.forEach((what, times) -> say.println("  " + times + " " + what));
        if (stop.get()) {
            say.println("interrupted; go on with the same command and --resume");
        }
        say.flush();
        return stop.get() ? INTERRUPTED : CommandLine.ExitCode.OK;
    }

    /** The finished measures that the style makes, found on the first of the night crew whom it fits. */
    private static List<Name> measures(Style style) {
        for (BodyMeasurements body : BodyFile.nightCrew().bodies()) {
            try {
                return style.on(body).measures().stream()
                        .map(FinishedMeasure::name)
                        .toList();
            } catch (PatternException refused) {
                // Another of the crew may have the body for it.
            }
        }
        return List.of();
    }

    private CSVParser parser() throws IOException {
        return CSVParser.parse(
                new InputStreamReader(new BufferedInputStream(Files.newInputStream(in)), StandardCharsets.UTF_8),
                CSVFormat.RFC4180.builder().setTrim(true).get());
    }

    private BufferedWriter writer(boolean append) throws IOException {
        return append
                ? Files.newBufferedWriter(out, StandardCharsets.UTF_8, StandardOpenOption.APPEND)
                : Files.newBufferedWriter(out, StandardCharsets.UTF_8);
    }

    private Optional<BodyTable.Line> nextLine(CSVParser rows, Iterator<CSVRecord> iterator) {
        try {
            while (iterator.hasNext()) {
                CSVRecord row = iterator.next();
                if (row.stream().anyMatch(cell -> !cell.isBlank())) {
                    List<String> cells = new ArrayList<>(row.toList());
                    if (row.getRecordNumber() == 1) {
                        cells.set(0, cells.get(0).replace("\uFEFF", ""));
                    }
                    return Optional.of(new BodyTable.Line(rows.getCurrentLineNumber(), cells));
                }
            }
            return Optional.empty();
        } catch (UncheckedIOException e) {
            throw PatternException.of(
                    name() + " line " + rows.getCurrentLineNumber(),
                    "a quoted cell must end with a quote before the next comma",
                    String.valueOf(e.getMessage()),
                    "");
        }
    }

    private PatternException empty() {
        return PatternException.of(
                name(), "must hold a line of column heads and a line for each body", "an empty file", "");
    }

    private String name() {
        return String.valueOf(in.getFileName());
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw PatternException.of("recipe file", "must exist and be text in UTF-8", "'" + file + "'", "");
        }
    }

    /** How far a run had got that was interrupted. */
    private static final class Resumed {

        private Resumed() {}

        /** Cuts off a row that was not finished and returns how many there are, the heads not counted. */
        static long rows(Path out, String heads) throws IOException {
            if (!Files.exists(out)) {
                return 0;
            }
            long lines = 0;
            long kept = 0;
            try (RandomAccessFile file = new RandomAccessFile(out.toFile(), "rw");
                    BufferedInputStream bytes = new BufferedInputStream(Files.newInputStream(out))) {
                long at = 0;
                for (int next = bytes.read(); next >= 0; next = bytes.read()) {
                    at++;
                    if (next == '\n') {
                        lines++;
                        kept = at;
                    }
                }
                file.setLength(kept);
            }
            try (var reader = Files.newBufferedReader(out)) {
                String first = reader.readLine();
                if (first != null && !first.equals(heads)) {
                    throw PatternException.of(
                            "'" + out + "'",
                            "must have the heads of this style to be gone on with",
                            first,
                            "leave out --resume");
                }
            }
            return Math.max(0, lines - 1);
        }
    }
}

package org.oaktag.examples;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
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
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;
import org.oaktag.block.Style;
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
 * <p>Bodies are read line by line as they are needed, and as many are at work as keep the threads busy; so memory does
 * not grow with the file, and the rows are the same for any number of threads.
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

    @Option(
            names = "--confirmed",
            description =
                    "take every measure of IN.csv as it is: ask about none that is far from what the others lead to"
                            + " expect")
    private boolean confirmed;

    @Option(names = "--resume", description = "go on behind the rows that OUT.csv holds from an interrupted run")
    private boolean resume;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private final AtomicBoolean stop = new AtomicBoolean();
    private final SortedMap<String, Long> counts = new TreeMap<>();
    private final SortedMap<Name, Long> unfit = new TreeMap<>();
    private long fitting;

    /** Runs it. */
    public static void main(String[] args) {
        int code = run(Program.writer(System.out), Program.writer(System.err), args);
        if (code != CommandLine.ExitCode.OK && code != INTERRUPTED) {
            System.exit(code);
        }
    }

    static int run(PrintWriter out, PrintWriter err, String... args) {
        return Program.run(new DraftMany(), out, err, args);
    }

    @Override
    public Integer call() throws IOException, InterruptedException {
        if (threads < 1) {
            throw PatternException.of("threads", "must be 1 or more", "" + threads, "");
        }
        if (Files.exists(in) && Files.exists(out) && Files.isSameFile(in, out)) {
            throw PatternException.of("OUT.csv", "must be another file than IN.csv", "'" + out + "'", "");
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
        RowFile rows = new RowFile(out, DraftedRow.heads(measures));
        long total = bodies();
        RowFile.Reached reached = resume ? rows.reached() : new RowFile.Reached(0, 0);
        long done = reached.rows();
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try (BodyLines lines = BodyLines.of(in)) {
            BodyTable table = BodyTable.under(
                    name(), lines.next().orElseThrow(this::empty).cells(), style.block(), confirmed);
            skip(lines, reached);
            try (BufferedWriter writer = rows.writer(resume && Files.exists(out) && Files.size(out) > 0);
                    Progress progress = Progress.of(spec.commandLine().getErr(), total, done)) {
                Queue<Future<DraftedRow>> window = new ArrayDeque<>();
                Optional<BodyLines.Written> line = lines.next();
                while (line.isPresent() || !window.isEmpty()) {
                    while (line.isPresent() && window.size() < threads * WAITING_FOR_EACH_THREAD && !stop.get()) {
                        BodyLines.Written next = line.get();
                        window.add(pool.submit(() -> DraftedRow.of(table, next, style, measures)));
                        line = lines.next();
                    }
                    if (window.isEmpty()) {
                        break;
                    }
                    write(window.remove(), writer);
                    done++;
                    progress.at(done);
                }
            }
        } finally {
            pool.shutdownNow();
        }
        return told(done, reached.rows());
    }

    /** Passes over the lines whose rows are there, and checks that they are rows of this file. */
    private void skip(BodyLines lines, RowFile.Reached reached) throws IOException {
        long last = 0;
        for (long i = 0; i < reached.rows(); i++) {
            last = lines.next().map(BodyLines.Written::number).orElse(0L);
        }
        if (last != reached.lastLine()) {
            throw PatternException.of(
                    "'" + out + "'",
                    "must hold rows of " + name() + " to be gone on with",
                    reached.rows() + " rows, the last of line " + reached.lastLine(),
                    "leave out --resume");
        }
    }

    /** Returns how many bodies there are, so that progress can be told as a share. */
    private long bodies() throws IOException {
        try (BodyLines lines = BodyLines.of(in)) {
            long count = -1;
            for (Optional<BodyLines.Written> line = lines.next(); line.isPresent(); line = lines.next()) {
                count++;
            }
            return Math.max(0, count);
        }
    }

    private void write(Future<DraftedRow> future, BufferedWriter writer) throws IOException, InterruptedException {
        try {
            DraftedRow row = future.get();
            writer.write(RowFile.row(row.cells()));
            counts.merge(row.outcome() + (row.rule().isEmpty() ? "" : ": " + row.rule()), 1L, Long::sum);
            if (row.outcome().equals("made") && row.unfit().isEmpty()) {
                fitting++;
            }
            row.unfit().forEach(check -> unfit.merge(check, 1L, Long::sum));
        } catch (ExecutionException e) {
            throw new IllegalStateException("a row failed outside its own care", e.getCause());
        }
    }

    private int told(long done, long skipped) {
        PrintWriter say = spec.commandLine().getOut();
        say.println(done - skipped + " rows written to " + out
                + (skipped == 0 ? "" : " behind " + skipped + " that were there"));
        counts.forEach((what, times) -> say.println("  " + times + " " + what));
        say.println("  " + fitting + " of them fit in every check"
                + unfit.entrySet().stream()
                        .map(entry -> entry.getValue() + " " + entry.getKey())
                        .collect(Collectors.joining(", ", unfit.isEmpty() ? "" : "; cautions: ", "")));
        if (counts.keySet().stream().anyMatch(what -> what.startsWith(DraftedRow.ASKED))) {
            say.println("asked: mend what is wrong in " + name()
                    + "; name what is meant in its column 'confirmed', or draft" + " all as it is with --confirmed");
        }
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
}

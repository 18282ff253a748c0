package org.oaktag.examples;

import java.io.Console;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.Optional;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarConsumer;
import me.tongfei.progressbar.ProgressBarStyle;

/** Tells how far a long run has got: a bar on a terminal, a plain line now and then elsewhere. */
final class Progress implements AutoCloseable {

    private static final int LINES = 20;

    private final PrintWriter err;
    private final long total;
    private final Optional<ProgressBar> bar;

    private Progress(PrintWriter err, long total, Optional<ProgressBar> bar) {
        this.err = err;
        this.total = total;
        this.bar = bar;
    }

    /** Returns whichever suits where the program runs. */
    static Progress of(PrintWriter err, long total, long done) {
        return isTerminal()
                ? new Progress(err, total, Optional.of(bar(total, done).build()))
                : plain(err, total);
    }

    private static boolean isTerminal() {
        return Optional.ofNullable(System.console())
                        .filter(Progress::isTerminal)
                        .isPresent()
                && !"dumb".equals(System.getenv().getOrDefault("TERM", "dumb"));
    }

    /**
     * From Java 22 on there is a console where there is no terminal too, and it says which; before, it had no such
     * word.
     */
    private static boolean isTerminal(Console console) {
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException before22) {
            return true;
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    /** Returns a bar that writes to a consumer. */
    static Progress bar(PrintWriter err, long total, long done, ProgressBarConsumer consumer) {
        return new Progress(
                err, total, Optional.of(bar(total, done).setConsumer(consumer).build()));
    }

    /** Returns plain lines, at every twentieth of the whole. */
    static Progress plain(PrintWriter err, long total) {
        return new Progress(err, total, Optional.empty());
    }

    private static ProgressBarBuilder bar(long total, long done) {
        return new ProgressBarBuilder()
                .setTaskName("drafting")
                .setInitialMax(total)
                .setStyle(ProgressBarStyle.ASCII)
                .startsFrom(done, Duration.ZERO);
    }

    /** Takes note of how many rows are written. */
    void at(long rows) {
        if (bar.isPresent()) {
            bar.get().stepTo(rows);
        } else if (rows == total || rows % Math.max(1, total / LINES) == 0) {
            err.println(rows + " of " + total + " drafted");
        }
    }

    @Override
    public void close() {
        bar.ifPresent(ProgressBar::close);
        err.flush();
    }
}

package org.oaktag.examples;

import java.io.PrintWriter;
import java.util.Optional;

/**
 * Tells how far a long run has got: a line that is written over on a terminal, a line now and then elsewhere. How many
 * rows there are is not known before the last is read, so that it counts and shows no share.
 */
final class Progress implements AutoCloseable {

    private static final long ON_A_TERMINAL = 250;
    private static final long ELSEWHERE = 10_000;

    private final PrintWriter err;
    private final boolean terminal;

    private Progress(PrintWriter err, boolean terminal) {
        this.err = err;
        this.terminal = terminal;
    }

    static Progress of(PrintWriter err) {
        return new Progress(err, Optional.ofNullable(System.console()).isPresent());
    }

    /** Takes note of how many rows are written. */
    void at(long rows) {
        if (terminal && rows % ON_A_TERMINAL == 0) {
            err.print("\r" + rows + " drafted");
            err.flush();
        } else if (!terminal && rows % ELSEWHERE == 0) {
            err.println(rows + " drafted");
        }
    }

    @Override
    public void close() {
        if (terminal) {
            err.println();
        }
        err.flush();
    }
}

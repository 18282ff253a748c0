package org.oaktag.examples;

import java.io.Console;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.oaktag.PatternException;
import org.oaktag.export.drawing.FreeText;
import picocli.CommandLine;

/** How a command of the examples runs: a refusal is one sentence on the error stream, headed by the command's name. */
final class Program {

    private Program() {}

    /** Runs the command, and leaves with its exit code unless that is 0. */
    static void main(Callable<Integer> command, String... args) {
        int code = run(command, writer(System.out), writer(System.err), args);
        if (code != CommandLine.ExitCode.OK) {
            System.exit(code);
        }
    }

    /** Runs the command and returns its exit code. */
    static int run(Callable<Integer> command, PrintWriter out, PrintWriter err, String... args) {
        return new CommandLine(command)
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler(Program::refuse)
                .execute(args);
    }

    /** A terminal is written to as it reads; a file or a pipe always gets UTF-8. */
    static PrintWriter writer(PrintStream stream) {
        Charset charset =
                Optional.ofNullable(System.console()).map(Console::charset).orElse(StandardCharsets.UTF_8);
        return new PrintWriter(stream, true, charset);
    }

    /** Anything but a refusal, or a file that is in the way, is a fault of ours and keeps its stack trace. */
    private static int refuse(Exception e, CommandLine command, CommandLine.ParseResult parsed) throws Exception {
        String said;
        if (e instanceof PatternException) {
            said = FreeText.shown(String.valueOf(e.getMessage()));
        } else if (e instanceof FileSystemException file) {
            said = "'" + FreeText.shown(file.getFile()) + "' cannot be read or written";
        } else {
            throw e;
        }
        command.getErr().println(command.getCommandName() + ": " + said);
        return CommandLine.ExitCode.SOFTWARE;
    }
}

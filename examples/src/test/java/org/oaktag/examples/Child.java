package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;

/**
 * A program of the JDK run in a folder, as from a terminal.
 *
 * @param code its exit code
 * @param out what it printed
 * @param err what it complained of
 */
record Child(int code, String out, String err) {

    /** Where the classes of the library and of what it needs are, as one argument. */
    static String classPath() {
        String all = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(all.split(File.pathSeparator))
                .filter(entry -> Files.exists(Path.of(entry)))
                .collect(Collectors.joining(File.pathSeparator));
    }

    /**
     * Runs a program of this very JDK, such as {@code java} or {@code jshell}.
     *
     * @param in what is typed into it
     */
    static Child run(Path folder, String in, String program, List<String> arguments) {
        return run(Path.of(System.getProperty("java.home")), folder, in, program, arguments);
    }

    /** Runs a program of a JDK. */
    static Child run(Path jdk, Path folder, String in, String program, List<String> arguments) {
        List<String> command =
                new ArrayList<>(List.of(jdk.resolve("bin").resolve(program).toString()));
        command.addAll(arguments);
        try {
            Path typed = Files.writeString(Files.createTempFile("child", ".in"), in);
            Path out = Files.createTempFile("child", ".out");
            Path err = Files.createTempFile("child", ".err");
            Process process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectInput(typed.toFile())
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            // Long enough for any machine: this is to end a child that waits for ever, not to measure it.
            assertThat(process.waitFor(5, TimeUnit.MINUTES))
                    .as("%s ends", command)
                    .isTrue();
            Child child = new Child(
                    process.exitValue(),
                    Files.readString(out, StandardCharsets.UTF_8),
                    Files.readString(err, StandardCharsets.UTF_8));
            for (Path file : List.of(typed, out, err)) {
                Files.delete(file);
            }
            return child;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }
}

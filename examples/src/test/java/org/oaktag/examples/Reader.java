package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A program of somebody else that reads what was written. Where it is not installed, the test that asks for it is
 * skipped and says so.
 *
 * @param program its name
 * @param debianPackage the Debian package that has it
 */
record Reader(String program, String debianPackage) {

    static final Reader MUTOOL = new Reader("mutool", "mupdf-tools");
    static final Reader RSVG = new Reader("rsvg-convert", "librsvg2-bin");
    static final Reader CHROMIUM = new Reader("chromium", "chromium");

    void mustBeInstalled() {
        boolean installed = Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
        assumeTrue(installed, "skipped: '" + program + "' is not installed (Debian package " + debianPackage + ")");
    }

    /** Runs the program and returns what it printed; its complaints are left aside. */
    String run(List<String> arguments) {
        mustBeInstalled();
        List<String> command = new ArrayList<>(List.of(program));
        command.addAll(arguments);
        try {
            Path out = Files.createTempFile("reader", ".txt");
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .redirectOutput(out.toFile())
                    .start();
            assertThat(process.waitFor()).as(String.join(" ", command)).isZero();
            String text = Files.readString(out, StandardCharsets.UTF_8);
            Files.delete(out);
            return text;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    /** Runs Chromium without a window, a network or anything remembered. */
    static String chromium(List<String> arguments) {
        List<String> all = new ArrayList<>(chromiumOptions());
        all.addAll(arguments);
        return CHROMIUM.run(all);
    }

    /**
     * Returns the options under which Chromium has no window, no network and nothing remembered. Its profile is a new
     * folder of the build's and not of the test's: Chromium's own children still write there for a moment after it has
     * ended, and a test whose folder cannot be emptied fails.
     */
    static List<String> chromiumOptions() {
        try {
            Path target = Files.createDirectories(Path.of("target").toAbsolutePath());
            return List.of(
                    "--headless",
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync",
                    "--user-data-dir=" + Files.createTempDirectory(target, "chromium-"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

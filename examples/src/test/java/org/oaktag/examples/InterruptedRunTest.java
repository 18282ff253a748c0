package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** A run in a process of its own, interrupted as Ctrl-C does it, and gone on with. */
class InterruptedRunTest {

    private static final int BODIES = 1500;
    private static final int INTERRUPTED = 130;

    @TempDir
    private Path folder;

    /** {@code env --default-signal}, for where the tests themselves run with the signal ignored, is GNU's. */
    @Test
    @EnabledOnOs(OS.LINUX)
    @Timeout(value = 10, unit = TimeUnit.MINUTES)
    void an_interrupted_run_leaves_whole_rows_says_how_to_go_on_and_ends_in_the_same_bytes()
            throws IOException, InterruptedException {
        Path in = bodies();
        Path out = folder.resolve("out.csv");
        Process child = new ProcessBuilder(
                        "env",
                        "--default-signal=INT",
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        DraftMany.class.getName(),
                        in.toString(),
                        out.toString(),
                        "--threads",
                        "2")
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("told.txt").toFile())
                .start();
        while (child.isAlive() && (!Files.exists(out) || Files.size(out) == 0)) {
            Thread.sleep(20);
        }
        new ProcessBuilder("kill", "-INT", String.valueOf(child.pid())).start().waitFor();
        assertThat(child.waitFor())
                .as(Files.readString(folder.resolve("told.txt")))
                .isEqualTo(INTERRUPTED);
        assertThat(folder.resolve("told.txt"))
                .content()
                .contains("interrupted; go on with the same command and --resume");

        byte[] part = Files.readAllBytes(out);
        List<String> rows = Files.readAllLines(out);
        assertThat(rows).hasSizeBetween(2, BODIES);
        assertThat(part[part.length - 1]).isEqualTo((byte) '\n');

        assertThat(run(in, out, "--resume")).contains("behind " + (rows.size() - 1) + " that were there");
        byte[] resumed = Files.readAllBytes(out);
        assertThat(Arrays.copyOf(resumed, part.length)).isEqualTo(part);
        Path whole = folder.resolve("whole.csv");
        run(in, whole);
        assertThat(whole).hasBinaryContent(resumed);
    }

    private static String run(Path in, Path out, String... more) {
        StringWriter told = new StringWriter();
        List<String> args = new java.util.ArrayList<>(List.of(in.toString(), out.toString()));
        args.addAll(List.of(more));
        int code =
                DraftMany.run(new PrintWriter(told), new PrintWriter(new StringWriter()), args.toArray(String[]::new));
        assertThat(code).isZero();
        return told.toString();
    }

    private Path bodies() throws IOException {
        StringBuilder text = new StringBuilder("name,figure,bust_girth_mm,height_mm\n");
        for (int i = 0; i < BODIES; i++) {
            text.append("body ").append(i).append(i % 2 == 0 ? ",woman," : ",man,");
            text.append(900 + i % 90).append(",").append(1650 + i % 70).append("\n");
        }
        return Files.writeString(folder.resolve("in.csv"), text);
    }
}

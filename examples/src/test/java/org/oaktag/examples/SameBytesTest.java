package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same body gives the same bytes, in whatever country and at whatever hour. */
class SameBytesTest {

    @Test
    void locale_time_zone_and_encoding_change_nothing(@TempDir Path folder) throws Exception {
        Map<String, String> here =
                fork(folder.resolve("here"), "-Duser.language=en", "-Duser.country=US", "-Duser.timezone=UTC");
        Map<String, String> there = fork(
                folder.resolve("there"),
                "-Duser.language=ar",
                "-Duser.country=EG",
                "-Duser.timezone=Pacific/Kiritimati",
                "-Dfile.encoding=ISO-8859-1");
        assertThat(there.keySet()).isEqualTo(here.keySet());
        here.forEach((name, text) -> assertThat(there.get(name)).as(name).isEqualTo(text));
    }

    @Test
    void two_runs_in_one_program_are_equal_too(@TempDir Path folder) {
        Run.into(folder.resolve("a"), "--body", "Ines");
        Run.into(folder.resolve("b"), "--body", "Ines");
        assertThat(Run.files(folder.resolve("a"))).isEqualTo(Run.files(folder.resolve("b")));
    }

    @Test
    void two_runs_in_several_sizes_are_equal_too(@TempDir Path folder) {
        Run.into(folder.resolve("a"), "--body", "Ines", "--body", "Bram");
        Run.into(folder.resolve("b"), "--body", "Ines", "--body", "Bram");
        assertThat(Run.files(folder.resolve("a"))).isEqualTo(Run.files(folder.resolve("b")));
    }

    private static Map<String, String> fork(Path folder, String... settings) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString()));
        command.addAll(List.of(settings));
        command.addAll(List.of("-cp", Child.classPath(), NightCrew.class.getName(), "--body", "Juno", "--out"));
        command.add(folder.toString());
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(
                        folder.resolveSibling(folder.getFileName() + ".txt").toFile())
                .start();
        assertThat(process.waitFor()).isZero();
        Map<String, String> files = Run.files(folder);
        String account = Files.readString(folder.resolveSibling(folder.getFileName() + ".txt"));
        files.put("account", account.replace(folder.toString(), "OUT"));
        return files;
    }
}

package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import org.junit.jupiter.api.Test;

class ProgressTest {

    private final StringWriter err = new StringWriter();

    @Test
    void elsewhere_a_plain_line_stands_at_every_twentieth() {
        try (Progress progress = Progress.plain(new PrintWriter(err), 1000)) {
            for (long row = 1; row <= 1000; row++) {
                progress.at(row);
            }
        }
        assertThat(err.toString().lines())
                .hasSize(20)
                .startsWith("50 of 1000 drafted")
                .endsWith("1000 of 1000 drafted")
                .noneMatch(line -> line.contains("\r"));
    }

    @Test
    void of_a_short_file_every_row_is_told_and_of_an_empty_one_nothing() {
        Progress.plain(new PrintWriter(err), 0).close();
        assertThat(err.toString()).isEmpty();
        try (Progress progress = Progress.plain(new PrintWriter(err), 2)) {
            progress.at(1);
            progress.at(2);
        }
        assertThat(err.toString().lines()).containsExactly("1 of 2 drafted", "2 of 2 drafted");
    }

    @Test
    void on_a_terminal_one_line_is_written_over_until_it_is_full() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream terminal = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        try (Progress progress =
                Progress.bar(new PrintWriter(err), 1000, 400, new ConsoleProgressBarConsumer(terminal, 80))) {
            progress.at(1000);
        }
        String shown = bytes.toString(StandardCharsets.UTF_8);
        assertThat(shown).contains("drafting", "100%", "1000/1000").startsWith("\r");
        assertThat(shown.strip().lines())
                .hasSize(
                        (int) shown.strip().chars().filter(each -> each == '\r').count() + 1);
        assertThat(err.toString()).isEmpty();
    }
}

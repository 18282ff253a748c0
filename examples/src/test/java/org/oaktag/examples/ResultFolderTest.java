package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.oaktag.PatternException;

/** Results are written whole or not at all. */
class ResultFolderTest {

    private static final Map<String, String> FILES =
            new TreeMap<>(Map.of("pattern.svg", "<svg/>", "steps/01-widen.svg", "<svg/>", "seams.csv", "seam\n"));

    @TempDir
    private Path parent = Path.of("");

    @Test
    void a_new_folder_is_made_with_all_that_leads_to_it() {
        Path folder = parent.resolve("a").resolve("b").resolve("out");
        ResultFolder.at(folder).write(bytes(FILES));
        assertThat(Run.files(folder)).isEqualTo(FILES);
        assertThat(Run.entries(folder.resolveSibling(""))).containsExactly("out");
    }

    @Test
    void earlier_results_are_replaced_as_a_whole() {
        Path folder = parent.resolve("out");
        ResultFolder.at(folder).write(bytes(Map.of("flat.svg", "old", "steps/07-other.svg", "old")));
        ResultFolder.at(folder).write(bytes(FILES));
        assertThat(Run.files(folder)).isEqualTo(FILES);
        assertThat(Run.entries(parent)).containsExactly("out");
    }

    @Test
    void an_empty_folder_is_filled() throws IOException {
        Path folder = Files.createDirectory(parent.resolve("out"));
        ResultFolder.at(folder).write(bytes(FILES));
        assertThat(Run.files(folder)).isEqualTo(FILES);
    }

    @Test
    void a_folder_with_anything_else_in_it_is_refused_and_left_alone() throws IOException {
        Path folder = parent.resolve("out");
        ResultFolder.at(folder).write(bytes(FILES));
        Files.writeString(folder.resolve("thesis.txt"), "mine");
        assertThatThrownBy(() -> ResultFolder.at(folder))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("a folder with 'thesis.txt' in it")
                .hasMessageContaining("choose another folder");
        assertThat(Files.readString(folder.resolve("thesis.txt"))).isEqualTo("mine");
        assertThat(Files.readString(folder.resolve("pattern.svg"))).isEqualTo("<svg/>");
    }

    @Test
    void a_folder_under_a_name_of_ours_is_not_ours() throws IOException {
        Path folder = parent.resolve("out");
        Files.createDirectories(folder.resolve("pattern.svg"));
        assertThatThrownBy(() -> ResultFolder.at(folder)).isInstanceOf(PatternException.class);
    }

    @Test
    void when_a_file_cannot_be_written_the_earlier_results_stay() {
        Path folder = parent.resolve("out");
        ResultFolder.at(folder).write(bytes(FILES));
        Map<String, String> unwritable = new TreeMap<>(Map.of("flat.svg", "new", "steps/" + "x".repeat(300), "new"));
        assertThatThrownBy(() -> ResultFolder.at(folder).write(bytes(unwritable)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must be a place that can be written to");
        assertThat(Run.files(folder)).isEqualTo(FILES);
        assertThat(Run.entries(parent)).containsExactly("out");
    }

    @Test
    void when_a_file_cannot_be_written_nothing_is_left_behind() {
        Path folder = parent.resolve("a").resolve("out");
        Map<String, String> unwritable = Map.of("x".repeat(300), "new");
        assertThatThrownBy(() -> ResultFolder.at(folder).write(bytes(unwritable)))
                .isInstanceOf(PatternException.class);
        assertThat(Run.entries(parent)).isEmpty();
    }

    @Test
    void behind_a_link_the_folder_itself_is_replaced() throws IOException {
        Path real = Files.createDirectory(parent.resolve("real"));
        Path link = Files.createSymbolicLink(parent.resolve("link"), real);
        ResultFolder.at(link).write(bytes(FILES));
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Run.files(real)).isEqualTo(FILES);
    }

    private static Map<String, byte[]> bytes(Map<String, String> texts) {
        Map<String, byte[]> bytes = new TreeMap<>();
        texts.forEach((name, text) -> bytes.put(name, text.getBytes(StandardCharsets.UTF_8)));
        return bytes;
    }
}

package org.oaktag.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The skirt has no privilege: moved to a module of a user's own, which sees of the library what it exports, its sources
 * compile as they are.
 */
class SkirtAsAModuleTest {

    private static final Path SKIRT = Path.of("../../blocks/src/main/java/org/oaktag/skirt");

    @TempDir
    private Path folder = Path.of("");

    @Test
    void the_skirt_compiles_as_a_module_of_a_users_own() throws IOException {
        assertThat(compiled("package own.skirt;")).isEmpty();
    }

    /** What the library keeps to itself is not there: the check can fail. */
    @Test
    void what_the_library_does_not_export_is_not_seen() throws IOException {
        Files.createDirectories(folder.resolve("src/own/skirt"));
        Files.writeString(folder.resolve("src/own/skirt/Peeping.java"), """
                package own.skirt;

                class Peeping {
                    Object seen = new org.oaktag.garment.Kept();
                }
                """);
        assertThat(compiled("package own.skirt;")).contains("Peeping.java");
    }

    /** Returns what the compiler says. */
    private String compiled(String packageLine) throws IOException {
        Path sources = Files.createDirectories(folder.resolve("src/own/skirt"));
        Files.writeString(
                folder.resolve("src/module-info.java"),
                "module own { requires org.oaktag.blocks; requires static org.jspecify; exports own.skirt; }");
        try (Stream<Path> files = Files.list(SKIRT)) {
            for (Path file : files.toList()) {
                String moved = Files.readString(file)
                        .replace("package org.oaktag.skirt;", packageLine)
                        .replace("org.oaktag.skirt.", "own.skirt.");
                Files.writeString(sources.resolve(file.getFileName().toString()), moved);
            }
        }
        List<Path> all = new ArrayList<>(List.of(folder.resolve("src/module-info.java")));
        try (Stream<Path> files = Files.list(sources)) {
            files.sorted().forEach(all::add);
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter said = new StringWriter();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            boolean fine = compiler.getTask(
                            said,
                            manager,
                            null,
                            List.of(
                                    "-proc:none",
                                    "--release",
                                    "17",
                                    "--module-path",
                                    modules(),
                                    "-d",
                                    folder.resolve("classes").toString()),
                            null,
                            manager.getJavaFileObjectsFromPaths(all))
                    .call();
            return fine ? "" : said.toString();
        }
    }

    private static String modules() {
        String all =
                System.getProperty("java.class.path") + File.pathSeparator + System.getProperty("jdk.module.path", "");
        return String.join(
                File.pathSeparator,
                Stream.of(all.split(File.pathSeparator, -1))
                        .filter(entry -> entry.matches(".*(core.target|blocks.target|oaktag-core|oaktag-blocks).*")
                                || entry.contains("commons-math3")
                                || entry.contains("jspecify"))
                        .filter(entry -> !entry.contains("test-classes"))
                        .distinct()
                        .toList());
    }
}

package org.oaktag.all;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AllJarTest {

    private static final Path JAR = Path.of("target/oaktag-all.jar").toAbsolutePath();
    private static final Path SCRIPT = Path.of("../examples/scripts/Tee.java").toAbsolutePath();

    @Test
    void a_script_runs_on_the_jar_alone(@TempDir Path folder) throws Exception {
        Path said = folder.resolve("said.txt");
        Process script = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        JAR.toString(),
                        SCRIPT.toString())
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        assertThat(script.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(said).content().startsWith("shoulder: front.shoulder").doesNotContain("not true");
        assertThat(script.exitValue()).isZero();
        assertThat(folder.resolve("tee/pattern-a4.pdf")).isNotEmptyFile();
    }

    @Test
    void services_are_merged_and_licences_and_notices_of_all_that_is_inside_are_kept() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertThat(text(jar, "META-INF/services/com.fasterxml.jackson.core.JsonFactory"))
                    .contains("com.fasterxml.jackson.core.JsonFactory");
            assertThat(text(jar, "META-INF/LICENSE.oaktag")).contains("Apache License");
            // FontBox's and PDFBox's licences name what they took in; the font has its own.
            assertThat(text(jar, "META-INF/LICENSE")).contains("Apache License", "Liberation");
            assertThat(text(jar, "org/oaktag/export/pdf/DejaVuSans.LICENSE.txt"))
                    .contains("Bitstream Vera");
            assertThat(text(jar, "META-INF/NOTICE")).contains("Apache PDFBox", "Apache FontBox", "Jackson");
            assertThat(text(jar, "META-INF/NOTICE.txt")).contains("Apache Commons Math", "Apache Commons Logging");
            assertThat(jar.stream().map(ZipEntry::getName))
                    .contains("org/oaktag/recipe/json/RecipeJson.class", "org/oaktag/export/pdf/PdfPages.class")
                    .noneMatch(name -> name.endsWith("module-info.class"));
        }
    }

    /** Two builds of one commit are equal byte for byte only if no entry bears the hour of the build. */
    @Test
    void our_entries_bear_the_time_that_the_build_is_given() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            assertThat(jar.stream().filter(entry -> entry.getName().startsWith("org/oaktag/")))
                    .isNotEmpty()
                    .allSatisfy(entry ->
                            assertThat(entry.getTimeLocal().toLocalDate()).isEqualTo(LocalDate.of(2025, 1, 1)));
        }
    }

    private static String text(JarFile jar, String name) throws IOException {
        ZipEntry entry = jar.getEntry(name);
        assertThat(entry).as(name).isNotNull();
        return new String(jar.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
    }
}

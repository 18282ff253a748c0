package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The library works on the class path and on the module path, on the JDK that runs this and on the newest there is. */
class ModulesTest {

    private static final String PROBE = """
            import java.nio.file.Path;
            import org.oaktag.adjust.Recipe;
            import org.oaktag.adjustments.Necklines;
            import org.oaktag.block.*;
            import org.oaktag.blocks.*;
            import org.oaktag.body.*;
            import org.oaktag.export.pdf.PdfPages;
            import org.oaktag.export.sheet.*;
            import org.oaktag.export.svg.SvgSheet;
            import org.oaktag.garment.*;
            import org.oaktag.measure.*;
            import org.oaktag.recipe.json.RecipeJson;

            class Probe {
                public static void main(String[] args) throws Exception {
                    var mira = BodyMeasurements.builder().name("Mira").figure(Figure.WOMAN)
                            .bustGirth(Length.cm(86.5)).height(Length.cm(178)).build();
                    var jersey = Cloth.knit("jersey", Percent.percent(30));
                    var recipe = Recipe.of("probe", Necklines.widenNeckline(Length.mm(10)));
                    var style = new Style(KnitTop.BLOCK, TopEase.standard(), jersey, recipe);
                    var json = RecipeJson.standard();
                    Garment top = json.read(json.write(style)).on(mira);
                    var whole = Printout.whole(top, KnitTop.allowances(top), Paper.A0);
                    PdfPages.of(whole).writeTo(Path.of("probe.pdf"));
                    SvgSheet.flat(top).writeTo(Path.of("probe.svg"));
                    System.out.println(top.walkSeams().isTrue());
                    for (Class<?> type : new Class<?>[] {
                        Garment.class, KnitTop.class, SvgSheet.class, PdfPages.class, RecipeJson.class
                    }) {
                        System.out.println(type.getModule().getName());
                    }
                }
            }
            """;

    private static final String MODULES = """
            org.oaktag.core
            org.oaktag.blocks
            org.oaktag.export.svg
            org.oaktag.export.pdf
            org.oaktag.recipe.json
            """;

    static List<Path> jdks() {
        Path running = Path.of(System.getProperty("java.home"));
        try (Stream<Path> installed = Files.list(running.resolveSibling(""))) {
            Path newest = installed
                    .filter(home -> Files.isExecutable(home.resolve("bin/javac")))
                    .filter(home -> feature(home) >= Runtime.version().feature())
                    .max(Comparator.comparingInt(ModulesTest::feature).thenComparing(Comparator.naturalOrder()))
                    .orElse(running);
            return feature(newest) == Runtime.version().feature() ? List.of(running) : List.of(running, newest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the feature release of a JDK, as its file {@code release} tells it, or 0 where there is no such file. */
    private static int feature(Path home) {
        try (Stream<String> lines = Files.lines(home.resolve("release"))) {
            return lines.filter(line -> line.startsWith("JAVA_VERSION="))
                    .map(line -> line.replaceAll("[^0-9.]", "").replaceFirst("^1\\.", ""))
                    .mapToInt(version -> Integer.parseInt(version.replaceFirst("\\..*", "")))
                    .findFirst()
                    .orElse(0);
        } catch (IOException e) {
            return 0;
        }
    }

    @ParameterizedTest
    @MethodSource("jdks")
    void the_library_works_on_the_class_path(Path jdk, @TempDir Path folder) {
        assertWorks(probe(jdk, folder, "-cp", Child.classPath()), folder, "null\n".repeat(5));
    }

    @ParameterizedTest
    @MethodSource("jdks")
    void the_library_works_on_the_module_path(Path jdk, @TempDir Path folder) {
        String modulePath = Arrays.stream(Child.classPath().split(File.pathSeparator, -1))
                .filter(entry -> entry.endsWith(".jar") || Files.exists(Path.of(entry, "module-info.class")))
                .collect(Collectors.joining(File.pathSeparator));
        assumeTrue(
                Stream.of("core", "blocks", "export-svg", "export-pdf", "recipe-json")
                        .allMatch(module -> modulePath.contains(module)),
                "skipped: compiled without module descriptors");
        assertWorks(probe(jdk, folder, "-p", modulePath, "--add-modules", "ALL-MODULE-PATH"), folder, MODULES);
    }

    private static Child probe(Path jdk, Path folder, String... paths) {
        try {
            Path script = Files.writeString(folder.resolve("Probe.java"), PROBE);
            Stream<String> arguments = Stream.concat(
                    Stream.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"),
                    Stream.concat(Stream.of(paths), Stream.of(script.toString())));
            return Child.run(jdk, folder, "", "java", arguments.toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void assertWorks(Child run, Path folder, String modules) {
        assertThat(run.code()).as(run.err()).isZero();
        assertThat(run.out().replace("\r", "")).isEqualTo("true\n" + modules);
        assertThat(folder.resolve("probe.pdf")).isNotEmptyFile();
        assertThat(folder.resolve("probe.svg")).isNotEmptyFile();
    }
}

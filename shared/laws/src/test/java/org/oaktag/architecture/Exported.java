package org.oaktag.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a module shows to its users: the packages that its descriptor exports to everyone, and their public types. */
final class Exported {

    static final List<String> MODULES = List.of("core", "blocks", "export-svg", "export-pdf", "recipe-json");

    private static final Path ROOT = Path.of("../..");
    private static final Pattern EXPORTS = Pattern.compile("exports ([\\w.]+);");
    private static final Pattern PUBLIC = Pattern.compile(
            "(?m)^public (?:(?:final|abstract|sealed|non-sealed) )*(?:class|interface|record|enum|@interface) (\\w+)");

    private Exported() {}

    /** Returns the packages that a module exports to everyone. */
    static Set<String> packages(String module) {
        return EXPORTS.matcher(read(sources(module).resolve("module-info.java")))
                .results()
                .map(found -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Returns the packages that any module exports to everyone. */
    static Set<String> packages() {
        Set<String> all = new TreeSet<>();
        MODULES.forEach(module -> all.addAll(packages(module)));
        return all;
    }

    /** Returns the full names of the public types of a package that are not within another. */
    static Set<String> types(String module, String name) {
        Path folder = sources(module).resolve(name.replace('.', '/'));
        try (Stream<Path> files = Files.list(folder)) {
            Set<String> types = new TreeSet<>();
            files.filter(file -> file.toString().endsWith(".java"))
                    .forEach(file -> PUBLIC.matcher(read(file))
                            .results()
                            .forEach(found -> types.add(name + "." + found.group(1))));
            return types;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path sources(String module) {
        return ROOT.resolve(module).resolve("src/main/java");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package org.oaktag.guide;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Code that a Javadoc comment shows as a block.
 *
 * @param where the file and the line of its first line
 * @param packageName the package that it stands in
 * @param code its lines
 * @param ofType whether it stands before the type of its file, in the comment of the type itself or of the package
 */
record JavadocExample(String where, String packageName, List<String> code, boolean ofType) {

    private static final Path ROOT = Path.of("../..");
    private static final Pattern EXAMPLE = Pattern.compile("<pre>\\{@code\\n(.*?)\\n *\\* }</pre>", Pattern.DOTALL);
    private static final Pattern STAR = Pattern.compile("^ *\\* ?");
    private static final Pattern PUBLIC_TYPE = Pattern.compile(
            "^public (?:sealed |non-sealed |final |abstract )*(?:class|record|interface|enum) (\\w+)",
            Pattern.MULTILINE);

    JavadocExample {
        code = List.copyOf(code);
    }

    /**
     * A source file of the library.
     *
     * @param path from the root of the project
     * @param packageName the package it belongs to
     * @param publicType the name of its public type; empty if it has none
     * @param examples all the examples in it
     */
    record Source(String path, String packageName, String publicType, List<JavadocExample> examples) {

        boolean hasExampleOfItsType() {
            return examples.stream().anyMatch(JavadocExample::ofType);
        }

        String qualifiedName() {
            return packageName + "." + publicType;
        }
    }

    /** Returns the sources of the modules whose API is documented. */
    static List<Source> sources() {
        List<Source> sources = new ArrayList<>();
        for (String module : List.of("core", "blocks", "export-svg", "export-pdf", "recipe-json")) {
            Path root = ROOT.resolve(module).resolve("src/main/java");
            try (Stream<Path> files = Files.walk(root)) {
                files.filter(file -> file.toString().endsWith(".java"))
                        .filter(file -> !file.endsWith("module-info.java"))
                        .sorted()
                        .forEach(file -> sources.add(source(root, file)));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return sources;
    }

    private static Source source(Path root, Path file) {
        String text;
        try {
            text = Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        String path = ROOT.relativize(file).toString().replace('\\', '/');
        String packageName =
                root.relativize(file.getParent()).toString().replace('\\', '.').replace('/', '.');
        MatchResult type = PUBLIC_TYPE.matcher(text).results().findFirst().orElse(null);
        int typeAt = type == null ? text.length() : type.start();
        List<JavadocExample> examples = EXAMPLE.matcher(text)
                .results()
                .map(found -> new JavadocExample(
                        path + ":" + lineAt(text, found.start(1)),
                        packageName,
                        found.group(1)
                                .lines()
                                .map(line -> STAR.matcher(line).replaceFirst(""))
                                .toList(),
                        found.start() < typeAt))
                .toList();
        return new Source(path, packageName, type == null ? "" : type.group(1), examples);
    }

    private static long lineAt(String text, int offset) {
        return 1 + text.substring(0, offset).chars().filter(c -> c == '\n').count();
    }
}

package org.oaktag.guide;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Examples compiled in memory, each as the body of a method of a {@link Scenario}.
 *
 * <p>An example sees the fields of the scenario, every public type of the library, {@code List}, {@code Map}, {@code
 * Set} and {@code Optional}, and without a class before them the units, the names of edges and pieces, and the phrases
 * of the adjustments. Of several types of one name it sees that of its own package first, then the one that is {@link
 * #preferred}. Where files are written, one is put into a folder of its own that goes with the test. A statement that
 * is followed by {@code // = text} is what the text says.
 */
final class CompiledExamples {

    private static final List<String> PHRASES = List.of(
            "measure.Length",
            "measure.Angle",
            "measure.Percent",
            "garment.EdgeNames",
            "blocks.TopNames",
            "blocks.TopEdges",
            "adjust.Pieces",
            "adjust.Darts",
            "adjustments.Armholes",
            "adjustments.Bands",
            "adjustments.Bodies",
            "adjustments.Finishes",
            "adjustments.Hoods",
            "adjustments.Necklines",
            "adjustments.Shoulders",
            "adjustments.Sleeves",
            "skirt.SkirtShapes",
            "skirt.SkirtFinishes");
    private static final Pattern SAID =
            Pattern.compile("(?s)(\\s*)((?:[A-Z][\\w<>., \\[\\]]*|double|int|boolean) \\w+ = )?(.+?); *// = (.+?)\\s*");

    private final Map<String, byte[]> classes = new TreeMap<>();
    private final List<String> errors = new ArrayList<>();

    /** Compiles the examples, each of which becomes the class {@code examples.ExampleN} with its place in the list. */
    static CompiledExamples of(List<JavadocExample> examples, List<JavadocExample.Source> library) {
        CompiledExamples compiled = new CompiledExamples();
        List<JavaFileObject> units = new ArrayList<>();
        for (int i = 0; i < examples.size(); i++) {
            units.add(new Unit("Example" + i, unit("Example" + i, examples.get(i), library)));
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        DiagnosticCollector<JavaFileObject> diagnostics = new DiagnosticCollector<>();
        StandardJavaFileManager files = compiler.getStandardFileManager(diagnostics, null, null);
        compiler.getTask(
                        null,
                        new InMemory(files, compiled.classes),
                        diagnostics,
                        List.of("-proc:none", "-Xlint:none", "-Xmaxerrs", "1000"),
                        null,
                        units)
                .call();
        for (Diagnostic<? extends JavaFileObject> each : diagnostics.getDiagnostics()) {
            if (each.getKind() == Diagnostic.Kind.ERROR && each.getSource() instanceof Unit unit) {
                int example = Integer.parseInt(unit.name.substring("Example".length()));
                compiled.errors.add(examples.get(example).where() + " " + each.getMessage(null));
            } else if (each.getKind() == Diagnostic.Kind.ERROR) {
                compiled.errors.add(each.getMessage(null));
            }
        }
        return compiled;
    }

    /** Returns what the compiler had to say, with the place in the sources. */
    List<String> errors() {
        return List.copyOf(errors);
    }

    /** Returns the example at this place of the list, ready to run. */
    Scenario example(int index) throws ReflectiveOperationException {
        ClassLoader loader = new ClassLoader(CompiledExamples.class.getClassLoader()) {
            @Override
            protected Class<?> findClass(String name) throws ClassNotFoundException {
                byte[] bytes = classes.get(name);
                if (bytes == null) {
                    throw new ClassNotFoundException(name);
                }
                return defineClass(name, bytes, 0, bytes.length);
            }
        };
        return (Scenario)
                loader.loadClass("examples.Example" + index).getConstructor().newInstance();
    }

    private static String unit(String name, JavadocExample example, List<JavadocExample.Source> library) {
        StringBuilder unit = new StringBuilder("package examples;\n");
        for (String type : List.of("List", "Map", "Optional", "Set")) {
            unit.append("import java.util.").append(type).append(";\n");
        }
        boolean writes = preferred(example.packageName()).contains("java.nio.file.Path");
        List<String> own = library.stream()
                .filter(source -> source.packageName().equals(example.packageName()))
                .filter(source -> !source.publicType().isEmpty())
                .map(JavadocExample.Source::qualifiedName)
                .toList();
        own.forEach(type -> unit.append("import ").append(type).append(";\n"));
        for (String type : preferred(example.packageName())) {
            String simple = type.substring(type.lastIndexOf('.'));
            if (own.stream().noneMatch(each -> each.endsWith(simple))) {
                unit.append("import ").append(type).append(";\n");
            }
        }
        library.stream()
                .map(JavadocExample.Source::packageName)
                .distinct()
                .forEach(each -> unit.append("import ").append(each).append(".*;\n"));
        PHRASES.forEach(
                each -> unit.append("import static org.oaktag.").append(each).append(".*;\n"));
        unit.append("public final class ").append(name).append(" extends org.oaktag.guide.Scenario {\n");
        unit.append("public void run() throws Exception {\n");
        statements(example.code()).stream()
                .map(each -> checked(example.where(), each))
                .map(each -> writes ? each.replace("Path.of(\"", "file(\"") : each)
                .forEach(each -> unit.append(each).append('\n'));
        return unit.append("}}\n").toString();
    }

    /** Returns which of several types of one name is meant, where none of them is of the example's own package. */
    private static List<String> preferred(String packageName) {
        boolean draws = packageName.startsWith("org.oaktag.export");
        return List.of(
                draws ? "org.oaktag.export.drawing.Figure" : "org.oaktag.body.Figure",
                "org.oaktag.lay.Spread",
                draws || packageName.startsWith("org.oaktag.recipe")
                        ? "java.nio.file.Path"
                        : "org.oaktag.geometry.Path");
    }

    /** Puts the lines of each statement together: one ends where a line does that ends in a semicolon or a brace. */
    private static List<String> statements(List<String> code) {
        List<String> statements = new ArrayList<>();
        List<String> lines = new ArrayList<>();
        for (String line : code) {
            lines.add(line);
            String bare = line.replaceFirst(" *//.*", "").stripTrailing();
            if (bare.isEmpty() || bare.endsWith(";") || bare.endsWith("{") || bare.endsWith("}")) {
                statements.add(String.join("\n", lines));
                lines.clear();
            }
        }
        statements.add(String.join("\n", lines));
        return statements;
    }

    private static String checked(String where, String statement) {
        Matcher said = SAID.matcher(statement);
        if (!said.matches()) {
            return statement;
        }
        String declared = said.group(2) == null ? "" : said.group(2);
        return declared + "said(" + quoted(where) + ", " + quoted(said.group(4)) + ", " + said.group(3) + ");";
    }

    private static String quoted(String text) {
        return text.chars()
                .mapToObj(c -> c == '"' || c == '\\' ? "\\" + (char) c : String.valueOf((char) c))
                .collect(Collectors.joining("", "\"", "\""));
    }

    private static final class Unit extends SimpleJavaFileObject {
        private final String name;
        private final String code;

        Unit(String name, String code) {
            super(URI.create("string:///examples/" + name + ".java"), Kind.SOURCE);
            this.name = name;
            this.code = code;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return code;
        }
    }

    private static final class InMemory extends ForwardingJavaFileManager<JavaFileManager> {
        private final Map<String, byte[]> classes;

        InMemory(JavaFileManager files, Map<String, byte[]> classes) {
            super(files);
            this.classes = classes;
        }

        @Override
        public JavaFileObject getJavaFileForOutput(
                Location location, String name, JavaFileObject.Kind kind, FileObject sibling) {
            return new SimpleJavaFileObject(URI.create("mem:///" + name.replace('.', '/') + ".class"), kind) {
                @Override
                public OutputStream openOutputStream() {
                    return new ByteArrayOutputStream() {
                        @Override
                        public void close() {
                            classes.put(name, toByteArray());
                        }
                    };
                }
            };
        }
    }
}

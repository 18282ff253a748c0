package org.oaktag.examples;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A run of the main job, as from a terminal.
 *
 * @param code its exit code
 * @param out what it printed
 * @param err what it complained of
 */
record Run(int code, String out, String err) {

    static Run of(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = NightCrew.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Run(code, out.toString(), err.toString());
    }

    static Run into(Path folder, String... args) {
        List<String> all = new ArrayList<>(List.of(args));
        all.add("--out");
        all.add(folder.toString());
        return of(all.toArray(new String[0]));
    }

    /** Returns the content of every file below a folder by its name there: text, or bytes as characters for a PDF. */
    static Map<String, String> files(Path folder) {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(path).toString().replace('\\', '/');
                Charset charset = name.endsWith(".pdf") ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
                files.put(name, Files.readString(path, charset));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return files;
    }

    /** Returns everything in a folder, by name. */
    static List<String> entries(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

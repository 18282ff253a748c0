package org.oaktag.examples;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.lessons.LessonBook;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.LessonContents;
import org.oaktag.export.lesson.LessonPage;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes a lesson page for each main adjustment, and a page that leads to them. */
@Command(
        name = "lessons",
        mixinStandardHelpOptions = true,
        description = "Writes a lesson for each main adjustment, as pages for a browser.")
public final class Lessons implements Callable<Integer> {

    private static final Pattern OURS = Pattern.compile("[a-z0-9-]+\\.html");

    /** Whose block the lessons are on: Juno of the night crew. */
    private static final String BODY = "Juno";

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "${sys:oaktag.lessons.out:-lessons}",
            description = "the folder for the pages, made or replaced as a whole (${DEFAULT-VALUE})")
    private Path out = Path.of("lessons");

    @Spec
    private CommandSpec spec = CommandSpec.create();

    /** Writes the lessons. */
    public static void main(String[] args) {
        Program.main(new Lessons(), args);
    }

    /** Writes the lessons and returns the exit code. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return Program.run(new Lessons(), out, err, args);
    }

    @Override
    public Integer call() {
        ResultFolder folder = ResultFolder.at(out, OURS);
        Map<String, byte[]> pages = pages();
        folder.write(pages);
        PrintWriter told = spec.commandLine().getOut();
        pages.keySet().forEach(name -> told.println(out.resolve(name)));
        told.flush();
        return CommandLine.ExitCode.OK;
    }

    /** Returns the lessons on the block of one of the night crew. */
    static List<Lesson> lessons() {
        BodyMeasurements body = BodyFile.nightCrew().body(BODY);
        return LessonBook.on(HoodedTop.block(body), TweedSkirt.block(body));
    }

    private static Map<String, byte[]> pages() {
        Map<String, byte[]> pages = new LinkedHashMap<>();
        List<Lesson> lessons = lessons();
        pages.put("index.html", LessonContents.of(lessons).text().getBytes(StandardCharsets.UTF_8));
        for (Lesson lesson : lessons) {
            pages.put(
                    lesson.hyphenated() + ".html", LessonPage.of(lesson).text().getBytes(StandardCharsets.UTF_8));
        }
        return pages;
    }
}

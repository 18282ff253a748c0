package org.oaktag.examples;

import java.nio.file.Path;
import org.oaktag.examples.lessons.LessonBook;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.LessonPage;
public final class Lessons {
    public static void main(String[] args) throws Exception {
        Path out = Path.of(args[1]);
        java.nio.file.Files.createDirectories(out);
        for (Lesson l : LessonBook.on(HoodedTop.block(BodyFile.nightCrew().bodies().get(2)))) LessonPage.of(l).writeTo(out.resolve(l.hyphenated() + ".html"));
    }
}

package org.oaktag.export.lesson;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.xml.XmlWriter;

/**
 * A page that leads to lessons, each with the picture of its first position. Like a {@link LessonPage} it refers to
 * nothing outside itself but the pages of the lessons beside it. Immutable.
 *
 * <pre>{@code
 * Lesson lesson = Lesson.of(
 *         "Widen the neckline",
 *         Slider.lengths("along the shoulder", mm(0), mm(20), mm(10), mm(10)),
 *         by -> new Trial(block, widenNeckline(mm(by))));
 * LessonContents.of(List.of(lesson)).writeTo(Path.of("index.html"));
 * }</pre>
 *
 * @param text the page, to be stored as UTF-8; it is well-formed XML as well
 */
public record LessonContents(String text) {

    /**
     * Writes the contents. Each lesson is expected in the same folder, under its {@link Lesson#hyphenated} title and
     * {@code .html}.
     *
     * @throws IllegalStateException if a lesson cannot be done at its first position
     */
    public static LessonContents of(List<Lesson> lessons) {
        XmlWriter xml = XmlWriter.compactHtml();
        xml.begin("html").attribute("xmlns", "http://www.w3.org/1999/xhtml").attribute("lang", "en");
        xml.attribute("data-unit", "cm");
        LessonPage.head(xml, "The arithmetic of adjustments", "");
        xml.begin("body").begin("main");
        xml.begin("header");
        xml.begin("p").attribute("class", "eyebrow").text("Oaktag").end();
        xml.begin("h1").text("The arithmetic of adjustments").end();
        xml.begin("p")
                .text("What a step does to a pattern, number by number: move the slider and watch the pieces, the"
                        + " formulas and the seams. Each page stands by itself and prints on one sheet of A4.")
                .end();
        xml.end();
        xml.begin("ol").attribute("class", "lessons");
        lessons.forEach(lesson -> write(xml, lesson));
        xml.end().end().end();
        return new LessonContents(xml.end().document());
    }

    private static void write(XmlWriter xml, Lesson lesson) {
        Lesson.Outcome outcome =
                lesson.outcome(lesson.slider().amounts().get(lesson.slider().firstPosition()));
        if (!(outcome instanceof Lesson.Done done)) {
            throw new IllegalStateException(
                    "the first position of the lesson '" + lesson.title() + "' must be possible, got "
                            + ((Lesson.Refused) outcome).refusal().getMessage());
        }
        Recipe.Played played = done.played();
        Stage stage = Stage.of(lesson.views(), List.of(played));
        xml.begin("li");
        xml.begin("a").attribute("href", lesson.hyphenated() + ".html");
        xml.begin("div")
                .attribute("class", "drawing")
                .attribute("aria-hidden", "true")
                .attribute("style", stage.rows());
        stage.write(xml, played);
        xml.end();
        xml.begin("strong").text(FreeText.shown(lesson.title())).end();
        xml.end();
        xml.begin("p").text("");
        Stream.of(lesson.text())
                .flatMap(List::stream)
                .limit(1)
                .forEach(text -> BothUnits.sentence(xml, firstSentence(text)));
        xml.end().end();
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return FreeText.shown(end < 0 ? text : text.substring(0, end + 1));
    }

    /**
     * Stores the page as UTF-8.
     *
     * @throws IOException if the file cannot be written
     */
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, text);
    }
}

package org.oaktag.export.lesson;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.export.drawing.FreeText;
import org.oaktag.export.xml.XmlWriter;
import org.oaktag.garment.Change;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;
import org.oaktag.garment.WalkedSeam;

/**
 * A lesson as one page for a browser. It refers to nothing outside itself; its script does no more than to show the
 * position at which the slider stands, each of which the library computed. It prints on one sheet of A4. Immutable.
 *
 * <pre>{@code
 * Lesson lesson = Lesson.of(
 *         "Lower the armhole",
 *         Slider.lengths("by", mm(0), mm(20), mm(10), mm(10)),
 *         by -> new Trial(block, lowerArmhole(mm(by))));
 * LessonPage.of(lesson).writeTo(Path.of("lower-the-armhole.html"));
 * }</pre>
 *
 * @param text the page, to be stored as UTF-8; it is well-formed XML as well
 */
public record LessonPage(String text) {

    private static final String SLIDER = "slider";

    /** How many quantities the one sentence tells of that is read out at each position. */
    private static final int MOST_TOLD = 2;

    /**
     * Plays a lesson at every position of its slider and writes the page.
     *
     * @throws IllegalStateException if a formula that must agree does not, or no position can be done
     */
    public static LessonPage of(Lesson lesson) {
        return new LessonPage(new Writer(lesson).page());
    }

    /**
     * Stores the page as UTF-8.
     *
     * @throws IOException if the file cannot be written
     */
    public void writeTo(Path file) throws IOException {
        Files.writeString(file, text);
    }

    /** Writes the head of a page: what may be loaded (nothing), how it looks, and the one script that may run. */
    static void head(XmlWriter xml, String title, String script) {
        xml.begin("head");
        xml.begin("meta").attribute("charset", "utf-8").end();
        xml.begin("meta")
                .attribute("http-equiv", "Content-Security-Policy")
                .attribute(
                        "content",
                        "default-src 'none'; style-src 'unsafe-inline'; script-src "
                                + (script.isEmpty() ? "'none'" : "'sha256-" + sha256(script) + "'"))
                .end();
        xml.begin("meta")
                .attribute("name", "viewport")
                .attribute("content", "width=device-width, initial-scale=1")
                .end();
        xml.begin("meta")
                .attribute("name", "color-scheme")
                .attribute("content", "light dark")
                .end();
        xml.begin("title").text(title).end();
        xml.begin("style").verbatim(resource("lesson.css")).end();
        xml.end();
    }

    private static String sha256(String script) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream in = LessonPage.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the library must hold '" + name + "'");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes one page. */
    private static final class Writer {

        private final Lesson lesson;
        private final List<Lesson.Outcome> outcomes;
        private final Stage stage;
        private final NumbersTable numbers;
        private final SeamTable seams;
        private final List<Term.Quantity> moving;
        private final XmlWriter xml = XmlWriter.compactHtml();

        Writer(Lesson lesson) {
            this.lesson = lesson;
            this.outcomes = lesson.outcomes();
            List<Recipe.Played> all = outcomes.stream()
                    .filter(Lesson.Done.class::isInstance)
                    .map(outcome -> ((Lesson.Done) outcome).played())
                    .toList();
            this.stage = Stage.of(lesson.views(), all);
            this.numbers = NumbersTable.of(all);
            this.seams = SeamTable.of(stage.pieces(), all);
            this.moving = lesson.formulas().stream()
                    .map(Formula::measured)
                    .filter(quantity -> moves(quantity, all))
                    .limit(MOST_TOLD)
                    .toList();
        }

        private static boolean moves(Term.Quantity quantity, List<Recipe.Played> all) {
            double first = quantity.of(all.get(0));
            return all.stream().anyMatch(played -> Math.abs(quantity.of(played) - first) > Formula.AGREEMENT);
        }

        String page() {
            String script = resource("lesson.js");
            xml.begin("html")
                    .attribute("xmlns", "http://www.w3.org/1999/xhtml")
                    .attribute("lang", "en")
                    .attribute("data-unit", "cm");
            head(xml, FreeText.shown(lesson.title()) + " – a lesson", script);
            xml.begin("body").attribute("style", stage.rows());
            xml.begin("main");
            header();
            controls();
            xml.begin("div").attribute("id", "stage");
            outcome(outcomes.get(lesson.slider().firstPosition()));
            xml.end().end();
            footer();
            for (Lesson.Outcome outcome : outcomes) {
                xml.begin("template")
                        .attribute("data-cm", BothUnits.metric(lesson.slider().kind(), outcome.amount()))
                        .attribute("data-in", BothUnits.inches(lesson.slider().kind(), outcome.amount()));
                xml.begin("p").attribute("class", "amount-here").text("");
                BothUnits.amount(xml, lesson.slider().kind(), outcome.amount());
                xml.end();
                xml.begin("p").attribute("class", "told-here").text("");
                told(outcome);
                xml.end();
                outcome(outcome);
                xml.end();
            }
            xml.begin("script").verbatim(script).end();
            return xml.end().end().document();
        }

        private void header() {
            xml.begin("header");
            xml.begin("p")
                    .attribute("class", "eyebrow")
                    .text("The arithmetic of an adjustment")
                    .end();
            xml.begin("h1").text(FreeText.shown(lesson.title())).end();
            for (String paragraph : lesson.text()) {
                xml.begin("p");
                BothUnits.sentence(xml, FreeText.shown(paragraph));
                xml.end();
            }
            xml.end();
        }

        private void controls() {
            Slider slider = lesson.slider();
            Lesson.Outcome first = outcomes.get(slider.firstPosition());
            xml.begin("section").attribute("class", "controls").attribute("aria-label", "Controls");
            xml.begin("div").attribute("class", "amount");
            xml.begin("label").attribute("for", SLIDER).text(slider.label()).end();
            xml.begin("output")
                    .attribute("for", SLIDER)
                    .attribute("id", "amount")
                    .attribute("aria-live", "off");
            BothUnits.amount(xml, slider.kind(), first.amount());
            xml.end().end();
            xml.begin("input")
                    .attribute("type", "range")
                    .attribute("id", SLIDER)
                    .attribute("min", "0")
                    .attribute("max", "" + (outcomes.size() - 1))
                    .attribute("step", "1")
                    .attribute("value", "" + slider.firstPosition())
                    .attribute("autocomplete", "off")
                    .attribute("aria-valuetext", BothUnits.metric(slider.kind(), first.amount()))
                    .end();
            xml.begin("fieldset");
            xml.begin("legend").text("Units").end();
            unit("cm", "cm", true);
            unit("in", "inch", false);
            xml.end();
            xml.begin("output").attribute("for", SLIDER).attribute("id", "told").attribute("aria-live", "polite");
            told(first);
            xml.end();
            xml.begin("noscript").text("");
            xml.begin("p")
                    .text("Without scripts the page shows this one position.")
                    .end();
            xml.end().end();
        }

        private void unit(String value, String label, boolean checked) {
            xml.begin("label").begin("input").attribute("type", "radio").attribute("name", "unit");
            xml.attribute("value", value).attribute("autocomplete", "off");
            if (checked) {
                xml.attribute("checked", "checked");
            }
            xml.end().text(label).end();
        }

        private void outcome(Lesson.Outcome outcome) {
            if (outcome instanceof Lesson.Done done) {
                done(done.played());
            } else if (outcome instanceof Lesson.Refused refused) {
                refused(refused);
            }
        }

        /** One sentence that says what came of it, for those who hear the page. */
        private void told(Lesson.Outcome outcome) {
            if (outcome instanceof Lesson.Refused refused) {
                BothUnits.sentence(xml, "Refused: " + refused.refusal().rule() + ".");
                return;
            }
            Recipe.Played played = ((Lesson.Done) outcome).played();
            for (Term.Quantity quantity : moving) {
                xml.text(quantity.name() + " ");
                BothUnits.length(xml, quantity.of(played));
                xml.text("; ");
            }
            List<WalkedSeam> walked = seams.seams(played);
            List<WalkedSeam> untrue =
                    walked.stream().filter(seam -> !seam.isTrue()).toList();
            xml.text(
                    untrue.isEmpty()
                            ? "every seam is true."
                            : untrue.size() + " of " + walked.size() + " seams " + (untrue.size() == 1 ? "is" : "are")
                                    + " not true.");
        }

        private void done(Recipe.Played played) {
            xml.begin("section").attribute("class", "drawing").attribute("aria-label", "The pieces");
            stage.write(xml, played);
            legend();
            xml.end();
            xml.begin("section").attribute("class", "arithmetic");
            xml.begin("h2").text("The arithmetic").end();
            lesson.formulas().forEach(formula -> FormulaBlock.write(xml, formula, played));
            notes(NumbersTable.change(played));
            xml.end();
            table("Numbers", () -> numbers.write(xml, played));
            table("Seams", () -> seams.write(xml, played));
        }

        /** What is wider than a telephone scrolls by itself, and can be reached with the keyboard. */
        private void table(String label, Runnable content) {
            xml.begin("section")
                    .attribute("class", label.toLowerCase(Locale.ROOT) + " scroll")
                    .attribute("aria-label", label)
                    .attribute("tabindex", "0");
            content.run();
            xml.end();
        }

        private void legend() {
            xml.begin("ul").attribute("class", "legend");
            for (String[] line : new String[][] {
                {"before", "before the step"}, {"after", "after the step"}, {"kept", "as it was"}, {"fold", "fold"}
            }) {
                xml.begin("li");
                xml.begin("svg").attribute("viewBox", "0 0 40 8").attribute("aria-hidden", "true");
                xml.begin("path")
                        .attribute("class", line[0])
                        .attribute("d", "M0 4L40 4")
                        .end();
                xml.end().text(line[1]).end();
            }
            xml.end();
        }

        private void notes(Change change) {
            if (change.notes().isEmpty()) {
                return;
            }
            xml.begin("ul").attribute("class", "notes");
            for (Note note : change.notes()) {
                xml.begin("li").attribute("class", note.isCaution() ? "caution" : "note");
                String kind = switch (note.kind()) {
                    case RULE -> "";
                    case DONE -> "Also done: ";
                    case CAUTION -> "Caution: ";
                    case FIT -> "Fit: ";
                };
                BothUnits.sentence(xml, kind + FreeText.shown(note.text()));
                xml.end();
            }
            xml.end();
        }

        private void refused(Lesson.Refused refused) {
            PatternException refusal = refused.refusal();
            garment(refused.amount()).filter(stage::isIn).ifPresent(garment -> {
                xml.begin("section").attribute("class", "drawing").attribute("aria-label", "The pieces as they were");
                stage.write(xml, garment);
                legend();
                xml.end();
            });
            xml.begin("section").attribute("class", "refusal");
            xml.begin("h2").text("This cannot be done").end();
            xml.begin("dl");
            line("Refused", refusal.thing());
            line("Rule", refusal.rule());
            line("Given", refusal.given());
            if (!refusal.remedy().isEmpty()) {
                line("What would work", refusal.remedy());
            }
            xml.end().end();
        }

        private Optional<Garment> garment(double amount) {
            try {
                return Optional.of(lesson.trials().apply(amount).before());
            } catch (PatternException alreadyTheGarment) {
                return Optional.empty();
            }
        }

        private void line(String term, String text) {
            xml.begin("dt").text(term).end();
            xml.begin("dd");
            BothUnits.sentence(xml, FreeText.shown(text));
            xml.end();
        }

        private void footer() {
            xml.begin("footer").begin("p");
            xml.text(
                            "Every position was computed by Oaktag, lengths along the seam line to a millionth of a millimetre and"
                                    + " shown to a tenth, or to a sixteenth of an inch. A seam is true when its two sides agree with its rule within 0.01 mm.")
                    .end()
                    .end();
        }
    }
}

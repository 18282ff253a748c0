package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.mm;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.measure.Length;

/**
 * The lessons as Chromium shows them: the slider moves, what is shown is what the library computes, nothing is
 * complained of, axe-core (Deque Systems, its rules for WCAG 2.2 A and AA and its best practices) finds nothing, and
 * each prints on one sheet of A4. Skipped, and says so, where Chromium is not installed.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LessonPagesTest {

    private static final int ARROW_RIGHT = 39;
    private static final int ARROW_LEFT = 37;
    private static final int END = 35;

    /** The numbers carry every digit of a double. */
    private static final double EXACT = 1e-9;

    private static final int LARGEST_FILE = 600_000;

    /** What is shown of each seam and of each edge that is drawn, measured by Chromium. */
    private static final String SHOWN = """
            (() => {
              const shown = {refused: document.querySelector('#stage .refusal') !== null, seams: {}, edges: {},
                amount: +document.querySelector('#amount data').value,
                refusal: [...document.querySelectorAll('#stage .refusal dd')].map(dd => dd.innerText)};
              for (const row of document.querySelectorAll('#stage [data-seam]')) {
                const numbers = [...row.querySelectorAll(':scope > td > data')];
                shown.seams[row.dataset.seam] = {values: numbers.map(each => +each.value),
                  texts: numbers.map(each => each.innerText), verdict: row.querySelector('td:last-child strong').innerText};
              }
              const chips = [...document.querySelectorAll('#stage .chip')].map(each => each.getBoundingClientRect());
              shown.overlaps = chips.filter((a, i) => chips.some((b, j) => j < i && a.left + 1 < b.right
                && b.left + 1 < a.right && a.top + 1 < b.bottom && b.top + 1 < a.bottom)).length;
              for (const path of document.querySelectorAll('#stage [data-edge]')) {
                shown.edges[path.dataset.edge] = path.getTotalLength();
              }
              return shown;
            })()
            """;

    private static final List<Shown> LESSONS = Lessons.lessons().stream()
            .map(lesson -> new Shown(lesson, lesson.outcomes()))
            .toList();

    @TempDir
    private static Path folder = Path.of("");

    private Browser browser;

    @BeforeAll
    void open() throws IOException {
        browser = Browser.start();
        StringWriter err = new StringWriter();
        int code = Lessons.run(
                new PrintWriter(new StringWriter()),
                new PrintWriter(err),
                "--out",
                folder.resolve("lessons").toString());
        assertThat(code).as(err.toString()).isZero();
    }

    @AfterAll
    void close() {
        if (browser != null) {
            browser.close();
        }
    }

    @AfterEach
    void nothing_is_complained_of() {
        assertThat(browser.complaints()).isEmpty();
    }

    /**
     * A lesson and what it shows at each position, computed once for all tests.
     *
     * @param lesson the lesson
     * @param outcomes what it shows
     */
    private record Shown(Lesson lesson, List<Lesson.Outcome> outcomes) {
        @Override
        public String toString() {
            return lesson.title();
        }

        Path page() {
            return LessonPagesTest.page(lesson.hyphenated());
        }
    }

    static List<Shown> lessons() {
        return LESSONS;
    }

    private static Path page(String name) {
        return folder.resolve("lessons").resolve(name + ".html");
    }

    private JsonNode at(int position) {
        browser.evaluate("slider.value = " + position + "; slider.dispatchEvent(new Event('input')); 0");
        return browser.evaluate(SHOWN);
    }

    @Test
    void the_slider_moves_by_keyboard_and_shows_what_a_maker_would_compute() {
        browser.resize(1280, 900);
        browser.open(page("fit-the-sleeve-cap-to-the-armhole"));
        Garment opened = HoodedTop.block(BodyFile.nightCrew().body("Juno"))
                .adjust(dropShoulder(mm(25)))
                .adjust(lowerArmhole(mm(12)))
                .adjust(straightenSideSeams());
        browser.evaluate("slider.focus()");
        browser.press("ArrowRight", ARROW_RIGHT);
        browser.press("ArrowRight", ARROW_RIGHT);
        showsTheCap(opened, 110);
        browser.press("ArrowLeft", ARROW_LEFT);
        showsTheCap(opened, 105);
        browser.press("End", END);
        showsTheCap(opened, 150);
        assertThat(browser.evaluate("slider.ariaValueText || slider.getAttribute('aria-valuetext')")
                        .asText())
                .isEqualTo("15.00 cm");
    }

    private void showsTheCap(Garment opened, double height) {
        Garment fitted = opened.adjust(fitCapToArmhole(mm(6)).atHeight(mm(height)));
        JsonNode shown = browser.evaluate(SHOWN);
        assertThat(shown.get("amount").asDouble()).isEqualTo(height);
        double armhole =
                fitted.piece(TopNames.FRONT).edge(TopEdges.ARMHOLE).length().mm();
        JsonNode seam = shown.get("seams").get("front armhole");
        assertThat(seam.get("values").get(0).asDouble()).isCloseTo(armhole, within(EXACT));
        // Half of the 6 mm of ease lies in the front half of the cap.
        assertThat(seam.get("values").get(1).asDouble()).isCloseTo(armhole + 3, within(0.01));
        assertThat(seam.get("verdict").asText()).isEqualTo("✓ true");
        assertThat(browser.evaluate("told.innerText").asText())
                .contains("width of the sleeve " + cm(fitted.finished(TopNames.SLEEVE_WIDTH)));
    }

    private static String cm(Length length) {
        return BigDecimal.valueOf(length.cm()).setScale(2, RoundingMode.HALF_UP).toPlainString() + " cm";
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void every_position_shows_the_lengths_of_the_library_and_draws_them(Shown shown) {
        browser.resize(1280, 900);
        browser.open(shown.page());
        List<Lesson.Outcome> outcomes = shown.outcomes();
        for (int position = 0; position < outcomes.size(); position++) {
            JsonNode seen = at(position);
            Lesson.Outcome outcome = outcomes.get(position);
            assertThat(seen.get("amount").asDouble()).isEqualTo(outcome.amount());
            if (outcome instanceof Lesson.Done done) {
                assertThat(seen.get("refused").asBoolean()).isFalse();
                showsSeams(seen, done.played().after());
                drawsEdges(seen, done.played().after());
                assertThat(seen.get("overlaps").asInt())
                        .as("dimensions written over each other at %s", outcome.amount())
                        .isZero();
            } else if (outcome instanceof Lesson.Refused refused) {
                assertThat(seen.get("refused").asBoolean()).isTrue();
                assertThat(seen.get("refusal").get(0).asText())
                        .isEqualTo(refused.refusal().thing());
                assertThat(seen.get("refusal")).hasSizeGreaterThanOrEqualTo(3);
            }
        }
    }

    private static void showsSeams(JsonNode shown, Garment garment) {
        Map<String, WalkedSeam> walked = new HashMap<>();
        garment.walkSeams()
                .seams()
                .forEach(seam -> walked.put(seam.seam().name().value(), seam));
        assertThat(shown.get("seams")).isNotEmpty();
        shown.get("seams").properties().forEach(row -> {
            WalkedSeam seam = Objects.requireNonNull(walked.get(row.getKey()));
            List<Length> lengths = List.of(seam.lengthA(), seam.lengthB(), seam.difference());
            for (int i = 0; i < lengths.size(); i++) {
                assertThat(row.getValue().get("values").get(i).asDouble())
                        .as(row.getKey())
                        .isCloseTo(lengths.get(i).mm(), within(EXACT));
                String text = row.getValue().get("texts").get(i).asText();
                double read = Double.parseDouble(
                        text.replace(" cm", "").replace("−", "-").replace("+", ""));
                assertThat(read).as(text).isCloseTo(lengths.get(i).cm(), within(0.005 + EXACT));
            }
            assertThat(row.getValue().get("verdict").asText()).isEqualTo(seam.isTrue() ? "✓ true" : "✗ not true");
        });
    }

    /** Chromium measures a path to about 2e-5 of its length; the path was rounded to a thousandth of a millimetre. */
    private static void drawsEdges(JsonNode shown, Garment garment) {
        int drawn = 0;
        for (Piece piece : garment.pieces()) {
            for (Edge edge : piece.edges()) {
                JsonNode length = shown.get("edges")
                        .path(EdgeRef.of(piece.name(), edge.name()).id());
                if (!length.isMissingNode()) {
                    double expected = edge.length().mm();
                    assertThat(length.asDouble())
                            .as("%s of %s", edge.name(), piece.name())
                            .isCloseTo(expected, within(2e-5 * expected + 0.005));
                    drawn++;
                }
            }
        }
        assertThat(drawn).isEqualTo(shown.get("edges").size()).isPositive();
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void axe_finds_nothing_in_light_or_dark_done_or_refused(Shown shown) throws IOException {
        List<Lesson.Outcome> outcomes = shown.outcomes();
        for (String scheme : List.of("light", "dark")) {
            // On a desk in light, on a telephone in dark: the colours do not depend on the width.
            browser.resize(scheme.equals("light") ? 1280 : 390, 844);
            browser.prefer(scheme);
            browser.open(shown.page());
            findsNothing(shown + ", " + scheme);
            for (int position = 0; position < outcomes.size(); position++) {
                if (outcomes.get(position) instanceof Lesson.Refused) {
                    at(position);
                    findsNothing(shown + ", " + scheme + ", refused");
                    break;
                }
            }
        }
    }

    @Test
    void axe_finds_nothing_in_the_contents() throws IOException {
        browser.prefer("light");
        browser.open(page("index"));
        findsNothing("contents");
    }

    @Test
    void axe_finds_what_is_wrong() throws IOException {
        Path wrong = folder.resolve("wrong.html");
        Files.writeString(wrong, "<!DOCTYPE html><html><body><input><p style='color:#bbb'>pale</p></body></html>");
        browser.open(wrong);
        assertThat(browser.violations()).contains("label", "color-contrast", "html-has-lang");
    }

    private void findsNothing(String what) throws IOException {
        assertThat(browser.violations()).as(what).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void every_position_prints_on_one_a4(Shown shown) throws IOException {
        browser.prefer("light");
        browser.resize(1280, 900);
        browser.open(shown.page());
        int last = shown.outcomes().size() - 1;
        for (int position : List.of(0, last / 2, last)) {
            at(position);
            try (PDDocument printed = Loader.loadPDF(browser.print())) {
                assertThat(printed.getNumberOfPages()).isOne();
                assertThat(printed.getPage(0).getMediaBox().getWidth()).isCloseTo(210f / 25.4f * 72, within(0.5f));
                assertThat(printed.getPage(0).getMediaBox().getHeight()).isCloseTo(297f / 25.4f * 72, within(0.5f));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void a_page_is_small_and_never_wider_than_a_telephone(Shown shown) throws IOException {
        assertThat(Files.size(shown.page())).isLessThan(LARGEST_FILE);
        browser.resize(390, 844);
        browser.open(shown.page());
        assertThat(browser.evaluate("document.documentElement.scrollWidth").asInt())
                .isLessThanOrEqualTo(390);
    }

    @Test
    void one_unit_is_shown_at_a_time() {
        browser.resize(1280, 900);
        browser.open(page("widen-the-neckline"));
        assertThat(browser.evaluate("amount.innerText").asText()).isEqualTo("0.80 cm");
        browser.evaluate("document.querySelector('input[value=\"in\"]').click()");
        assertThat(browser.evaluate("amount.innerText").asText()).isEqualTo("5/16 in");
        assertThat(browser.evaluate("slider.getAttribute('aria-valuetext')").asText())
                .isEqualTo("5/16 in");
        assertThat(browser.evaluate("document.querySelector('main').innerText").asText())
                .contains(" in")
                .doesNotContain(" cm ");
    }

    @Test
    void a_seam_that_is_chosen_is_marked_on_the_pieces() {
        browser.open(page("lower-the-armhole"));
        browser.evaluate("document.querySelectorAll('#stage button').forEach(each => "
                + "{ if (each.textContent === 'front armhole') each.click(); })");
        assertThat(browser.evaluate("document.querySelector('#stage .side-a').dataset.edge")
                        .asText())
                .isEqualTo("front.armhole");
        assertThat(browser.evaluate("document.querySelector('#stage .side-b').dataset.edge")
                        .asText())
                .isEqualTo("sleeve.cap-front");
        at(0);
        assertThat(browser.evaluate("document.querySelectorAll('#stage .side-a').length")
                        .asInt())
                .as("it stays marked when the slider moves")
                .isOne();
    }
}

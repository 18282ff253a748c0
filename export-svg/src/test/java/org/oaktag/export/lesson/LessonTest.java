package org.oaktag.export.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.oaktag.adjust.Recipe;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Length;

class LessonTest {

    private static final Garment BLOCK = KnitTop.draft(
            BodyMeasurements.builder()
                    .name("Juno")
                    .figure(Figure.WOMAN)
                    .bustGirth(cm(94))
                    .height(cm(165))
                    .build(),
            TopEase.standard(),
            Cloth.knit("brushed fleece", percent(45)));

    private static final Recipe.Played PLAYED = new Trial(BLOCK, widenNeckline(mm(10))).played();

    private static final Term SHOULDER = Term.length("shoulder", played -> shoulder(played.after()));
    private static final Term BEFORE = Term.length("shoulder before", played -> shoulder(played.before()));

    private static Length shoulder(Garment garment) {
        return garment.piece(TopNames.FRONT).edge(TopEdges.SHOULDER).length();
    }

    private static Lesson widening(double least, double most) {
        return Lesson.of(
                "Widen the neckline",
                new Slider("along", Slider.Kind.LENGTH, least, most, 10, least),
                by -> new Trial(BLOCK, widenNeckline(mm(by))));
    }

    @Test
    void a_slider_passes_its_least_its_most_and_even_steps_between() {
        Slider slider = Slider.lengths("along", mm(-10), mm(20), mm(5), mm(5));
        assertThat(slider.amounts()).containsExactly(-10.0, -5.0, 0.0, 5.0, 10.0, 15.0, 20.0);
        assertThat(slider.firstPosition()).isEqualTo(3);
    }

    @Test
    void a_slider_whose_steps_miss_its_most_or_its_first_is_refused() {
        assertThatThrownBy(() -> Slider.lengths("along", mm(0), mm(21), mm(5), mm(5)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'along' must go from 0.0 to 21.0 in steps that pass 5.0, got 5.0");
        assertThatThrownBy(() -> Slider.lengths("along", mm(0), mm(20), mm(5), mm(6)))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Slider.lengths("along", mm(0), mm(20), mm(5), mm(25)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("the first among them");
    }

    @Test
    void terms_reckon_as_they_are_written() {
        Term three = Term.number(3);
        Term four = Term.number(4);
        assertThat(three.squared().plus(four.squared()).root().of(PLAYED)).isCloseTo(5, within(1e-12));
        assertThat(three.minus(four).times(Term.number(2)).of(PLAYED)).isEqualTo(-2);
        assertThat(three.over(four).of(PLAYED)).isEqualTo(0.75);
        assertThat(Term.angle("angle", played -> 30).sine().of(PLAYED)).isCloseTo(0.5, within(1e-12));
        assertThat(Term.angle("angle", played -> 60).cosine().of(PLAYED)).isCloseTo(0.5, within(1e-12));
        assertThat(Term.share("share", played -> 25).of(PLAYED)).isEqualTo(0.25);
    }

    @Test
    void brackets_stand_where_they_change_the_value_and_nowhere_else() {
        Term a = Term.length("a", mm(1));
        Term b = Term.length("b", mm(2));
        Term c = Term.length("c", mm(3));
        assertThat(names(a.plus(b).times(c))).isEqualTo("(a + b) × c");
        assertThat(names(a.times(b).plus(c))).isEqualTo("a × b + c");
        assertThat(names(a.minus(b.plus(c)))).isEqualTo("a − (b + c)");
        assertThat(names(a.plus(b.minus(c)))).isEqualTo("a + b − c");
        assertThat(names(a.over(b.times(c)))).isEqualTo("a / (b × c)");
        assertThat(names(a.plus(b).squared())).isEqualTo("(a + b)2");
        assertThat(names(b.squared().minus(a.squared()).root())).isEqualTo("√(b2 − a2)");
    }

    private static String names(Term term) {
        Lesson lesson = widening(0, 10).computing(Formula.rough(SHOULDER, term, "any"));
        var found = Pattern.compile("<p class=\"names\"><var>shoulder</var> ≈ (.*?)</p>")
                .matcher(LessonPage.of(lesson).text());
        assertThat(found.find()).isTrue();
        return found.group(1).replaceAll("<[^>]*>", "");
    }

    @Test
    void a_formula_that_must_agree_and_does_not_stops_the_lesson() {
        Lesson wrong = widening(0, 20).computing(Formula.exact(SHOULDER, BEFORE));
        assertThatThrownBy(() -> LessonPage.of(wrong))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("'shoulder' of the lesson 'Widen the neckline' must agree")
                .hasMessageContaining("at 10.0 it differs by");
    }

    @Test
    void a_formula_that_agrees_shows_what_is_measured_as_the_same() {
        Term along = Term.length("along", played -> shoulder(played.before()).minus(shoulder(played.after())));
        Lesson right = widening(0, 20).computing(Formula.exact(SHOULDER, BEFORE.minus(along)));
        assertThat(LessonPage.of(right).text()).contains("<var>shoulder before</var> − <var>along</var>", ", the same");
    }

    @Test
    void what_is_refused_is_shown_in_its_four_parts() {
        String page = LessonPage.of(widening(0, 200)).text();
        assertThat(page)
                .contains("This cannot be done", "<dd>neckline of the front</dd>", "it can be widened by")
                .contains("<dd><span class=\"cm\">20.00 cm</span><span class=\"in\">7 7/8 in</span></dd>");
    }

    @Test
    void a_lesson_of_nothing_but_refusals_is_refused() {
        assertThatThrownBy(() -> LessonPage.of(widening(500, 520)))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("must be possible, got only refusals");
    }

    @Test
    void the_same_lesson_makes_the_same_page() {
        assertThat(LessonPage.of(widening(0, 20))).isEqualTo(LessonPage.of(widening(0, 20)));
    }

    @Test
    void what_a_teacher_writes_is_text_and_never_markup() {
        Lesson lesson = widening(0, 10).saying("</script><script>alert(1)</script> & more");
        assertThat(LessonPage.of(lesson).text())
                .contains("&lt;/script&gt;&lt;script&gt;alert(1)&lt;/script&gt; &amp; more")
                .doesNotContain("<script>alert");
    }

    @Test
    void lengths_in_sentences_stand_in_both_units_and_edges_in_words() {
        Lesson lesson = widening(0, 10).saying("sleeve.cap-back gains 25.4 mm, the sleeve 64.5 cm²");
        assertThat(LessonPage.of(lesson).text())
                .contains("sleeve cap back gains <span class=\"cm\">2.54 cm</span><span class=\"in\">1 in</span>,")
                .contains("<span class=\"cm\">64.5 cm²</span><span class=\"in\">10.00 in²</span>");
    }

    @Test
    void the_file_of_a_lesson_is_named_after_it() {
        assertThat(widening(0, 10).hyphenated()).isEqualTo("widen-the-neckline");
        assertThat(List.of(Lesson.of(
                                "  Fit, then walk! ",
                                widening(0, 10).slider(),
                                widening(0, 10).trials())
                        .hyphenated()))
                .containsExactly("fit-then-walk");
    }
}

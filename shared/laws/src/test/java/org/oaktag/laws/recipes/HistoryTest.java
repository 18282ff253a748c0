package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.History;
import org.oaktag.adjust.Recipe;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Moved;
import org.oaktag.measure.Length;
import org.oaktag.testkit.bodies.SurveyPopulation;

/** What the history answers: what a step changed, what changed in all, and why. */
class HistoryTest {

    private final BodyMeasurements body =
            SurveyPopulation.of(Figure.WOMAN).draw(7).findFirst().orElseThrow().measuredAs("drawn");
    private final Garment block = HoodedTop.block(body);
    private final Garment top = HoodedTop.recipe(false).applyTo(block);
    private final History history = History.of(top);

    @Test
    void a_step_is_asked_by_its_phrase_for_what_it_changed() {
        Moved shoulder = history.change("widen the neckline").moved().stream()
                .filter(moved -> moved.quantity().equals("shoulder length"))
                .findFirst()
                .orElseThrow();
        assertThat(shoulder.by().orElseThrow().mm()).isCloseTo(-22, within(1e-6));
        assertThatThrownBy(() -> history.change("widen the neckliene"))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("did you mean 'widen the neckline'?");
    }

    @Test
    void the_total_is_the_sum_of_what_the_steps_changed() {
        Moved length = history.sinceTheBlock().stream()
                .filter(moved -> moved.quantity().equals("centre back length"))
                .findFirst()
                .orElseThrow();
        double sum = history.changes().stream()
                .skip(1)
                .flatMap(change -> change.moved().stream())
                .filter(moved -> moved.quantity().equals("centre back length"))
                .mapToDouble(moved -> moved.by().map(Length::mm).orElseThrow())
                .sum();
        assertThat(length.by().orElseThrow().mm()).isCloseTo(sum, within(1e-6));
        assertThat(length.before())
                .isEqualTo(block.history().get(0).moved().stream()
                        .filter(moved -> moved.quantity().equals("centre back length"))
                        .findFirst()
                        .orElseThrow()
                        .after());
    }

    @Test
    void every_step_says_why_in_a_sentence_with_its_numbers() {
        Recipe recipe = HoodedTop.recipe(false);
        assertThat(history.why())
                .extracting(History.Reason::step)
                .containsAll(recipe.phrases())
                .startsWith("draft the knit top");
        assertThat(history.why())
                .allSatisfy(reason ->
                        assertThat(reason.sentence()).as(reason.step()).isNotBlank());
    }
}

package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.History;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Reshaped;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.examples.HoodedTop;
import org.oaktag.garment.Amount;
import org.oaktag.garment.Change;
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
                .filter(moved -> moved.watched().text().equals("shoulder length"))
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
                .filter(moved -> moved.watched().text().equals("centre back length"))
                .findFirst()
                .orElseThrow();
        double sum = history.changes().stream()
                .skip(1)
                .flatMap(change -> change.moved().stream())
                .filter(moved -> moved.watched().text().equals("centre back length"))
                .mapToDouble(moved -> moved.by().map(Length::mm).orElseThrow())
                .sum();
        assertThat(length.by().orElseThrow().mm()).isCloseTo(sum, within(1e-6));
        assertThat(length.before())
                .isEqualTo(block.history().get(0).moved().stream()
                        .filter(moved -> moved.watched().text().equals("centre back length"))
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

    @Test
    void an_account_is_the_same_whenever_and_on_whatever_thread_it_is_read() {
        Recipe recipe = HoodedTop.recipe(false);
        Garment read = HoodedTop.block(body);
        for (Step step : recipe.steps()) {
            read = read.adjust(step);
            assertThat(read.history().get(read.history().size() - 1).step()).isEqualTo(step.name());
        }
        Garment unread = recipe.applyTo(HoodedTop.block(body));
        List<List<Change>> seen = IntStream.range(0, 16)
                .parallel()
                .mapToObj(any -> unread.history())
                .toList();
        List<Change> expected = read.history();
        assertThat(seen).allSatisfy(history -> assertThat(history).isEqualTo(expected));
        assertThat(unread).isEqualTo(read).hasSameHashCodeAs(read);
    }

    @Test
    void an_account_is_made_when_it_is_first_read_and_then_kept() {
        AtomicInteger made = new AtomicInteger();
        Change change = block.history().get(0);
        Garment told = top.recording(() -> {
            made.incrementAndGet();
            return change;
        });
        Garment retitled = told.titled("another");
        assertThat(made).hasValue(0);
        assertThat(told.history()).endsWith(change);
        assertThat(retitled.history()).endsWith(change);
        assertThat(made).hasValue(1);
    }

    @Test
    void a_step_that_leaves_a_measure_without_its_piece_is_refused_when_it_is_taken() {
        Step forgetful = new Step() {
            @Override
            public String name() {
                return "take off the sleeves";
            }

            @Override
            public List<Amount> amounts() {
                return List.of();
            }

            @Override
            public Reshaped reshape(Garment garment) {
                Garment bare = garment.withSeams(List.of());
                return Reshaped.of(bare.withPieces(bare.pieces().stream()
                        .filter(piece -> !piece.name().equals(TopNames.SLEEVE))
                        .toList()));
            }
        };
        assertThatThrownBy(() -> block.adjust(forgetful))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("'sleeve'");
    }
}

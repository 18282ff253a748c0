package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.oaktag.adjust.History;
import org.oaktag.adjust.StepKind;
import org.oaktag.garment.Change;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Note;

/** Every step of the catalogue says why, in sentences with their numbers filled in. */
class ReasonsTest {

    private static final int DRAWS = 8;
    private static final Pattern FIGURE = Pattern.compile("[0-9]+(\\.[0-9]+)? ?(mm|°|%|to 1\\b)");

    private final DoneSteps steps = new DoneSteps(17);

    @Test
    void every_step_gives_a_rule_with_a_figure_and_its_unit() {
        List<String> without = new ArrayList<>();
        List<String> never = new ArrayList<>();
        for (StepKind kind : steps.kinds()) {
            int done = 0;
            for (int i = 0; i < DRAWS; i++) {
                Optional<Garment> ready = steps.ready(steps.block(i), kind);
                Optional<Garment> after =
                        ready.flatMap(garment -> steps.done(garment, kind).map(garment::adjust));
                if (after.isPresent()) {
                    done++;
                    check(kind, after.get(), without);
                }
            }
            if (done == 0) {
                never.add(kind.name());
            }
        }
        assertThat(without).isEmpty();
        assertThat(never).as("kinds of which no draw could be done").isEmpty();
    }

    private static void check(StepKind kind, Garment after, List<String> without) {
        Change last = after.history().get(after.history().size() - 1);
        for (Note note : last.notes()) {
            assertThat(note.text()).as(last.title()).satisfies(Told::assertReadable);
        }
        List<String> why =
                History.of(after).why().stream().map(History.Reason::sentence).toList();
        long rules = last.notes().stream()
                .filter(note -> note.kind() == Note.Kind.RULE)
                .count();
        List<String> own = why.subList(why.size() - (int) rules, why.size());
        if (own.stream().noneMatch(sentence -> FIGURE.matcher(sentence).find())) {
            without.add(kind.name() + ": " + own);
        }
    }
}

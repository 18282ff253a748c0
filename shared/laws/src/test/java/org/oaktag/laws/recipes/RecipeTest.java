package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.adjustments.Necklines.lowerBackNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.RecipeComparison;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepDifference;
import org.oaktag.examples.HoodedTop;
import org.oaktag.measure.Angle;

/** A recipe as a value: edited by the phrases of its steps, and compared with another. */
class RecipeTest {

    private static final Recipe HOODED = HoodedTop.recipe(false);
    private static final String WIDEN = "widen the neckline";
    private static final String FIT_CAP = "fit the sleeve cap to the armhole";

    @Test
    void steps_are_put_in_left_out_and_moved_by_their_phrases() {
        Step deeper = lowerBackNeckline(mm(10));
        assertThat(HOODED.insertingBefore(WIDEN, deeper).steps().get(0)).isEqualTo(deeper);
        assertThat(HOODED.insertingAfter(WIDEN, deeper).steps().get(1)).isEqualTo(deeper);
        assertThat(HOODED.insertingAfter(WIDEN, deeper).leavingOut(deeper.name()))
                .isEqualTo(HOODED);
        assertThat(HOODED.movingAfter(WIDEN, "notch the seams").place(WIDEN))
                .isEqualTo(HOODED.steps().size() - 1);
        assertThat(HOODED.movingAfter(WIDEN, "notch the seams")
                        .movingBefore(WIDEN, HOODED.phrases().get(1)))
                .isEqualTo(HOODED);
    }

    @Test
    void steps_of_one_phrase_are_told_apart_by_their_order() {
        Recipe twice = HOODED.adding(fitCapToArmhole(mm(9)));
        assertThat(twice.place(FIT_CAP + " (1)")).isEqualTo(HOODED.place(FIT_CAP));
        assertThat(twice.place(FIT_CAP + " (2)")).isEqualTo(HOODED.steps().size());
        assertThatThrownBy(() -> twice.place(FIT_CAP))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(FIT_CAP + " (1)");
    }

    @Test
    void an_amount_is_changed_by_its_name_and_checked_by_the_step() {
        assertThat(HOODED.withAmount(WIDEN, "along", mm(12))).isEqualTo(HOODED.replacing(WIDEN, widenNeckline(mm(12))));
        assertThat(HOODED.withAmount(FIT_CAP, "height", mm(110)).steps().get(HOODED.place(FIT_CAP)))
                .isEqualTo(fitCapToArmhole(mm(6)).atHeight(mm(110)));
        assertThat(HOODED.withAmount("fit a hood", "shape rise", cm(2)).place("fit a hood"))
                .isEqualTo(HOODED.place("fit a hood"));
        assertThatThrownBy(() -> HOODED.withAmount(FIT_CAP, "eese", mm(6)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("did you mean 'ease'?");
        assertThatThrownBy(() -> HOODED.withAmount(FIT_CAP, "ease", Angle.degrees(6)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("in mm");
        assertThatThrownBy(() -> HOODED.withAmount(FIT_CAP, "ease", mm(600)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("-10 to 60 mm");
    }

    @Test
    void a_step_that_is_not_there_is_refused_with_the_nearest_that_is() {
        assertThatThrownBy(() -> HOODED.leavingOut("widen the neckliene"))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("did you mean 'widen the neckline'?");
    }

    @Test
    void a_recipe_does_not_differ_from_itself() {
        assertThat(RecipeComparison.of(HOODED, HoodedTop.recipe(false))).isEmpty();
    }

    @Test
    void what_was_added_left_out_moved_and_changed_is_told_step_by_step() {
        Recipe other = HOODED.withAmount(WIDEN, "along", mm(12))
                .leavingOut("line the hood")
                .movingBefore("lower the armhole", HOODED.phrases().get(1))
                .adding(lowerBackNeckline(mm(5)));
        assertThat(RecipeComparison.of(HOODED, other).stream().map(StepDifference::toString))
                .containsExactly(
                        "changed, step 1: widen the neckline, along 22 mm to 12 mm",
                        "moved from step 4 to step 2: lower the armhole",
                        "added as step 15: lower the back neckline",
                        "left out, step 14: line the hood");
    }

    @Test
    void what_a_recipe_is_by_a_comparison_undone_is_the_recipe_itself() {
        Recipe other = HOODED.leavingOut(WIDEN);
        assertThat(RecipeComparison.of(HOODED, other))
                .containsExactly(new StepDifference.Removed(0, HOODED.steps().get(0)));
        assertThat(RecipeComparison.of(other, HOODED))
                .containsExactly(new StepDifference.Added(0, HOODED.steps().get(0)));
    }
}

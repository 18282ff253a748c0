package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Percent;
import org.oaktag.testkit.bodies.SurveyPopulation;
import org.oaktag.testkit.bodies.SurveyedBody;

/**
 * As many random recipes as one asks for: {@code -Doaktag.recipes=100000}, or the part of them from
 * {@code -Doaktag.recipes.from=50000} on. It prints how many steps were done, and how often each kind was refused and
 * why; what breaks the law is told at once and counted at the end.
 */
class LongRunTest {

    private static final Cloth CLOTH = Cloth.knit("brushed knit", Percent.percent(40));
    private static final List<EaseCategory> EASES =
            List.of(EaseCategory.CLOSE, EaseCategory.STANDARD, EaseCategory.LOOSE);
    private static final int SEED = 20_250_101;
    private static final int TOLD_EVERY = 5000;

    @Test
    @EnabledIfSystemProperty(named = "oaktag.recipes", matches = "\\d+")
    void every_recipe_keeps_the_law() {
        int count = Integer.getInteger("oaktag.recipes");
        int from = Integer.getInteger("oaktag.recipes.from", 0);
        Random random = new Random(SEED);
        Iterator<SurveyedBody> women =
                SurveyPopulation.of(Figure.WOMAN).draw(SEED).iterator();
        Iterator<SurveyedBody> men = SurveyPopulation.of(Figure.MAN).draw(SEED).iterator();
        DrawnSteps drawn = new DrawnSteps();
        RecipeLaw law = new RecipeLaw();
        Tally broken = new Tally();
        for (int i = 0; i < count; i++) {
            SurveyedBody body = (i % 2 == 0 ? women : men).next();
            Ease ease = TopEase.of(EASES.get(random.nextInt(EASES.size())));
            List<Step> steps = new ArrayList<>();
            for (int n = 1 + random.nextInt(12); n > 0; n--) {
                steps.add(drawn.any(random));
            }
            if (i < from) {
                continue;
            }
            if (i > from && (i - from) % TOLD_EVERY == 0) {
                System.out.println(i - from + " recipes so far, " + law.done() + " steps done, "
                        + law.refusals().total() + " refused, " + broken.total() + " recipes broken");
            }
            try {
                law.check(KnitTop.draft(body.measuredAs("drawn " + i), ease, CLOTH), steps);
            } catch (AssertionError | RuntimeException e) {
                String told = "recipe " + i + ": " + e + "\n      steps " + steps;
                System.out.println(told);
                broken.count(cause(e), told);
            }
        }
        System.out.println(count - from + " recipes, " + law.done() + " steps done, "
                + law.refusals().total() + " refused:\n" + law.refusals());
        System.out.println(broken.total() + " recipes broke the law:\n" + broken);
        assertThat(broken.total())
                .as("recipes that broke the law, of %d", count - from)
                .isZero();
    }

    /** Says what was thrown and by which lines of the library. */
    private static String cause(Throwable thrown) {
        return thrown.getClass().getSimpleName() + " "
                + String.valueOf(thrown.getMessage())
                        .lines()
                        .limit(1)
                        .findFirst()
                        .orElse("")
                + " at "
                + String.join(
                        " < ",
                        Arrays.stream(thrown.getStackTrace())
                                .filter(frame -> frame.getClassName().startsWith("org.oaktag."))
                                .limit(5)
                                .map(frame -> frame.getFileName() + ":" + frame.getMethodName())
                                .toList());
    }
}

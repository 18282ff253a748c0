package org.oaktag.laws.recipes;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Garment;
import org.oaktag.laws.adjustments.TopArbitraries;

/** Recipes of 1 to 12 steps of any kind, in any order, on grown bodies of either sex. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class RandomRecipeProperties {

    private final DrawnSteps drawn = new DrawnSteps();

    @Property(tries = 2000)
    void after_every_step_seams_are_true_or_named_outlines_sound_and_the_history_is_what_is_measured(
            @ForAll Garment block, @ForAll("recipes") List<Step> steps) {
        RecipeLaw law = new RecipeLaw();
        law.check(block, steps);
        Statistics.collect(law.done() == 0 ? "every step refused" : "some steps done");
        Statistics.coverage(coverage -> coverage.check("some steps done").percentage(share -> share > 90));
    }

    @Provide
    Arbitrary<List<Step>> recipes() {
        return Arbitraries.randomValue(drawn::any).list().ofMinSize(1).ofMaxSize(12);
    }
}

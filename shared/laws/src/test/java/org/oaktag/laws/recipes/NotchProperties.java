package org.oaktag.laws.recipes;

import java.util.List;
import java.util.function.Supplier;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.examples.HoodedTop;
import org.oaktag.examples.gallery.Wardrobe;
import org.oaktag.garment.Garment;
import org.oaktag.laws.adjustments.TopArbitraries;

/** Notches tell every seam from every other, lie where they are sewn together and say which is the back. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class NotchProperties {

    private final DrawnSteps drawn = new DrawnSteps();

    @Property(tries = 500)
    void after_any_recipe_no_wrong_pair_fits_and_all_notches_can_be_cut_where_they_are_sewn_together(
            @ForAll Garment block, @ForAll("recipes") List<Step> steps) {
        Garment garment = block;
        for (Step step : steps) {
            try {
                garment = garment.adjust(step);
            } catch (PatternException refused) {
                // The others may be done.
            }
        }
        Garment done = garment;
        check(() -> done);
        Statistics.coverage(coverage -> coverage.check("notched").percentage(share -> share > 40));
    }

    @Property(tries = 20)
    void so_is_every_style_of_the_wardrobe_for_any_body(@ForAll BodyMeasurements body) {
        Wardrobe.of(name -> body).forEach(each -> check(() -> each.style().on(body)));
        check(() -> HoodedTop.style().on(body));
        Statistics.coverage(coverage -> coverage.check("notched").percentage(share -> share > 40));
    }

    private static void check(Supplier<Garment> garment) {
        try {
            Statistics.collect(NotchLaw.check(garment.get()) > 0 ? "notched" : "none needed");
        } catch (PatternException refused) {
            Told.assertReadable(refused);
            Statistics.collect("refused");
        }
    }

    @Provide
    Arbitrary<List<Step>> recipes() {
        return Arbitraries.randomValue(drawn::any).list().ofMinSize(1).ofMaxSize(12);
    }
}

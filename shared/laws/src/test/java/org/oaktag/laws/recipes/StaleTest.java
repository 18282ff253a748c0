package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Stale;
import org.oaktag.adjustments.Hoods;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.laws.adjustments.TopArbitraries;

/** What a later step leaves behind is named, and what is said to mend it does. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class StaleTest {

    private static final Recipe HOOD_FIRST =
            Recipe.of("hood first", Hoods.hood(HoodShape.threePanel()).lapped(cm(5)), widenNeckline(mm(8)));

    @Property(tries = 50)
    void a_hood_is_left_behind_by_a_neckline_widened_after_it_and_mended_by_order_or_refit(@ForAll Garment block) {
        List<Stale> stale = HOOD_FIRST.stale(block);
        assertThat(stale).hasSize(1);
        Stale hood = stale.get(0);
        assertThat(hood.fitting()).isEqualTo(Optional.of("fit a hood"));
        assertThat(hood.breaking()).isEqualTo("widen the neckline");
        assertThat(hood.refit()).isEqualTo("fit the hood again");
        assertThat(hood.text())
                .contains("fit the hood again")
                .endsWith("or move 'widen the neckline' before 'fit a hood'");
        assertThat(mended(hood.reordered(HOOD_FIRST), block)).isTrue();
        assertThat(mended(hood.refitted(HOOD_FIRST), block)).isTrue();
    }

    @Property(tries = 50)
    void what_the_block_fitted_is_mended_by_the_refit_that_is_named(@ForAll Garment block) {
        Recipe lowered = Recipe.of("lowered", lowerArmhole(mm(12)));
        List<Stale> stale = lowered.stale(block);
        assertThat(stale)
                .extracting(Stale::seam)
                .containsExactly(TopNames.FRONT_ARMHOLE_SEAM, TopNames.BACK_ARMHOLE_SEAM);
        assertThat(stale).allSatisfy(each -> {
            assertThat(each.fittedBy()).isEqualTo(OptionalInt.empty());
            assertThat(each.reordered(lowered)).isEmpty();
            assertThat(each.refit()).isEqualTo("refit the sleeve cap to the armhole");
        });
        assertThat(lowered.adding(fitCapToArmhole(mm(6))).stale(block)).isEmpty();
    }

    @Property(tries = 50)
    void the_last_step_that_broke_it_and_the_last_that_fitted_it_are_named(@ForAll Garment block) {
        Recipe recipe = Recipe.of(
                "twice", lowerArmhole(mm(5)), fitCapToArmhole(mm(6)), lowerArmhole(mm(9)), widenNeckline(mm(4)));
        List<Stale> stale = recipe.stale(block);
        assertThat(stale).extracting(Stale::seam).contains(Name.of("front armhole"), Name.of("back armhole"));
        assertThat(stale).allSatisfy(each -> {
            assertThat(each.fittedBy()).isEqualTo(OptionalInt.of(1));
            assertThat(each.brokenBy()).isEqualTo(2);
            assertThat(each.breaking()).isEqualTo("lower the armhole (2)");
            assertThat(mended(each.reordered(recipe), block)).isTrue();
            assertThat(mended(each.refitted(recipe), block)).isTrue();
        });
    }

    private static boolean mended(Optional<Recipe> recipe, Garment block) {
        return recipe.orElseThrow().applyTo(block).walkSeams().isTrue();
    }
}

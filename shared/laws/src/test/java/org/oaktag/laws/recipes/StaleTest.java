package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.shortenBody;
import static org.oaktag.adjustments.Finishes.frontPouch;
import static org.oaktag.adjustments.Finishes.patchPocket;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Stale;
import org.oaktag.adjustments.Hoods;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
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

    @Property(tries = 30)
    void a_pouch_is_left_behind_by_a_body_lengthened_after_it_by_as_much(
            @ForAll Garment block, @ForAll @IntRange(min = 1, max = 60) int longer) {
        Recipe pouchFirst = Recipe.of("pouch first", frontPouch(cm(30), cm(18)), lengthenBody(mm(longer)));
        assertThat(pouchFirst.stale(block)).singleElement().satisfies(pouch -> {
            assertThat(pouch.seam()).isEqualTo(FinishNames.POUCH);
            assertThat(pouch.text())
                    .isEqualTo(
                            "'lengthen the body' was done after 'lay a pouch on the front': the place of the pouch on"
                                    + " the front is " + mm(longer).text()
                                    + " from where it would be laid now: lay a pouch on"
                                    + " the front again, or move 'lengthen the body' before 'lay a pouch on the front'");
            assertThat(pouch.reordered(pouchFirst).orElseThrow().stale(block)).isEmpty();
            assertThat(pouch.refitted(pouchFirst).orElseThrow().stale(block)).isEmpty();
        });
    }

    @Property(tries = 30)
    void a_place_that_a_later_step_puts_outside_the_piece_is_told(@ForAll Garment block) {
        Piece front = block.piece(TopNames.FRONT);
        double hem = front.corner(EdgeNames.CENTRE, End.START).y()
                - front.corner(TopEdges.SHOULDER, End.START).y();
        Recipe cropped = Recipe.of("cropped", patchPocket(cm(11), cm(13), cm(3), mm(hem - 160)), shortenBody(mm(100)));
        assertThat(cropped.stale(block))
                .extracting(Stale::fault)
                .containsExactly(
                        "the place of the pocket no longer lies inside the front: lay a pocket on the front again");
    }

    @Property(tries = 30)
    void a_pocket_is_not_left_behind_by_what_does_not_move_it(@ForAll Garment block) {
        Recipe recipe = Recipe.of(
                "pocket first", patchPocket(cm(11), cm(13), cm(3), cm(20)), lengthenBody(mm(40)), raglanSleeve());
        assertThat(recipe.stale(block)).isEmpty();
    }

    private static boolean mended(Optional<Recipe> recipe, Garment block) {
        return recipe.orElseThrow().applyTo(block).walkSeams().isTrue();
    }
}

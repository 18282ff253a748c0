package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Armholes.narrowArmhole;
import static org.oaktag.adjustments.Armholes.scoopFrontArmhole;
import static org.oaktag.adjustments.Armholes.widenArmhole;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.TopArmhole;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Garment;

/** What the steps of the armhole keep, and what they move which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class ArmholeProperties {

    private static final double ROUNDING = 1e-9;

    @Property(tries = 60)
    void scooping_then_filling_by_the_same_amount_restores_the_armhole(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        double in = share * TopArmhole.mostScooping(block.piece(TopNames.FRONT));
        Garment scooped = block.adjust(scoopFrontArmhole(mm(in)));
        Sound.assertSound(scooped);
        Sound.assertBodySewsTrue(scooped);
        assertThat(scooped.piece(TopNames.BACK)).isEqualTo(block.piece(TopNames.BACK));
        assertThat(scooped.piece(TopNames.FRONT).outline().area())
                .isLessThanOrEqualTo(block.piece(TopNames.FRONT).outline().area());
        Near.assertSame(scooped.adjust(scoopFrontArmhole(mm(-in))), block, ROUNDING);
    }

    @Property(tries = 60)
    void widening_through_the_side_adds_four_times_as_much_to_the_chest_and_can_be_undone(
            @ForAll Garment block, @ForAll boolean straight, @ForAll @DoubleRange(min = 0, max = 40) double out) {
        Garment start = straight ? block.adjust(straightenSideSeams()) : block;
        Garment wide = start.adjust(widenArmhole(mm(out)));
        Sound.assertSound(wide);
        Sound.assertBodySewsTrue(wide);
        assertThat(wide.finished(TopNames.CHEST_GIRTH).mm())
                .isCloseTo(start.finished(TopNames.CHEST_GIRTH).mm() + 4 * out, within(ROUNDING));
        Near.assertSame(wide.adjust(narrowArmhole(mm(out))), start, ROUNDING);
    }

    @Property(tries = 60)
    void scooping_and_lowering_commute(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 30) double down) {
        double in = share * TopArmhole.mostScooping(block.piece(TopNames.FRONT));
        Near.assertSame(
                block.adjust(scoopFrontArmhole(mm(in)).then(lowerArmhole(mm(down)))),
                block.adjust(lowerArmhole(mm(down)).then(scoopFrontArmhole(mm(in)))),
                ROUNDING);
    }

    @Property(tries = 60)
    void with_its_sleeve_an_armhole_step_leaves_every_seam_true_and_else_it_names_the_refit(
            @ForAll Garment block, @ForAll @DoubleRange(min = 4, max = 20) double by) {
        assertThat(block.adjust(lowerArmhole(mm(by)).withSleeve()).walkSeams().untrue())
                .isEmpty();
        assertThat(block.adjust(scoopFrontArmhole(
                                        mm(Math.min(by, TopArmhole.mostScooping(block.piece(TopNames.FRONT)))))
                                .withSleeve())
                        .walkSeams()
                        .untrue())
                .isEmpty();
        assertThat(block.adjust(widenArmhole(mm(by)).withSleeve()).walkSeams().untrue())
                .isEmpty();
        Garment left = block.adjust(widenArmhole(mm(by)));
        assertThat(left.piece(TopNames.SLEEVE)).isEqualTo(block.piece(TopNames.SLEEVE));
        assertThat(left.history().get(left.history().size() - 1).untrue())
                .hasSize(2)
                .allMatch(text -> text.contains("refit the sleeve cap to the armhole"));
    }
}

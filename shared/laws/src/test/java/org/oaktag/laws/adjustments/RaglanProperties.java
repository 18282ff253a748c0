package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Finishes.ribNeckband;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.measure.Percent;

/** What a raglan keeps of body and sleeve. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class RaglanProperties {

    private static final double SOLVED = 1e-5;

    @Property(tries = 60)
    void a_raglan_sews_true_and_keeps_neckline_shoulder_reach_chest_and_hem(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 15, max = 50) double onFront,
            @ForAll @DoubleRange(min = 10, max = 30) double onBack) {
        Garment raglan = block.adjust(raglanSleeve(mm(onFront), mm(onBack)));
        Sound.assertSound(raglan);
        assertThat(raglan.walkSeams().untrue()).isEmpty();
        for (Name measure : new Name[] {
            TopNames.NECKLINE_GIRTH,
            TopNames.SHOULDER_LENGTH,
            TopNames.NECK_TO_WRIST,
            TopNames.CHEST_GIRTH,
            TopNames.SLEEVE_HEM
        }) {
            assertThat(raglan.finished(measure).mm())
                    .as("%s", measure)
                    .isCloseTo(block.finished(measure).mm(), within(SOLVED));
        }
        assertThat(raglan.piece(TopNames.SLEEVE_FRONT).path(EdgeNames.NECKLINE).length())
                .isCloseTo(onFront, within(SOLVED));
        assertThat(raglan.piece(TopNames.SLEEVE_BACK).path(EdgeNames.NECKLINE).length())
                .isCloseTo(onBack, within(SOLVED));
    }

    @Property(tries = 20)
    void a_cap_that_does_not_lie_on_the_armhole_is_refused(@ForAll Garment block) {
        assertThatThrownBy(() -> block.adjust(lowerArmhole(mm(20))).adjust(raglanSleeve()))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("fit the cap to the armhole first");
    }

    @Property(tries = 20)
    void a_line_that_begins_off_the_neckline_is_refused_with_what_works(@ForAll Garment block) {
        double neckline = block.piece(TopNames.BACK).path(EdgeNames.NECKLINE).length();
        assertThatThrownBy(() -> block.adjust(raglanSleeve(mm(30), mm(neckline))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(mm(neckline - 20).roundedDown().text());
    }

    @Property(tries = 10)
    void a_hood_is_not_fitted_to_half_of_a_raglan_neckline(@ForAll Garment block) {
        assertThatThrownBy(() -> block.adjust(raglanSleeve()).adjust(hood(HoodShape.threePanel())))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("a raglan");
    }

    @Property(tries = 20)
    void a_neckband_goes_round_the_necklines_of_the_sleeves_too(@ForAll Garment block) {
        Cloth rib = Cloth.rib("trial rib", Percent.percent(100));
        Garment banded = block.adjust(raglanSleeve()).adjust(ribNeckband(mm(20), rib));
        assertThat(banded.walkSeams().untrue()).isEmpty();
        // Common practice: 75 % of the opening for the stretchiest rib.
        assertThat(banded.finished(FinishNames.NECKBAND_GIRTH).mm())
                .isCloseTo(0.75 * block.finished(TopNames.NECKLINE_GIRTH).mm(), within(SOLVED));
    }
}

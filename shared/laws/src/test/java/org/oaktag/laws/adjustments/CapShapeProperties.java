package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.puffCap;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.CapFit;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/** A cap of any height that reaches round its armhole is highest at its top and falls to either side. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class CapShapeProperties {

    private static final double ROUNDING = 1e-9;
    private static final int PLACES = 200;

    @Property(tries = 150)
    void the_top_of_a_cap_is_its_highest_point_level_there_and_each_half_is_as_long_as_its_own_armhole_and_its_ease(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 30) double down,
            @ForAll @DoubleRange(min = 0, max = 15) double ease,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        Garment lowered = block.adjust(lowerArmhole(mm(down)));
        CapFit fit = CapFit.of(armhole(lowered, TopNames.FRONT), armhole(lowered, TopNames.BACK), mm(ease));
        double height = fit.leastHeight() + share * (fit.mostHeight() - fit.leastHeight());
        Garment fitted = lowered.adjust(fitCapToArmhole(mm(ease)).atHeight(mm(height)));
        assertFalls(fitted);
        Path front = fitted.piece(TopNames.SLEEVE).path(TopEdges.CAP_FRONT);
        Path back = fitted.piece(TopNames.SLEEVE).path(TopEdges.CAP_BACK);
        assertThat(front.length()).isCloseTo(armhole(fitted, TopNames.FRONT).length() + ease / 2, within(0.01));
        assertThat(back.length()).isCloseTo(armhole(fitted, TopNames.BACK).length() + ease / 2, within(0.01));
        assertThat(front.end().y() - front.start().y()).isCloseTo(height, within(ROUNDING));
        assertFalls(lowered.adjust(puffCap(1.3).atHeight(mm(height))));
    }

    @Property(tries = 60)
    void the_nearest_height_that_a_cap_can_have_is_the_one_asked_for_or_the_least_or_the_greatest(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        CapFit fit = CapFit.of(armhole(block, TopNames.FRONT), armhole(block, TopNames.BACK), mm(6));
        double height = fit.leastHeight() + share * (fit.mostHeight() - fit.leastHeight());
        assertThat(fit.nearest(height)).isEqualTo(fit.atHeight(height));
        assertThat(fit.nearest(fit.leastHeight() - 5)).isEqualTo(fit.atHeight(fit.leastHeight()));
        assertThat(fit.nearest(fit.mostHeight() + 5)).isEqualTo(fit.atHeight(fit.mostHeight()));
    }

    @Property(tries = 60)
    void a_cap_that_lost_height_to_a_dropped_shoulder_still_falls_from_its_top(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 120) double by) {
        assertFalls(block.adjust(dropShoulder(mm(by))));
        assertFalls(block.adjust(dropShoulder(mm(by)).withSleeve()));
    }

    private static void assertFalls(Garment garment) {
        Path front = garment.piece(TopNames.SLEEVE).path(TopEdges.CAP_FRONT);
        Path back = garment.piece(TopNames.SLEEVE).path(TopEdges.CAP_BACK).reversed();
        for (Path half : List.of(front, back)) {
            assertThat(half.startDirection().y()).isCloseTo(0, within(ROUNDING));
            assertThat(half.bounds().minY()).isCloseTo(half.start().y(), within(ROUNDING));
            Point before = half.start();
            for (int i = 1; i <= PLACES; i++) {
                Point at = half.pointAt(half.length() * i / PLACES);
                assertThat(at.y()).isGreaterThanOrEqualTo(before.y() - ROUNDING);
                before = at;
            }
        }
    }

    private static Path armhole(Garment garment, Name half) {
        return garment.piece(half).path(TopEdges.ARMHOLE);
    }
}

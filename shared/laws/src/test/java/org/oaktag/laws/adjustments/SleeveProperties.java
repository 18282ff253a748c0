package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Sleeves.addToUpperArm;
import static org.oaktag.adjustments.Sleeves.bellSleeve;
import static org.oaktag.adjustments.Sleeves.cutSleeve;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.lengthenSleeve;
import static org.oaktag.adjustments.Sleeves.lowerCap;
import static org.oaktag.adjustments.Sleeves.puffCap;
import static org.oaktag.adjustments.Sleeves.puffHem;
import static org.oaktag.adjustments.Sleeves.raiseCap;
import static org.oaktag.adjustments.Sleeves.shortSleeve;
import static org.oaktag.adjustments.Sleeves.shortenSleeve;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.spreadSleeve;
import static org.oaktag.adjustments.Sleeves.spreadSleeveAtCap;
import static org.oaktag.adjustments.Sleeves.spreadSleeveAtHem;
import static org.oaktag.adjustments.Sleeves.taperSleeve;
import static org.oaktag.adjustments.Sleeves.threeQuarterSleeve;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/** What the steps of the sleeve keep, and what they move which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class SleeveProperties {

    private static final double SOLVED = 1e-5;
    private static final double ROUNDING = 1e-6;
    private static final Cloth RIB = Cloth.rib("two by two rib", percent(90));

    @Property(tries = 50)
    void a_higher_cap_is_narrower_at_its_own_length_and_a_lower_one_wider(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 15) double by) {
        Garment high = block.adjust(raiseCap(mm(by)));
        assertTrue(high);
        assertThat(measure(high, TopNames.SLEEVE_WIDTH)).isLessThan(measure(block, TopNames.SLEEVE_WIDTH));
        assertThat(cap(high)).isCloseTo(cap(block), within(SOLVED));
        assertKept(block, high, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_HEM, TopNames.CHEST_GIRTH);
        Garment back = high.adjust(lowerCap(mm(by)));
        assertTrue(back);
        assertKept(block, back, TopNames.SLEEVE_WIDTH, TopNames.NECK_TO_WRIST);
    }

    @Property(tries = 50)
    void adding_to_the_upper_arm_widens_by_that_keeps_the_cap_and_can_be_taken_away(
            @ForAll Garment block, @ForAll @DoubleRange(min = -25, max = 4) double by) {
        Garment wide = block.adjust(addToUpperArm(mm(by)));
        assertTrue(wide);
        assertThat(measure(wide, TopNames.SLEEVE_WIDTH))
                .isCloseTo(measure(block, TopNames.SLEEVE_WIDTH) + by, within(SOLVED));
        assertThat(cap(wide)).isCloseTo(cap(block), within(SOLVED));
        assertKept(block, wide, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_HEM, TopNames.CHEST_GIRTH);
        assertKept(block, wide.adjust(addToUpperArm(mm(-by))), TopNames.SLEEVE_WIDTH);
    }

    @Property(tries = 50)
    void a_parallel_spread_adds_as_much_to_sleeve_and_hem_and_its_length_times_that_to_the_area(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 60) double by) {
        Garment spread = block.adjust(spreadSleeve(mm(by)));
        Sound.assertSound(spread);
        assertThat(measure(spread, TopNames.SLEEVE_WIDTH))
                .as("as far as the slash runs straight down")
                .isCloseTo(measure(block, TopNames.SLEEVE_WIDTH) + by, within(0.002 * by));
        assertThat(measure(spread, TopNames.SLEEVE_HEM))
                .isCloseTo(measure(block, TopNames.SLEEVE_HEM) + by, within(0.002 * by));
        double rectangle = by * measure(block, TopNames.SLEEVE_LENGTH);
        double rise = measure(spread, TopNames.SLEEVE_LENGTH) - measure(block, TopNames.SLEEVE_LENGTH);
        assertThat(area(spread) - area(block))
                .as("the top, drawn anew from 15 mm on either side of the gap, rises a little above the rectangle")
                .isBetween(rectangle - 1, rectangle + (by + 2 * 15) * (rise + 0.5));
        assertThat(length(spread, TopEdges.CAP_FRONT) - length(block, TopEdges.CAP_FRONT))
                .as("the gap goes half to either half of the cap")
                .isCloseTo(length(spread, TopEdges.CAP_BACK) - length(block, TopEdges.CAP_BACK), within(1.0));
        assertTrue(spread.adjust(fitCapToArmhole(mm(6))));
    }

    @Property(tries = 50)
    void a_spread_hinged_at_one_end_leaves_that_end_as_long_as_it_was(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 60) double by) {
        Garment atHem = block.adjust(spreadSleeveAtHem(mm(by)));
        Sound.assertSound(atHem);
        assertTrue(atHem);
        assertThat(cap(atHem)).isCloseTo(cap(block), within(ROUNDING));
        assertThat(measure(atHem, TopNames.SLEEVE_HEM) - measure(block, TopNames.SLEEVE_HEM))
                .isBetween(0.97 * by, 1.03 * by);
        Garment atCap = block.adjust(spreadSleeveAtCap(mm(by)));
        Sound.assertSound(atCap);
        assertThat(measure(atCap, TopNames.SLEEVE_HEM)).isCloseTo(measure(block, TopNames.SLEEVE_HEM), within(1.0));
        assertThat(cap(atCap) - cap(block)).isBetween(0.97 * by, 1.1 * by);
        for (Garment spread : List.of(atHem, atCap)) {
            for (Name edge : List.of(TopEdges.UNDERARM_FRONT, TopEdges.UNDERARM_BACK)) {
                assertThat(length(spread, edge)).isCloseTo(length(block, edge), within(ROUNDING));
            }
        }
    }

    @Property(tries = 50)
    void tapering_keeps_cap_and_length_and_comes_back(
            @ForAll Garment block, @ForAll @DoubleRange(min = 130, max = 240) double hem) {
        Garment tapered = block.adjust(taperSleeve(mm(hem)));
        assertTrue(tapered);
        assertThat(measure(tapered, TopNames.SLEEVE_HEM)).isCloseTo(hem, within(SOLVED));
        assertThat(cap(tapered)).isEqualTo(cap(block));
        assertKept(block, tapered, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_WIDTH);
        Garment back = tapered.adjust(
                taperSleeve(block.piece(TopNames.SLEEVE).edge(EdgeNames.HEM).length()));
        Near.assertSame(back, block, ROUNDING);
    }

    @Property(tries = 50)
    void a_bell_is_as_long_as_asked_at_its_hem_square_to_both_edges_and_keeps_the_length_of_the_sleeve(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 5, max = 25) double more,
            @ForAll @DoubleRange(min = 250, max = 300) double from) {
        double hem = measure(block, TopNames.SLEEVE_WIDTH) + more;
        for (Step bell : List.of(bellSleeve(mm(hem)), bellSleeve(mm(hem)).from(mm(from)))) {
            Garment flared = block.adjust(bell);
            assertTrue(flared);
            assertThat(measure(flared, TopNames.SLEEVE_HEM)).isCloseTo(hem, within(SOLVED));
            assertKept(block, flared, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_WIDTH);
            assertThat(cap(flared)).isEqualTo(cap(block));
            for (End end : End.values()) {
                assertThat(flared.piece(TopNames.SLEEVE)
                                .cornerAngle(EdgeNames.HEM, end)
                                .degrees())
                        .isCloseTo(90, within(1e-6));
            }
            assertTrue(flared.adjust(splitSleeve(mm(120), RIB)));
        }
    }

    @Property(tries = 50)
    void a_sleeve_that_was_cut_off_takes_any_hem_square_to_both_edges(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0.4, max = 0.8) double left,
            @ForAll @DoubleRange(min = 0.7, max = 1.1) double times) {
        Garment cut =
                block.adjust(cutSleeve(block.finished(TopNames.SLEEVE_LENGTH).times(left)));
        double hem = times * measure(cut, TopNames.SLEEVE_HEM);
        Garment shaped = cut.adjust(bellSleeve(mm(hem)));
        Sound.assertSound(shaped);
        assertTrue(shaped);
        assertThat(measure(shaped, TopNames.SLEEVE_HEM)).isCloseTo(hem, within(SOLVED));
        assertThat(cap(shaped)).isEqualTo(cap(block));
        for (End end : End.values()) {
            assertThat(shaped.piece(TopNames.SLEEVE)
                            .cornerAngle(EdgeNames.HEM, end)
                            .degrees())
                    .isCloseTo(90, within(1e-6));
        }
    }

    @Property(tries = 50)
    void a_gathered_cap_is_so_many_times_its_armhole_and_lies_on_it_below_the_notches(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1.05, max = 1.8) double ratio) {
        Garment puffed = block.adjust(puffCap(ratio));
        assertTrue(puffed);
        assertThat(cap(puffed)).isCloseTo(ratio * measure(block, TopNames.ARMHOLE_GIRTH), within(SOLVED));
        for (Name seam : List.of(TopNames.FRONT_ARMHOLE_SEAM, TopNames.BACK_ARMHOLE_SEAM)) {
            assertThat(puffed.walkSeams().seam(seam).spans().get(1).difference().mm())
                    .as("no gathers under the arm")
                    .isCloseTo(0, within(ROUNDING));
        }
        assertKept(block, puffed, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_HEM, TopNames.CHEST_GIRTH);
        Near.assertSame(puffed.adjust(puffCap(ratio)), puffed, SOLVED);
        assertTrue(puffed.adjust(fitCapToArmhole(mm(6))));
    }

    @Property(tries = 50)
    void a_gathered_hem_is_so_many_times_its_cuff_and_the_sleeve_reaches_as_far_as_before(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1.2, max = 2.5) double ratio) {
        Garment puffed = block.adjust(puffHem(ratio, ribCuff(mm(50), RIB)));
        assertTrue(puffed);
        assertThat(measure(puffed, TopNames.SLEEVE_HEM))
                .isCloseTo(ratio * measure(puffed, TopNames.CUFF_GIRTH), within(SOLVED));
        assertKept(block, puffed, TopNames.NECK_TO_WRIST, TopNames.SLEEVE_WIDTH);
    }

    @Property(tries = 50)
    void lengthening_then_shortening_by_the_same_amount_restores_the_sleeve(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 100) double by) {
        Garment longer = block.adjust(lengthenSleeve(mm(by)));
        assertTrue(longer);
        assertThat(measure(longer, TopNames.NECK_TO_WRIST))
                .isCloseTo(measure(block, TopNames.NECK_TO_WRIST) + by, within(ROUNDING));
        assertKept(block, longer, TopNames.SLEEVE_HEM);
        Near.assertSame(longer.adjust(shortenSleeve(mm(by))), block, ROUNDING);
    }

    @Property(tries = 50)
    void a_cut_sleeve_is_as_long_as_asked_over_its_middle_and_its_hem_runs_on_smoothly(@ForAll Garment block) {
        double whole = measure(block, TopNames.SLEEVE_LENGTH);
        double underarm =
                block.piece(TopNames.SLEEVE).path(TopEdges.CAP_FRONT).end().y();
        assertCut(block, block.adjust(threeQuarterSleeve()), 0.75 * whole);
        assertCut(block, block.adjust(cutSleeve(mm(underarm + 60))), underarm + 60);
        if (0.4 * whole > underarm + 25) {
            assertCut(block, block.adjust(shortSleeve()), 0.4 * whole);
        }
        assertThatThrownBy(() -> block.adjust(cutSleeve(mm(underarm))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(mm(whole).roundedDown().text());
    }

    private static void assertCut(Garment block, Garment cut, double length) {
        assertTrue(cut);
        assertThat(measure(cut, TopNames.SLEEVE_LENGTH)).isCloseTo(length, within(SOLVED));
        assertThat(cap(cut)).isEqualTo(cap(block));
        assertThat(area(cut)).isLessThan(area(block));
    }

    private static void assertTrue(Garment garment) {
        Sound.assertSound(garment);
        assertThat(garment.walkSeams().untrue()).isEmpty();
    }

    private static void assertKept(Garment before, Garment after, Name... measures) {
        for (Name measure : measures) {
            assertThat(measure(after, measure)).as("%s", measure).isCloseTo(measure(before, measure), within(SOLVED));
        }
    }

    private static double measure(Garment garment, Name name) {
        return garment.finished(name).mm();
    }

    private static double cap(Garment garment) {
        return length(garment, TopEdges.CAP_FRONT) + length(garment, TopEdges.CAP_BACK);
    }

    private static double length(Garment garment, Name edge) {
        return garment.piece(TopNames.SLEEVE).path(edge).length();
    }

    private static double area(Garment garment) {
        Piece sleeve = garment.piece(TopNames.SLEEVE);
        return sleeve.outline().area();
    }
}

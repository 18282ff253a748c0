package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bodies.curveHem;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.adjustments.Bodies.highLowHem;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.shortenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** What the steps of hem and length keep, and what they move which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class HemProperties {

    private static final double ROUNDING = 1e-9;

    @Property(tries = 60)
    void lengthening_then_shortening_at_a_line_restores_the_body(
            @ForAll Garment block,
            @ForAll BodyLine line,
            @ForAll boolean straight,
            @ForAll @DoubleRange(min = 0, max = 120) double by) {
        Garment start = straight ? block.adjust(straightenSideSeams()) : block;
        Garment longer = start.adjust(lengthenBody(line, mm(by)));
        Sound.assertSound(longer);
        Sound.assertBodySewsTrue(longer);
        assertThat(longer.finished(TopNames.BACK_LENGTH).mm())
                .isCloseTo(start.finished(TopNames.BACK_LENGTH).mm() + by, within(ROUNDING));
        Near.assertSame(longer.adjust(shortenBody(line, mm(by))), start, 1e-8);
    }

    @Property(tries = 60)
    void at_the_armhole_line_the_side_seams_keep_their_length_and_at_the_waist_line_the_armholes_do(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 60) double by) {
        Garment above = block.adjust(lengthenBody(BodyLine.ARMHOLE, mm(by)));
        Garment below = block.adjust(lengthenBody(BodyLine.WAIST, mm(by)));
        for (Name name : TopBody.HALVES) {
            assertThat(above.piece(name).path(EdgeNames.SIDE).length())
                    .isCloseTo(block.piece(name).path(EdgeNames.SIDE).length(), within(1e-6));
            assertThat(below.piece(name).path(TopEdges.ARMHOLE))
                    .isEqualTo(block.piece(name).path(TopEdges.ARMHOLE));
        }
        assertThat(above.finished(TopNames.ARMHOLE_GIRTH)).isGreaterThan(block.finished(TopNames.ARMHOLE_GIRTH));
    }

    @Property(tries = 60)
    void a_high_low_hem_turned_round_again_restores_the_hem(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 80) double up,
            @ForAll @DoubleRange(min = 0, max = 250) double down) {
        Garment highLow = block.adjust(highLowHem(mm(up), mm(down)));
        Sound.assertSound(highLow);
        Sound.assertBodySewsTrue(highLow);
        for (Name name : TopBody.HALVES) {
            assertThat(highLow.piece(name).path(EdgeNames.SIDE))
                    .isEqualTo(block.piece(name).path(EdgeNames.SIDE));
        }
        Near.assertSame(highLow.adjust(highLowHem(mm(-up), mm(-down))), block, ROUNDING);
    }

    @Property(tries = 60)
    void a_curved_hem_takes_its_rise_off_the_side_seam_and_let_down_again_is_as_it_was(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 120) double rise) {
        Garment straight = block.adjust(straightenSideSeams());
        Garment curved = straight.adjust(curveHem(mm(rise)));
        Sound.assertSound(curved);
        Sound.assertBodySewsTrue(curved);
        for (Name name : TopBody.HALVES) {
            assertThat(curved.piece(name).path(EdgeNames.SIDE).length())
                    .isCloseTo(straight.piece(name).path(EdgeNames.SIDE).length() - rise, within(1e-6));
        }
        Near.assertSame(curved.adjust(curveHem(mm(-rise))), straight, 1e-6);
    }

    @Property(tries = 60)
    void flaring_and_curving_the_hem_commute(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 60) double out,
            @ForAll @DoubleRange(min = 0, max = 80) double rise) {
        Garment straight = block.adjust(straightenSideSeams());
        Near.assertSame(
                straight.adjust(flareSideSeams(mm(out)).then(curveHem(mm(rise)))),
                straight.adjust(curveHem(mm(rise)).then(flareSideSeams(mm(out)))),
                1e-6);
    }
}

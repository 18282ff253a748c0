package org.oaktag.laws.adjustments;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Armholes.raiseArmhole;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.shortenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Necklines.narrowNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Shoulders.takeShoulderBack;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Garment;

/** Opposite amounts cancel where they should. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class UndoProperties {

    private static final double ROUNDING = 1e-9;

    @Property(tries = 200)
    void widening_then_narrowing_by_the_same_amount_restores_the_neckline(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 40) double along) {
        Garment back = block.adjust(widenNeckline(mm(along))).adjust(narrowNeckline(mm(along)));
        Near.assertSame(back, block, ROUNDING);
    }

    @Property(tries = 200)
    void lowering_then_raising_by_the_same_amount_restores_the_armhole(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 40) double down) {
        Garment back = block.adjust(lowerArmhole(mm(down))).adjust(raiseArmhole(mm(down)));
        Near.assertSame(back, block, ROUNDING);
    }

    @Property(tries = 200)
    void lengthening_then_shortening_by_the_same_amount_restores_the_body(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 300) double by) {
        Garment back = block.adjust(lengthenBody(mm(by))).adjust(shortenBody(mm(by)));
        Near.assertSame(back, block, ROUNDING);
        Garment straight = block.adjust(straightenSideSeams());
        Garment straightBack = straight.adjust(lengthenBody(mm(by))).adjust(shortenBody(mm(by)));
        Near.assertSame(straightBack, straight, ROUNDING);
    }

    @Property(tries = 200)
    void dropping_then_taking_back_by_the_same_amount_restores_shoulder_and_cap(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 20) double by) {
        Garment back = block.adjust(dropShoulder(mm(by))).adjust(takeShoulderBack(mm(by)));
        Near.assertSame(
                "shoulder",
                back.piece(TopNames.FRONT).path(TopEdges.SHOULDER),
                block.piece(TopNames.FRONT).path(TopEdges.SHOULDER),
                ROUNDING);
        Near.assertSame(
                "cap front",
                back.piece(TopNames.SLEEVE).path(TopEdges.CAP_FRONT),
                block.piece(TopNames.SLEEVE).path(TopEdges.CAP_FRONT),
                1e-6);
    }
}

package org.oaktag.laws.adjustments;

import static org.oaktag.measure.Percent.percent;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.DomainContextBase;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.testkit.bodies.Adults;

/** Blocks of knit tops for grown bodies of either sex, at every ease from close to loose. */
public final class TopArbitraries extends DomainContextBase {

    public static final Cloth CLOTH = Cloth.knit("brushed knit", percent(40));

    /** For jqwik. */
    public TopArbitraries() {}

    @Provide
    Arbitrary<BodyMeasurements> bodies() {
        return Adults.adults();
    }

    @Provide
    Arbitrary<Ease> eases() {
        return Arbitraries.of(EaseCategory.CLOSE, EaseCategory.STANDARD, EaseCategory.LOOSE)
                .map(TopEase::of);
    }

    @Provide
    Arbitrary<Garment> blocks() {
        return Combinators.combine(bodies(), eases()).as((body, ease) -> KnitTop.draft(body, ease, CLOTH));
    }
}

package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.Armholes;
import org.oaktag.adjustments.Bodies;
import org.oaktag.adjustments.Necklines;
import org.oaktag.adjustments.Shoulders;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.NeckStyle;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Angle;

/** Steps of neckline, shoulder, armhole, side seam and hem in any order: a sound garment, or a reason why not. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class ShapingProperties {

    @Property(tries = 150)
    void shaping_in_any_order_gives_a_sound_garment_or_a_reason(
            @ForAll Garment block, @ForAll("shapings") List<Step> steps) {
        Garment shaped;
        try {
            shaped = new Recipe("shaping", steps).applyTo(block);
        } catch (PatternException refused) {
            assertThat(refused.rule()).isNotBlank();
            assertThat(refused.given()).isNotBlank();
            Statistics.collect("refused");
            return;
        }
        Statistics.collect("made");
        Sound.assertSound(shaped);
        Sound.assertBodySewsTrue(shaped);
        Statistics.coverage(coverage -> coverage.check("made").percentage(share -> share > 70));
    }

    @Provide
    Arbitrary<List<Step>> shapings() {
        Arbitrary<Double> small = Arbitraries.doubles().between(0, 20);
        Arbitrary<Double> large = Arbitraries.doubles().between(0, 60);
        Arbitrary<Step> step = Arbitraries.oneOf(
                small.map(by -> Necklines.widenNeckline(mm(by))),
                large.map(by -> Necklines.lowerFrontNeckline(mm(by))),
                small.map(by -> Necklines.lowerBackNeckline(mm(by))),
                Arbitraries.of(NeckStyle.class).map(Necklines::reshapeNeckline),
                small.map(by -> Shoulders.extendShoulder(mm(by - 10))),
                small.map(by -> Shoulders.slopeShoulder(mm(by - 10))),
                small.map(by -> Shoulders.squareShoulder(Angle.degrees(by / 4))),
                small.map(by -> Shoulders.moveShoulderForward(mm(by - 5))),
                small.map(by -> Armholes.lowerArmhole(mm(by))),
                small.map(by -> Armholes.scoopFrontArmhole(mm(by / 2))),
                small.map(by -> Armholes.widenArmhole(mm(by))),
                small.map(by -> Bodies.shapeWaist(mm(by))),
                large.map(by -> Bodies.flareSideSeams(mm(by - 10))),
                large.map(by -> Bodies.lengthenBody(BodyLine.WAIST, mm(by))),
                small.map(by -> Bodies.lengthenBody(BodyLine.ARMHOLE, mm(by))),
                large.map(by -> Bodies.highLowHem(mm(by / 2), mm(by))),
                large.map(by -> Bodies.curveHem(mm(by))));
        return step.list().ofMinSize(1).ofMaxSize(8);
    }
}

package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Finishes.faceNeckline;
import static org.oaktag.adjustments.Finishes.ribNeckband;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.adjustments.Necklines.growStand;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Sleeves.puffCap;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.adjustments.Sleeves.shortenSleeve;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.Raglan;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Edge;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
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
        assertThat(raglan.piece(TopNames.SLEEVE_FRONT).path(TopEdges.NECKLINE).length())
                .isCloseTo(onFront, within(SOLVED));
        assertThat(raglan.piece(TopNames.SLEEVE_BACK).path(TopEdges.NECKLINE).length())
                .isCloseTo(onBack, within(SOLVED));
    }

    @Property(tries = 60)
    void a_gusset_is_sewn_to_body_and_sleeve_and_leaves_the_rest_of_the_raglan_as_it_was(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 20, max = 50) double onFront,
            @ForAll @DoubleRange(min = 10, max = 30) double onBack,
            @ForAll @DoubleRange(min = 40, max = 110) double side) {
        Raglan plain = raglanSleeve(mm(onFront), mm(onBack));
        Garment without = block.adjust(plain);
        Garment with = block.adjust(plain.withGusset(mm(side)));
        Sound.assertSound(with);
        assertThat(with.walkSeams().untrue()).isEmpty();
        for (Edge edge : with.piece(TopNames.GUSSET).edges()) {
            assertThat(edge.length().mm()).isCloseTo(side, within(SOLVED));
        }
        for (FinishedMeasure measure : without.measures()) {
            assertThat(with.finished(measure.name()).mm())
                    .as("%s", measure.name())
                    .isCloseTo(without.finished(measure.name()).mm(), within(SOLVED));
        }
        for (Name piece : List.of(TopNames.FRONT, TopNames.BACK, TopNames.SLEEVE_FRONT, TopNames.SLEEVE_BACK)) {
            Path was = without.piece(piece).outline().path();
            assertThat(with.piece(piece).outline().path().length()).isCloseTo(was.length(), within(SOLVED));
            assertThat(with.piece(piece).outline().area())
                    .isCloseTo(without.piece(piece).outline().area(), within(SOLVED));
        }
    }

    /** With the gusset's outer corner at (x, y) on a piece, both girths are taken by hand from coordinates. */
    @Property(tries = 40)
    void the_girths_over_the_gusset_are_those_of_the_pieces_and_of_its_width(
            @ForAll Garment block, @ForAll @DoubleRange(min = 40, max = 110) double side) {
        Garment with = block.adjust(raglanSleeve().withGusset(mm(side)));
        double width = side * Math.sqrt(3);
        double body = 2 * width;
        for (Name piece : List.of(TopNames.FRONT, TopNames.BACK)) {
            body += 2 * with.piece(piece).path(TopEdges.GUSSET_LOWER).start().x();
        }
        assertThat(with.finished(TopNames.BODY_OVER_GUSSET).mm()).isCloseTo(body, within(SOLVED));
        double arm = width;
        for (Name piece : List.of(TopNames.SLEEVE_FRONT, TopNames.SLEEVE_BACK)) {
            Path over = with.piece(piece).path(TopEdges.OVER_ARM);
            Point corner = with.piece(piece).path(TopEdges.GUSSET_UPPER).start();
            double base = over.start().distanceTo(over.end());
            double twice = Math.abs(over.end().minus(over.start()).cross(corner.minus(over.start())));
            arm += twice / base;
        }
        assertThat(with.finished(TopNames.ARM_OVER_GUSSET).mm()).isCloseTo(arm, within(SOLVED));
    }

    @Property(tries = 20)
    void a_longer_side_makes_a_wider_arm(@ForAll Garment block) {
        double before = 0;
        for (double side : new double[] {50, 70, 90, 110}) {
            double arm = block.adjust(raglanSleeve().withGusset(mm(side)))
                    .finished(TopNames.ARM_OVER_GUSSET)
                    .mm();
            assertThat(arm).isGreaterThan(before);
            before = arm;
        }
    }

    @Property(tries = 5)
    void a_gusset_out_of_its_range_is_refused_with_what_works(@ForAll Garment block) {
        assertThatThrownBy(() -> raglanSleeve().withGusset(mm(30)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("40.0 mm to 160.0 mm");
        assertThatThrownBy(() -> block.adjust(raglanSleeve().withGusset(mm(80))).adjust(raglanSleeve()))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("make a raglan sleeve");
    }

    @Property(tries = 5)
    void what_is_made_for_a_neckline_of_front_and_back_or_a_sleeve_with_a_cap_is_refused_and_told_where_to_go(
            @ForAll Garment block) {
        Garment raglan = block.adjust(raglanSleeve());
        Cloth rib = Cloth.rib("trial rib", Percent.percent(60));
        for (Step step : List.of(
                faceNeckline(mm(50), TopArbitraries.CLOTH),
                widenNeckline(mm(10)),
                growStand(mm(40)),
                ribCuff(mm(70), rib),
                shortenSleeve(mm(20)),
                puffCap(1.3))) {
            assertThatThrownBy(() -> raglan.adjust(step))
                    .as(step.name())
                    .isInstanceOf(PatternException.class)
                    .hasMessageContaining("take this step before")
                    .hasMessageContaining("make a raglan sleeve");
        }
        assertThat(raglan.adjust(hemBand(mm(60), mm(30))).walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 20)
    void a_cap_that_does_not_lie_on_the_armhole_is_refused(@ForAll Garment block) {
        assertThatThrownBy(() -> block.adjust(lowerArmhole(mm(20))).adjust(raglanSleeve()))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("fit the cap to the armhole first");
    }

    @Property(tries = 20)
    void a_line_that_begins_off_the_neckline_is_refused_with_what_works(@ForAll Garment block) {
        double neckline = block.piece(TopNames.BACK).path(TopEdges.NECKLINE).length();
        assertThatThrownBy(() -> block.adjust(raglanSleeve(mm(30), mm(neckline))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(mm(neckline - 20).roundedDown().text());
    }

    @Property(tries = 60)
    void a_hood_goes_round_the_necklines_of_the_sleeves_too(
            @ForAll Garment block,
            @ForAll boolean strip,
            @ForAll @DoubleRange(min = 15, max = 50) double onFront,
            @ForAll @DoubleRange(min = 10, max = 30) double onBack,
            @ForAll @DoubleRange(min = 0, max = 60) double lap) {
        HoodShape shape = strip ? HoodShape.threePanel() : HoodShape.twoPiece();
        Garment raglan = block.adjust(raglanSleeve(mm(onFront), mm(onBack)));
        Garment hooded = raglan.adjust(hood(shape).lapped(mm(lap)));
        Sound.assertSound(hooded);
        assertThat(hooded.walkSeams().untrue()).isEmpty();
        Garment onBlock = block.adjust(hood(shape).lapped(mm(lap)));
        for (Piece panel : onBlock.pieces()) {
            if (panel.name().value().startsWith("hood")) {
                for (Edge edge : panel.edges()) {
                    assertThat(hooded.piece(panel.name()).path(edge.name()).length())
                            .as("%s of the %s", edge.name(), panel.name())
                            .isCloseTo(edge.path().length(), within(SOLVED));
                }
            }
        }
        Garment lined = hooded.adjust(lineHood(mm(40), TopArbitraries.CLOTH));
        assertThat(lined.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 60)
    void a_hood_is_notched_where_the_raglan_seams_and_the_shoulder_meet_it(
            @ForAll Garment block,
            @ForAll boolean strip,
            @ForAll @DoubleRange(min = 15, max = 50) double onFront,
            @ForAll @DoubleRange(min = 10, max = 30) double onBack) {
        HoodShape shape = strip ? HoodShape.threePanel() : HoodShape.twoPiece();
        Garment hooded = block.adjust(raglanSleeve(mm(onFront), mm(onBack))).adjust(hood(shape));
        double front = hooded.piece(TopNames.FRONT).path(TopEdges.NECKLINE).length();
        double back = hooded.piece(TopNames.BACK).path(TopEdges.NECKLINE).length();
        double half = front + onFront + onBack + back;
        assertNotchedAt(hooded, TopNames.FRONT_RAGLAN_NOTCH, half - front);
        assertNotchedAt(hooded, TopNames.SHOULDER_NOTCH, back + onBack);
        assertNotchedAt(hooded, TopNames.BACK_RAGLAN_NOTCH, back);
    }

    /** The neck edge of side panel and strip has the notch so far from centre back, or a panel seam there. */
    private static void assertNotchedAt(Garment hooded, Name notch, double fromBack) {
        Piece side = hooded.piece(TopNames.HOOD_SIDE);
        Optional<Piece> strip = hooded.findPiece(TopNames.HOOD_CENTRE);
        double halfStrip =
                strip.map(piece -> piece.path(HoodNames.NECK).length()).orElse(0.0);
        Optional<Double> onSide = side.notch(HoodNames.NECK, notch)
                .map(each ->
                        halfStrip + each.fromStart(side.path(HoodNames.NECK).length()));
        Optional<Double> onStrip = strip.flatMap(piece -> piece.notch(HoodNames.NECK, notch))
                .map(each -> halfStrip - each.fromStart(halfStrip));
        if (Math.abs(fromBack - halfStrip) <= 3) {
            assertThat(onSide).isEmpty();
            assertThat(onStrip).isEmpty();
        } else {
            assertThat(fromBack > halfStrip ? onStrip : onSide).isEmpty();
            assertThat((fromBack > halfStrip ? onSide : onStrip).orElseThrow())
                    .as("%s", notch)
                    .isCloseTo(fromBack, within(SOLVED));
        }
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

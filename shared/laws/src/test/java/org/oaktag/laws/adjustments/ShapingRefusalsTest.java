package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.oaktag.measure.Length.mm;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepKind;
import org.oaktag.adjust.data.Datum;
import org.oaktag.adjustments.Armholes;
import org.oaktag.adjustments.Bodies;
import org.oaktag.adjustments.Necklines;
import org.oaktag.adjustments.Shoulders;
import org.oaktag.adjustments.TopSteps;
import org.oaktag.blocks.BodyLine;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Angle;

/** A step that cannot be done names the thing, the value and what would work, and leaves the garment alone. */
class ShapingRefusalsTest {

    private static final Garment BLOCK = KnitTop.draft(
            BodyMeasurements.builder()
                    .name("Mira")
                    .figure(Figure.WOMAN)
                    .bustGirth(mm(920))
                    .waistGirth(mm(760))
                    .hipGirth(mm(990))
                    .measure(BodyMeasure.HEIGHT, mm(1680))
                    .build(),
            TopEase.standard(),
            TopArbitraries.CLOTH);

    static Stream<Arguments> tooMuch() {
        return Stream.of(
                refusal(Necklines.raiseFrontNeckline(mm(70)), "neckline of the front", "-70.0 mm"),
                refusal(Necklines.lowerBackNeckline(mm(700)), "neckline of the back", "700.0 mm"),
                refusal(Necklines.boatNeckline(mm(10), mm(30)), "shoulder of the front", "10.0 mm"),
                refusal(Necklines.boatNeckline(mm(60), mm(120)), "boat neckline of the front", "120.0 mm"),
                refusal(Shoulders.shortenShoulder(mm(200)), "shoulder of the front", "200.0 mm"),
                refusal(Shoulders.squareShoulder(Angle.degrees(25)), "shoulder of the front", "-25.0°"),
                refusal(Shoulders.slopeShoulder(mm(200)), "shoulder of the front", "200.0 mm"),
                refusal(Necklines.widenNeckline(mm(140)), "neckline of the front", "140.0 mm"),
                refusal(Shoulders.moveShoulderForward(mm(130)), "shoulder seam of the front", "130.0 mm"),
                refusal(Shoulders.moveShoulderBack(mm(60)), "shoulder seam of the back", "60.0 mm"),
                refusal(Armholes.scoopFrontArmhole(mm(130)), "armhole of the front", "130.0 mm"),
                refusal(Armholes.scoopFrontArmhole(mm(-60)), "armhole of the front", "-60.0 mm"),
                refusal(Armholes.narrowArmhole(mm(60)), "armhole of the front", "-60.0 mm"),
                refusal(Bodies.taperSideSeams(mm(200)), "side seams", "-200.0 mm"),
                refusal(Bodies.flareSideSeams(mm(400)), "side seams", "400.0 mm"),
                refusal(Bodies.shapeWaist(mm(160)), "waist of the front", "160.0 mm"),
                refusal(Bodies.shortenBody(BodyLine.WAIST, mm(200)), "waist line of the front", "-200.0 mm"),
                refusal(Bodies.shortenBody(BodyLine.ARMHOLE, mm(90)), "armhole line of the front", "-90.0 mm"),
                refusal(Bodies.highLowHem(mm(400), mm(0)), "hem at the centre of the front", "400.0 mm"),
                refusal(Bodies.curveHem(mm(380)), "hem of the front", "380.0 mm"),
                refusal(Bodies.cutSideVent(mm(500), mm(30)), "vent of the front", "500.0 mm"));
    }

    @ParameterizedTest
    @MethodSource("tooMuch")
    void too_much_is_refused_with_the_range_that_works(Step step, String thing, String given) {
        Garment before = BLOCK.titled(BLOCK.title());
        PatternException refused = catchThrowableOfType(PatternException.class, () -> BLOCK.adjust(step));
        assertThat(refused).as(step.name()).isNotNull();
        assertThat(refused.thing()).isEqualTo(thing);
        assertThat(refused.given()).contains(given);
        assertThat(refused.rule()).containsPattern("\\d");
        assertThat(BLOCK).isEqualTo(before);
    }

    @Test
    void parts_that_do_not_make_a_step_are_refused_at_once() {
        assertThatThrownBy(() -> Necklines.growStand(mm(10)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("20.0 mm to 200.0 mm");
        assertThatThrownBy(() -> Bodies.cutSideVent(mm(100), mm(5)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("10.0 mm to 80.0 mm");
        StepKind lower = TopSteps.catalogue().kind("lower neckline");
        Datum.Fields written = lower.write(Necklines.lowerFrontNeckline(mm(5)));
        assertThatThrownBy(() -> lower.read("step", written.with("piece", new Datum.Text("sleeve"))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("front or the back");
    }

    @Test
    void a_band_that_would_swallow_the_shoulder_is_refused() {
        Garment wide = BLOCK.adjust(Necklines.widenNeckline(mm(90)));
        assertThatThrownBy(() -> wide.adjust(Necklines.insetNecklineForBand(mm(60))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("leaves room for a width of 1.0 mm to");
    }

    @Test
    void a_seam_that_bends_is_not_moved() {
        Garment bent = BLOCK.adjust(Shoulders.dropShoulder(mm(20), Angle.degrees(10)));
        assertThatThrownBy(() -> bent.adjust(Shoulders.moveShoulderForward(mm(10))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("before the shoulder is bent");
    }

    @Test
    void a_waist_line_below_a_cropped_body_is_refused() {
        Garment cropped = BLOCK.adjust(Bodies.straightenSideSeams()).adjust(Bodies.shortenBody(mm(260)));
        assertThatThrownBy(() -> cropped.adjust(Bodies.shapeWaist(mm(10))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("lengthen the body first");
        assertThatThrownBy(() -> cropped.adjust(Bodies.lengthenBody(BodyLine.WAIST, mm(10))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("at the hem instead");
    }

    private static Arguments refusal(Step step, String thing, String given) {
        return Arguments.of(step, thing, given);
    }
}

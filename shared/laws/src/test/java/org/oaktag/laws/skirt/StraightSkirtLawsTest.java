package org.oaktag.laws.skirt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Allowance;
import org.oaktag.garment.Allowances;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Dart;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Fit;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;
import org.oaktag.skirt.SkirtChecks;
import org.oaktag.skirt.SkirtEase;
import org.oaktag.skirt.SkirtLength;
import org.oaktag.skirt.SkirtNames;
import org.oaktag.skirt.StraightSkirt;
import org.oaktag.testkit.lines.LineTable;

/**
 * The straight skirt over 1,000 women and 1,000 men drawn from the tables of a body survey, at standard ease, and over
 * 200 of each at every other category.
 */
class StraightSkirtLawsTest {

    private static final List<BodyMeasurements> ADULTS = LineTable.adults(1000);

    /** As many of each sex are drafted at the categories of ease that are not the standard one. */
    private static final List<BodyMeasurements> SOME = LineTable.adults(200);

    private static final Cloth WOVEN = Cloth.woven("tweed, moss");
    private static final Cloth KNIT = Cloth.knit("double jersey", percent(40));
    private static final Allowances SEWN =
            Allowances.of("woven", mm(12)).with(EdgeNames.HEM, Allowance.foldedBack(mm(40)));
    private static final double TOLD = 0.01;

    @ParameterizedTest
    @EnumSource
    void every_seam_is_true_and_waist_and_hip_are_met_with_the_darts_sewn(EaseCategory category) {
        Ease ease = SkirtEase.of(category);
        for (BodyMeasurements body : adults(category)) {
            Garment skirt = StraightSkirt.BLOCK.draft(body, ease, WOVEN);
            assertThat(skirt.walkSeams().isTrue()).as("%s", body).isTrue();
            met(skirt, body, ease, BodyMeasure.WAIST_GIRTH, SkirtNames.WAIST_GIRTH);
            met(skirt, body, ease, BodyMeasure.HIP_GIRTH, SkirtNames.HIP_GIRTH);
            for (Fit fit : skirt.fit()) {
                if (fit.check().equals(SkirtChecks.WAIST) || fit.check().equals(SkirtChecks.HIP)) {
                    assertThat(fit.isCaution()).as("%s: %s", body, fit).isFalse();
                }
            }
        }
    }

    private static List<BodyMeasurements> adults(EaseCategory category) {
        return category == EaseCategory.STANDARD ? ADULTS : SOME;
    }

    private static void met(Garment skirt, BodyMeasurements body, Ease ease, BodyMeasure of, Name finished) {
        assertThat(skirt.finished(finished).mm())
                .as("%s of %s", finished, body)
                .isCloseTo(body.measure(of).plus(ease.at(of)).mm(), within(TOLD));
    }

    @ParameterizedTest
    @EnumSource
    void every_curve_bends_one_way_and_the_sewn_waist_has_no_corner(EaseCategory category) {
        for (BodyMeasurements body : adults(category)) {
            for (Piece half : StraightSkirt.BLOCK
                    .draft(body, SkirtEase.of(category), WOVEN)
                    .pieces()) {
                assertThat(Fairness.of(half, EdgeNames.SIDE).changes()).isZero();
                assertThat(half.cornerAngle(EdgeNames.SIDE, End.START).degrees())
                        .isCloseTo(90, within(1e-6));
                assertThat(half.cornerAngle(EdgeNames.CENTRE, End.END).degrees())
                        .isCloseTo(90, within(1e-6));
                List<Path> sewn = sewnWaist(half);
                int sign = 0;
                for (int i = 0; i < sewn.size(); i++) {
                    double turn = sewn.get(i).turning();
                    if (Math.abs(turn) > 1e-9) {
                        assertThat(sign * turn).as("%s of %s", half, body).isGreaterThanOrEqualTo(0);
                        sign = (int) Math.signum(turn);
                    }
                    if (i > 0) {
                        Vector before = sewn.get(i - 1).endDirection();
                        assertThat(before.angleTo(sewn.get(i).startDirection())).isCloseTo(0, within(1e-9));
                        assertThat(sewn.get(i - 1).end().distanceTo(sewn.get(i).start()))
                                .isLessThan(1e-9);
                    }
                }
            }
        }
    }

    /** The stretches of the waist with every dart before them turned shut about its apex. */
    private static List<Path> sewnWaist(Piece half) {
        List<Path> sewn = new ArrayList<>();
        Transform shut = Transform.IDENTITY;
        List<Dart> darts = Dart.all(half);
        int passed = 0;
        for (Edge edge : half.edges()) {
            if (Dart.whole(edge.name()).equals(SkirtNames.WAIST)) {
                sewn.add(edge.path().transformed(shut));
                if (passed < darts.size()) {
                    Dart dart = darts.get(passed);
                    double closing = dart.mouthB()
                            .minus(dart.apex())
                            .angleTo(dart.mouthA().minus(dart.apex()));
                    // The next stretch is turned about this apex first, then as this one was.
                    shut = Transform.rotation(closing, dart.apex()).then(shut);
                    passed++;
                }
            }
        }
        return sewn;
    }

    @Test
    void it_is_cut_with_ordinary_allowances_and_every_dart_ends_above_the_hip() {
        for (BodyMeasurements body : ADULTS.subList(0, 400)) {
            Garment skirt = StraightSkirt.BLOCK.draft(body, SkirtEase.standard(), WOVEN);
            for (Piece half : skirt.pieces()) {
                CutLine cut = CutLine.of(half, SEWN);
                assertThat(cut.outline().area()).isGreaterThan(half.outline().area());
                assertThat(cut.drillHoles()).hasSameSizeAs(Dart.all(half));
                for (Dart dart : Dart.all(half)) {
                    assertThat(dart.apex().y())
                            .isLessThan(body.measure(BodyMeasure.WAIST_TO_HIP).mm() - 20);
                }
            }
        }
    }

    @Test
    void a_cloth_that_stretches_has_no_darts_and_says_what_its_band_draws_in() {
        for (BodyMeasurements body : ADULTS.subList(0, 200)) {
            Garment skirt = StraightSkirt.BLOCK.draft(body, SkirtEase.standard(), KNIT);
            assertThat(skirt.pieces()).allMatch(half -> Dart.all(half).isEmpty());
            assertThat(skirt.walkSeams().isTrue()).isTrue();
            double asked = body.measure(BodyMeasure.WAIST_GIRTH)
                    .plus(SkirtEase.standard().at(BodyMeasure.WAIST_GIRTH))
                    .mm();
            double drawnIn = skirt.finished(SkirtNames.WAIST_GIRTH).mm() - asked;
            assertThat(drawnIn).isGreaterThan(-TOLD);
            assertThat(skirt.history().get(0).notes().stream()
                            .anyMatch(note -> note.text()
                                    .contains("drawn in to " + Length.mm(asked).text())))
                    .isEqualTo(drawnIn > TOLD);
        }
    }

    @Test
    void a_waist_greater_than_the_hip_is_met_by_sides_that_lean_outwards() {
        for (double waist = 1000; waist <= 1300; waist += 50) {
            BodyMeasurements body = body(waist, 1150, 220, 1720);
            Garment skirt = StraightSkirt.BLOCK.draft(body, SkirtEase.standard(), WOVEN);
            assertThat(skirt.walkSeams().isTrue()).as("waist %s", waist).isTrue();
            met(skirt, body, SkirtEase.standard(), BodyMeasure.WAIST_GIRTH, SkirtNames.WAIST_GIRTH);
            Path side = skirt.piece(SkirtNames.BACK).path(EdgeNames.SIDE);
            assertThat(side.start().x() > side.end().x()).isEqualTo(waist + 16 > 1150 + 55);
        }
    }

    @Test
    void more_hip_over_the_same_waist_never_takes_less_into_darts() {
        double before = -1;
        for (double hip = 760; hip <= 1160; hip += 5) {
            double taken =
                    StraightSkirt.BLOCK.draft(body(750, hip, 210, 1650), SkirtEase.standard(), WOVEN).pieces().stream()
                            .flatMap(half -> Dart.all(half).stream())
                            .mapToDouble(dart -> dart.width().mm())
                            .sum();
            assertThat(taken).as("hip %s", hip).isGreaterThanOrEqualTo(before - 1e-9);
            before = taken;
        }
    }

    @Test
    void each_length_has_a_block_of_its_own_name_and_hangs_so_far() {
        BodyMeasurements body = body(740, 980, 215, 1650);
        for (SkirtLength length : SkirtLength.values()) {
            Garment skirt = new StraightSkirt(length).draft(body, SkirtEase.standard(), WOVEN);
            assertThat(skirt.finished(SkirtNames.LENGTH).mm()).isCloseTo(length.shareOfHeight() * 1650, within(1e-9));
        }
        assertThat(Stream.of(SkirtLength.values()).map(length -> new StraightSkirt(length).name()))
                .doesNotHaveDuplicates();
    }

    @Test
    void what_cannot_be_drafted_is_refused_with_what_would_work() {
        BodyMeasurements body = body(740, 980, 215, 1650);
        assertThatThrownBy(() -> StraightSkirt.BLOCK.draft(
                        body, SkirtEase.standard().with(BodyMeasure.HIP_GIRTH, mm(-10)), WOVEN))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("ease at the hip girth: must be 0.0 mm to 400.0 mm")
                .hasMessageContaining("-10.0 mm");
        BodyMeasurements asked = BodyMeasurements.builder()
                .name("Juno")
                .figure(Figure.WOMAN)
                .waistGirth(mm(740))
                .hipGirth(mm(980))
                .waistToHip(mm(300))
                .height(mm(1000))
                .confirmed(BodyMeasure.WAIST_TO_HIP)
                .build();
        assertThatThrownBy(() -> StraightSkirt.BLOCK.draft(asked, SkirtEase.standard(), WOVEN))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must end at least 100.0 mm below the hip, which lies 300.0 mm below the waist");
        BodyMeasurements bare = BodyMeasurements.builder()
                .name("Juno")
                .figure(Figure.GIRL)
                .height(mm(1500))
                .build();
        assertThat(StraightSkirt.BLOCK.missing(bare.measures().keySet()))
                .containsExactly(BodyMeasure.WAIST_GIRTH, BodyMeasure.HIP_GIRTH, BodyMeasure.WAIST_TO_HIP);
    }

    static BodyMeasurements body(double waist, double hip, double toHip, double height) {
        return BodyMeasurements.builder()
                .name("Juno")
                .figure(Figure.WOMAN)
                .waistGirth(mm(waist))
                .hipGirth(mm(hip))
                .waistToHip(mm(toHip))
                .height(mm(height))
                .build();
    }
}

package org.oaktag.laws.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.CapShare;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Fairness;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Curvature;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.lines.LineFigure;
import org.oaktag.testkit.lines.LineTable;

/**
 * The lines of the block over 1,000 women and 1,000 men drawn from the tables of a body survey, at every category of
 * ease. The figures are common practice of the trade where no source stands beside them.
 */
class BlockLinesTest {

    private static final List<BodyMeasurements> ADULTS = LineTable.adults(1000);
    private static final String NO_ROOM = "leaves no more room for an armhole";
    private static final double ROUNDING = 1e-6;

    /** Level, then one sweep, with a radius of at least 20 mm: a seam allowance of 6 to 10 mm lies flat round it. */
    @ParameterizedTest
    @EnumSource
    void the_back_neck_runs_level_for_a_third_of_its_width_and_then_goes_up_in_one_sweep(EaseCategory category) {
        forEachBlock(category, block -> {
            Path neckline = block.piece(TopNames.BACK).path(TopEdges.NECKLINE);
            assertThat(fairness(block, TopNames.BACK, TopEdges.NECKLINE).changes())
                    .isZero();
            assertThat(LineFigure.BACK_NECK_RADIUS.of(block)).isGreaterThan(20);
            Point third = neckline.pointAt(neckline.end().x() / 3);
            assertThat(neckline.start().y() - third.y()).isBetween(0.0, 1.0);
            assertThat(neckline.startDirection().y()).isCloseTo(0, within(ROUNDING));
        });
    }

    /**
     * The back neck rises 3/4 in (Baldt, Clothing for Women, 1916) to 1 in (Rosenfeld, The Practical Designer, 1911),
     * more with the neck.
     */
    @ParameterizedTest
    @EnumSource
    void the_back_neck_rises_between_published_amounts(EaseCategory category) {
        forEachBlock(category, block -> {
            double rise =
                    block.piece(TopNames.BACK).path(TopEdges.NECKLINE).start().y();
            assertThat(rise).isBetween(0.75 * 25.4 - 1.1, 25.4);
        });
    }

    @ParameterizedTest
    @EnumSource
    void the_front_neck_is_one_hollow(EaseCategory category) {
        forEachBlock(category, block -> {
            assertThat(fairness(block, TopNames.FRONT, TopEdges.NECKLINE).changes())
                    .isZero();
            assertThat(LineFigure.FRONT_NECK_RADIUS.of(block)).isGreaterThan(30);
        });
    }

    @ParameterizedTest
    @EnumSource
    void an_armhole_is_one_hollow_as_round_as_its_run_allows(EaseCategory category) {
        forEachBlock(category, block -> {
            for (Name name : List.of(TopNames.FRONT, TopNames.BACK)) {
                Path armhole = block.piece(name).path(TopEdges.ARMHOLE);
                Point pitch = ArmholeShape.pitch(armhole);
                double run = armhole.end().x() - pitch.x();
                double drop = armhole.end().y() - pitch.y();
                Fairness line = fairness(block, name, TopEdges.ARMHOLE);
                assertThat(line.changes()).isZero();
                assertThat(line.greatestCorner().degrees()).isLessThan(ROUNDING);
                assertThat(run).isGreaterThan(28 - ROUNDING);
                assertThat(line.leastRadius())
                        .isGreaterThan(0.5 * Math.min(run, drop))
                        .isGreaterThan(14);
            }
        });
    }

    /** Back 25 to 30 %, front 15 to 25 %, armhole 45 to 60 % of half the ease at the bust (common practice). */
    @ParameterizedTest
    @EnumSource
    void back_front_and_armhole_share_the_ease_or_the_draft_says_so(EaseCategory category) {
        double half = TopEase.of(category).at(BodyMeasure.BUST_GIRTH).mm() / 2;
        forEachBlock(category, block -> {
            double body =
                    block.wearer().measure(BodyMeasure.ACROSS_BACK.asName()).mm() / 2;
            double back = pitch(block, TopNames.BACK).x();
            double front = pitch(block, TopNames.FRONT).x();
            assertThat(back - front).isBetween(8.0 - ROUNDING, 12.0 + ROUNDING);
            boolean narrow = ArmholeShape.pitch(armhole(block, TopNames.BACK)).x()
                    > armhole(block, TopNames.BACK).end().x() - 28 - ROUNDING;
            if (!narrow) {
                assertThat(back - body).isGreaterThan(0.25 * half - ROUNDING);
            } else if (body - back > 5) {
                assertThat(block.cautions()).anyMatch(caution -> caution.contains(NO_ROOM));
            }
        });
    }

    /** The band of a sleeve set in into a knit falls as its armhole lies past the shoulder point (common practice). */
    @ParameterizedTest
    @EnumSource
    void a_cap_keeps_to_the_band_of_its_kind(EaseCategory category) {
        forEachBlock(category, block -> {
            CapShare cap = CapShare.of(block).orElseThrow();
            assertThat(cap.isUsual()).as(cap.text()).isTrue();
            assertThat(cap.share()).isBetween(0.35 - ROUNDING, 0.75 + ROUNDING);
        });
    }

    @ParameterizedTest
    @EnumSource
    void a_sleeve_is_as_wide_as_asked_or_the_draft_says_by_how_much_not(EaseCategory category) {
        double ease = TopEase.of(category).at(BodyMeasure.UPPER_ARM_GIRTH).mm();
        forEachBlock(category, block -> {
            double arm =
                    block.wearer().measure(BodyMeasure.UPPER_ARM_GIRTH.asName()).mm();
            double lacks = arm + ease - block.finished(TopNames.SLEEVE_WIDTH).mm();
            boolean told = block.cautions().stream().anyMatch(caution -> caution.contains("narrower than asked"));
            assertThat(told).isEqualTo(lacks > 1);
        });
    }

    @ParameterizedTest
    @EnumSource
    void a_cap_bends_the_other_way_once_in_each_half_and_is_round_at_its_top(EaseCategory category) {
        forEachBlock(category, block -> {
            assertThat(fairness(block, TopNames.SLEEVE, TopEdges.CAP_FRONT).changes())
                    .isLessThanOrEqualTo(1);
            assertThat(fairness(block, TopNames.SLEEVE, TopEdges.CAP_BACK).changes())
                    .isLessThanOrEqualTo(1);
            assertThat(LineFigure.CAP_TOP_RADIUS.of(block)).isGreaterThan(35);
        });
    }

    /** A third to two fifths of the armhole up from the underarm point (common practice), in every size alike. */
    @ParameterizedTest
    @EnumSource
    void the_notches_lie_at_the_same_share_of_the_armhole_in_every_size(EaseCategory category) {
        forEachBlock(category, block -> {
            assertThat(LineFigure.FRONT_NOTCH_SHARE.of(block)).isCloseTo(0.35, within(ROUNDING));
            assertThat(LineFigure.BACK_NOTCH.of(block)
                            / armhole(block, TopNames.BACK).length())
                    .isCloseTo(0.38, within(ROUNDING));
            Piece sleeve = block.piece(TopNames.SLEEVE);
            Path front = sleeve.path(TopEdges.CAP_FRONT);
            Notch notch = sleeve.notch(TopEdges.CAP_FRONT, TopNames.FRONT_NOTCH).orElseThrow();
            assertThat(front.length() - notch.fromStart(front.length()))
                    .isCloseTo(LineFigure.FRONT_NOTCH.of(block), within(ROUNDING));
        });
    }

    @ParameterizedTest
    @EnumSource
    void a_side_changes_the_way_it_bends_once_at_the_most_and_a_hem_is_level(EaseCategory category) {
        forEachBlock(category, block -> {
            assertThat(fairness(block, TopNames.FRONT, EdgeNames.SIDE).changes())
                    .isLessThanOrEqualTo(1);
            assertThat(Curvature.of(block.piece(TopNames.FRONT).path(EdgeNames.HEM))
                            .leastRadius()
                            .radius())
                    .isInfinite();
            assertThat(block.piece(TopNames.FRONT)
                            .cornerAngle(EdgeNames.HEM, End.START)
                            .degrees())
                    .isCloseTo(90, within(ROUNDING));
        });
    }

    /**
     * A knit shoulder is commonly drawn 5 to 20 mm beyond the bone; a broad back takes more, and the draft says how
     * much.
     */
    @ParameterizedTest
    @EnumSource
    void a_shoulder_that_is_not_the_bodys_is_told(EaseCategory category) {
        forEachBlock(category, block -> {
            double body =
                    block.wearer().measure(BodyMeasure.SHOULDER_LENGTH.asName()).mm();
            double beyond = block.finished(TopNames.SHOULDER_LENGTH).mm() - body;
            boolean told = block.history().get(0).notes().stream()
                    .anyMatch(note -> note.text().startsWith("the shoulder is drawn"));
            assertThat(told).isEqualTo(Math.abs(beyond) > 1);
            assertThat(beyond).isLessThan(90);
            assertThat(block.finished(TopNames.NECK_TO_WRIST).mm())
                    .isCloseTo(
                            body
                                    + block.wearer()
                                            .measure(BodyMeasure.ARM_LENGTH.asName())
                                            .mm(),
                            within(ROUNDING));
        });
    }

    private static void forEachBlock(EaseCategory category, Consumer<Garment> law) {
        for (BodyMeasurements body : ADULTS) {
            Garment block = LineTable.block(body, category);
            try {
                law.accept(block);
            } catch (AssertionError broken) {
                throw new AssertionError(body.name() + ", " + body.taken(), broken);
            }
        }
    }

    private static Fairness fairness(Garment block, Name piece, Name edge) {
        return Fairness.of(block.piece(piece), edge);
    }

    private static Path armhole(Garment block, Name piece) {
        return block.piece(piece).path(TopEdges.ARMHOLE);
    }

    private static Point pitch(Garment block, Name piece) {
        return ArmholeShape.pitch(armhole(block, piece));
    }
}

package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
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
import org.oaktag.garment.Change;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.garment.Watched;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/** What each adjustment keeps, and what it moves which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class AdjustmentProperties {

    private static final double ROUNDING = 1e-9;
    private static final List<Name> BODY = List.of(TopNames.FRONT, TopNames.BACK);

    @Property(tries = 200)
    void the_shoulder_loses_just_what_the_neckline_gains_along_it(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 40) double along) {
        Garment wide = block.adjust(widenNeckline(mm(along)));
        for (Name piece : BODY) {
            assertThat(length(wide, piece, TopEdges.SHOULDER))
                    .isCloseTo(length(block, piece, TopEdges.SHOULDER) - along, within(ROUNDING));
            assertThat(wide.piece(piece).cornerAngle(TopEdges.NECKLINE, End.END).degrees())
                    .as("neckline square to the shoulder")
                    .isCloseTo(90, within(1e-6));
        }
        assertThat(wide.finished(TopNames.NECKLINE_GIRTH).mm())
                .isGreaterThanOrEqualTo(block.finished(TopNames.NECKLINE_GIRTH).mm());
    }

    @Property(tries = 200)
    void lowering_leaves_the_armhole_above_the_pitch_point_as_it_was_to_the_last_bit(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.1, max = 40) double down) {
        Garment low = block.adjust(lowerArmhole(mm(down)));
        for (Name piece : BODY) {
            Path before = block.piece(piece).path(TopEdges.ARMHOLE);
            Path after = low.piece(piece).path(TopEdges.ARMHOLE);
            assertThat(after.curves().get(0)).isEqualTo(before.curves().get(0));
            assertThat(after.length()).as("a lower armhole is longer").isGreaterThan(before.length());
        }
        assertThat(low.finished(TopNames.CHEST_GIRTH).mm())
                .isCloseTo(block.finished(TopNames.CHEST_GIRTH).mm(), within(ROUNDING));
    }

    @Property(tries = 200)
    void lowering_twice_is_lowering_once_by_the_sum(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 20) double first,
            @ForAll @DoubleRange(min = 0, max = 20) double second) {
        Garment twice = block.adjust(lowerArmhole(mm(first))).adjust(lowerArmhole(mm(second)));
        Near.assertSame(twice, block.adjust(lowerArmhole(mm(first + second))), ROUNDING);
    }

    @Property(tries = 200)
    void a_dropped_shoulder_keeps_the_way_from_the_side_neck_to_the_wrist(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 30) double by) {
        Garment dropped = block.adjust(dropShoulder(mm(by)));
        assertThat(dropped.finished(TopNames.NECK_TO_WRIST).mm())
                .isCloseTo(block.finished(TopNames.NECK_TO_WRIST).mm(), within(ROUNDING));
        assertThat(dropped.finished(TopNames.SHOULDER_LENGTH).mm())
                .isCloseTo(block.finished(TopNames.SHOULDER_LENGTH).mm() + by, within(ROUNDING));
    }

    @Property(tries = 200)
    void straightening_twice_is_straightening_once(@ForAll Garment block) {
        Garment once = block.adjust(straightenSideSeams()).adjust(straightenSleeve());
        Garment twice = once.adjust(straightenSideSeams()).adjust(straightenSleeve());
        assertThat(twice.pieces()).isEqualTo(once.pieces());
    }

    @Property(tries = 200)
    void a_straight_side_seam_stays_square_to_armhole_and_hem(@ForAll Garment block) {
        Garment straight = block.adjust(straightenSideSeams());
        for (Name piece : BODY) {
            assertThat(straight.piece(piece)
                            .cornerAngle(EdgeNames.SIDE, End.START)
                            .degrees())
                    .isCloseTo(90, within(1e-6));
            assertThat(straight.piece(piece)
                            .cornerAngle(EdgeNames.SIDE, End.END)
                            .degrees())
                    .isCloseTo(90, within(1e-6));
            assertThat(straight.piece(piece).cornerAngle(EdgeNames.HEM, End.END).degrees())
                    .isCloseTo(90, within(1e-6));
        }
        assertThat(straight.piece(TopNames.BACK).path(EdgeNames.SIDE))
                .isEqualTo(straight.piece(TopNames.FRONT).path(EdgeNames.SIDE));
    }

    @Property(tries = 200)
    void each_half_of_a_fitted_cap_is_its_armhole_and_half_the_ease(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 25) double down,
            @ForAll @DoubleRange(min = 0, max = 20) double ease) {
        Garment fitted = block.adjust(lowerArmhole(mm(down))).adjust(fitCapToArmhole(mm(ease)));
        double front = length(fitted, TopNames.FRONT, TopEdges.ARMHOLE);
        double back = length(fitted, TopNames.BACK, TopEdges.ARMHOLE);
        assertThat(length(fitted, TopNames.SLEEVE, TopEdges.CAP_FRONT)).isCloseTo(front + ease / 2, within(1e-5));
        assertThat(length(fitted, TopNames.SLEEVE, TopEdges.CAP_BACK)).isCloseTo(back + ease / 2, within(1e-5));
        assertThat(fitted.walkSeams().untrue()).isEmpty();
        WalkedSeam seam = fitted.walkSeams().seam(TopNames.FRONT_ARMHOLE_SEAM);
        assertThat(seam.spans()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(seam.spans().get(seam.spans().size() - 1).difference().mm())
                .as("no ease under the arm")
                .isCloseTo(0, within(1e-6));
    }

    @Property(tries = 100)
    void fitting_a_cap_twice_is_fitting_it_once(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0, max = 20) double ease) {
        Garment once = block.adjust(fitCapToArmhole(mm(ease)));
        Near.assertSame(once.adjust(fitCapToArmhole(mm(ease))), once, 1e-6);
    }

    @Property(tries = 100)
    void a_lower_cap_on_the_same_armhole_is_wider(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.2, max = 0.8) double share) {
        CapFit fit = CapFit.of(
                block.piece(TopNames.FRONT).path(TopEdges.ARMHOLE),
                block.piece(TopNames.BACK).path(TopEdges.ARMHOLE),
                Length.ZERO);
        double span = fit.mostHeight() - fit.leastHeight();
        double low = fit.leastHeight() + 0.9 * share * span;
        assertThat(fit.atHeight(low).width())
                .isGreaterThan(fit.atHeight(low + 0.1 * span).width());
    }

    @Property(tries = 100)
    void a_fitted_cap_is_never_wider_than_the_triangle_of_its_lengths_and_height(@ForAll Garment block) {
        CapFit fit = CapFit.of(
                block.piece(TopNames.FRONT).path(TopEdges.ARMHOLE),
                block.piece(TopNames.BACK).path(TopEdges.ARMHOLE),
                Length.ZERO);
        double height = (fit.leastHeight() + fit.mostHeight()) / 2;
        double triangle = Math.sqrt(fit.frontLength() * fit.frontLength() - height * height)
                + Math.sqrt(fit.backLength() * fit.backLength() - height * height);
        double width = fit.atHeight(height).width();
        assertThat(width).as("a curve is longer than its chord").isLessThan(triangle);
        assertThat(width).as("but not by a quarter").isGreaterThan(0.75 * triangle);
    }

    @Property(tries = 100)
    void adjustments_of_different_edges_commute(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 30) double along,
            @ForAll @DoubleRange(min = 0, max = 30) double down,
            @ForAll @DoubleRange(min = 0, max = 200) double by) {
        Garment one = block.adjust(
                widenNeckline(mm(along)).then(lowerArmhole(mm(down))).then(lengthenBody(mm(by))));
        Garment other =
                block.adjust(lengthenBody(mm(by)).then(lowerArmhole(mm(down))).then(widenNeckline(mm(along))));
        Near.assertSame(one, other, ROUNDING);
    }

    @Property(tries = 100)
    void splitting_a_sleeve_parts_its_lengths_and_loses_nothing(
            @ForAll Garment block, @ForAll @DoubleRange(min = 60, max = 180) double above) {
        Cloth contrast = TopArbitraries.CLOTH.as(Cloth.CONTRAST);
        Garment split = block.adjust(splitSleeve(mm(above), contrast));
        assertThat(length(split, TopNames.SLEEVE, TopEdges.UNDERARM_FRONT)
                        + length(split, TopNames.SLEEVE_LOWER, TopEdges.UNDERARM_FRONT))
                .isCloseTo(length(block, TopNames.SLEEVE, TopEdges.UNDERARM_FRONT), within(1e-6));
        assertThat(split.piece(TopNames.SLEEVE).outline().area()
                        + split.piece(TopNames.SLEEVE_LOWER).outline().area())
                .isCloseTo(block.piece(TopNames.SLEEVE).outline().area(), within(1e-3));
        assertThat(split.finished(TopNames.SLEEVE_LENGTH).mm())
                .isCloseTo(block.finished(TopNames.SLEEVE_LENGTH).mm(), within(1e-6));
        assertThat(split.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 100)
    void the_history_says_of_every_edge_what_measuring_it_shows(
            @ForAll Garment block, @ForAll @DoubleRange(min = 1, max = 25) double by) {
        Garment after = block.adjust(dropShoulder(mm(by)));
        Change change = after.history().get(after.history().size() - 1);
        for (Name piece : List.of(TopNames.FRONT, TopNames.BACK, TopNames.SLEEVE)) {
            after.piece(piece).edges().forEach(edge -> {
                double moved = edge.path().length(1e-9)
                        - block.piece(piece).path(edge.name()).length(1e-9);
                double said = change.moved().stream()
                        .filter(each -> each.watched().equals(Watched.edge(EdgeRef.of(piece, edge.name()))))
                        .mapToDouble(each -> each.by().orElseThrow().mm())
                        .sum();
                assertThat(said).as("%s.%s", piece, edge.name()).isCloseTo(moved, within(3e-6));
            });
        }
    }

    private static double length(Garment garment, Name piece, Name edge) {
        return garment.piece(piece).path(edge).length();
    }
}

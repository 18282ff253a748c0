package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Armholes.scoopFrontArmhole;
import static org.oaktag.adjustments.Armholes.widenArmhole;
import static org.oaktag.adjustments.Bodies.curveHem;
import static org.oaktag.adjustments.Bodies.flareSideSeams;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Necklines.lowerBackNeckline;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Shoulders.extendShoulder;
import static org.oaktag.adjustments.Shoulders.moveShoulderForward;
import static org.oaktag.adjustments.Shoulders.shortenShoulder;
import static org.oaktag.adjustments.Shoulders.slopeShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.lengthenSleeve;
import static org.oaktag.adjustments.Sleeves.taperSleeve;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Pieces;
import org.oaktag.adjust.Step;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Adjustment;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Transform;

/** Laws of a whole top: its scale, steps in either order, and what grows when an amount does. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class WholeTopProperties {

    private static final double ROUNDING = 1e-6;

    /** Steps by a factor: their amounts are lengths, and no rule of theirs has a length of its own. */
    private static final List<Function<Double, Step>> LINEAR = List.of(
            k -> widenNeckline(mm(9 * k)),
            k -> lowerFrontNeckline(mm(21 * k)),
            k -> lowerBackNeckline(mm(8 * k)),
            k -> extendShoulder(mm(24 * k)),
            k -> shortenShoulder(mm(7 * k)),
            k -> dropShoulder(mm(14 * k)),
            k -> slopeShoulder(mm(6 * k)),
            k -> moveShoulderForward(mm(11 * k)),
            k -> lowerArmhole(mm(13 * k)),
            k -> widenArmhole(mm(9 * k)),
            k -> fitCapToArmhole(mm(6 * k)).atHeight(mm(112 * k)),
            k -> straightenSideSeams(),
            k -> curveHem(mm(31 * k)),
            k -> scoopFrontArmhole(mm(4 * k)),
            k -> lengthenBody(mm(37 * k)),
            k -> lengthenSleeve(mm(25 * k)),
            k -> flareSideSeams(mm(18 * k)));

    private static final Map<String, List<Step>> INDEPENDENT = Map.of(
            "neck", List.of(widenNeckline(mm(9)), lowerFrontNeckline(mm(21)), lowerBackNeckline(mm(8))),
            "hem of the body", List.of(lengthenBody(mm(37))),
            "underarm", List.of(lowerArmhole(mm(13))),
            "hem of the sleeve", List.of(lengthenSleeve(mm(25)), taperSleeve(mm(240))));

    /** The block itself is not linear in the body, as its ease and its margins are lengths; so the block is scaled. */
    @Property(tries = 40)
    void a_scaled_top_adjusted_by_scaled_amounts_is_the_scaled_adjusted_top(
            @ForAll Garment block, @ForAll @DoubleRange(min = 0.9, max = 1.2) double factor) {
        for (Function<Double, Step> step : LINEAR) {
            Near.assertSame(
                    scaled(block, factor).adjust(step.apply(factor)),
                    scaled(block.adjust(step.apply(1.0)), factor),
                    ROUNDING);
        }
    }

    /** The steps of the trade refuse a piece that lies turned over; those that work on any piece do not mind. */
    @Property(tries = 40)
    void turning_a_top_over_adjusting_it_and_turning_it_back_is_adjusting_it(
            @ForAll Garment block, @ForAll @DoubleRange(min = 5, max = 40) double by) {
        Near.assertSame(turned(turned(block)), block, ROUNDING);
        Adjustment general = Pieces.extendEdge(EdgeRef.of(TopNames.SLEEVE, EdgeNames.HEM), mm(by))
                .then(Pieces.extendEdge(EdgeRef.of(TopNames.BACK, EdgeNames.HEM), mm(by)));
        Near.assertSame(turned(turned(block).adjust(general)), block.adjust(general), ROUNDING);
        assertThatThrownBy(() -> turned(block).adjust(lowerArmhole(mm(by))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("take this step before 'mirror the");
    }

    private static Garment turned(Garment garment) {
        Garment turned = garment;
        for (Piece piece : garment.pieces()) {
            turned = turned.adjust(Pieces.mirrorPiece(piece.name()));
        }
        return turned;
    }

    @Property(tries = 40)
    void steps_at_different_places_commute(@ForAll Garment block) {
        NavigableMap<String, List<Step>> places = new TreeMap<>(INDEPENDENT);
        places.forEach((place, firsts) -> places.tailMap(place, false).forEach((other, seconds) -> {
            for (Step first : firsts) {
                for (Step second : seconds) {
                    Near.assertSame(
                            block.adjust(first).adjust(second),
                            block.adjust(second).adjust(first),
                            ROUNDING);
                }
            }
        }));
    }

    @Property(tries = 40)
    void more_of_a_step_gives_more_of_what_it_is_for(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 12) double some,
            @ForAll @DoubleRange(min = 1, max = 12) double more) {
        assertGrows(block, by -> lowerArmhole(mm(by)), some, more, girth(TopNames.ARMHOLE_GIRTH));
        assertGrows(block, by -> widenNeckline(mm(by)), some, more, girth(TopNames.NECKLINE_GIRTH));
        assertGrows(block, by -> lowerFrontNeckline(mm(by)), some, more, girth(TopNames.NECKLINE_GIRTH));
        assertGrows(block, by -> dropShoulder(mm(by)), some, more, girth(TopNames.SHOULDER_LENGTH));
        assertGrows(
                block,
                by -> dropShoulder(mm(by)),
                some,
                more,
                top -> -top.finished(TopNames.SLEEVE_LENGTH).mm());
        assertGrows(
                block,
                by -> flareSideSeams(mm(by)),
                some,
                more,
                top -> top.piece(TopNames.FRONT).path(EdgeNames.HEM).length());
    }

    private static void assertGrows(
            Garment block, Function<Double, Step> step, double some, double more, ToDoubleFunction<Garment> measure) {
        Step less = step.apply(some);
        assertThat(measure.applyAsDouble(block.adjust(step.apply(some + more))))
                .as("more of '%s'", less.name())
                .isGreaterThan(measure.applyAsDouble(block.adjust(less)));
    }

    private static ToDoubleFunction<Garment> girth(Name measure) {
        return top -> top.finished(measure).mm();
    }

    private static Garment scaled(Garment garment, double factor) {
        List<Piece> pieces = garment.pieces().stream()
                .map(piece -> piece.transformed(Transform.scale(factor)))
                .toList();
        return garment.withPieces(pieces);
    }
}

package org.oaktag.laws.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Necklines.boatNeckline;
import static org.oaktag.adjustments.Necklines.growStand;
import static org.oaktag.adjustments.Necklines.insetNecklineForBand;
import static org.oaktag.adjustments.Necklines.lowerBackNeckline;
import static org.oaktag.adjustments.Necklines.lowerFrontNeckline;
import static org.oaktag.adjustments.Necklines.raiseBackNeckline;
import static org.oaktag.adjustments.Necklines.raiseFrontNeckline;
import static org.oaktag.adjustments.Necklines.reshapeBackNeckline;
import static org.oaktag.adjustments.Necklines.reshapeNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.adjustments.Shoulders.moveShoulderForward;
import static org.oaktag.adjustments.Shoulders.slopeShoulder;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.adjust.Step;
import org.oaktag.adjustments.Necklines;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.NeckStyle;
import org.oaktag.blocks.TopBody;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;

/** What the steps of the neckline keep, and what they move which way. */
@Domain(TopArbitraries.class)
@Domain(DomainContext.Global.class)
class NecklineProperties {

    private static final double ROUNDING = 1e-9;

    @Property(tries = 60)
    void lowering_then_raising_by_the_same_amount_restores_either_neckline(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 120) double front,
            @ForAll @DoubleRange(min = 0, max = 60) double back) {
        Garment low = block.adjust(lowerFrontNeckline(mm(front))).adjust(lowerBackNeckline(mm(back)));
        Sound.assertSound(low);
        Sound.assertBodySewsTrue(low);
        Near.assertSame(low.adjust(raiseBackNeckline(mm(back))).adjust(raiseFrontNeckline(mm(front))), block, ROUNDING);
    }

    @Property(tries = 60)
    void a_deeper_neckline_is_longer(
            @ForAll Garment block,
            @ForAll NeckStyle style,
            @ForAll @DoubleRange(min = 0, max = 100) double by,
            @ForAll @DoubleRange(min = 1, max = 40) double more) {
        Garment shaped = block.adjust(reshapeNeckline(style)).adjust(lowerFrontNeckline(mm(by)));
        assertThat(neckline(shaped.adjust(lowerFrontNeckline(mm(more))))).isGreaterThan(neckline(shaped));
    }

    @Property(tries = 60)
    void widening_and_lowering_commute_in_every_style(
            @ForAll Garment block,
            @ForAll NeckStyle style,
            @ForAll @DoubleRange(min = 0, max = 30) double along,
            @ForAll @DoubleRange(min = 0, max = 100) double down) {
        Garment shaped = block.adjust(reshapeNeckline(style));
        Garment one = shaped.adjust(widenNeckline(mm(along)).then(lowerFrontNeckline(mm(down))));
        Garment other = shaped.adjust(lowerFrontNeckline(mm(down)).then(widenNeckline(mm(along))));
        Near.assertSame(one, other, ROUNDING);
    }

    @Property(tries = 60)
    void a_style_drawn_twice_is_drawn_once_and_round_comes_back(@ForAll Garment block, @ForAll NeckStyle style) {
        Garment once = block.adjust(reshapeNeckline(style)).adjust(reshapeBackNeckline(style));
        Garment twice = once.adjust(reshapeNeckline(style)).adjust(reshapeBackNeckline(style));
        Near.assertSame(twice, once, ROUNDING);
        Garment round = once.adjust(reshapeNeckline(NeckStyle.ROUND)).adjust(reshapeBackNeckline(NeckStyle.ROUND));
        Near.assertSame(round, block, ROUNDING);
    }

    @Property(tries = 60)
    void every_style_runs_on_smoothly_across_the_shoulder(
            @ForAll Garment block,
            @ForAll NeckStyle style,
            @ForAll @DoubleRange(min = 0, max = 150) double down,
            @ForAll @DoubleRange(min = 0, max = 25) double along) {
        Garment shaped = block.adjust(
                reshapeNeckline(style).then(lowerFrontNeckline(mm(down))).then(widenNeckline(mm(along))));
        Sound.assertBodySewsTrue(shaped);
        Sound.assertSound(shaped);
    }

    @Property(tries = 100)
    void whatever_moves_a_round_neckline_it_leaves_the_centre_square_and_the_back_has_no_hook(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -10, max = 20) double forward,
            @ForAll @DoubleRange(min = 1, max = 20) double inset,
            @ForAll @DoubleRange(min = -10, max = 40) double along,
            @ForAll @DoubleRange(min = 0, max = 60) double down,
            @ForAll @DoubleRange(min = -8, max = 8) double slope) {
        List<Step> steps = List.of(
                moveShoulderForward(mm(forward)),
                insetNecklineForBand(mm(inset)),
                lowerFrontNeckline(mm(down)),
                slopeShoulder(mm(slope)),
                Necklines.widenNeckline(mm(along)),
                lowerBackNeckline(mm(down / 2)));
        Garment garment = block;
        for (Step step : steps) {
            try {
                garment = garment.adjust(step);
            } catch (PatternException tooShallowToBeWidened) {
                continue;
            }
            for (Name piece : TopBody.HALVES) {
                assertThat(garment.piece(piece)
                                .cornerAngle(TopEdges.NECKLINE, End.START)
                                .degrees())
                        .as("%s at the centre after %s", piece, step.name())
                        .isCloseTo(90, within(1e-6));
            }
            assertBendsOneWay(garment.piece(TopNames.BACK).path(TopEdges.NECKLINE), step.name());
        }
        Sound.assertSound(garment);
    }

    /**
     * A neckline drawn from the centre to the right and up turns against the clock all the way, by steps and joints.
     */
    private static void assertBendsOneWay(Path neckline, String after) {
        Vector before = neckline.startDirection();
        for (Curve curve : neckline.curves()) {
            for (int i = 0; i <= 64; i++) {
                Vector direction = curve.directionAt(i / 64.0);
                assertThat(before.cross(direction))
                        .as("turn at %s of %s after %s", i / 64.0, curve, after)
                        .isLessThan(1e-6);
                before = direction;
            }
        }
    }

    @Property(tries = 60)
    void a_neckline_moved_in_for_a_band_lies_the_width_of_the_band_from_where_it_was(
            @ForAll Garment block, @ForAll NeckStyle style, @ForAll @DoubleRange(min = 5, max = 75) double width) {
        Garment shaped = block.adjust(reshapeNeckline(style));
        Garment inset = shaped.adjust(insetNecklineForBand(mm(width)));
        Sound.assertSound(inset);
        Sound.assertBodySewsTrue(inset);
        for (Name piece : TopBody.HALVES) {
            Path was = shaped.piece(piece).path(TopEdges.NECKLINE);
            Path now = inset.piece(piece).path(TopEdges.NECKLINE);
            for (double share : new double[] {0.3, 0.6, 0.8, 1}) {
                double distance = now.nearest(was.pointAt(share * was.length())).distance();
                // At the corner of a square neckline the nearest point of the seam line lies aside of the mitre.
                assertThat(distance)
                        .as("%s at %s of its neckline", piece, share)
                        .isCloseTo(width, within(0.02));
            }
            assertThat(was.length() - now.length()).isNegative();
            assertThat(shaped.piece(piece).path(TopEdges.SHOULDER).length()
                            - inset.piece(piece).path(TopEdges.SHOULDER).length())
                    .as("what the shoulder of the %s loses", piece)
                    .isCloseTo(width, within(0.01));
        }
    }

    @Property(tries = 60)
    void a_round_neckline_moved_in_grows_by_the_width_times_what_it_turns(
            @ForAll Garment block, @ForAll @DoubleRange(min = 5, max = 75) double width) {
        Garment inset = block.adjust(insetNecklineForBand(mm(width)));
        for (Name piece : TopBody.HALVES) {
            Path was = block.piece(piece).path(TopEdges.NECKLINE);
            assertThat(inset.piece(piece).path(TopEdges.NECKLINE).length())
                    .isCloseTo(was.length() + width * Math.abs(was.turning()), within(0.02));
        }
    }

    /** Sewn together, front and back have the same neckline wherever the seam between them lies. */
    @Property(tries = 60)
    void a_neckline_moved_in_keeps_a_moved_shoulder_seam_true_and_is_as_long_as_where_the_seam_was_not_moved(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = -15, max = 25) double forward,
            @ForAll @DoubleRange(min = 5, max = 45) double width) {
        Garment inset = block.adjust(moveShoulderForward(mm(forward))).adjust(insetNecklineForBand(mm(width)));
        Sound.assertSound(inset);
        assertThat(inset.walkSeams().untrue()).isEmpty();
        WalkedSeam shoulder = inset.walkSeams().seam(TopNames.SHOULDER_SEAM);
        assertThat(shoulder.error().mm()).isCloseTo(0, within(1e-6));
        // Each half is parallel within 0.01 mm by itself.
        assertThat(shoulder.angleAt(End.START).degrees()).isCloseTo(180, within(0.1));
        double girth = block.adjust(insetNecklineForBand(mm(width)))
                .finished(TopNames.NECKLINE_GIRTH)
                .mm();
        assertThat(inset.finished(TopNames.NECKLINE_GIRTH).mm()).isCloseTo(girth, within(0.1));
    }

    @Property(tries = 60)
    void a_boat_neckline_leaves_the_shoulder_asked_for_and_drawn_twice_is_drawn_once(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0.4, max = 0.9) double share,
            @ForAll @DoubleRange(min = 32, max = 45) double depth) {
        double left = share * block.finished(TopNames.SHOULDER_LENGTH).mm();
        Garment boat = block.adjust(boatNeckline(mm(left), mm(depth)));
        Sound.assertSound(boat);
        Sound.assertBodySewsTrue(boat);
        assertThat(boat.finished(TopNames.SHOULDER_LENGTH).mm()).isCloseTo(left, within(1e-6));
        Near.assertSame(boat.adjust(boatNeckline(mm(left), mm(depth))), boat, 1e-6);
    }

    @Property(tries = 60)
    void the_seam_edges_of_a_stand_are_equal_on_front_and_back_and_grow_with_it(
            @ForAll Garment block,
            @ForAll @DoubleRange(min = 0, max = 30) double along,
            @ForAll @DoubleRange(min = 25, max = 120) double height) {
        Garment wide = block.adjust(widenNeckline(mm(along)));
        Garment funnel = wide.adjust(growStand(mm(height)));
        Sound.assertSound(funnel);
        Sound.assertBodySewsTrue(funnel);
        assertThat(stand(funnel, TopNames.BACK)).isCloseTo(stand(funnel, TopNames.FRONT), within(ROUNDING));
        assertThat(stand(wide.adjust(growStand(mm(height + 5))), TopNames.FRONT))
                .isGreaterThan(stand(funnel, TopNames.FRONT));
        assertThat(funnel.walkSeams()
                        .seam(TopNames.SHOULDER_SEAM)
                        .angleAt(End.START)
                        .degrees())
                .isCloseTo(180, within(1e-6));
        assertThatThrownBy(() -> funnel.adjust(widenNeckline(mm(5))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("'stand'")
                .hasMessageContaining("before");
    }

    @Property(tries = 20)
    void a_hood_is_reported_until_it_is_fitted_again(
            @ForAll Garment block, @ForAll @DoubleRange(min = 3, max = 30) double down) {
        Garment hooded = block.adjust(hood(HoodShape.threePanel()));
        Garment lower = hooded.adjust(lowerFrontNeckline(mm(down)));
        assertThat(lower.walkSeams().seam(HoodNames.NECK_SEAM).isTrue()).isFalse();
        assertThat(lower.history().get(lower.history().size() - 1).untrue())
                .anyMatch(text -> text.contains("fit the hood again"));
        assertThat(lower.adjust(hood(HoodShape.threePanel())).walkSeams().untrue())
                .isEmpty();
    }

    private static double neckline(Garment garment) {
        return garment.finished(TopNames.NECKLINE_GIRTH).mm();
    }

    private static double stand(Garment garment, Name piece) {
        return garment.piece(piece).path(TopEdges.STAND).length();
    }
}

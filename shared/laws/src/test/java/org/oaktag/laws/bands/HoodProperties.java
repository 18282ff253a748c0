package org.oaktag.laws.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Necklines.narrowNeckline;
import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.laws.bands.Tops.EXACT;
import static org.oaktag.laws.bands.Tops.HOOD;
import static org.oaktag.laws.bands.Tops.JERSEY;
import static org.oaktag.laws.bands.Tops.block;
import static org.oaktag.laws.bands.Tops.half;
import static org.oaktag.laws.bands.Tops.length;
import static org.oaktag.measure.Length.mm;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.adjustments.Hoods;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.testkit.bodies.Adults;

@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class HoodProperties {

    /** Tighter than the circle of this radius, in millimetres, no hood is bent. */
    private static final double TIGHTEST = 90;

    @Property
    void the_neck_edge_less_half_the_lap_equals_half_the_neckline(
            @ForAll BodyMeasurements body,
            @ForAll @DoubleRange(min = 0, max = 100) double lap,
            @ForAll @DoubleRange(min = 50, max = 120) double strip,
            @ForAll @DoubleRange(min = 0, max = 35) double rise) {
        HoodShape shape = HoodShape.threePanel().withStripWidth(mm(strip)).withRise(mm(rise));
        Garment top = block(body).adjust(hood(shape).lapped(mm(lap)));
        double neckEdge =
                length(top, TopNames.HOOD_SIDE, HoodNames.NECK) + length(top, TopNames.HOOD_CENTRE, HoodNames.NECK);
        assertThat(neckEdge - lap / 2).isCloseTo(half(top, TopEdges.NECKLINE), within(EXACT));
        assertThat(length(top, TopNames.HOOD_CENTRE, HoodNames.NECK)).isCloseTo(strip / 2, within(EXACT));
    }

    @Property(tries = 200)
    void the_long_edge_of_the_strip_equals_the_crown_of_the_side_panel(@ForAll BodyMeasurements body) {
        Garment top = block(body).adjust(HOOD);
        assertThat(length(top, TopNames.HOOD_CENTRE, HoodNames.CROWN))
                .isCloseTo(length(top, TopNames.HOOD_SIDE, HoodNames.CROWN), within(EXACT));
    }

    @Property
    void every_seam_of_a_hooded_top_is_true(@ForAll BodyMeasurements body) {
        assertThat(block(body).adjust(HOOD).walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 200)
    void every_corner_of_the_side_panel_is_square(@ForAll BodyMeasurements body) {
        Piece side = block(body).adjust(HOOD).piece(TopNames.HOOD_SIDE);
        side.edges()
                .forEach(edge -> assertThat(
                                side.cornerAngle(edge.name(), End.START).degrees())
                        .isCloseTo(90, within(1e-6)));
    }

    @Property(tries = 200)
    void the_crown_runs_over_the_head_and_down_without_a_bulge_and_turns_in_once_at_the_most(
            @ForAll BodyMeasurements body) {
        Path crown = block(body).adjust(HOOD).piece(TopNames.HOOD_SIDE).path(HoodNames.CROWN);
        double widest = crown.curves().get(0).end().x();
        int inflections = 0;
        double before = crown.curvatureAt(0);
        for (double at = 1; at < crown.length(); at++) {
            assertThat(crown.directionAt(at).y()).as("fall at %s", at).isNotNegative();
            assertThat(crown.pointAt(at).x()).as("reach at %s", at).isBetween(0.0, widest + EXACT);
            double curvature = crown.curvatureAt(at);
            assertThat(Math.abs(curvature)).as("curvature at %s", at).isLessThan(1 / TIGHTEST);
            inflections += before * curvature < 0 ? 1 : 0;
            before = curvature;
        }
        assertThat(inflections).isLessThanOrEqualTo(1);
    }

    /**
     * Common practice: a hood is as high as half the tape from side neck point over the crown to the other and 1 to 10
     * cm. The tape is 1.15 of the head girth here, also common practice.
     */
    @Property(tries = 200)
    void a_tape_from_the_shoulder_over_the_middle_of_the_crown_has_1_to_10_cm_of_ease(@ForAll BodyMeasurements body) {
        Garment top = block(body).adjust(HOOD);
        Piece side = top.piece(TopNames.HOOD_SIDE);
        Point shoulder =
                side.pointOf(side.notch(HoodNames.NECK, TopNames.SHOULDER_NOTCH).orElseThrow());
        Path crown = side.path(HoodNames.CROWN);
        Point middle = crown.curves().get(0).pointAt(0.4);
        double tape = shoulder.distanceTo(middle) + length(top, TopNames.HOOD_CENTRE, HoodNames.NECK);
        assertThat(tape - 1.15 * body.headGirth().mm() / 2).isBetween(10.0, 100.0);
    }

    @Property(tries = 200)
    void the_neck_edge_falls_gently_to_the_front(@ForAll BodyMeasurements body) {
        Path neck = block(body).adjust(HOOD).piece(TopNames.HOOD_SIDE).path(HoodNames.NECK);
        Vector forwards = Vector.of(-1, 0);
        for (double at = 1; at < neck.length(); at++) {
            double fall = Math.toDegrees(neck.directionAt(at).angleTo(forwards));
            assertThat(fall).as("fall at %s", at).isBetween(-1e-9, 30.0);
        }
    }

    @Property(tries = 200)
    void the_shoulder_notch_lies_on_the_shoulder_seam(@ForAll BodyMeasurements body) {
        Garment top = block(body).adjust(HOOD);
        Piece side = top.piece(TopNames.HOOD_SIDE);
        double fromNape = side.notch(HoodNames.NECK, TopNames.SHOULDER_NOTCH)
                .orElseThrow()
                .fromStart(length(top, TopNames.HOOD_SIDE, HoodNames.NECK));
        assertThat(length(top, TopNames.HOOD_CENTRE, HoodNames.NECK) + fromNape)
                .isCloseTo(length(top, TopNames.BACK, TopEdges.NECKLINE), within(EXACT));
    }

    @Property(tries = 200)
    void a_wider_neckline_leaves_the_hood_behind_until_it_is_fitted_again(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 1, max = 20) double wider) {
        Garment left = block(body).adjust(HOOD).adjust(widenNeckline(mm(wider)));
        WalkedSeam stale = left.walkSeams().seam(HoodNames.NECK_SEAM);
        assertThat(stale.isTrue()).isFalse();
        assertThat(stale.mend()).get().asString().contains("too short", "fit the hood again");
        assertThat(left.adjust(HOOD).walkSeams().isTrue()).isTrue();
    }

    @Property(tries = 200)
    void a_neckline_narrowed_back_fits_the_hood_that_was_left_on_it(@ForAll BodyMeasurements body) {
        Garment hooded = block(body).adjust(HOOD);
        Garment back = hooded.adjust(widenNeckline(mm(10)).then(narrowNeckline(mm(10))));
        assertThat(back.walkSeams().isTrue()).isTrue();
    }

    @Property(tries = 200)
    void a_hood_fitted_again_replaces_the_first_and_its_lining(@ForAll BodyMeasurements body) {
        Garment once = block(body).adjust(HOOD);
        Garment again = once.adjust(Hoods.lineHood(mm(40), JERSEY)).adjust(HOOD);
        assertThat(again.pieces()).isEqualTo(once.pieces());
        assertThat(again.seams()).isEqualTo(once.seams());
        assertThat(again.measures()).isEqualTo(once.measures());
    }
}

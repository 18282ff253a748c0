package org.oaktag.laws.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Hoods.hood;
import static org.oaktag.adjustments.Hoods.lineHood;
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
import org.oaktag.adjustments.FitHood;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;
import org.oaktag.testkit.bodies.Adults;

@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class TwoPieceHoodProperties {

    private static final FitHood TWO = hood(HoodShape.twoPiece());

    @Property
    void the_neck_edge_of_one_panel_less_half_the_lap_equals_half_the_neckline(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 0, max = 90) double lap) {
        Garment top = block(body).adjust(TWO.lapped(mm(lap)));
        assertThat(length(top, TopNames.HOOD_SIDE, HoodNames.NECK) - lap / 2)
                .isCloseTo(half(top, TopEdges.NECKLINE), within(EXACT));
    }

    @Property
    void every_seam_is_true_lined_and_unlined(@ForAll BodyMeasurements body) {
        Garment top = block(body).adjust(TWO);
        assertThat(top.walkSeams().untrue()).isEmpty();
        assertThat(top.adjust(lineHood(mm(40), JERSEY)).walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 200)
    void every_corner_is_square_so_that_face_and_nape_run_on_smoothly_over_the_middle(@ForAll BodyMeasurements body) {
        Piece side = block(body).adjust(TWO).piece(TopNames.HOOD_SIDE);
        side.edges()
                .forEach(edge -> assertThat(
                                side.cornerAngle(edge.name(), End.START).degrees())
                        .isCloseTo(90, within(1e-6)));
    }

    /**
     * Common practice: a hood is as high as half the tape from side neck point over the crown to the other and 1 to 10
     * cm. The tape is 1.15 of the head girth here, also common practice.
     */
    @Property(tries = 200)
    void a_tape_from_the_shoulder_to_the_seam_over_the_crown_has_1_to_10_cm_of_ease(@ForAll BodyMeasurements body) {
        Piece side = block(body).adjust(TWO).piece(TopNames.HOOD_SIDE);
        Point shoulder =
                side.pointOf(side.notch(HoodNames.NECK, TopNames.SHOULDER_NOTCH).orElseThrow());
        Point middle = side.path(HoodNames.CROWN).curves().get(0).pointAt(0.4);
        assertThat(shoulder.distanceTo(middle) - 1.15 * body.headGirth().mm() / 2)
                .isBetween(10.0, 100.0);
    }

    @Property(tries = 100)
    void the_lining_and_the_facing_are_the_shell_again(@ForAll BodyMeasurements body) {
        Garment hooded = block(body).adjust(TWO);
        Garment lined = hooded.adjust(lineHood(mm(40), JERSEY));
        double shell = hooded.piece(TopNames.HOOD_SIDE).outline().area();
        double lining = lined.piece(TopNames.HOOD_SIDE_LINING).outline().area();
        double faced = lined.piece(TopNames.HOOD_SIDE).outline().area();
        assertThat(lining + (faced - shell)).isCloseTo(shell, within(1e-6 * shell));
    }

    @Property(tries = 100)
    void it_takes_the_place_of_a_three_panel_hood_and_gives_way_to_one(@ForAll BodyMeasurements body) {
        Garment three = block(body).adjust(HOOD).adjust(lineHood(mm(40), JERSEY));
        Garment two = three.adjust(TWO);
        assertThat(two.pieces()).isEqualTo(block(body).adjust(TWO).pieces());
        assertThat(two.seams()).isEqualTo(block(body).adjust(TWO).seams());
        assertThat(two.adjust(HOOD).pieces()).isEqualTo(block(body).adjust(HOOD).pieces());
        assertThat(two.adjust(HOOD).measures())
                .containsExactlyInAnyOrderElementsOf(block(body).adjust(HOOD).measures());
    }
}

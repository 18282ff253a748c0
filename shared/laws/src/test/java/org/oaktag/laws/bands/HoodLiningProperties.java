package org.oaktag.laws.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Hoods.lineHood;
import static org.oaktag.laws.bands.Tops.EXACT;
import static org.oaktag.laws.bands.Tops.HOOD;
import static org.oaktag.laws.bands.Tops.JERSEY;
import static org.oaktag.laws.bands.Tops.block;
import static org.oaktag.laws.bands.Tops.length;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.blocks.HoodNames;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.testkit.bodies.Adults;

@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class HoodLiningProperties {

    @Property
    void every_seam_of_a_lined_hood_is_true(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 15, max = 50) double facing) {
        Garment lined = block(body).adjust(HOOD).adjust(lineHood(mm(facing), JERSEY));
        assertThat(lined.walkSeams().untrue()).isEmpty();
    }

    /** What the shell gained is the facing; with the lining it covers the inside of the shell once. */
    @Property(tries = 200)
    void facing_and_lining_together_are_the_shell(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 15, max = 50) double facing) {
        Garment hooded = block(body).adjust(HOOD);
        Garment lined = hooded.adjust(lineHood(mm(facing), JERSEY));
        assertCovered(hooded, lined, TopNames.HOOD_SIDE, TopNames.HOOD_SIDE_LINING);
        assertCovered(hooded, lined, TopNames.HOOD_CENTRE, TopNames.HOOD_CENTRE_LINING);
    }

    private static void assertCovered(Garment hooded, Garment lined, Name shell, Name lining) {
        double unlined = area(hooded, shell);
        assertThat(area(lined, shell) - unlined + area(lined, lining)).isCloseTo(unlined, within(1e-4));
    }

    @Property(tries = 200)
    void the_facing_moves_the_edge_of_the_shell_and_the_crown_and_neck_of_the_shell_stay(
            @ForAll BodyMeasurements body) {
        Garment hooded = block(body).adjust(HOOD);
        Garment lined = hooded.adjust(lineHood(mm(40), JERSEY));
        for (Name edge : List.of(HoodNames.CROWN, HoodNames.NECK)) {
            assertThat(lined.piece(TopNames.HOOD_SIDE).path(edge))
                    .isEqualTo(hooded.piece(TopNames.HOOD_SIDE).path(edge));
        }
        assertThat(length(lined, TopNames.HOOD_SIDE, HoodNames.FACING_EDGE))
                .isCloseTo(length(lined, TopNames.HOOD_SIDE_LINING, HoodNames.FACE), within(EXACT));
        assertThat(lined.finished(HoodNames.FACE_OPENING).mm())
                .isCloseTo(hooded.finished(HoodNames.FACE_OPENING).mm(), within(EXACT));
    }

    /** The face of the shell is upright; so is the edge of the facing, and the lining begins as far behind the face. */
    @Property(tries = 100)
    void the_facing_is_as_wide_as_asked_all_along(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 15, max = 50) double facing) {
        Garment lined = block(body).adjust(HOOD).adjust(lineHood(mm(facing), JERSEY));
        Piece shell = lined.piece(TopNames.HOOD_SIDE);
        Path fold = shell.lines().stream()
                .filter(line -> line.name().equals(HoodNames.FOLD))
                .findFirst()
                .orElseThrow()
                .path();
        double face = fold.start().x();
        assertThat(fold.end().x()).isCloseTo(face, within(EXACT));
        for (Path edge : List.of(
                shell.path(HoodNames.FACING_EDGE),
                lined.piece(TopNames.HOOD_SIDE_LINING).path(HoodNames.FACE))) {
            for (int i = 0; i <= 20; i++) {
                double x = edge.pointAt(edge.length() * i / 20).x();
                assertThat(Math.abs(x - face)).isCloseTo(facing, within(EXACT));
            }
        }
    }

    @Property(tries = 200)
    void lining_twice_is_lining_once(@ForAll BodyMeasurements body) {
        Garment once = block(body).adjust(HOOD).adjust(lineHood(mm(25), JERSEY));
        Garment other = block(body).adjust(HOOD).adjust(lineHood(mm(45), JERSEY));
        assertThat(other.adjust(lineHood(mm(25), JERSEY)).pieces()).isEqualTo(once.pieces());
    }

    @Property(tries = 200)
    void only_the_lining_is_cut_from_the_lining_cloth(@ForAll BodyMeasurements body) {
        Garment lined = block(body).adjust(HOOD).adjust(lineHood(mm(40), JERSEY));
        assertThat(lined.pieces())
                .filteredOn(piece -> piece.cloth().use().equals(Cloth.LINING))
                .extracting(piece -> piece.name())
                .containsExactly(TopNames.HOOD_SIDE_LINING, TopNames.HOOD_CENTRE_LINING);
    }

    private static double area(Garment garment, Name piece) {
        return garment.piece(piece).outline().signedArea();
    }
}

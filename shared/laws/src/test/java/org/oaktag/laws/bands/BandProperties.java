package org.oaktag.laws.bands;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bands.armholeBand;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Bodies.lengthenBody;
import static org.oaktag.adjustments.Sleeves.sleeveless;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.laws.bands.Tops.CUFF;
import static org.oaktag.laws.bands.Tops.EXACT;
import static org.oaktag.laws.bands.Tops.HEM_BAND;
import static org.oaktag.laws.bands.Tops.RIB;
import static org.oaktag.laws.bands.Tops.SHELL;
import static org.oaktag.laws.bands.Tops.block;
import static org.oaktag.laws.bands.Tops.half;
import static org.oaktag.laws.bands.Tops.length;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.oaktag.PatternException;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.WalkedSeam;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;
import org.oaktag.testkit.bodies.Adults;

@Domain(Adults.class)
@Domain(DomainContext.Global.class)
class BandProperties {

    private static final List<Name> HEM_SEAMS = List.of(BandNames.FRONT_HEM_SEAM, BandNames.BACK_HEM_SEAM);

    @Property(tries = 200)
    void a_band_that_laps_at_the_side_seams_is_longer_than_its_hem_by_the_lap(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 0, max = 120) double lap) {
        Garment top = block(body).adjust(hemBand(mm(60), mm(lap)));
        double bands = length(top, TopNames.HEM_BAND_FRONT, EdgeNames.TOP)
                + length(top, TopNames.HEM_BAND_BACK, EdgeNames.TOP);
        assertThat(2 * bands).isCloseTo(2 * half(top, EdgeNames.HEM) + 2 * lap, within(EXACT));
        assertThat(top.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 200)
    void a_band_counts_once_in_the_finished_length_however_often_it_is_fitted(
            @ForAll BodyMeasurements body,
            @ForAll @DoubleRange(min = 10, max = 100) double depth,
            @ForAll @DoubleRange(min = 10, max = 100) double otherDepth) {
        Garment block = block(body);
        Garment banded = block.adjust(hemBand(mm(otherDepth), mm(20))).adjust(hemBand(mm(depth), mm(20)));
        assertThat(banded.finished(TopNames.BACK_LENGTH)
                        .minus(block.finished(TopNames.BACK_LENGTH))
                        .mm())
                .isCloseTo(depth, within(EXACT));
    }

    @Property(tries = 200)
    void a_hem_that_moves_leaves_its_band_behind_until_it_is_fitted_again(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = -60, max = 120) double longer) {
        Garment banded = block(body).adjust(HEM_BAND);
        Garment later = banded.adjust(lengthenBody(mm(longer)));
        boolean moved = Math.abs(half(later, EdgeNames.HEM) - half(banded, EdgeNames.HEM)) / 2 > 0.01;
        for (Name seam : HEM_SEAMS) {
            WalkedSeam walked = later.walkSeams().seam(seam);
            assertThat(walked.isTrue()).isEqualTo(!moved);
            assertThat(walked.mend().orElse("fit the hem band again")).contains("fit the hem band again");
            assertThat(later.adjust(HEM_BAND).walkSeams().seam(seam).isTrue()).isTrue();
        }
    }

    @Property(tries = 200)
    void the_sleeve_is_gathered_onto_a_cuff_of_the_wrist_and_its_ease(@ForAll BodyMeasurements body) {
        Garment top = block(body).adjust(straightenSleeve()).adjust(CUFF);
        assertThat(top.finished(TopNames.CUFF_GIRTH).mm())
                .isCloseTo(body.wristGirth().mm() + 15, within(EXACT));
        assertThat(top.walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 200)
    void a_cuff_fits_a_split_sleeve_as_it_fits_a_whole_one(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 95, max = 160) double aboveHem) {
        Garment straight = block(body).adjust(straightenSleeve());
        Cloth contrast = SHELL.as(Cloth.CONTRAST);
        Garment split = straight.adjust(splitSleeve(mm(aboveHem), contrast)).adjust(CUFF);
        assertThat(split.walkSeams().untrue()).isEmpty();
        assertThat(split.piece(TopNames.CUFF)).isEqualTo(straight.adjust(CUFF).piece(TopNames.CUFF));
        assertThat(split.finished(TopNames.SLEEVE_LENGTH).mm())
                .isCloseTo(straight.finished(TopNames.SLEEVE_LENGTH).mm(), within(EXACT));
        assertThat(length(split, TopNames.SLEEVE_LOWER, TopEdges.UNDERARM_FRONT))
                .isCloseTo(aboveHem - 70, within(EXACT));
    }

    @Property(tries = 200)
    void the_sleeve_gives_way_to_a_cuff_so_that_the_finished_lengths_stay_however_often_it_is_fitted(
            @ForAll BodyMeasurements body,
            @ForAll @DoubleRange(min = 10, max = 100) double depth,
            @ForAll boolean addedBefore) {
        Garment block = block(body);
        Garment before = addedBefore ? block.adjust(CUFF.addedBelow()) : block.adjust(CUFF);
        Garment cuffed = before.adjust(ribCuff(mm(depth), RIB));
        for (Name measure : List.of(TopNames.SLEEVE_LENGTH, TopNames.NECK_TO_WRIST)) {
            assertThat(cuffed.finished(measure).mm())
                    .isCloseTo(before.finished(measure).mm(), within(EXACT));
            assertThat(before.finished(measure).minus(block.finished(measure)).mm())
                    .isCloseTo(addedBefore ? 70 : 0, within(EXACT));
        }
        assertThat(cuffed.walkSeams().untrue()).isEmpty();
        assertThat(length(cuffed, TopNames.SLEEVE, EdgeNames.HEM))
                .isCloseTo(length(block, TopNames.SLEEVE, EdgeNames.HEM), within(EXACT));
    }

    @Property(tries = 50)
    void a_lower_part_that_is_not_deep_enough_refuses_to_give_way_and_names_what_works(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 60, max = 89) double aboveHem) {
        Garment split = block(body).adjust(straightenSleeve()).adjust(splitSleeve(mm(aboveHem), SHELL));
        Length most = mm(length(split, TopNames.SLEEVE_LOWER, TopEdges.UNDERARM_FRONT) - 20);
        assertThatThrownBy(() -> split.adjust(CUFF))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("sleeve lower")
                .hasMessageContaining(most.roundedDown().text());
        assertThat(split.adjust(CUFF.addedBelow()).walkSeams().untrue()).isEmpty();
    }

    @Property(tries = 200)
    void a_cuff_added_below_counts_once_in_the_finished_lengths_however_often_it_is_fitted(
            @ForAll BodyMeasurements body, @ForAll @DoubleRange(min = 10, max = 100) double depth) {
        Garment block = block(body);
        Garment cuffed =
                block.adjust(CUFF.addedBelow()).adjust(ribCuff(mm(depth), RIB).addedBelow());
        for (Name measure : List.of(TopNames.SLEEVE_LENGTH, TopNames.NECK_TO_WRIST)) {
            assertThat(cuffed.finished(measure).minus(block.finished(measure)).mm())
                    .isCloseTo(depth, within(EXACT));
        }
    }

    @Property(tries = 200)
    void gathers_are_spread_evenly_between_the_notches(@ForAll BodyMeasurements body) {
        Garment top = block(body).adjust(straightenSleeve()).adjust(CUFF);
        double ratio = length(top, TopNames.SLEEVE, EdgeNames.HEM) / length(top, TopNames.CUFF, EdgeNames.TOP);
        assertThat(top.walkSeams().seam(BandNames.CUFF_SEAM).spans())
                .hasSize(4)
                .allSatisfy(span ->
                        assertThat(span.lengthB().mm() / span.lengthA().mm()).isCloseTo(ratio, within(1e-9)));
    }

    @Property(tries = 200)
    void a_top_without_sleeves_is_whole_with_its_armholes_banded(
            @ForAll BodyMeasurements body,
            @ForAll @DoubleRange(min = 10, max = 60) double depth,
            @ForAll @DoubleRange(min = 0, max = 120) double stretch) {
        Garment block = block(body);
        Garment bare = block.adjust(sleeveless());
        assertThat(bare.pieces()).noneMatch(piece -> piece.name().value().startsWith("sleeve"));
        assertThat(bare.takeMeasures())
                .noneMatch(taken -> taken.measure().name().value().startsWith("sleeve"));
        assertThat(bare.rawEdges().stream().map(raw -> raw.edge().edge()))
                .containsOnly(TopEdges.ARMHOLE, TopEdges.NECKLINE);
        Garment banded = bare.adjust(armholeBand(mm(depth), Cloth.rib("drawn rib", Percent.percent(stretch))));
        assertThat(banded.walkSeams().untrue()).isEmpty();
        double armhole = block.finished(TopNames.ARMHOLE_GIRTH).mm();
        assertThat(banded.finished(BandNames.ARMHOLE_BAND_GIRTH).mm() / armhole)
                .as("75 to 90 %% of the armhole (common practice)")
                .isBetween(0.75 - EXACT, 0.9 + EXACT);
        assertThat(banded.rawEdges().stream().map(raw -> raw.edge().edge())).containsOnly(TopEdges.NECKLINE);
        Piece band = banded.piece(BandNames.ARMHOLE_BAND);
        Notch shoulder = band.notch(EdgeNames.TOP, TopNames.SHOULDER_NOTCH).orElseThrow();
        assertThat(shoulder.fromStart(band.path(EdgeNames.TOP).length())
                        / band.path(EdgeNames.TOP).length())
                .as("the notch of the band comes to the shoulder seam")
                .isCloseTo(length(block, TopNames.FRONT, TopEdges.ARMHOLE) / armhole, within(EXACT));
    }

    @Property(tries = 20)
    void a_band_is_refused_while_a_sleeve_is_set_in(@ForAll BodyMeasurements body) {
        assertThatThrownBy(() -> block(body).adjust(armholeBand(mm(20), Cloth.rib("drawn rib", Percent.percent(80)))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("front armhole");
    }
}

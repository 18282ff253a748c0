package org.oaktag.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Bands.hemBand;
import static org.oaktag.adjustments.Bands.ribCuff;
import static org.oaktag.adjustments.Tops.RIB;
import static org.oaktag.adjustments.Tops.observersTop;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.PatternException;
import org.oaktag.blocks.BandNames;
import org.oaktag.blocks.FinishNames;
import org.oaktag.blocks.HoodShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopChecks;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Passage;
import org.oaktag.garment.Piece;
import org.oaktag.garment.SeamRule;
import org.oaktag.geometry.Vector;

class BandsTest {

    @Test
    void a_band_is_drawn_open_twice_as_high_as_it_is_deep_with_its_fold_in_the_middle() {
        Piece band = observersTop().adjust(hemBand(mm(60), mm(30))).piece(TopNames.HEM_BAND_BACK);
        assertThat(band.outline().bounds().height()).isEqualTo(120);
        assertThat(band.lines()).singleElement().satisfies(line -> {
            assertThat(line.path().start().y()).isEqualTo(60);
            assertThat(line.path().length()).isEqualTo(band.path(EdgeNames.TOP).length());
        });
        assertThat(band.cut().instruction()).isEqualTo("cut 1 on fold");
    }

    @Test
    void the_notch_of_a_lapped_band_lies_on_the_side_seam() {
        Garment top = observersTop().adjust(hemBand(mm(60), mm(30)));
        Piece band = top.piece(TopNames.HEM_BAND_FRONT);
        assertThat(band.notch(EdgeNames.TOP, BandNames.SIDE_SEAM_NOTCH)
                        .orElseThrow()
                        .distance())
                .isEqualTo(top.piece(TopNames.FRONT).path(EdgeNames.HEM).length());
    }

    @Test
    void a_band_without_a_lap_is_sewn_flat() {
        Garment top = observersTop().adjust(hemBand(mm(60), mm(0)));
        assertThat(top.seam(BandNames.FRONT_HEM_SEAM).rule()).isEqualTo(SeamRule.flat());
        assertThat(top.walkSeams().isTrue()).isTrue();
    }

    @Test
    void bands_are_cut_from_the_cloth_of_the_front_or_from_the_one_given() {
        Cloth contrast = Cloth.knit("night blue", percent(30)).as(Cloth.CONTRAST);
        Garment top = observersTop();
        assertThat(top.adjust(hemBand(mm(60), mm(30)))
                        .piece(TopNames.HEM_BAND_BACK)
                        .cloth())
                .isEqualTo(top.piece(TopNames.FRONT).cloth());
        assertThat(top.adjust(hemBand(mm(60), mm(30)).cutFrom(contrast))
                        .piece(TopNames.HEM_BAND_BACK)
                        .cloth())
                .isEqualTo(contrast);
    }

    @Test
    void a_depth_or_a_lap_out_of_range_is_refused() {
        assertThatThrownBy(() -> hemBand(mm(9), mm(0)))
                .isInstanceOf(PatternException.class)
                .hasMessage("depth of the hem band: must be 10.0 mm to 250.0 mm; got 9.0 mm");
        assertThatThrownBy(() -> hemBand(mm(60), mm(-5)))
                .isInstanceOf(PatternException.class)
                .hasMessage("lap of the hem band: must be 0.0 mm to 150.0 mm; got -5.0 mm");
        assertThatThrownBy(() -> ribCuff(mm(300), RIB))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("depth of the cuff");
    }

    @Test
    void the_cuff_is_the_wrist_girth_and_15_mm_or_what_is_given() {
        Garment top = observersTop();
        assertThat(top.adjust(ribCuff(mm(70), RIB)).finished(TopNames.CUFF_GIRTH))
                .isEqualTo(mm(170));
        assertThat(top.adjust(ribCuff(mm(70), RIB).withGirth(mm(180))).finished(TopNames.CUFF_GIRTH))
                .isEqualTo(mm(180));
    }

    @Test
    void a_cuff_wider_than_the_sleeve_or_far_narrower_is_refused() {
        Garment top = observersTop();
        String hem = top.finished(TopNames.SLEEVE_HEM).text();
        assertThatThrownBy(() -> top.adjust(ribCuff(mm(70), RIB).withGirth(mm(260))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining(hem)
                .hasMessageContaining("260.0 mm")
                .hasMessageContaining("take a wider sleeve or a narrower cuff");
        assertThatThrownBy(() -> top.adjust(ribCuff(mm(70), RIB).withGirth(mm(30))))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("30.0 mm")
                .hasMessageContaining("take a narrower sleeve or a wider cuff");
        assertThatThrownBy(() -> ribCuff(mm(70), RIB).withGirth(mm(0)))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("more than 0 mm");
    }

    @Test
    void a_cuff_that_does_not_stretch_over_the_hand_is_cautioned_and_the_girth_advised_passes() {
        Cloth stiff = Cloth.rib("stiff rib", percent(20));
        Garment tight = observersTop().adjust(ribCuff(mm(70), stiff));
        assertThat(tight.cautions())
                .contains(
                        "cuff girth 170.0 mm must stretch by 32.4 % to pass the hand (225.0 mm);"
                                + " the cloth gives 20.0 %: make it at least 195.7 mm or take a cloth that stretches by 43.2 %");
        Garment wider = observersTop().adjust(ribCuff(mm(70), stiff).withGirth(mm(195.7)));
        assertThat(wider.cautions()).noneMatch(caution -> caution.contains("hand"));
    }

    /**
     * The hand with its thumb laid in is 1.466 wrists in the mean of the 2012 US Army survey (Gordon et al.,
     * NATICK/TR-15/007), so that a cuff of the wrist's own girth must stretch by about 47 %.
     */
    @Test
    void a_cuff_of_the_wrists_own_girth_must_stretch_by_nearly_half() {
        Garment top = KnitTop.draft(
                Tops.observer().toBuilder()
                        .measure(BodyMeasure.HAND_GIRTH_WITH_THUMB, mm(1.466 * 155))
                        .build(),
                TopEase.standard(),
                Cloth.knit("brushed knit", percent(35)));
        Passage check = Tops.passage(top.adjust(ribCuff(mm(70), RIB).withGirth(mm(155))), TopChecks.HAND);
        assertThat(check.neededStretch().percent()).isCloseTo(47, within(1.0));
    }

    @Test
    void a_gathered_sleeve_of_a_stiff_cloth_holds_the_cuff_back_at_its_own_length() {
        Garment top = observersTop();
        Piece stiff = top.piece(TopNames.SLEEVE).withCloth(Cloth.knit("stiff knit", percent(0)));
        Garment cuffed = top.withPiece(stiff).adjust(ribCuff(mm(70), RIB).withGirth(mm(170)));
        double hem = top.finished(TopNames.SLEEVE_HEM).mm();
        assertThat(Tops.passage(cuffed, TopChecks.HAND).reach().mm()).isCloseTo(hem, within(1e-9));
    }

    @Test
    void heavy_gathers_are_cautioned() {
        Garment wide = observersTop().adjust(Sleeves.straightenSleeve());
        Garment cuffed = wide.adjust(ribCuff(mm(70), RIB).withGirth(mm(130)));
        assertThat(cuffed.cautions()).anyMatch(caution -> caution.contains("gathered 2.7"));
    }

    @Test
    void the_least_stretchy_cloth_sewn_to_the_neckline_decides_whether_the_head_passes() {
        Garment top = observersTop();
        Garment hooded = top.adjust(Hoods.hood(HoodShape.threePanel()))
                .adjust(Hoods.lineHood(mm(40), Cloth.knit("tight lining", percent(12))));
        assertThat(Tops.passage(top, TopChecks.NECK).clothStretch()).isEqualTo(percent(35));
        assertThat(Tops.passage(hooded, TopChecks.NECK).clothStretch()).isEqualTo(percent(12));
    }

    @Test
    void a_cuff_takes_the_place_of_the_hem_in_the_check_of_the_hand() {
        Garment top = observersTop();
        assertThat(Tops.passage(top, TopChecks.HAND).ring()).isEqualTo("sleeve hem");
        Cloth stiff = Cloth.rib("stiff rib", percent(20));
        assertThat(Tops.passage(top.adjust(ribCuff(mm(70), stiff)), TopChecks.HAND)
                        .ring())
                .isEqualTo("cuff girth");
    }

    /** A rib stretches across its wales, and so across the grain: round the wrist, the neck and the hip. */
    @Test
    void the_grain_of_every_band_runs_square_to_the_edge_by_which_it_is_sewn() {
        Garment top = observersTop()
                .adjust(ribCuff(mm(70), RIB))
                .adjust(Finishes.ribNeckband(mm(25), RIB))
                .adjust(Bands.hemBand(mm(60), mm(20)).cutFrom(RIB));
        for (Name band :
                List.of(TopNames.CUFF, FinishNames.NECKBAND, TopNames.HEM_BAND_FRONT, TopNames.HEM_BAND_BACK)) {
            Piece piece = top.piece(band);
            Vector sewn = piece.path(EdgeNames.TOP).startDirection();
            Vector grain = piece.grainline().bottom().minus(piece.grainline().top());
            assertThat(grain.dot(sewn)).as(band.value()).isZero();
        }
    }
}

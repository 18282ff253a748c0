package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.CutLine;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Piece;

class CutBlockTest {

    /**
     * The side of this body curves in at the hem, and is mirrored there; where the cut line then met the fold it lay
     * off it by the last bit of a double.
     */
    @ParameterizedTest
    @EnumSource(EaseCategory.class)
    void every_piece_has_a_cut_line_that_is_farther_round_than_its_seam_line(EaseCategory ease) {
        BodyMeasurements ines = BodyMeasurements.builder()
                .name("Ines")
                .figure(Figure.WOMAN)
                .bustGirth(cm(89))
                .hipGirth(cm(112))
                .height(cm(160.5))
                .build();
        Garment block = KnitTop.draft(ines, TopEase.of(ease), Cloth.knit("trial knit", percent(50)));
        for (Piece piece : block.pieces()) {
            CutLine cut = CutLine.of(piece, KnitTop.allowances(block));
            assertThat(cut.outline().path().length())
                    .as(piece.name().value())
                    .isGreaterThan(piece.outline().path().length());
        }
    }
}

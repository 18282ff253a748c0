package org.oaktag.export.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.api.Test;
import org.oaktag.adjustments.Bands;
import org.oaktag.adjustments.Finishes;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Figure;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;

class AllowanceNotesTest {

    private static final Cloth RIB = Cloth.rib("trial rib", percent(80));

    private final Garment block = KnitTop.draft(
            BodyMeasurements.builder()
                    .name("Mira")
                    .figure(Figure.WOMAN)
                    .bustGirth(cm(94))
                    .height(cm(168))
                    .build(),
            TopEase.standard(),
            Cloth.knit("trial knit", percent(30)));

    /** A neckband is sewn to the neckline with 6 mm, a hem band to the hem with 10: the tops of both are no one name. */
    @Test
    void an_edge_goes_by_its_piece_where_another_of_its_name_is_cut_with_another_width() {
        Garment banded = block.adjust(Finishes.ribNeckband(cm(2), RIB)).adjust(Bands.hemBand(cm(5), mm(0)));
        assertThat(AllowanceNotes.of(banded, KnitTop.allowances(banded)).get(mm(6)))
                .isEqualTo("neckband bottom, neckband top, neckline");
    }

    @Test
    void an_edge_whose_name_says_it_all_goes_by_that() {
        Garment banded = block.adjust(Finishes.ribNeckband(cm(2), RIB));
        assertThat(AllowanceNotes.of(banded, KnitTop.allowances(banded)))
                .containsEntry(mm(6), "bottom, neckline, top")
                .containsEntry(mm(25), "hem");
    }
}

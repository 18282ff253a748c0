package org.oaktag.export.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.export.drawing.ClothPaint;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.measure.Percent;

class ClothsTest {

    private static Garment cutFrom(Cloth... cloths) {
        List<Piece> pieces = new ArrayList<>();
        for (Cloth cloth : cloths) {
            pieces.add(Fixture.tab().renamed(Name.of("tab " + pieces.size())).withCloth(cloth));
        }
        return Garment.of("tabs", Fixture.top().wearer(), pieces, List.of(), List.of());
    }

    private static Cloth knit(String description) {
        return Cloth.knit(description, Percent.percent(10));
    }

    @Test
    void well_known_cloths_have_paints_of_their_own() {
        Cloths cloths = Cloths.of(cutFrom(Fixture.RIB, Fixture.SHELL));
        assertThat(cloths.of(Fixture.SHELL)).isEqualTo(ClothPaint.PLAIN);
        assertThat(cloths.of(Fixture.RIB)).isEqualTo(ClothPaint.RIBBED);
        assertThat(cloths.used()).containsExactly(ClothPaint.PLAIN, ClothPaint.RIBBED);
    }

    @Test
    void six_cloths_have_six_paints() {
        Cloth[] six = {knit("a"), knit("b"), knit("c"), knit("d"), knit("e"), Fixture.RIB};
        assertThat(Cloths.of(cutFrom(six)).paints().values())
                .doesNotHaveDuplicates()
                .hasSize(6);
    }

    @Test
    void a_seventh_begins_anew() {
        Cloth[] eight = {knit("a"), knit("b"), knit("c"), knit("d"), knit("e"), knit("f"), knit("g"), knit("h")};
        assertThat(Cloths.of(cutFrom(eight)).paints()).hasSize(8);
    }

    @Test
    void a_cloth_that_is_not_in_the_garment_has_no_paint() {
        Cloths cloths = Cloths.of(cutFrom(Fixture.SHELL));
        assertThatThrownBy(() -> cloths.of(Fixture.RIB)).isInstanceOf(IllegalArgumentException.class);
    }
}

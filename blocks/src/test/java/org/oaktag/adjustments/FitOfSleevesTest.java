package org.oaktag.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Sleeves.kimonoSleeve;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.api.Test;
import org.oaktag.blocks.TopChecks;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Passage;

/** Openings are compared with the body whatever pieces are round them. */
class FitOfSleevesTest {

    private static final Cloth STIFF = Cloth.knit("stiff knit", percent(5));

    private final Garment block = Tops.observersTop();

    @Test
    void the_sleeve_of_a_raglan_and_one_grown_on_are_compared_with_the_upper_arm() {
        Passage setIn = Tops.passage(block, TopChecks.UPPER_ARM);
        Passage raglan = Tops.passage(block.adjust(raglanSleeve()), TopChecks.UPPER_ARM);
        Passage grownOn = Tops.passage(block.adjust(kimonoSleeve()), TopChecks.UPPER_ARM);
        assertThat(raglan.girth().mm())
                .isCloseTo(setIn.girth().mm(), within(setIn.girth().mm() / 5));
        assertThat(grownOn.girth()).isGreaterThan(setIn.girth());
        assertThat(raglan.mustPass()).isEqualTo(setIn.mustPass()).isEqualTo(grownOn.mustPass());
    }

    @Test
    void of_two_halves_round_the_arm_the_one_that_stretches_less_counts() {
        Garment raglan = block.adjust(raglanSleeve());
        assertThat(Tops.passage(raglan, TopChecks.UPPER_ARM).clothStretch()).isEqualTo(percent(35));
        assertThat(Tops.passage(cutFrom(raglan, TopNames.SLEEVE_BACK), TopChecks.UPPER_ARM)
                        .clothStretch())
                .isEqualTo(percent(5));
    }

    @Test
    void a_raglan_sleeve_that_stretches_less_holds_the_neckline_back() {
        Garment raglan = block.adjust(raglanSleeve());
        assertThat(Tops.passage(raglan, TopChecks.NECK).clothStretch()).isEqualTo(percent(35));
        assertThat(Tops.passage(cutFrom(raglan, TopNames.SLEEVE_FRONT), TopChecks.NECK)
                        .clothStretch())
                .isEqualTo(percent(5));
    }

    private static Garment cutFrom(Garment garment, Name piece) {
        return garment.withPiece(garment.piece(piece).withCloth(STIFF));
    }
}

package org.oaktag.adjustments;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.adjustments.Sleeves.kimonoSleeve;
import static org.oaktag.adjustments.Sleeves.raglanSleeve;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.api.Test;
import org.oaktag.blocks.FitCheck;
import org.oaktag.blocks.FitChecks;
import org.oaktag.blocks.TopNames;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** Openings are compared with the body whatever pieces are round them. */
class FitOfSleevesTest {

    private static final Cloth STIFF = Cloth.knit("stiff knit", percent(5));

    private final Garment block = Tops.observersTop();

    @Test
    void the_sleeve_of_a_raglan_and_one_grown_on_are_compared_with_the_upper_arm() {
        FitCheck setIn = FitChecks.sleeve(block).orElseThrow();
        FitCheck raglan = FitChecks.sleeve(block.adjust(raglanSleeve())).orElseThrow();
        FitCheck grownOn = FitChecks.sleeve(block.adjust(kimonoSleeve())).orElseThrow();
        assertThat(raglan.opening().mm())
                .isCloseTo(setIn.opening().mm(), within(setIn.opening().mm() / 5));
        assertThat(grownOn.opening()).isGreaterThan(setIn.opening());
        assertThat(raglan.mustPass()).isEqualTo(setIn.mustPass()).isEqualTo(grownOn.mustPass());
    }

    @Test
    void of_two_halves_round_the_arm_the_one_that_stretches_less_counts() {
        Garment raglan = block.adjust(raglanSleeve());
        assertThat(FitChecks.sleeve(raglan).orElseThrow().clothStretch()).isEqualTo(percent(35));
        assertThat(FitChecks.sleeve(cutFrom(raglan, TopNames.SLEEVE_BACK))
                        .orElseThrow()
                        .clothStretch())
                .isEqualTo(percent(5));
    }

    @Test
    void a_raglan_sleeve_that_stretches_less_holds_the_neckline_back() {
        Garment raglan = block.adjust(raglanSleeve());
        assertThat(FitChecks.neck(raglan).orElseThrow().clothStretch()).isEqualTo(percent(35));
        assertThat(FitChecks.neck(cutFrom(raglan, TopNames.SLEEVE_FRONT))
                        .orElseThrow()
                        .clothStretch())
                .isEqualTo(percent(5));
    }

    private static Garment cutFrom(Garment garment, Name piece) {
        return garment.withPiece(garment.piece(piece).withCloth(STIFF));
    }
}

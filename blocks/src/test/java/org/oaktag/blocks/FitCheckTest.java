package org.oaktag.blocks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FitCheckTest {

    /**
     * Means of the 2012 US Army survey (Gordon et al., NATICK/TR-15/007): neck base and head 371.2 and 561.1 mm in 1,986
     * women, 434.6 and 574.4 mm in 4,082 men. Taken over single bodies the stretch is 51.5 % (39 to 65) in women and
     * 32.5 % (21 to 44) in men.
     */
    @ParameterizedTest
    @CsvSource({"371.2, 561.1, 51.5", "434.6, 574.4, 32.5"})
    void a_neckline_of_the_neck_base_girth_must_stretch_far_to_pass_the_head(double neck, double head, double needed) {
        FitCheck check = new FitCheck("neck opening", mm(neck), "head", mm(head), percent(30));
        assertThat(check.neededStretch().percent()).isCloseTo(needed, within(0.5));
        assertThat(check.passes()).isFalse();
    }

    @Test
    void stretch_is_stretched_less_rest_over_rest() {
        FitCheck check = new FitCheck("neck opening", mm(400), "head", mm(500), percent(25));
        assertThat(check.neededStretch()).isEqualTo(percent(25));
        assertThat(check.passes()).isTrue();
    }

    @Test
    void it_says_what_the_numbers_say() {
        assertThat(new FitCheck("neck opening", mm(428.1), "head", mm(560), percent(35)).text())
                .isEqualTo(
                        "neck opening 428.1 mm must stretch by 30.8 % to pass the head (560.0 mm); the cloth gives 35.0 %");
        assertThat(new FitCheck("hem", mm(1080), "hip", mm(1020), percent(0)).text())
                .isEqualTo("hem 1080.0 mm is wider than the hip (1020.0 mm) by 60.0 mm");
    }

    @Test
    void what_it_advises_passes() {
        FitCheck check = new FitCheck("cuff", mm(150), "hand", mm(227), percent(40));
        assertThat(check.text())
                .endsWith("the cloth gives 40.0 %: make it at least 162.2 mm or take a cloth that stretches by 51.4 %");
        assertThat(new FitCheck("cuff", check.leastOpening(), "hand", mm(227), percent(40)).passes())
                .isTrue();
        assertThat(new FitCheck("cuff", mm(150), "hand", mm(227), check.neededStretch()).passes())
                .isTrue();
    }
}

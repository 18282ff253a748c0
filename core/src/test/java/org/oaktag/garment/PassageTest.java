package org.oaktag.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.garment.Fit.Verdict.FAILS;
import static org.oaktag.garment.Fit.Verdict.FITS;
import static org.oaktag.garment.Fit.Verdict.STRAINS;
import static org.oaktag.garment.Opening.Way.PASSED;
import static org.oaktag.garment.Opening.Way.WORN;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PassageTest {

    /**
     * Means of the 2012 US Army survey (Gordon et al., NATICK/TR-15/007): neck base and head 371.2 and 561.1 mm in
     * 1,986 women, 434.6 and 574.4 mm in 4,082 men. Taken over single bodies the stretch is 51.5 % (39 to 65) in women
     * and 32.5 % (21 to 44) in men.
     */
    @ParameterizedTest
    @CsvSource({"371.2, 561.1, 51.5", "434.6, 574.4, 32.5"})
    void a_neckline_of_the_neck_base_girth_must_stretch_far_to_pass_the_head(double neck, double head, double needed) {
        Passage check = new Passage("neckline", mm(neck), "head", mm(head), percent(30), PASSED);
        assertThat(check.neededStretch().percent()).isCloseTo(needed, within(0.5));
        assertThat(check.verdict()).isEqualTo(FAILS);
    }

    /** Common practice: a third to a half of a cloth's stretch in wear and three quarters for a moment. */
    @ParameterizedTest
    @CsvSource({
        "PASSED, 400, 500, 33.4, FITS",
        "PASSED, 400, 500, 33.2, STRAINS",
        "PASSED, 400, 500, 25.0, STRAINS",
        "PASSED, 400, 500, 24.9, FAILS",
        "WORN, 500, 500, 0, FITS",
        "WORN, 490, 500, 30, STRAINS",
        "WORN, 490, 500, 6.2, STRAINS",
        "WORN, 490, 500, 6.1, FAILS",
        "WORN, 400, 500, 75, FITS",
        "WORN, 400, 502, 75, FAILS",
    })
    void three_quarters_of_the_stretch_serve_for_a_moment_and_a_third_all_day(
            Opening.Way way, double girth, double body, double stretch, Fit.Verdict verdict) {
        assertThat(new Passage("girth", mm(girth), "body", mm(body), percent(stretch), way).verdict())
                .isEqualTo(verdict);
    }

    @Test
    void stretch_is_stretched_less_rest_over_rest() {
        Passage check = new Passage("neckline", mm(400), "head", mm(500), percent(40), PASSED);
        assertThat(check.neededStretch()).isEqualTo(percent(25));
        assertThat(check.verdict()).isEqualTo(FITS);
    }

    @Test
    void it_says_what_the_numbers_say() {
        assertThat(new Passage("neckline", mm(428.1), "head", mm(560), percent(45), PASSED).text())
                .isEqualTo(
                        "neckline 428.1 mm must stretch by 30.8 % to pass the head (560.0 mm); the cloth gives 45.0 %");
        assertThat(new Passage("hem girth", mm(1080), "hip", mm(1020), percent(0), WORN).text())
                .isEqualTo("hem girth 1080.0 mm is wider than the hip (1020.0 mm) by 60.0 mm");
        assertThat(new Passage("waist girth", mm(720), "waist", mm(800), percent(45), WORN).text())
                .isEqualTo("waist girth 720.0 mm is 80.0 mm narrower than the waist (800.0 mm) and is worn stretched by"
                        + " 11.1 %; the cloth gives 45.0 %: make it at least 800.0 mm");
    }

    @Test
    void what_it_advises_fits() {
        Passage check = new Passage("cuff", mm(150), "hand", mm(227), percent(40), PASSED);
        assertThat(check.text())
                .endsWith("the cloth gives 40.0 %: make it at least 174.7 mm or take a cloth that stretches by 68.5 %");
        assertThat(new Passage("cuff", check.leastGirth(), "hand", mm(227), percent(40), PASSED).verdict())
                .isEqualTo(FITS);
        assertThat(new Passage("cuff", mm(150), "hand", mm(227), percent(68.5), PASSED).verdict())
                .isEqualTo(FITS);
        Passage waist = new Passage("waist girth", mm(720), "waist", mm(800), percent(45), WORN);
        assertThat(waist.verdict()).isEqualTo(STRAINS);
        assertThat(new Passage("waist girth", waist.leastGirth(), "waist", mm(800), percent(45), WORN).verdict())
                .isEqualTo(FITS);
    }
}

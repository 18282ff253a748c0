package org.oaktag.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.mm;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.oaktag.PatternException;

class SizesTest {

    private static final BodyMeasurements MIDDLE = BodyMeasurements.builder()
            .name("middle")
            .figure(Figure.WOMAN)
            .bustGirth(cm(88))
            .height(cm(165))
            .neckBaseGirth(cm(37))
            .build();

    /** EN 13402-3, women's bust girths in cm. */
    @Test
    void the_busts_of_en_13402_are_bodies() {
        List<BodyMeasurements> bodies = SizeRange.en13402WomensBusts(cm(168));
        assertThat(bodies)
                .extracting(body -> body.bustGirth().cm())
                .containsExactly(74.0, 78.0, 82.0, 86.0, 90.0, 94.0, 98.0, 102.0, 107.0, 113.0, 119.0, 125.0, 131.0);
        assertThat(bodies).allSatisfy(body -> assertThat(body.height()).isEqualTo(cm(168)));
        assertThat(bodies).extracting(BodyMeasurements::name).doesNotHaveDuplicates();
    }

    /** EN 13402-3, letters for men's chest girths: S 86-94, M 94-102, L 102-110, XL 110-118, XXL 118-129 cm. */
    @ParameterizedTest
    @CsvSource({"86, S", "93.9, S", "94, M", "102, L", "110, XL", "118, XXL", "128.9, XXL"})
    void a_mans_chest_has_a_letter(double chestCm, MensLetter letter) {
        assertThat(MensLetter.of(cm(chestCm))).contains(letter);
    }

    @Test
    void a_chest_beyond_the_letters_has_none() {
        assertThat(MensLetter.of(cm(85.9))).isEmpty();
        assertThat(MensLetter.of(cm(129))).isEmpty();
    }

    /** GB/T 1335: height by 5 cm, chest by 4 cm. */
    @Test
    void a_size_of_gb_t_1335_adds_5_cm_of_height_and_4_of_bust() {
        assertThat(SizeRange.GB_T_1335.around(MIDDLE, 1, 2))
                .extracting(
                        BodyMeasurements::name,
                        body -> body.bustGirth().cm(),
                        body -> body.height().cm())
                .containsExactly(
                        tuple("middle -1", 84.0, 160.0),
                        tuple("middle", 88.0, 165.0),
                        tuple("middle +1", 92.0, 170.0),
                        tuple("middle +2", 96.0, 175.0));
    }

    @Test
    void no_step_is_the_body_itself() {
        assertThat(SizeRange.GB_T_1335.step(MIDDLE, 0)).isEqualTo(MIDDLE);
    }

    @Test
    void a_step_up_and_a_step_down_again_is_the_same_body() {
        BodyMeasurements back = SizeRange.GB_T_1335.step(SizeRange.GB_T_1335.step(MIDDLE, 2), -2);
        MIDDLE.measures()
                .forEach((measure, length) ->
                        assertThat(back.measure(measure).mm()).isCloseTo(length.mm(), within(1e-9)));
    }

    /** The neck was taken, 9.28 mm wider than 0.1565 x 880 + 223.0, and is so in every size. */
    @Test
    void what_is_particular_about_a_body_stays_in_every_size() {
        for (BodyMeasurements size : SizeRange.GB_T_1335.around(MIDDLE, 2, 2)) {
            double expected = 0.1565 * size.bustGirth().mm() + 223.0;
            assertThat(size.neckBaseGirth().mm() - expected).isCloseTo(370 - 360.72, within(1e-9));
            assertThat(size.taken()).containsKey(BodyMeasure.NECK_BASE_GIRTH);
        }
    }

    @Test
    void a_child_is_not_graded() {
        BodyMeasurements child = BodyMeasurements.builder()
                .name("Pip")
                .figure(Figure.BOY)
                .bustGirth(cm(60))
                .height(cm(116))
                .build();
        assertThatThrownBy(() -> SizeRange.GB_T_1335.step(child, 1))
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "size range of 'Pip': must be of a grown body: no rule grades a child's measures; got a boy");
    }

    /** JIS L 4005: 9AR is bust 83, hip 91, height 158 cm. */
    @Test
    void a_standard_size_is_a_body() {
        BodyMeasurements body = StandardSize.JIS_L_4005_9AR.builder().build();
        assertThat(body.name()).isEqualTo("JIS L 4005 9AR");
        assertThat(body.taken())
                .containsOnlyKeys(BodyMeasure.BUST_GIRTH, BodyMeasure.HIP_GIRTH, BodyMeasure.HEIGHT)
                .containsEntry(BodyMeasure.HIP_GIRTH, mm(910));
    }

    /** ASTM D5585-11, misses' size 8: bust 36 1/4, neck base 14 5/8, waist 28, head 21 3/4 in. */
    @Test
    void a_standard_size_without_a_height_lends_a_top_its_lengths_once_it_has_one() {
        BodyMeasurements withoutHeight =
                StandardSize.ASTM_D5585_MISSES_8.builder().build();
        assertThatThrownBy(withoutHeight::armLength)
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("must be taken, or derived from height");
        BodyMeasurements body =
                StandardSize.ASTM_D5585_MISSES_8.builder().height(cm(168)).build();
        assertThat(body.bustGirth().inches()).isCloseTo(36.25, within(1e-12));
        assertThat(body.neckBaseGirth().inches()).isCloseTo(14.625, within(1e-12));
        assertThat(body.waistGirth().inches()).isCloseTo(28, within(1e-12));
        assertThat(body.headGirth().inches()).isCloseTo(21.75, within(1e-12));
    }
}

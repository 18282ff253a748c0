package org.oaktag.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;

class DoubtsTest {

    /** 0.7767 x 940 + 42.6 = 772.7, and four times 40.8 to either side: the rule of {@link Derivations}. */
    @Test
    void half_a_girth_is_asked_about_by_name_with_what_was_expected_and_why() {
        assertThatThrownBy(() -> woman().waistGirth(mm(440)).build())
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "waist girth of 'Nell': is asked about outside 609.5 to 935.9 mm, 4 spreads of 40.8 mm about"
                                + " 772.7 mm = 0.7767 x bust girth 940.0 mm + 42.6 mm; got 440.0 mm; half of the whole? that"
                                + " would be 880.0 mm; if it is meant, confirm the waist girth");
    }

    @Test
    void what_is_confirmed_is_taken_as_it_is_and_remembered() {
        BodyMeasurements body =
                woman().waistGirth(mm(440)).confirmed(BodyMeasure.WAIST_GIRTH).build();
        assertThat(body.waistGirth()).isEqualTo(mm(440));
        assertThat(body.confirmed()).extracting(Doubt::measure).containsExactly(BodyMeasure.WAIST_GIRTH);
        assertThat(body.toBuilder().build()).isEqualTo(body);
        assertThat(body.toBuilder().waistGirth(mm(760)).build().confirmed()).isEmpty();
    }

    @Test
    void confirming_one_measure_lets_no_other_pass() {
        assertThatThrownBy(() -> woman().waistGirth(mm(440))
                        .neckBaseGirth(mm(230))
                        .confirmed(BodyMeasure.WAIST_GIRTH)
                        .build())
                .hasMessageStartingWith("neck base girth of 'Nell'");
    }

    @Test
    void inches_in_a_column_of_centimetres_are_explained() {
        assertThatThrownBy(() -> woman().bustGirth(cm(160))
                        .hipGirth(cm(165))
                        .waistGirth(mm(1500 / 2.54))
                        .build())
                .hasMessageContaining("inches read as centimetres? that would be 150.0 cm");
    }

    /** The height alone leads to expect 964.1 mm; a girth of 1110 mm was halved. */
    @Test
    void half_a_bust_is_asked_about_and_what_rests_on_it_is_not_blamed_alone() {
        assertThatThrownBy(() -> woman().bustGirth(mm(555)).build())
                .hasMessageStartingWith("bust girth of 'Nell'")
                .hasMessageContaining("half of the whole? that would be 1110.0 mm");
        assertThatThrownBy(() -> woman().bustGirth(mm(650))
                        .waistGirth(mm(1110))
                        .hipGirth(mm(1250))
                        .neckBaseGirth(mm(420))
                        .build())
                .hasMessageStartingWith("measures of 'Nell': each is asked about more than 4 spreads from")
                .hasMessageContaining("waist girth 1110.0 mm, expected")
                .hasMessageContaining("hip girth 1250.0 mm, expected")
                .hasMessageContaining("is it the bust girth that is wrong? all of them rest on it; mend what is wrong");
    }

    /** Chests of up to 170 cm are real (common practice): no height makes one doubtful. */
    @Test
    void a_stout_body_is_not_asked_about_its_bust() {
        assertThat(woman().bustGirth(cm(170)).height(cm(150)).hipGirth(cm(165)).doubts())
                .isEmpty();
    }

    @Test
    void a_hip_is_asked_for_where_the_bust_is_over_105_cm() {
        assertThat(woman().bustGirth(cm(105)).build().hipGirth()).isGreaterThan(cm(105));
        BodyBuilder stout = woman().bustGirth(cm(120));
        assertThatThrownBy(stout::build)
                .isInstanceOf(PatternException.class)
                .hasMessage(
                        "hip girth of 'Nell': must be taken where the bust girth is over 1050.0 mm: the surveyed bodies"
                                + " are soldiers', and hips of others are often wider; got none, and derived would be 1223.7 mm ="
                                + " 0.6344 x bust girth 1200.0 mm + 0.2356 x height 1680.0 mm + 0.1989 x the 150.0 mm of bust girth"
                                + " above 1050.0 mm + 36.8 mm, of which one body in twenty is off by more than 116.7 mm; measure"
                                + " horizontal girth of the trunk at the fullest part of the seat; or confirm the hip girth to"
                                + " draft from what is derived");
        assertThat(stout.doubts()).singleElement().satisfies(doubt -> {
            assertThat(doubt.measure()).isEqualTo(BodyMeasure.HIP_GIRTH);
            assertThat(doubt.taken()).isEqualTo(Optional.empty());
        });
        BodyMeasurements drafted = stout.confirmed(BodyMeasure.HIP_GIRTH).build();
        assertThat(drafted.derived()).extracting(Derived::measure).contains(BodyMeasure.HIP_GIRTH);
        assertThat(drafted.toBuilder().build()).isEqualTo(drafted);
        assertThat(woman().bustGirth(cm(120)).hipGirth(cm(128)).build().confirmed())
                .isEmpty();
    }

    /** Busts and hips of the women's sizes above a bust of 104 cm in EN 13402-3, from memory; at a height of 168 cm. */
    @Test
    void a_derived_hip_of_a_large_bust_goes_with_the_size_tables_for_everybody() {
        int[][] sizes = {{110, 117}, {116, 122}, {122, 127}, {128, 132}, {134, 137}, {140, 142}, {152, 152}};
        for (int[] size : sizes) {
            BodyMeasurements body = woman().bustGirth(cm(size[0]))
                    .confirmed(BodyMeasure.HIP_GIRTH)
                    .build();
            assertThat(body.hipGirth().cm()).as("bust of %s cm", size[0]).isBetween(size[1] - 4.5, size[1] + 4.5);
        }
    }

    /** Busts and waists of the women's sizes above a bust of 104 cm in EN 13402-3, from memory. */
    @Test
    void a_derived_waist_of_a_large_bust_goes_with_the_size_tables_for_everybody() {
        double[][] sizes = {{110, 94.5}, {122, 107.5}, {134, 120.5}, {152, 140}};
        for (double[] size : sizes) {
            BodyMeasurements body =
                    woman().bustGirth(cm(size[0])).hipGirth(cm(size[0])).build();
            assertThat(body.waistGirth().cm()).as("bust of %s cm", size[0]).isBetween(size[1] - 5.5, size[1] + 5.5);
        }
    }

    @Test
    void hips_and_waists_of_165_cm_are_real() {
        BodyMeasurements body =
                woman().bustGirth(cm(160)).waistGirth(cm(165)).hipGirth(cm(165)).build();
        assertThat(body.waistGirth()).isEqualTo(cm(165));
        assertThat(body.hipGirth()).isEqualTo(cm(165));
    }

    /** Real adult chests run from about 50 to 170 cm (common practice). */
    @ParameterizedTest
    @EnumSource(
            value = Figure.class,
            names = {"WOMAN", "MAN"})
    void a_chest_of_170_cm_drafts_from_bust_and_height(Figure figure) {
        for (int height : List.of(145, 165, 195)) {
            assertThat(woman().figure(figure)
                            .bustGirth(cm(170))
                            .height(cm(height))
                            .confirmed(BodyMeasure.HIP_GIRTH)
                            .build()
                            .measures())
                    .containsOnlyKeys(BodyMeasure.values());
        }
    }

    /** Nothing says what to expect of a child. */
    @Test
    void a_child_is_not_asked_about() {
        assertThat(woman().figure(Figure.GIRL)
                        .bustGirth(cm(60))
                        .height(cm(116))
                        .waistGirth(cm(31))
                        .doubts())
                .isEmpty();
    }

    @Test
    void what_cannot_be_at_all_is_refused_whatever_is_confirmed() {
        BodyBuilder slip = woman().hipGirth(mm(40));
        Arrays.stream(BodyMeasure.values()).forEach(slip::confirmed);
        assertThatThrownBy(slip::build).hasMessageStartingWith("hip girth of 'Nell': must be 515.0 to 1811.0 mm");
    }

    /** JIS L 4005 size 9AR and ASTM D5585-11 size 8 are bodies, and nobody is asked about a size of a standard. */
    @Test
    void the_sizes_of_the_standards_are_built_without_a_question() {
        assertThat(StandardSize.JIS_L_4005_9AR.builder().doubts()).isEmpty();
        assertThat(StandardSize.ASTM_D5585_MISSES_8.builder().height(inches(65)).doubts())
                .isEmpty();
        assertThat(SizeRange.en13402WomensBusts(cm(168))).hasSize(13);
        assertThat(SizeRange.GB_T_1335.around(woman().build(), 3, 6)).hasSize(10);
    }

    private static BodyBuilder woman() {
        return BodyMeasurements.builder()
                .name("Nell")
                .figure(Figure.WOMAN)
                .bustGirth(cm(94))
                .height(cm(168));
    }
}

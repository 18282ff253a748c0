package org.oaktag.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.oaktag.measure.Length.cm;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.oaktag.PatternException;

class PlausibleRangeTest {

    /** Real adult chests run from about 50 to 170 cm (common practice). */
    @Test
    void chests_of_50_to_170_cm_are_plausible() {
        PlausibleRange range = PlausibleRange.of(BodyMeasure.BUST_GIRTH, Figure.WOMAN);
        assertThat(range.includes(cm(50))).isTrue();
        assertThat(range.includes(cm(170))).isTrue();
        assertThat(range.includes(cm(48))).isFalse();
        assertThat(range.includes(cm(180))).isFalse();
    }

    @Test
    void the_ends_of_a_range_belong_to_it() {
        PlausibleRange range = PlausibleRange.of(BodyMeasure.HEIGHT, Figure.MAN);
        assertThat(range.includes(range.least())).isTrue();
        assertThat(range.includes(range.greatest())).isTrue();
        assertThat(range.includes(range.least().minus(mm(0.001)))).isFalse();
        assertThat(range.includes(range.greatest().plus(mm(0.001)))).isFalse();
    }

    @ParameterizedTest
    @EnumSource(BodyMeasure.class)
    void a_child_may_be_smaller_than_any_grown_body_and_no_larger_than_the_largest(BodyMeasure measure) {
        PlausibleRange child = PlausibleRange.of(measure, Figure.GIRL);
        PlausibleRange grown = PlausibleRange.of(measure, Figure.MAN);
        assertThat(child.least()).isLessThan(grown.least());
        assertThat(child.greatest()).isLessThan(grown.greatest());
    }

    /** The middle of a range in one unit is never a plausible number in the next, so such a slip cannot pass. */
    @ParameterizedTest
    @EnumSource(BodyMeasure.class)
    void a_slip_of_ten_is_found_on_any_measure(BodyMeasure measure) {
        PlausibleRange range = PlausibleRange.of(measure, Figure.WOMAN);
        assertThat(range.includes(range.least().times(10))).isFalse();
        assertThat(range.includes(range.greatest().times(0.1))).isFalse();
        assertThatThrownBy(() -> range.check("x", range.least().times(12)))
                .hasMessageContaining("millimetres read as centimetres? that would be");
    }

    /** Medians of the women of the 2012 survey (Gordon et al., NATICK/TR-15/007). */
    @ParameterizedTest
    @CsvSource({
        "BUST_GIRTH, 940",
        "NECK_BASE_GIRTH, 370",
        "UPPER_ARM_GIRTH, 304",
        "WRIST_GIRTH, 154",
        "HEAD_GIRTH, 560",
        "SHOULDER_LENGTH, 135",
        "ACROSS_BACK, 396",
        "ARM_LENGTH, 542",
        "HEIGHT, 1626"
    })
    void inches_read_as_centimetres_are_found_on_a_middling_body(BodyMeasure measure, double median) {
        assertThatThrownBy(() -> PlausibleRange.of(measure, Figure.WOMAN).check("x", mm(median / 2.54), LengthUnit.CM))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("inches read as centimetres? that would be " + LengthUnit.CM.text(mm(median)));
        assertThatThrownBy(
                        () -> PlausibleRange.of(measure, Figure.WOMAN).check("x", mm(median * 2.54), LengthUnit.INCH))
                .isInstanceOf(PatternException.class)
                .hasMessageContaining("centimetres read as inches? that would be " + LengthUnit.INCH.text(mm(median)));
    }

    @Test
    void the_likeliest_slip_is_named() {
        PlausibleRange bust = PlausibleRange.of(BodyMeasure.BUST_GIRTH, Figure.WOMAN);
        assertThatThrownBy(() -> bust.check("x", mm(37)))
                .hasMessage("x: must be 486.0 to 1763.0 mm; got 37.0 mm;"
                        + " inches read as millimetres? that would be 939.8 mm");
        assertThatThrownBy(() -> bust.check("x", inches(940)))
                .hasMessage("x: must be 486.0 to 1763.0 mm; got 23876.0 mm;"
                        + " millimetres read as inches? that would be 37.01 in");
        assertThatThrownBy(
                        () -> PlausibleRange.of(BodyMeasure.HEIGHT, Figure.MAN).check("x", mm(1.77)))
                .hasMessage("x: must be 986.0 to 2392.0 mm; got 1.8 mm;"
                        + " metres read as millimetres? that would be 1770.0 mm");
    }

    /**
     * Both centimetres and inches would do for either; 600 lies nearer the middle of the range than 1524, 1270 than
     * 500.
     */
    @Test
    void of_two_slips_the_one_that_leads_nearer_the_middle_is_named() {
        PlausibleRange bust = PlausibleRange.of(BodyMeasure.BUST_GIRTH, Figure.WOMAN);
        assertThatThrownBy(() -> bust.check("x", mm(60), LengthUnit.MM))
                .hasMessageEndingWith("centimetres read as millimetres? that would be 600.0 mm");
        assertThatThrownBy(() -> bust.check("x", mm(50), LengthUnit.MM))
                .hasMessageEndingWith("inches read as millimetres? that would be 1270.0 mm");
    }

    @Test
    void where_no_slip_explains_the_value_none_is_named() {
        assertThatThrownBy(() ->
                        PlausibleRange.of(BodyMeasure.BUST_GIRTH, Figure.WOMAN).check("x", mm(-940)))
                .hasMessage("x: must be 486.0 to 1763.0 mm; got -940.0 mm");
    }
}

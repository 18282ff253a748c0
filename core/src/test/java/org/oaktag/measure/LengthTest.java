package org.oaktag.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.oaktag.measure.Length.inches;
import static org.oaktag.measure.Length.mm;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How a length is told. An inch is 25.4 mm exactly (international yard and pound agreement, 1959; ISO 80000-3), and a
 * tape is parted into sixteenths.
 */
class LengthTest {

    @ParameterizedTest
    @CsvSource({
        "25.4, 1 in",
        "84.1375, 3 5/16 in", // 53 sixteenths of 1.5875 mm
        "12.7, 1/2 in",
        "-12.7, -1/2 in",
        "-31.75, -1 1/4 in",
        "920.75, 36 1/4 in",
        "304.8, 12 in",
        "0, 0 in"
    })
    void a_length_on_a_line_of_the_tape_is_told_as_it_is(double millimetres, String text) {
        assertThat(mm(millimetres).textInInches()).isEqualTo(text);
    }

    @Test
    void every_sixteenth_up_to_a_yard_is_read_back_as_the_very_length_in_lowest_terms() {
        for (int sixteenths = 1; sixteenths <= 36 * 16; sixteenths++) {
            String text = inches(sixteenths / 16.0).textInInches();
            double read = 0;
            for (String part : text.replace(" in", "").split(" ", -1)) {
                String[] fraction = part.split("/", -1);
                double top = Double.parseDouble(fraction[0]);
                read += fraction.length == 1 ? top : top / Double.parseDouble(fraction[1]);
                assertThat(fraction.length == 1 || (top % 2 == 1 && top < Double.parseDouble(fraction[1])))
                        .as(text)
                        .isTrue();
            }
            assertThat(read).as(text).isEqualTo(sixteenths / 16.0);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "0.0312, 0 in",
        "-0.0312, 0 in",
        "0.03125, 1/16 in", // half a sixteenth, exact in binary
        "-0.03125, -1/16 in",
        "2.96875, 3 in",
        "2.9687, 2 15/16 in"
    })
    void one_between_two_lines_is_told_as_the_nearer_and_halfway_as_the_greater(double inches, String text) {
        // Divided and multiplied by 25.4 a dyadic fraction comes back to the last bit or not at all: these do.
        assertThat(inches(inches).inches()).isEqualTo(inches);
        assertThat(inches(inches).textInInches()).isEqualTo(text);
    }

    @Test
    void what_is_told_is_never_off_by_more_than_half_a_sixteenth_and_the_value_is_kept() {
        for (double millimetres = 0; millimetres < 200; millimetres += 0.37) {
            assertThat(mm(millimetres).inches() * 25.4).isCloseTo(millimetres, within(1e-12));
            String text = mm(millimetres).textInInches();
            String next = mm(millimetres + 25.4 / 16).textInInches();
            assertThat(next).as("a sixteenth further than %s", text).isNotEqualTo(text);
        }
    }

    @Test
    void in_millimetres_it_is_told_to_a_tenth() {
        assertThat(mm(7.46).text()).isEqualTo("7.5 mm");
        assertThat(mm(-0.04).text()).isEqualTo("0.0 mm");
    }
}

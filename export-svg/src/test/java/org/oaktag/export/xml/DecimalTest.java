package org.oaktag.export.xml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecimalTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "-2.5, -2.5",
        "0.1, 0.1",
        "100.000001, 100.000001",
        "-0.000001, -0.000001",
        "0.0000004, 0",
        "-0.0000004, 0",
        "0.9999999, 1",
        "1234567.25, 1234567.25",
        "1e9, 1000000000"
    })
    void a_number_is_written_to_six_decimals_without_trailing_zeros(double value, String text) {
        assertThat(Decimal.text(value)).isEqualTo(text);
    }

    @Test
    void what_is_written_is_read_back_within_half_a_millionth() {
        Random random = new Random(20_250_101);
        for (int i = 0; i < 100_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(9));
            String text = Decimal.text(value);
            assertThat(text).matches("-?[0-9]+(\\.[0-9]{0,5}[1-9])?");
            assertThat(Double.parseDouble(text)).isCloseTo(value, within(5.1e-7));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1.1e9})
    void what_is_no_coordinate_is_refused(double value) {
        assertThatThrownBy(() -> Decimal.text(value))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a coordinate must lie within -1e9 to 1e9, got " + value);
    }
}

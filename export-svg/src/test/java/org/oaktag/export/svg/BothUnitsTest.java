package org.oaktag.export.svg;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** One inch is 25.4 mm, exactly (international yard and pound agreement, 1959). */
class BothUnitsTest {

    @Test
    void every_length_in_a_text_gets_its_inches() {
        assertThat(BothUnits.of("drop 25.4 mm, rise -12.7 mm and 10 mm"))
                .isEqualTo("drop 25.4 mm (1 in), rise -12.7 mm (-1/2 in) and 10 mm (3/8 in)");
        assertThat(BothUnits.of("ease 5 %")).isEqualTo("ease 5 %");
    }
}

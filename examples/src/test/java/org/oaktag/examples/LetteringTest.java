package org.oaktag.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.font.FontRenderContext;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.oaktag.export.drawing.Font;

/** The widths of lettering held against the font itself, where it is installed. */
class LetteringTest {

    private static final FontRenderContext FINE = new FontRenderContext(null, true, true);

    @Test
    void lettering_is_as_wide_as_liberation_sans_sets_it() {
        for (boolean bold : List.of(false, true)) {
            java.awt.Font font =
                    new java.awt.Font("Liberation Sans", bold ? java.awt.Font.BOLD : java.awt.Font.PLAIN, 1000);
            assumeTrue(font.getFamily().equals("Liberation Sans"), "Liberation Sans is not installed");
            Font ours = new Font(1000, bold);
            for (char c = ' '; c <= '~'; c++) {
                String letter = String.valueOf(c);
                assertThat(ours.width(letter))
                        .as("'%s' bold %s", letter, bold)
                        .isCloseTo(font.getStringBounds(letter, FINE).getWidth(), within(1.0));
            }
            for (String letter : List.of("\u00E9", "\u00C6", "\u0152", "\u00BD", "\u2192", "\u00B0")) {
                assertThat(ours.width(letter))
                        .isGreaterThanOrEqualTo(
                                font.getStringBounds(letter, FINE).getWidth());
            }
        }
    }
}

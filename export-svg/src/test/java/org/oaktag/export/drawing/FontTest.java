package org.oaktag.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Widths of lettering. Liberation Sans has the widths of Helvetica, whose figures (Adobe Font Metrics of the core 14
 * fonts: o 556, a 556, k 500, t 278, g 556, W 944, bold W 944, bold i 278) are from memory.
 */
class FontTest {

    @Test
    void a_word_is_as_wide_as_its_letters_together() {
        assertThat(new Font(10, false).width("oaktag")).isCloseTo(30.02, within(1e-9));
        assertThat(new Font(10, true).width("Wi")).isCloseTo(12.22, within(1e-9));
    }

    @Test
    void bold_is_never_narrower_in_a_word() {
        String words = "the quick brown fox jumps over the lazy dog 0123456789";
        assertThat(new Font(5, true).width(words)).isGreaterThan(new Font(5, false).width(words));
    }

    @Test
    void letters_of_other_scripts_and_emoji_have_room_enough() {
        Font font = new Font(10, false);
        assertThat(font.width("\u00E9\u05D0\u4E2D")).isEqualTo(30);
        assertThat(font.width("\uD83E\uDDE5")).isEqualTo(15);
    }

    @Test
    void a_text_that_is_too_wide_ends_in_three_dots() {
        Font font = Font.TEXT;
        String name = "a very long name indeed";
        String fitted = font.fitted(name, 30);
        assertThat(fitted).startsWith("a very").endsWith("...");
        assertThat(font.width(fitted)).isLessThanOrEqualTo(30);
        assertThat(font.fitted(name, 300)).isEqualTo(name);
    }

    @Test
    void a_surrogate_pair_is_never_cut_in_two() {
        String coats = "\uD83E\uDDE5".repeat(10);
        assertThat(Font.TEXT.fitted(coats, 30)).matches("(\uD83E\uDDE5)+\\.\\.\\.");
    }

    @Test
    void the_smallest_lettering_has_capitals_of_3_mm() {
        // The capitals of Helvetica are 0.718 of its size (Adobe Font Metrics, CapHeight 718, from memory).
        assertThat(Font.SMALL.size() * 0.718).isGreaterThanOrEqualTo(3);
    }
}

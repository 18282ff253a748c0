package org.oaktag.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TextBlockTest {

    private static String joined(TextBlock block, String by) {
        return block.lines().stream().map(TextLine::text).collect(Collectors.joining(by));
    }

    @Test
    void wrapping_keeps_every_word_and_no_line_is_too_wide() {
        String text = "the side neck point moves along the shoulder, which loses as much as the neckline gains";
        TextBlock block = TextBlock.wrapped(text, Font.SMALL, 60);
        assertThat(block.lines()).hasSizeGreaterThan(2);
        assertThat(block.width()).isLessThanOrEqualTo(60);
        assertThat(joined(block, " ")).isEqualTo(text);
    }

    @Test
    void a_number_is_not_parted_from_its_unit() {
        String text = "grows by 12.5 mm (1 3/16 in) in all, 3/4 in of it at the back";
        for (double widest = 25; widest < 90; widest++) {
            assertThat(joined(TextBlock.wrapped(text, Font.SMALL, widest), "|"))
                    .contains("12.5 mm", "(1 3/16 in)", "3/4 in");
        }
    }

    @Test
    void a_word_that_is_too_wide_is_cut_short() {
        TextBlock block = TextBlock.wrapped("a " + "x".repeat(300) + " b", Font.SMALL, 40);
        assertThat(block.lines()).hasSize(3);
        assertThat(block.width()).isLessThanOrEqualTo(40);
    }
}

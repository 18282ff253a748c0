package org.oaktag.export.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FreeTextTest {

    @Test
    void ordinary_names_of_every_script_stay_as_they_are() {
        for (String name :
                new String[] {"Mira", "S\u00F8ren", "\u05D0\u05D1", "\u4E2D\u6587", "\uD83E\uDDE5", "O'Hara & sons"}) {
            assertThat(FreeText.shown(name)).isEqualTo(name);
        }
    }

    @Test
    void white_space_becomes_a_space_and_goes_at_the_ends() {
        assertThat(FreeText.shown(" a\tb\nc\u2028d\u00A0")).isEqualTo("a b c d");
    }

    @Test
    void what_steers_a_terminal_or_turns_text_round_is_replaced() {
        assertThat(FreeText.shown("a\u001B[31mb\u0007\u202Ec\u2066d\u200Fe"))
                .isEqualTo("a\uFFFD[31mb\uFFFD\uFFFDc\uFFFDd\uFFFDe");
    }

    @Test
    void half_of_a_surrogate_pair_is_replaced() {
        assertThat(FreeText.shown("a\uD83Eb")).isEqualTo("a\uFFFDb");
    }

    @Test
    void joiners_that_shape_letters_and_emoji_stay() {
        String family = "\uD83D\uDC69\u200D\uD83D\uDD2C";
        assertThat(FreeText.shown(family)).isEqualTo(family);
    }
}

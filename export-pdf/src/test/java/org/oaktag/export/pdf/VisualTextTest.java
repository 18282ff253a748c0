package org.oaktag.export.pdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Text is set in the order and in the forms of the Unicode Standard (UAX 9; code chart FE70 to FEFF). */
class VisualTextTest {

    private static String set(String text) {
        return VisualText.of(text).characters().stream()
                .map(Character::toString)
                .collect(Collectors.joining());
    }

    @Test
    void latin_stays_as_it_is_written() {
        VisualText text = VisualText.of("hood side, for Zo\u00EB");
        assertThat(text.isAsWritten()).isTrue();
        assertThat(text.characters()).hasSize(18);
    }

    @Test
    void hebrew_runs_from_right_to_left_and_numbers_in_it_do_not() {
        assertThat(set("for \u05D0\u05D1\u05D2 12 \u05D3.")).isEqualTo("for \u05D3 12 \u05D2\u05D1\u05D0.");
        assertThat(VisualText.of("\u05D0\u05D1").isAsWritten()).isFalse();
    }

    @Test
    void brackets_are_mirrored_where_the_text_runs_from_right_to_left() {
        assertThat(set("\u05D0 (\u05D1) \u05D2")).isEqualTo("\u05D2 (\u05D1) \u05D0");
    }

    @Test
    void arabic_letters_take_the_forms_of_their_neighbours() {
        // Seen, lam, alef, meem: initial seen, the ligature of lam and alef in its final form, isolated meem.
        assertThat(VisualText.of("\u0633\u0644\u0627\u0645").characters()).isEqualTo(List.of(0xFEE1, 0xFEFC, 0xFEB3));
        // Beh three times: initial, medial, final.
        assertThat(VisualText.of("\u0628\u0628\u0628").characters()).isEqualTo(List.of(0xFE90, 0xFE92, 0xFE91));
        // A vowel mark does not part its neighbours; it stays after its letter as it is written.
        assertThat(VisualText.of("\u0628\u064E\u0628").characters()).isEqualTo(List.of(0xFE90, 0x064E, 0xFE91));
    }

    @Test
    void an_accent_is_joined_to_its_letter() {
        assertThat(set("Ange\u0301lique")).isEqualTo("Ang\u00E9lique");
    }
}

package org.oaktag.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Core and what writes sheets and files know pieces, edges and seams, and no garment. */
class FamilyWordsTest {

    private static final Path ROOT = Path.of("../..");

    @ParameterizedTest
    @ValueSource(strings = {"core", "export-svg", "export-pdf", "recipe-json"})
    void no_word_of_a_family_stands_in_the_code(String module) {
        assertThat(FamilyWords.below(ROOT.resolve(module).resolve("src/main/java")))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"blocks", "adjustments", "skirt"})
    void the_rooms_of_the_families_are_full_of_them(String room) {
        Path folder = ROOT.resolve("blocks/src/main/java/org/oaktag").resolve(room);
        assertThat(FamilyWords.below(folder)).isNotEmpty();
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
                    Name frontSleeve;              | sleeve
                    int SLEEVE_HEM = 1;            | sleeve
                    class SleeveCap               | cap, sleeve
                    Name.of("left cuffs");         | cuff
                    say("// no remark", hood);     | hood
                    say("\\" /* ", hood, " */ ");  | hood
                    int capital = recap(escape);   |
                    // the sleeve                  |
                    /** A sleeve. */ int a;        |
                    """, delimiter = '|', quoteCharacter = '`')
    void identifiers_and_strings_are_looked_through_and_comments_are_not(String source, String words) {
        assertThat(String.join(", ", FamilyWords.inSource(source))).isEqualTo(words == null ? "" : words);
    }

    @Test
    void a_name_of_a_file_counts() {
        assertThat(FamilyWords.inSource("KnitSkirts.java")).containsExactly("skirt");
    }
}

package org.oaktag.laws.garment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;

/** What a name may be made of, judged by a regular expression over the categories of Unicode. */
class NameProperties {
    private static final String LETTER = "[\\p{Ll}\\p{Lo}\\p{Mn}\\p{Mc}\\p{Nd}]";
    private static final Pattern WORDS = Pattern.compile(LETTER + "+( " + LETTER + "+)*");

    @Property
    void a_name_is_words_of_lower_case_letters_and_digits_parted_by_single_spaces(@ForAll("words") String words) {
        boolean isName = WORDS.matcher(words).matches();
        Statistics.label("words").collect(isName ? "name" : "none");
        Statistics.label("words").coverage(cover -> {
            cover.check("name").percentage(share -> share > 10);
            cover.check("none").percentage(share -> share > 10);
        });
        if (isName) {
            assertThat(Name.of(words).value()).isEqualTo(words);
        } else {
            assertThatThrownBy(() -> Name.of(words)).isInstanceOf(PatternException.class);
        }
    }

    /** Letters of several scripts and planes, digits, marks and spaces, and now and then what no name may have. */
    @Provide
    Arbitrary<String> words() {
        Arbitrary<Integer> good =
                Arbitraries.of((int) 'a', (int) 'ä', (int) '7', (int) ' ', 0x5D0, 0x663, 0x301, 0x903, 0x7E2B, 0x1D4B6);
        Arbitrary<Integer> any = Arbitraries.integers().between(0, Character.MAX_CODE_POINT);
        return Arbitraries.frequencyOf(Tuple.of(30, good), Tuple.of(1, any))
                .list()
                .ofMaxSize(8)
                .map(letters -> letters.stream()
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString());
    }
}

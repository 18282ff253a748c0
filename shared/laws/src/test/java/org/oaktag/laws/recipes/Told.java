package org.oaktag.laws.recipes;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.oaktag.PatternException;

/**
 * Says of a text for makers that it is one: a line of words and figures, with nothing of the program showing through.
 */
final class Told {

    private static final int LONGEST = 400;
    private static final Pattern PROGRAM = Pattern.compile(
            "\\bnull\\b|\\bNaN\\b|Infinity|Optional|[A-Za-z]+\\[|@[0-9a-f]{4,}|Exception|org\\.oaktag|[0-9]E-?[0-9]|[0-9]\\.[0-9]{4,}");

    private Told() {}

    static void assertReadable(String text) {
        assertThat(text).doesNotContainPattern(PROGRAM).hasSizeLessThanOrEqualTo(LONGEST);
        assertThat(text.lines().count()).as(text).isLessThanOrEqualTo(1);
    }

    static void assertReadable(PatternException refused) {
        assertThat(refused.thing()).isNotBlank();
        assertThat(refused.rule()).isNotBlank();
        assertThat(refused.given()).isNotBlank();
        assertReadable(refused.thing());
        assertReadable(refused.rule());
        assertReadable(refused.given());
        assertReadable(refused.remedy());
    }
}

package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;

/**
 * The name of a piece, an edge, a notch, a seam or a measure: lower-case words with single spaces, such as
 * {@code "cap front"}.
 *
 * <pre>{@code
 * Name badge = Name.of("name badge");
 * badge.hyphenated();                  // = name-badge
 * badge.with("left");                  // = name badge left
 * }</pre>
 *
 * <p>Names are open: any words will do. The well-known ones are constants, {@link EdgeNames} for edges. As letters of
 * every script count, a name may be in the maker's own language. Immutable.
 */
public final class Name implements Comparable<Name> {

    private static final int LONGEST = 60;

    private final String value;

    /**
     * Names are compared more often than anything else, and nearly always with another one: the hash tells that at
     * once.
     */
    private final int hash;

    private Name(String value) {
        this.value = value;
        this.hash = value.hashCode();
    }

    /**
     * Returns the name made of these words.
     *
     * @throws PatternException if the name is not made of lower-case words of letters and digits, parted by single
     *     spaces, 1 to 60 characters in all
     */
    public static Name of(String words) {
        if (words.length() > LONGEST || !isMadeOfWords(words)) {
            throw PatternException.of(
                    "name",
                    "must be lower-case words of letters and digits with single spaces, 1 to " + LONGEST
                            + " characters",
                    "'" + words + "'",
                    "write it like 'left front'");
        }
        return new Name(words);
    }

    /** Tells whether every space stands between two letters or digits, and whether there is nothing else. */
    private static boolean isMadeOfWords(String value) {
        boolean inWord = false;
        int i = 0;
        while (i < value.length()) {
            int character = value.codePointAt(i);
            boolean letter = isOfWord(character);
            if (!letter && !(inWord && character == ' ')) {
                return false;
            }
            inWord = letter;
            i += Character.charCount(character);
        }
        return inWord;
    }

    private static boolean isOfWord(int character) {
        return switch (Character.getType(character)) {
            case Character.LOWERCASE_LETTER,
                    Character.OTHER_LETTER,
                    Character.NON_SPACING_MARK,
                    Character.COMBINING_SPACING_MARK,
                    Character.DECIMAL_DIGIT_NUMBER -> true;
            default -> false;
        };
    }

    /** Returns the words. */
    public String value() {
        return value;
    }

    /** Returns the name as one word, for files and identifiers: {@code "cap-front"}. */
    public String hyphenated() {
        return value.replace(' ', '-');
    }

    /** Returns this name with more words behind it. */
    public Name with(String words) {
        return Name.of(value + " " + Objects.requireNonNull(words, "words"));
    }

    /**
     * Returns the exception for a name that is not among those that exist, with the nearest of them.
     *
     * @param kind what was looked for, such as {@code "edge of piece 'front'"}
     * @param wanted the name that was asked for
     * @param existing the names that there are
     */
    static PatternException unknown(String kind, Name wanted, List<Name> existing) {
        return Spelling.unknown(
                kind, wanted.value, existing.stream().map(Name::value).toList());
    }

    /** Tells whether the other is a name of the same words. */
    @Override
    public boolean equals(@Nullable Object other) {
        return this == other || (other instanceof Name name && hash == name.hash && value.equals(name.value));
    }

    @Override
    public int hashCode() {
        return hash;
    }

    @Override
    public int compareTo(Name other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}

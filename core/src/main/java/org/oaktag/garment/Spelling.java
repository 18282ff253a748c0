package org.oaktag.garment;

import java.util.Collection;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;

/**
 * Finds what somebody who mistyped a word most likely meant.
 *
 * <pre>{@code
 * Spelling.nearest("sholder", List.of("shoulder", "side", "hem"));   // = Optional[shoulder]
 * }</pre>
 */
public final class Spelling {

    private Spelling() {}

    /**
     * Returns the known word nearest to the one typed, by edit distance, where it is near
     * enough to be meant: at most a third of its letters differ. Where none is that near, what was typed may be part of
     * one: {@code "bust"} of {@code "bust girth"}.
     *
     * @param typed the word as typed
     * @param known the words that exist
     * @return the nearest, the first in alphabetical order among equals, or empty where none is near
     */
    public static Optional<String> nearest(String typed, Collection<String> known) {
        Objects.requireNonNull(typed, "typed");
        return known.stream()
                .filter(word -> distance(typed, word) * 3 <= Math.max(typed.length(), word.length()))
                .min(Comparator.<String>comparingInt(word -> distance(typed, word))
                        .thenComparing(Comparator.naturalOrder()))
                .or(() -> known.stream()
                        .filter(word -> hasWords(word, typed))
                        .min(Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder())));
    }

    /** Tells whether one or two letters of the word, and no more than a sixth of it, differ from one that exists. */
    static boolean isSlip(String typed, Collection<String> known) {
        return known.stream().anyMatch(word -> {
            int distance = distance(typed, word);
            return distance > 0 && distance <= 2 && distance * 6 <= Math.max(typed.length(), word.length());
        });
    }

    private static boolean hasWords(String known, String typed) {
        return !typed.isBlank() && (" " + spaced(known) + " ").contains(" " + spaced(typed) + " ");
    }

    private static String spaced(String words) {
        return words.replace('_', ' ').replace('-', ' ').strip();
    }

    /**
     * Returns the refusal of a word that is not among those that exist: it lists them, and asks whether the nearest was
     * meant.
     *
     * @param thing what was looked for, such as {@code "edge of piece 'front'"}
     * @param typed the word as typed
     * @param known the words that exist
     */
    public static PatternException unknown(String thing, String typed, Collection<String> known) {
        return PatternException.of(
                thing,
                "must be one of " + String.join(", ", known),
                typed.isEmpty() ? "nothing" : "'" + typed + "'",
                meant(typed, known));
    }

    /** Returns the question whether the nearest of the words that exist was meant, or nothing where none is near. */
    public static String meant(String typed, Collection<String> known) {
        return nearest(typed, known).map(near -> "did you mean '" + near + "'?").orElse("");
    }

    /** Letters put in, left out, changed, or swapped with their neighbour (F. Damerau, 1964), at the least. */
    private static int distance(String a, String b) {
        int[][] rows = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                rows[i][j] = i == 0 || j == 0 ? i + j : least(rows, a, b, i, j);
            }
        }
        return rows[a.length()][b.length()];
    }

    private static int least(int[][] rows, String a, String b, int i, int j) {
        int changed = rows[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(changed, Math.min(rows[i - 1][j], rows[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, rows[i - 2][j - 2] + 1) : least;
    }
}

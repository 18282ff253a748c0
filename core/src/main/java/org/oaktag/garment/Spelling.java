package org.oaktag.garment;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what somebody who mistyped a word most likely meant. */
public final class Spelling {

    private Spelling() {}

    /**
     * Returns the known word nearest to the one typed, by edit distance (V. Levenshtein, 1966), where it is near
     * enough to be meant: at most a third of its letters differ.
     *
     * @param typed the word as typed
     * @param known the words that exist
     * @return the nearest, the first in alphabetical order among equals, or empty where none is near
     */
    public static Optional<String> nearest(String typed, Collection<String> known) {
        return known.stream()
                .filter(word -> distance(typed, word) * 3 <= Math.max(typed.length(), word.length()))
                .min(Comparator.<String>comparingInt(word -> distance(typed, word))
                        .thenComparing(Comparator.naturalOrder()));
    }

    private static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int substitution = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(substitution, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}

package org.oaktag.export.pdf;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The forms that Arabic letters take beside each other, as the Unicode presentation forms name them.
 *
 * <p>The tables are read from the compatibility decompositions of the blocks FB50 to FBFF and FE70 to FEFF, in which
 * the forms of a letter follow each other: isolated, final and, where it joins to the next letter too, initial and
 * medial.
 */
final class ArabicForms {

    private static final int ISOLATED = 0;
    private static final int FINAL = 1;
    private static final int INITIAL = 2;
    private static final int MEDIAL = 3;

    private static final int TATWEEL = 0x640;
    private static final int LAM = 0x644;

    /** The forms of each letter, or of lam with an alef, keyed by the text that they stand for. */
    private static final Map<String, List<Integer>> FORMS = forms();

    private ArabicForms() {}

    private static Map<String, List<Integer>> forms() {
        Map<String, List<Integer>> forms = new HashMap<>();
        for (int[] block : new int[][] {{0xFE80, 0xFEFC}, {0xFB50, 0xFBB1}}) {
            for (int c = block[0]; c <= block[1]; c++) {
                String letter = Normalizer.normalize(Character.toString(c), Normalizer.Form.NFKC);
                forms.computeIfAbsent(letter, each -> new ArrayList<>()).add(c);
            }
        }
        return Map.copyOf(forms);
    }

    /** Returns the letters, in the order in which they are written, each in its form; lam and alef become one. */
    static int[] shaped(int[] letters) {
        List<Integer> shaped = new ArrayList<>();
        for (int i = 0; i < letters.length; i++) {
            String text = Character.toString(letters[i]);
            int last = i;
            if (letters[i] == LAM && i + 1 < letters.length) {
                String both = text + Character.toString(letters[i + 1]);
                if (FORMS.containsKey(both)) {
                    text = both;
                    last = i + 1;
                }
            }
            List<Integer> forms = FORMS.get(text);
            if (forms == null) {
                shaped.add(letters[i]);
                continue;
            }
            boolean before = joinsOn(neighbour(letters, i, -1));
            boolean after = forms.size() > INITIAL && takesJoin(neighbour(letters, last, 1));
            int form = before ? (after ? MEDIAL : FINAL) : (after ? INITIAL : ISOLATED);
            shaped.add(forms.get(Math.min(form, forms.size() - 1)));
            i = last;
        }
        return shaped.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Returns the next letter in that direction, past marks, or -1. */
    private static int neighbour(int[] letters, int from, int step) {
        int i = from + step;
        while (i >= 0 && i < letters.length && Character.getType(letters[i]) == Character.NON_SPACING_MARK) {
            i += step;
        }
        return i >= 0 && i < letters.length ? letters[i] : -1;
    }

    private static boolean joinsOn(int letter) {
        return letter == TATWEEL || forms(letter).size() > INITIAL;
    }

    private static boolean takesJoin(int letter) {
        return letter == TATWEEL || forms(letter).size() > FINAL;
    }

    private static List<Integer> forms(int letter) {
        return letter < 0 ? List.of() : FORMS.getOrDefault(Character.toString(letter), List.of());
    }
}

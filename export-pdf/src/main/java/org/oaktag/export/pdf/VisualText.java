package org.oaktag.export.pdf;

import java.text.Bidi;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * A line of text in the order in which it is set from left to right, its letters in the forms that they take there. PDF
 * sets glyphs where it is told to; who reads from right to left has to be thought of by the writer.
 *
 * <p>The order is that of the Unicode bidirectional algorithm. Arabic letters take the forms of their neighbours; other
 * scripts whose letters join or change place (those of India, for example) are set letter by letter.
 *
 * @param characters the code points from left to right
 * @param isAsWritten whether they are those of the text in their own order
 */
record VisualText(List<Integer> characters, boolean isAsWritten) {

    private static final Map<Integer, Integer> MIRRORED = Map.ofEntries(
            Map.entry((int) '(', (int) ')'),
            Map.entry((int) ')', (int) '('),
            Map.entry((int) '[', (int) ']'),
            Map.entry((int) ']', (int) '['),
            Map.entry((int) '{', (int) '}'),
            Map.entry((int) '}', (int) '{'),
            Map.entry((int) '<', (int) '>'),
            Map.entry((int) '>', (int) '<'),
            Map.entry((int) '\u00AB', (int) '\u00BB'),
            Map.entry((int) '\u00BB', (int) '\u00AB'));

    VisualText {
        characters = List.copyOf(characters);
    }

    static VisualText of(String text) {
        // Composed, because a font sets an accented letter better than a letter and an accent.
        String composed = Normalizer.normalize(text, Normalizer.Form.NFC);
        Bidi bidi = new Bidi(composed, Bidi.DIRECTION_LEFT_TO_RIGHT);
        if (bidi.isLeftToRight()) {
            return new VisualText(composed.codePoints().boxed().toList(), composed.equals(text));
        }
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        Integer[] order = new Integer[count];
        for (int i = 0; i < count; i++) {
            levels[i] = (byte) bidi.getRunLevel(i);
            order[i] = i;
        }
        Bidi.reorderVisually(levels, 0, order, 0, count);
        List<Integer> visual = new ArrayList<>();
        for (int run : order) {
            int[] characters = composed.substring(bidi.getRunStart(run), bidi.getRunLimit(run))
                    .codePoints()
                    .toArray();
            boolean rightToLeft = bidi.getRunLevel(run) % 2 == 1;
            IntStream set = rightToLeft ? reversed(ArabicForms.shaped(characters)) : Arrays.stream(characters);
            set.forEach(visual::add);
        }
        return new VisualText(visual, false);
    }

    private static IntStream reversed(int[] characters) {
        return IntStream.range(0, characters.length)
                .map(i -> characters[characters.length - 1 - i])
                .map(c -> MIRRORED.getOrDefault(c, c));
    }
}

package org.oaktag.adjust;

import java.util.List;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;

/**
 * How many cuts a notch may have, by the words in which a maker names the edges that it matches; the rule is told with
 * {@link Notch#count}.
 */
enum NotchCuts {
    FRONT,
    BACK,
    BOTH,
    NEITHER;

    private static final List<Integer> ON_FRONT = List.of(1, 3);
    private static final List<Integer> ON_BACK = List.of(2, 3);
    private static final List<Integer> ANYWHERE = List.of(1, 3, 2);

    /** Returns the numbers of cuts, the one that is tried first before the others. */
    List<Integer> counts() {
        return switch (this) {
            case FRONT, BOTH -> ON_FRONT;
            case BACK -> ON_BACK;
            case NEITHER -> ANYWHERE;
        };
    }

    /** Returns what two edges that are sewn to each other allow; where they say nothing, the seam's name does. */
    static NotchCuts of(Name seam, EdgeRef a, EdgeRef b) {
        NotchCuts ofEdges = of(says(a, "front") || says(b, "front"), says(a, "back") || says(b, "back"));
        return ofEdges == NEITHER ? of(says(seam, "front"), says(seam, "back")) : ofEdges;
    }

    private static NotchCuts of(boolean front, boolean back) {
        if (front) {
            return back ? BOTH : FRONT;
        }
        return back ? BACK : NEITHER;
    }

    private static boolean says(EdgeRef edge, String word) {
        return says(edge.piece(), word) || says(edge.edge(), word);
    }

    private static boolean says(Name name, String word) {
        String words = name.value();
        int at = words.indexOf(word);
        while (at >= 0) {
            int end = at + word.length();
            if ((at == 0 || words.charAt(at - 1) == ' ') && (end == words.length() || words.charAt(end) == ' ')) {
                return true;
            }
            at = words.indexOf(word, end);
        }
        return false;
    }
}

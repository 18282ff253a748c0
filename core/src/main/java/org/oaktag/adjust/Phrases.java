package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Tells apart phrases that stand more than once. */
final class Phrases {

    private Phrases() {}

    /** Returns each phrase as it is, or followed by which of them it is where there are several. */
    static List<String> told(List<String> phrases) {
        List<String> told = new ArrayList<>();
        for (int i = 0; i < phrases.size(); i++) {
            String phrase = phrases.get(i);
            int which = Collections.frequency(phrases.subList(0, i + 1), phrase);
            told.add(Collections.frequency(phrases, phrase) == 1 ? phrase : phrase + " (" + which + ")");
        }
        return List.copyOf(told);
    }
}

package org.oaktag.adjust;

import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.garment.Spelling;

/** The refusal of a word that is not among those that are known. */
final class Unknown {

    private Unknown() {}

    static PatternException among(String thing, String wanted, List<String> known) {
        return PatternException.of(
                thing,
                "must be one of " + known,
                "'" + wanted + "'",
                Spelling.nearest(wanted, known)
                        .map(near -> "did you mean '" + near + "'?")
                        .orElse(""));
    }
}

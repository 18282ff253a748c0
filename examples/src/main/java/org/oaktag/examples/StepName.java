package org.oaktag.examples;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.oaktag.garment.Change;

/**
 * A step under the name by which files and tables know it: {@code 01-widen-the-neckline}. The draft is number 0.
 *
 * @param number its place in the recipe
 * @param change what it did
 */
record StepName(int number, Change change) {

    static List<StepName> of(List<Change> history) {
        List<StepName> steps = new ArrayList<>();
        for (Change change : history) {
            steps.add(new StepName(steps.size(), change));
        }
        return steps;
    }

    String file() {
        return String.format(Locale.ROOT, "%02d-%s", number, FileWords.of(change.step()));
    }
}

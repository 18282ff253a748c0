package org.oaktag.export.sheet;

import java.util.List;
import org.oaktag.garment.Garment;

/**
 * What the head of a pattern tells of: a garment, or one style in several sizes.
 *
 * @param garment the garment; of several sizes the first, said to be for all of them
 * @param sizes the names of the sizes that are drawn over each other; empty for a single one
 * @param cautions the cautions
 */
record PatternHead(Garment garment, List<String> sizes, List<String> cautions) {

    static PatternHead of(Garment garment) {
        return new PatternHead(garment, List.of(), garment.cautions());
    }

    static PatternHead of(Nest nest) {
        return new PatternHead(nest.whole(), nest.names(), nest.cautions());
    }
}

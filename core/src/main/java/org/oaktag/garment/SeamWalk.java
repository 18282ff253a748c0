package org.oaktag.garment;

import java.util.List;
import org.oaktag.PatternException;

/**
 * Every seam of a garment, walked. Immutable.
 *
 * @param seams the seams in the order of the garment
 */
public record SeamWalk(List<WalkedSeam> seams) {

    /** Copies the list. */
    public SeamWalk {
        seams = List.copyOf(seams);
    }

    /** Walks every seam of the garment. */
    public static SeamWalk of(Garment garment) {
        return new SeamWalk(garment.seams().stream()
                .map(seam -> WalkedSeam.of(garment, seam))
                .toList());
    }

    /** Tells whether every seam is true. */
    public boolean isTrue() {
        return seams.stream().allMatch(WalkedSeam::isTrue);
    }

    /** Returns the seams that are not true. */
    public List<WalkedSeam> untrue() {
        return seams.stream().filter(seam -> !seam.isTrue()).toList();
    }

    /**
     * Returns the walk of the seam of that name.
     *
     * @throws PatternException if there is none; the message lists those that exist
     */
    public WalkedSeam seam(Name name) {
        return seams.stream()
                .filter(walked -> walked.seam().name().equals(name))
                .findFirst()
                .orElseThrow(() -> Name.unknown(
                        "walked seam",
                        name,
                        seams.stream().map(walked -> walked.seam().name()).toList()));
    }
}

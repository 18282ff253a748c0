package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.oaktag.PatternException;

/**
 * Every seam of a garment, walked. Immutable.
 *
 * <pre>{@code
 * SeamWalk walk = block.walkSeams();
 * walk.isTrue();                          // = true
 * walk.seam(SIDE_SEAM).error();           // = 0.0 mm
 * for (WalkedSeam wrong : walk.untrue()) {
 *     String mend = wrong.text() + " " + wrong.mend().orElse("");
 * }
 * }</pre>
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

    /**
     * Walks every seam of a garment that was made from an earlier one. A seam that is the same as before, between edges
     * that are the same, need not be walked again; a step redraws few edges, so that most are of that kind.
     */
    static SeamWalk since(Garment earlier, Garment garment) {
        Kept kept = garment.keptOf(earlier);
        List<WalkedSeam> before = earlier.walkSeams().seams;
        List<Seam> all = garment.seams();
        List<WalkedSeam> seams = new ArrayList<>(all.size());
        for (int i = 0; i < all.size(); i++) {
            Seam seam = all.get(i);
            @Nullable
            WalkedSeam known =
                    i < before.size() && before.get(i).seam().equals(seam) ? before.get(i) : find(before, seam);
            seams.add(known != null && kept.has(seam) ? known : WalkedSeam.of(garment, seam));
        }
        return new SeamWalk(seams);
    }

    private static @Nullable WalkedSeam find(List<WalkedSeam> all, Seam seam) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).seam().equals(seam)) {
                return all.get(i);
            }
        }
        return null;
    }

    /** Tells whether every seam is true. */
    public boolean isTrue() {
        for (WalkedSeam seam : seams) {
            if (!seam.isTrue()) {
                return false;
            }
        }
        return true;
    }

    /** Returns {@link WalkedSeam#text} of every seam, a line each. */
    public String text() {
        return seams.stream().map(seam -> seam.text() + "\n").collect(Collectors.joining());
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

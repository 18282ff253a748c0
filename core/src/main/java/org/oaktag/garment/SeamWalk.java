package org.oaktag.garment;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
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
     * Walks every seam of a garment that was made from an earlier one. A seam that is the same as before, between pieces
     * that are the same, need not be walked again; a step redraws few pieces, so that most are of that kind.
     */
    static SeamWalk since(Garment earlier, Garment garment) {
        Set<Name> same = garment.shared(earlier, Objects::equals);
        Map<Name, WalkedSeam> before = new HashMap<>();
        for (WalkedSeam walked : earlier.walkSeams().seams) {
            before.put(walked.seam().name(), walked);
        }
        List<WalkedSeam> seams = new ArrayList<>();
        for (Seam seam : garment.seams()) {
            WalkedSeam known = before.get(seam.name());
            boolean stands =
                    known != null && known.seam().equals(seam) && joins(seam.a(), same) && joins(seam.b(), same);
            seams.add(stands ? known : WalkedSeam.of(garment, seam));
        }
        return new SeamWalk(seams);
    }

    private static boolean joins(SeamSide side, Set<Name> pieces) {
        for (SeamSide.Run run : side.runs()) {
            if (!pieces.contains(run.edge().piece())) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether every seam is true. */
    public boolean isTrue() {
        return seams.stream().allMatch(WalkedSeam::isTrue);
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

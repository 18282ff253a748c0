package org.oaktag.skirt;

import java.util.Set;
import org.oaktag.PatternException;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;

/** What pockets that open at the side seam need. */
final class SidePockets {

    private SidePockets() {}

    /** Refuses a waist or a lining that is fitted already, which a pocket would cut into. */
    static void requireBareWaist(Garment garment, String pocket) {
        boolean lined = garment.hasPiece(SkirtFinishNames.lining(SkirtNames.FRONT));
        Shell.requireFree(garment, pocket, lined, "a lining");
        Shell.requireFree(garment, pocket, Shell.isFinishedAtWaist(garment), "a waist that is finished");
    }

    /** Refuses a side seam that holds a zip or a pocket. */
    static void requireRoom(Garment garment, String pocket) {
        Piece front = Shell.of(garment, SkirtNames.FRONT);
        boolean zip = front.notch(EdgeNames.SIDE, SkirtFinishNames.ZIP_END).isPresent();
        if (zip || Shell.hasPocketInSide(garment)) {
            throw PatternException.of(
                    pocket,
                    "needs a side seam without zip or pocket",
                    zip ? "a zip in the left one" : "a pocket in it",
                    zip ? "set the zip at the centre back" : "leave one out");
        }
        Seam seam = garment.seam(SkirtNames.SIDE_SEAM);
        Set<EdgeRef> plain = Set.of(side(SkirtNames.FRONT), side(SkirtNames.BACK));
        boolean other = seam.a().runs().size() + seam.b().runs().size() > 2
                || plain.stream().anyMatch(edge -> !seam.has(edge));
        if (other) {
            throw PatternException.of(
                    pocket,
                    "needs a side seam of the front's side and the back's",
                    seam.a().text() + " and " + seam.b().text(),
                    "take this step before the side is parted");
        }
    }

    private static EdgeRef side(Name half) {
        return EdgeRef.of(half, EdgeNames.SIDE);
    }
}

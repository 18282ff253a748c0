package org.oaktag.sewing;

import java.util.List;

/** Which stitches suit which cloth; common practice. */
final class Stitches {

    private Stitches() {}

    /**
     * Returns the stitches of a seam.
     *
     * @param knit whether one of the cloths stretches, so that the seam must
     * @param held whether it only holds layers together that a later seam sews again
     */
    static List<Stitch> join(boolean knit, boolean held) {
        if (held) {
            return List.of(knit ? Stitch.OVEREDGE : Stitch.LOCKSTITCH);
        }
        return knit ? List.of(Stitch.FOUR_THREAD_OVEREDGE) : List.of(Stitch.LOCKSTITCH, Stitch.OVEREDGE);
    }

    /** Returns the stitches that hold what is laid on: nothing stretches there. */
    static List<Stitch> layOn() {
        return List.of(Stitch.LOCKSTITCH);
    }

    /** Returns the stitches of a hem that is turned up. */
    static List<Stitch> hem(boolean knit) {
        return List.of(knit ? Stitch.COVER : Stitch.LOCKSTITCH);
    }

    /** Returns the stitches across the end of a band. */
    static List<Stitch> across() {
        return List.of(Stitch.LOCKSTITCH);
    }

    /** Returns the stitches that keep a loose edge from fraying, or from curling. */
    static List<Stitch> neaten() {
        return List.of(Stitch.OVEREDGE);
    }

    /** Returns the stitches of gathering rows, set long. */
    static List<Stitch> gather() {
        return List.of(Stitch.LOCKSTITCH);
    }
}

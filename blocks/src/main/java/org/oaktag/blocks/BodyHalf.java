package org.oaktag.blocks;

import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * The front or the back of a body, and the shares by which its curves are drawn. The shares are our own, found by
 * drafting the bodies of a survey at several eases and looking at the result; there is no published source for them.
 */
enum BodyHalf {
    /** Scooped more under the arm, as the arm moves forward. */
    FRONT(-8, 0.58, 0.66, 0.60),
    /** Flatter under the arm, with room across the shoulder blades. */
    BACK(4, 0.52, 0.62, 0.50);

    private final double besideAcrossBack;
    private final double pitchShare;
    private final double fallShare;
    private final double runShare;

    BodyHalf(double besideAcrossBack, double pitchShare, double fallShare, double runShare) {
        this.besideAcrossBack = besideAcrossBack;
        this.pitchShare = pitchShare;
        this.fallShare = fallShare;
        this.runShare = runShare;
    }

    /** Returns which half a piece is: the back where it bears the back's name, else the front. */
    static BodyHalf of(Piece piece) {
        return piece.name().equals(TopNames.BACK) ? BACK : FRONT;
    }

    /** Returns the name of its piece. */
    Name piece() {
        return this == FRONT ? TopNames.FRONT : TopNames.BACK;
    }

    /** Returns how far outside half the across back measure the pitch point lies, in millimetres. */
    double besideAcrossBack() {
        return besideAcrossBack;
    }

    /** Returns how far down the scye depth, from the nape, the pitch point lies, as a share. */
    double pitchShare() {
        return pitchShare;
    }

    /** Returns the upright handle at the pitch point as a share of the fall from there to the underarm point. */
    double fallShare() {
        return fallShare;
    }

    /** Returns the handle at the underarm point as a share of the run from the pitch point to there. */
    double runShare() {
        return runShare;
    }
}

package org.oaktag.blocks;

import org.oaktag.garment.Aspect;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;

/**
 * The front or the back of a body, and the shares by which its armhole is drawn and notched. The notches lie a third to
 * two fifths of the armhole up from the underarm point, single in front and double behind (common practice); where the
 * armhole is upright is our own choice within what published drafts do.
 */
enum BodyHalf {
    /** Scooped more under the arm, as the arm moves forward: its pitch lies nearer to the centre, and lower. */
    FRONT(0.60, 0.35),
    /** Flatter under the arm, with room across the shoulder blades. */
    BACK(0.56, 0.38);

    private final double pitchShare;
    private final double notchShare;

    BodyHalf(double pitchShare, double notchShare) {
        this.pitchShare = pitchShare;
        this.notchShare = notchShare;
    }

    /** Returns which half a piece is: the back where it bears the back's name, else the front. */
    static BodyHalf of(Piece piece) {
        return piece.name().equals(TopNames.BACK) ? BACK : FRONT;
    }

    /** Returns at which side of the garment it lies. */
    Aspect aspect() {
        return this == FRONT ? Aspect.FRONT : Aspect.BACK;
    }

    /** Returns the name of its piece. */
    Name piece() {
        return this == FRONT ? TopNames.FRONT : TopNames.BACK;
    }

    /** Returns how far down the depth of the armhole, from the shoulder point, the armhole is upright, as a share. */
    double pitchShare() {
        return pitchShare;
    }

    /** Returns how far up from the underarm point the notch lies, as a share of the armhole's length. */
    double notchShare() {
        return notchShare;
    }
}

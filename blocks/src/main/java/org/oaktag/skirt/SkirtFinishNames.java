package org.oaktag.skirt;

import org.oaktag.garment.Name;

/**
 * The names of what finishes a skirt: its pieces, edges, seams and notches.
 *
 * <pre>{@code
 * SkirtFinishNames.WAISTBAND.value();   // = waistband
 * }</pre>
 */
public final class SkirtFinishNames {

    /** The seam at the centre of a back cut as a mirrored pair, and its notches. */
    public static final Name CENTRE_BACK_SEAM = Name.of("centre back seam");

    /** The upper part of the centre back, which a zip closes. */
    public static final Name ZIP = Name.of("zip");

    /** The notch at the lower end of a zip, from which the seam is sewn. */
    public static final Name ZIP_END = Name.of("zip end");

    /** The top of the button stand, from its folded edge to centre front. */
    public static final Name STAND_TOP = Name.of("stand top");

    /** The hem of the button stand, from centre front to its folded edge. */
    public static final Name STAND_HEM = Name.of("stand hem");

    /** The hem of the facing that is cut on to the button stand. */
    public static final Name STAND_FACING_HEM = Name.of("stand facing hem");

    /** The inner edge of the facing that is cut on to the button stand. */
    public static final Name STAND_FACING = Name.of("stand facing");

    /** The upper edge of the facing that is cut on to the button stand. */
    public static final Name STAND_FACING_TOP = Name.of("stand facing top");

    /** The line at the centre of a front that laps. */
    public static final Name CENTRE_FRONT = Name.of("centre front");

    /** The fold of a button stand. */
    public static final Name STAND_FOLD = Name.of("stand fold");

    /** The fold of a vent or a pleat. */
    public static final Name VENT_FOLD = Name.of("vent fold");

    /** The band at the waist. */
    public static final Name WAISTBAND = Name.of("waistband");

    /** The interfacing of the band. */
    public static final Name WAISTBAND_INTERFACING = WAISTBAND.with("interfacing");

    /** The end of a band that reaches under its other end. */
    public static final Name UNDERLAP = Name.of("underlap");

    /** The end of a band that reaches over its other end beyond the opening. */
    public static final Name OVERLAP = Name.of("overlap");

    /** The fold along the middle of a band. */
    public static final Name BAND_FOLD = Name.of("fold");

    /** The seam of the skirt's waist and its band. */
    public static final Name WAISTBAND_SEAM = Name.of("waistband seam");

    /** The seam of the inner half of the band. */
    public static final Name WAISTBAND_FOLD_SEAM = Name.of("waistband fold");

    /** The seam that closes a band to a ring. */
    public static final Name WAISTBAND_CLOSING_SEAM = Name.of("waistband closing");

    /** The seam of the waist and its facing. */
    public static final Name WAIST_FACING_SEAM = Name.of("waist facing");

    /** The side seam of the facing of the waist. */
    public static final Name WAIST_FACING_SIDE_SEAM = Name.of("waist facing side");

    /** The seam of the waist, or its facing, and the lining. */
    public static final Name LINING_SEAM = Name.of("lining waist");

    /** The seam of the hem and its facing. */
    public static final Name HEM_FACING_SEAM = Name.of("hem facing");

    /** The part of the side seam along which a pocket opens. */
    public static final Name POCKET_OPENING = Name.of("pocket opening");

    /** The side seam from below a pocket down. */
    public static final Name SIDE_BELOW = Name.of("side below pocket");

    /** The edge along which two parts of a pocket bag are joined. */
    public static final Name BAG = Name.of("bag");

    /** The part of a pocket in the side seam that is sewn to the front. */
    public static final Name FRONT_BAG = Name.of("front pocket bag");

    /** The part of a pocket in the side seam that is sewn to the back. */
    public static final Name BACK_BAG = Name.of("back pocket bag");

    /** The slanted edge of the front along which a pocket opens. */
    public static final Name SLANT = Name.of("slant");

    /** The part of a slanted pocket that fills the corner of the front, with the back of its bag. */
    public static final Name SIDE_FRONT = Name.of("side front");

    /** The part of a slanted pocket that is sewn to the slanted edge, the front of its bag. */
    public static final Name POCKET_FACING = Name.of("pocket facing");

    /** A pocket that is laid on. */
    public static final Name POCKET = Name.of("pocket");

    private SkirtFinishNames() {}

    /** Returns the name of the facing of the waist of a half. */
    public static Name waistFacing(Name half) {
        return half.with("waist facing");
    }

    /** Returns the name of the curved band of a half. */
    public static Name waistband(Name half) {
        return half.with("waistband");
    }

    /** Returns the name of the lining of a half. */
    public static Name lining(Name half) {
        return half.with("lining");
    }

    /** Returns the name of the facing of the hem of a half. */
    public static Name hemFacing(Name half) {
        return half.with("hem facing");
    }
}

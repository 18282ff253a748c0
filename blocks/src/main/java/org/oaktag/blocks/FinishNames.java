package org.oaktag.blocks;

import org.oaktag.garment.Name;

/**
 * The names of the parts that finish a top: facings, lining, neckband, pockets.
 *
 * <pre>{@code
 * top.adjust(faceNeckline(cm(6), shell)).piece(FinishNames.FRONT_FACING).outline().area();
 * }</pre>
 */
public final class FinishNames {

    /** The facing of the front's neckline, drawn as its half. */
    public static final Name FRONT_FACING = Name.of("front neck facing");

    /** The facing of the back's neckline, drawn as its half. */
    public static final Name BACK_FACING = Name.of("back neck facing");

    /** The seam of the front's neckline and its facing. */
    public static final Name FRONT_FACING_SEAM = Name.of("front neck facing");

    /** The seam of the back's neckline and its facing. */
    public static final Name BACK_FACING_SEAM = Name.of("back neck facing");

    /** The seam of both facings at the shoulder. */
    public static final Name FACING_SHOULDER_SEAM = Name.of("neck facing shoulder");

    /** The lining of the front, drawn as its half. */
    public static final Name FRONT_LINING = Name.of("front lining");

    /** The lining of the back, drawn as its half. */
    public static final Name BACK_LINING = Name.of("back lining");

    /** The notch on both sides of the neck seam of the back lining up to which its pleat reaches. */
    public static final Name PLEAT_NOTCH = Name.of("pleat");

    /** The band round the neckline, drawn as its half from centre front. */
    public static final Name NECKBAND = Name.of("neckband");

    /** The seam of neckline and neckband. */
    public static final Name NECKBAND_SEAM = Name.of("neckband");

    /** The seam that closes the neckband at centre back. */
    public static final Name NECKBAND_CLOSING_SEAM = Name.of("neckband closing");

    /** The seam of both halves of the folded neckband. */
    public static final Name NECKBAND_FOLD_SEAM = Name.of("neckband fold");

    /** Round the neckband. */
    public static final Name NECKBAND_GIRTH = Name.of("neckband girth");

    /** The end of a neckband at centre back. */
    public static final Name CENTRE_BACK = Name.of("centre back");

    /** A pocket at the centre of the front, for both hands. */
    public static final Name POUCH = Name.of("pouch");

    /** A pocket laid on to the front. */
    public static final Name POCKET = Name.of("pocket");

    private FinishNames() {}
}

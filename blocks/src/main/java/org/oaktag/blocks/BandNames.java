package org.oaktag.blocks;

import org.oaktag.garment.Name;

/**
 * The names of the edges, seams and notches of bands and cuffs; most of their pieces are named by {@link TopNames}.
 *
 * <pre>{@code
 * hooded.piece(HEM_BAND_FRONT).edge(BandNames.SIDE).length();
 * }</pre>
 */
public final class BandNames {

    /** The short edge of a hem band at the side. */
    public static final Name SIDE = Name.of("side");

    /** The short edge of a cuff on the front of the sleeve. */
    public static final Name SIDE_FRONT = Name.of("side front");

    /** The short edge of a cuff on the back of the sleeve. */
    public static final Name SIDE_BACK = Name.of("side back");

    /** The line at which a band is folded in half. */
    public static final Name FOLD = Name.of("band fold");

    /** The seam of the front's hem and its band. */
    public static final Name FRONT_HEM_SEAM = Name.of("front hem");

    /** The seam of the back's hem and its band. */
    public static final Name BACK_HEM_SEAM = Name.of("back hem");

    /** The seam that joins front and back band at the side, where they do not lap. */
    public static final Name SIDE_BAND_SEAM = Name.of("hem band side");

    /** The seam of both halves of the folded front band. */
    public static final Name FRONT_FOLD_SEAM = Name.of("front hem band fold");

    /** The seam of both halves of the folded back band. */
    public static final Name BACK_FOLD_SEAM = Name.of("back hem band fold");

    /** The seam of sleeve and cuff. */
    public static final Name CUFF_SEAM = Name.of("cuff");

    /** The seam that closes the cuff to a ring. */
    public static final Name CUFF_SIDE_SEAM = Name.of("cuff side");

    /** The seam of both halves of the folded cuff. */
    public static final Name CUFF_FOLD_SEAM = Name.of("cuff fold");

    /** The band round an armhole without a sleeve. */
    public static final Name ARMHOLE_BAND = Name.of("armhole band");

    /** The seam of armhole and band. */
    public static final Name ARMHOLE_BAND_SEAM = Name.of("armhole band");

    /** The seam that closes the armhole band to a ring, at the underarm point. */
    public static final Name ARMHOLE_BAND_CLOSING_SEAM = Name.of("armhole band closing");

    /** The seam of both halves of the folded armhole band. */
    public static final Name ARMHOLE_BAND_FOLD_SEAM = Name.of("armhole band fold");

    /** Round the armhole band. */
    public static final Name ARMHOLE_BAND_GIRTH = Name.of("armhole band girth");

    /** The notch of a lapped band that is laid on the side seam. */
    public static final Name SIDE_SEAM_NOTCH = Name.of("side seam");

    private BandNames() {}
}

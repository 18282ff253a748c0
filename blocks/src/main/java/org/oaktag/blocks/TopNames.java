package org.oaktag.blocks;

import org.oaktag.garment.Name;

/**
 * The names of the pieces, seams and finished measures of a top, wherever a draft or an adjustment speaks of them.
 *
 * <pre>{@code
 * block.piece(TopNames.FRONT);
 * block.finished(TopNames.CHEST_GIRTH);
 * block.walkSeams().seam(TopNames.SIDE_SEAM).isTrue();   // = true
 * }</pre>
 */
public final class TopNames {

    /** The front of the body, drawn as its half. */
    public static final Name FRONT = Name.of("front");

    /** The back of the body, drawn as its half. */
    public static final Name BACK = Name.of("back");

    /** The sleeve; its upper part where it is split. */
    public static final Name SLEEVE = Name.of("sleeve");

    /** The part of a split sleeve that lies below the style line. */
    public static final Name SLEEVE_LOWER = Name.of("sleeve lower");

    /** The band at the hem of the front. */
    public static final Name HEM_BAND_FRONT = Name.of("hem band front");

    /** The band at the hem of the back. */
    public static final Name HEM_BAND_BACK = Name.of("hem band back");

    /** The cuff of the sleeve. */
    public static final Name CUFF = Name.of("cuff");

    /** The front half of a sleeve in two. */
    public static final Name SLEEVE_FRONT = Name.of("sleeve front");

    /** The back half of a sleeve in two. */
    public static final Name SLEEVE_BACK = Name.of("sleeve back");

    /** The gusset let in under the arm. */
    public static final Name GUSSET = Name.of("gusset");

    /** The side panel of a hood. */
    public static final Name HOOD_SIDE = Name.of("hood side");

    /** The strip over the middle of a three-panel hood, drawn as its half. */
    public static final Name HOOD_CENTRE = Name.of("hood centre");

    /** The lining of the side panel of a hood. */
    public static final Name HOOD_SIDE_LINING = Name.of("hood side lining");

    /** The lining of the strip over the middle of a hood. */
    public static final Name HOOD_CENTRE_LINING = Name.of("hood centre lining");

    /** The seam of front and back along the shoulder. */
    public static final Name SHOULDER_SEAM = Name.of("shoulder");

    /** The seam of front and back along the side. */
    public static final Name SIDE_SEAM = Name.of("side");

    /** The seam of the front armhole and the front half of the cap. */
    public static final Name FRONT_ARMHOLE_SEAM = Name.of("front armhole");

    /** The seam of the back armhole and the back half of the cap. */
    public static final Name BACK_ARMHOLE_SEAM = Name.of("back armhole");

    /** The seam of a sleeve in two over the arm. */
    public static final Name OVER_ARM_SEAM = Name.of("over arm");

    /** The seam that closes the sleeve under the arm. */
    public static final Name SLEEVE_SEAM = Name.of("sleeve underarm");

    /** The seam that closes the part of a split sleeve below the style line. */
    public static final Name SLEEVE_LOWER_SEAM = Name.of("sleeve lower underarm");

    /** The seam along the style line of a split sleeve. */
    public static final Name SLEEVE_STYLE_SEAM = Name.of("sleeve style line");

    /** The notch of front armhole and cap, at a share of the armhole that is the same in every size. */
    public static final Name FRONT_NOTCH = Name.of("front armhole");

    /** The notch of back armhole and cap, at a share of the armhole that is the same in every size. */
    public static final Name BACK_NOTCH = Name.of("back armhole");

    /** The notch at the top of the cap, which meets the shoulder seam. */
    public static final Name SHOULDER_NOTCH = Name.of("shoulder");

    /** The notch at which the front raglan seam meets what is sewn to the neckline. */
    public static final Name FRONT_RAGLAN_NOTCH = Name.of("front raglan");

    /** The notch at which the back raglan seam meets what is sewn to the neckline. */
    public static final Name BACK_RAGLAN_NOTCH = Name.of("back raglan");

    /** The whole neckline, both halves of front and back. */
    public static final Name NECKLINE_GIRTH = Name.of("neckline");

    /** Round the body at the underarm point. */
    public static final Name CHEST_GIRTH = Name.of("chest girth");

    /** Round the body at the waist line of the body, on paper its back waist length below the nape. */
    public static final Name WAIST_GIRTH = Name.of("waist girth");

    /** Round the hem. */
    public static final Name HEM_GIRTH = Name.of("hem girth");

    /** Round one armhole. */
    public static final Name ARMHOLE_GIRTH = Name.of("armhole girth");

    /** From the side neck point to the end of the shoulder seam. */
    public static final Name SHOULDER_LENGTH = Name.of("shoulder length");

    /** Centre back from the neckline to the lower end of the body, its band counted. */
    public static final Name BACK_LENGTH = Name.of("centre back length");

    /** Round the sleeve at its underarm point. */
    public static final Name SLEEVE_WIDTH = Name.of("sleeve width");

    /** Round the hem of the sleeve. */
    public static final Name SLEEVE_HEM = Name.of("sleeve hem");

    /** From the top of the cap to the lower end of the sleeve, its cuff counted. */
    public static final Name SLEEVE_LENGTH = Name.of("sleeve length");

    /** Shoulder length and sleeve length together. */
    public static final Name NECK_TO_WRIST = Name.of("side neck to wrist");

    /** Round the arm over the outer corners of a gusset, the gusset counted. */
    public static final Name ARM_OVER_GUSSET = Name.of("arm over the gusset");

    /** Round the body over the outer corners of both gussets, both counted. */
    public static final Name BODY_OVER_GUSSET = Name.of("body over the gussets");

    /** Round the cuff. */
    public static final Name CUFF_GIRTH = Name.of("cuff girth");

    private TopNames() {}

    /** Returns the name of the lower part of a piece that is split by a style line: {@code "front lower"}. */
    public static Name lower(Name piece) {
        return piece.with("lower");
    }
}

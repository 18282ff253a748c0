package org.oaktag.garment;

/**
 * The well-known names of edges. They are ordinary {@link Name}s: a piece may have edges of any other name.
 *
 * <pre>{@code
 * front.edge(EdgeNames.NECKLINE).length().plus(front.edge(EdgeNames.SHOULDER).length());
 * }</pre>
 */
public final class EdgeNames {

    /** From the centre to the side neck point. */
    public static final Name NECKLINE = Name.of("neckline");

    /** From the top of a stand grown on to the neck to where it has run into the shoulder. */
    public static final Name STAND = Name.of("stand");

    /** From the side neck point to the shoulder point. */
    public static final Name SHOULDER = Name.of("shoulder");

    /** From the shoulder point to the underarm point. */
    public static final Name ARMHOLE = Name.of("armhole");

    /** From the underarm point to the hem. */
    public static final Name SIDE = Name.of("side");

    /** The lower edge of a body or a sleeve. */
    public static final Name HEM = Name.of("hem");

    /** Centre front or centre back, from the hem to the neckline. */
    public static final Name CENTRE = Name.of("centre");

    /** The back half of a sleeve cap, from the back underarm point to the top. */
    public static final Name CAP_BACK = Name.of("cap back");

    /** The front half of a sleeve cap, from the top to the front underarm point. */
    public static final Name CAP_FRONT = Name.of("cap front");

    /** The sleeve's underarm edge on its front side, from the underarm point to the hem. */
    public static final Name UNDERARM_FRONT = Name.of("underarm front");

    /** The sleeve's underarm edge on its back side, from the hem to the underarm point. */
    public static final Name UNDERARM_BACK = Name.of("underarm back");

    /** The upper edge of a sleeve that is in two or grown on, from the shoulder point to its hem. */
    public static final Name OVER_ARM = Name.of("over arm");

    /** The hem of a sleeve grown on to a body, whose own hem is {@link #HEM}. */
    public static final Name SLEEVE_HEM = Name.of("sleeve hem");

    /** The underarm edge of a sleeve grown on, from its hem to the side seam. */
    public static final Name UNDERARM = Name.of("underarm");

    /** The style line of a raglan sleeve, from the neckline to where it runs into the armhole. */
    public static final Name RAGLAN = Name.of("raglan");

    /** The upper edge of a body or sleeve that is sewn to a gusset. */
    public static final Name GUSSET_UPPER = Name.of("gusset upper");

    /** The lower edge of a body or sleeve that is sewn to a gusset. */
    public static final Name GUSSET_LOWER = Name.of("gusset lower");

    /** The upper edge of a band or a lower panel: the one that is sewn to what hangs above it. */
    public static final Name TOP = Name.of("top");

    /** The lower edge of a band or of an upper panel. */
    public static final Name BOTTOM = Name.of("bottom");

    /** The edge of a pouch or a pocket where the hand goes in. */
    public static final Name OPENING = Name.of("opening");

    /** The upper edge of the extension of a vent, from the end of the sewn seam outwards. */
    public static final Name VENT_TOP = Name.of("vent top");

    /** The outer edge of the extension of a vent. */
    public static final Name VENT = Name.of("vent");

    /** The lower edge of the extension of a vent, from its outer edge to where it folds. */
    public static final Name VENT_HEM = Name.of("vent hem");

    private EdgeNames() {}
}

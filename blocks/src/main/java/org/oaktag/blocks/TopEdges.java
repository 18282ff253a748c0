package org.oaktag.blocks;

import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Name;

/**
 * The names of the edges of a top, beside those that any garment has: the {@link EdgeNames}.
 *
 * <pre>{@code
 * front.edge(TopEdges.NECKLINE).length().plus(front.edge(TopEdges.SHOULDER).length());
 * }</pre>
 */
public final class TopEdges {

    /** From the centre to the side neck point. */
    public static final Name NECKLINE = Name.of("neckline");

    /** From the top of a stand grown on to the neck to where it has run into the shoulder. */
    public static final Name STAND = Name.of("stand");

    /** From the side neck point to the shoulder point. */
    public static final Name SHOULDER = Name.of("shoulder");

    /** From the shoulder point to the underarm point. */
    public static final Name ARMHOLE = Name.of("armhole");

    /** The back half of a sleeve cap, from the back underarm point to the top. */
    public static final Name CAP_BACK = Name.of("cap back");

    /** The front half of a sleeve cap, from the top to the front underarm point. */
    public static final Name CAP_FRONT = Name.of("cap front");

    /** The sleeve's underarm edge on its front side, from the underarm point to the hem. */
    public static final Name UNDERARM_FRONT = Name.of("underarm front");

    /** The sleeve's underarm edge on its back side, from the hem to the underarm point. */
    public static final Name UNDERARM_BACK = Name.of("underarm back");

    /** The underarm edge of a sleeve grown on, from its hem to the side seam. */
    public static final Name UNDERARM = Name.of("underarm");

    /** The upper edge of a sleeve that is in two or grown on, from the shoulder point to its hem. */
    public static final Name OVER_ARM = Name.of("over arm");

    /** The hem of a sleeve grown on to a body, whose own hem is {@link EdgeNames#HEM}. */
    public static final Name SLEEVE_HEM = Name.of("sleeve hem");

    /** The style line of a raglan sleeve, from the neckline to where it runs into the armhole. */
    public static final Name RAGLAN = Name.of("raglan");

    /** The upper edge of a body or sleeve that is sewn to a gusset. */
    public static final Name GUSSET_UPPER = Name.of("gusset upper");

    /** The lower edge of a body or sleeve that is sewn to a gusset. */
    public static final Name GUSSET_LOWER = Name.of("gusset lower");

    private TopEdges() {}
}

package org.oaktag.blocks;

import org.oaktag.garment.Name;

/**
 * The names of the edges, seams, notches and finished measures of a hood; its pieces are named by {@link TopNames}.
 *
 * <pre>{@code
 * hooded.piece(HOOD_SIDE).edge(HoodNames.CROWN).length();
 * hooded.finished(HoodNames.FACE_OPENING);
 * }</pre>
 */
public final class HoodNames {

    /** The edge round the face, from the neckline up to the crown. */
    public static final Name FACE = Name.of("face");

    /** From the face over the crown of the head and down to the nape. */
    public static final Name CROWN = Name.of("crown");

    /** The edge that is sewn to the neckline, from the nape to the front. */
    public static final Name NECK = Name.of("neck");

    /** The inner edge of a cut-on facing, which is sewn to the lining. */
    public static final Name FACING_EDGE = Name.of("facing edge");

    /** The part of the crown seam that lies on a cut-on facing. */
    public static final Name FACING_CROWN = Name.of("facing crown");

    /** The part of the neck edge that lies on a cut-on facing. */
    public static final Name FACING_NECK = Name.of("facing neck");

    /** The seam of a side panel and the strip over the middle. */
    public static final Name CROWN_SEAM = Name.of("hood crown");

    /** The seam of neckline and hood. */
    public static final Name NECK_SEAM = Name.of("hood neck");

    /** The crown seam of the cut-on facing. */
    public static final Name FACING_CROWN_SEAM = Name.of("hood facing crown");

    /** The seam of the facing of a side panel and its lining. */
    public static final Name FACING_SIDE_SEAM = Name.of("hood facing side");

    /** The seam of the facing of the strip and its lining. */
    public static final Name FACING_CENTRE_SEAM = Name.of("hood facing centre");

    /** The crown seam of the lining. */
    public static final Name LINING_CROWN_SEAM = Name.of("hood lining crown");

    /** The seam of the hood and its facing and lining along the neck edge. */
    public static final Name LINING_NECK_SEAM = Name.of("hood lining neck");

    /** The line at which a cut-on facing is folded inwards. */
    public static final Name FOLD = Name.of("hood fold");

    /** The notch that is laid on centre front, where the hood laps. */
    public static final Name CENTRE_FRONT_NOTCH = Name.of("centre front");

    /** The single notch of the crown seam, nearer the face. */
    public static final Name CROWN_FRONT_NOTCH = Name.of("crown front");

    /** The double notch of the crown seam, nearer the nape. */
    public static final Name CROWN_BACK_NOTCH = Name.of("crown back");

    /** The place of an eyelet for a drawstring. */
    public static final Name EYELET = Name.of("eyelet");

    /** What is laid behind an eyelet so that it does not tear out. */
    public static final Name EYELET_PATCH = Name.of("eyelet patch");

    /** From the front end of the neck edge along the face to the crown. */
    public static final Name FACE_HEIGHT = Name.of("hood face height");

    /** Round the whole opening for the face, from one front end to the other. */
    public static final Name FACE_OPENING = Name.of("hood face opening");

    /** From the face over the crown to the nape. */
    public static final Name OVER_CROWN = Name.of("hood over the crown");

    private HoodNames() {}
}

package org.oaktag.skirt;

import java.util.Objects;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Name;

/**
 * The names of a skirt's pieces, edges, seams and measures. Each half has the edges {@link #WAIST},
 * {@link EdgeNames#SIDE}, {@link EdgeNames#HEM} and {@link EdgeNames#CENTRE}, clockwise; where a dart parts the waist
 * it goes on as {@link org.oaktag.garment.Dart#past} says.
 *
 * <pre>{@code
 * SkirtNames.dart(SkirtNames.BACK, 2);   // = back dart 2
 * }</pre>
 */
public final class SkirtNames {

    /** The front, drawn as its half. */
    public static final Name FRONT = Name.of("front");

    /** The back, drawn as its half. */
    public static final Name BACK = Name.of("back");

    /** From the centre to the side seam, at the waist. */
    public static final Name WAIST = Name.of("waist");

    /** The side seam. */
    public static final Name SIDE_SEAM = Name.of("side seam");

    /** The notch on both sides at the level of the hip. */
    public static final Name HIP_NOTCH = Name.of("hip");

    /** Round the waist, its darts sewn. */
    public static final Name WAIST_GIRTH = Name.of("waist girth");

    /** Round the hip. */
    public static final Name HIP_GIRTH = Name.of("hip girth");

    /** Round the hem. */
    public static final Name HEM_GIRTH = Name.of("hem girth");

    /** Down the centre front from the waist to the hem. */
    public static final Name LENGTH = Name.of("centre front length");

    /** Down the side seam from the waist to the hem. */
    public static final Name SIDE_LENGTH = Name.of("side length");

    private SkirtNames() {}

    /** Returns the name of a dart of a half, counted from the centre, the first being 1. */
    public static Name dart(Name half, int place) {
        return Objects.requireNonNull(half, "half").with("dart " + place);
    }
}

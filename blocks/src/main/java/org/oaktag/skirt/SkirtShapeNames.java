package org.oaktag.skirt;

import org.oaktag.garment.Name;

/**
 * The names of the pieces, edges and seams that shape a skirt.
 *
 * <pre>{@code
 * SkirtShapeNames.GORE;   // = gore
 * }</pre>
 */
public final class SkirtShapeNames {

    /** One gore of a gored skirt, drawn as its half. */
    public static final Name GORE = Name.of("gore");

    /** The seam between two gores. */
    public static final Name GORE_SEAM = Name.of("gore seam");

    /** The seam of the two quarters of a circle skirt at the centre front. */
    public static final Name CENTRE_FRONT_SEAM = Name.of("centre front seam");

    /** The edge at which a yoke ends and the skirt below it begins, on both. */
    public static final Name YOKE_LINE = Name.of("yoke line");

    /** The side seam of a yoke. */
    public static final Name YOKE_SIDE_SEAM = Name.of("yoke side seam");

    /** The edge of a wrap skirt's front that laps over the other. */
    public static final Name WRAP = Name.of("wrap");

    /** What of its waist lies beyond the centre front. */
    public static final Name WAIST_LAP = Name.of("waist lap");

    /** What of its hem does. */
    public static final Name HEM_LAP = Name.of("hem lap");

    private SkirtShapeNames() {}

    /** Returns the name of the yoke of the front or the back. */
    public static Name yoke(Name half) {
        return half.with("yoke");
    }

    /** Returns the name of the seam that joins it to the skirt. */
    public static Name yokeSeam(Name half) {
        return half.with("yoke seam");
    }
}

package org.oaktag.blocks;

/**
 * How high a sleeve cap is beside the depth of its armhole, by the kind of sleeve: from its underarm line to its top,
 * over the depth from the shoulder points down to the underarm line. The bands are common practice, for knits: 0.58 to
 * 0.75 set in, falling to 0.35 to 0.6 as the shoulder is dropped. A cap below its band is a table top that folds when
 * the arm hangs; one above it binds when the arm is raised. Immutable.
 *
 * <pre>{@code
 * CapBand band = CapBand.ofSetIn();
 * band.least();   // = 0.58
 * CapBand.dropped(60).most();   // = 0.6
 * }</pre>
 *
 * @param least the least share
 * @param most the greatest
 */
public record CapBand(double least, double most) {

    private static final double SET_IN_LEAST = 0.58;
    private static final double SET_IN_MOST = 0.75;
    private static final double DROPPED_LEAST = 0.35;
    private static final double DROPPED_MOST = 0.60;

    private static final double ROUNDING = 1e-9;

    /** A knit shoulder is commonly drawn up to this far beyond the bone, in millimetres, and is not called dropped. */
    private static final double NOT_YET_DROPPED = 20;

    /** Dropped by this, in millimetres, a sleeve has the lowest of bands. */
    private static final double FULLY_DROPPED = 60;

    /** Returns the band of a sleeve set in at the shoulder point. */
    public static CapBand ofSetIn() {
        return new CapBand(SET_IN_LEAST, SET_IN_MOST);
    }

    /**
     * Returns the band of a sleeve whose armhole lies past the shoulder point.
     *
     * @param drop how far past, along the shoulder, in millimetres; up to 20 mm count as set in, from 60 mm on the band
     *     falls no further
     */
    public static CapBand dropped(double drop) {
        double fall = Math.min(Math.max((drop - NOT_YET_DROPPED) / (FULLY_DROPPED - NOT_YET_DROPPED), 0), 1);
        return new CapBand(
                SET_IN_LEAST + fall * (DROPPED_LEAST - SET_IN_LEAST),
                SET_IN_MOST + fall * (DROPPED_MOST - SET_IN_MOST));
    }

    /** Tells whether a share lies in the band, its ends and what rounding makes of them included. */
    public boolean includes(double share) {
        return share >= least - ROUNDING && share <= most + ROUNDING;
    }

    /** Returns both ends with two decimals: {@code "0.58 to 0.75"}. */
    public String text() {
        return text(least) + " to " + text(most);
    }

    /** Returns a share of some unit with two decimals: {@code "0.58"}. */
    static String text(double share) {
        long hundredths = Math.round(share * 100);
        return hundredths / 100 + (hundredths % 100 < 10 ? ".0" : ".") + hundredths % 100;
    }
}

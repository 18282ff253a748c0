package org.oaktag.skirt;

import java.util.Objects;
import java.util.Optional;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.Wearer;
import org.oaktag.measure.Length;

/**
 * How wide a skirt must be for its wearer to walk in it: at a level above the floor the legs of a full step are apart,
 * and the cloth goes round both.
 *
 * <pre>{@code
 * Stride stride = Stride.of(mm(1629), mm(1021));
 * stride.girthAt(mm(450)).text();   // = 1020.8 mm
 * }</pre>
 *
 * <p>A full step is 0.41 of the height (from memory; walking at ease takes rather less). Both legs turn about the hip
 * joint, as high as the trochanter, 0.515 of the height, so at a level they are apart by the step in proportion to how
 * far it lies below; round two legs of one girth the cloth goes once that girth and twice that distance. The girths of
 * the leg are shares of the hip girth in the 2012 US Army survey (NATICK/TR-15/007, means of women and men): 0.603 at
 * the crotch, 0.393 above the knee, 0.366 round the calf, 0.21 above the ankle, and go from one to the next evenly.
 *
 * @param height the height of the body
 * @param hip the hip girth of the body
 */
public record Stride(Length height, Length hip) {

    /** How high the natural waist lies, as a share of the height. */
    static final double WAIST_SHARE = 0.649;

    private static final double STEP = 0.41;
    private static final double HIP_JOINT = 0.515;

    /** Levels as shares of the height, from above, and the girth of the leg there as a share of the hip girth. */
    private static final double[][] LEG = {{0.48, 0.603}, {0.276, 0.393}, {0.19, 0.366}, {0.045, 0.21}};

    private static final double FINE = 0.01;

    /** Refuses null. */
    public Stride {
        Objects.requireNonNull(height, "height");
        Objects.requireNonNull(hip, "hip");
    }

    /** Returns the stride of a body. */
    public static Stride of(Length height, Length hip) {
        return new Stride(height, hip);
    }

    /** Returns the stride of a wearer, or empty where height or hip girth is not known. */
    static Optional<Stride> of(Wearer wearer) {
        Length height = wearer.measures().get(BodyMeasure.HEIGHT.asName());
        Length hip = wearer.measures().get(BodyMeasure.HIP_GIRTH.asName());
        return height == null || hip == null ? Optional.empty() : Optional.of(new Stride(height, hip));
    }

    /** Returns the girth that a full step needs at a level above the floor. */
    public Length girthAt(Length aboveFloor) {
        return Length.mm(2 * apart(aboveFloor.mm(), 1) + leg(aboveFloor.mm()));
    }

    /**
     * Returns the share of a full step that a girth at a level above the floor lets the wearer take: 1 for all of it, 0
     * where it goes round one leg only.
     */
    public double shareOfStep(Length girth, Length aboveFloor) {
        Objects.requireNonNull(girth, "girth");
        double whole = apart(aboveFloor.mm(), 1);
        return whole <= 0 ? 1 : Math.min(1, Math.max(0, (girth.mm() - leg(aboveFloor.mm())) / 2 / whole));
    }

    /**
     * Returns the level above the floor from which a skirt lets its wearer take a full step: the lowest above which it
     * is everywhere wide enough, looked for from its hip down.
     *
     * @param hipLevel how far its hip lies above the floor
     * @param hipGirth how wide it is there
     * @param hemLevel how far its hem lies above the floor
     * @param hemGirth how wide it is there; between the two it widens evenly
     */
    public Length freeFrom(Length hipLevel, Length hipGirth, Length hemLevel, Length hemGirth) {
        Objects.requireNonNull(hipGirth, "hipGirth");
        Objects.requireNonNull(hemGirth, "hemGirth");
        double below = hemLevel.mm();
        double above = hipLevel.mm();
        if (girthAt(hemLevel).compareTo(hemGirth) <= 0) {
            return hemLevel;
        }
        while (above - below > FINE) {
            double middle = (above + below) / 2;
            double share = (hipLevel.mm() - middle) / (hipLevel.mm() - hemLevel.mm());
            double girth = hipGirth.mm() + share * (hemGirth.mm() - hipGirth.mm());
            if (girthAt(Length.mm(middle)).mm() <= girth) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return Length.mm(above);
    }

    private double apart(double level, double share) {
        double joint = HIP_JOINT * height.mm();
        return share * STEP * height.mm() * Math.max(0, joint - level) / joint;
    }

    private double leg(double level) {
        double at = level / height.mm();
        for (int i = 1; i < LEG.length; i++) {
            if (at >= LEG[i][0] || i == LEG.length - 1) {
                double along = (LEG[i - 1][0] - at) / (LEG[i - 1][0] - LEG[i][0]);
                double clamped = Math.min(1, Math.max(0, along));
                return hip.mm() * (LEG[i - 1][1] + clamped * (LEG[i][1] - LEG[i - 1][1]));
            }
        }
        throw new IllegalStateException("no leg at " + level);
    }
}

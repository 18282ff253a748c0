package org.oaktag.adjustments;

import java.util.Optional;
import org.oaktag.adjust.Step;
import org.oaktag.garment.Cloth;
import org.oaktag.measure.Length;

/** Adjustments of the sleeve and its cap. */
public final class Sleeves {

    private Sleeves() {}

    /**
     * Fits the cap to the armhole at the height that it has; {@link FitCap#atHeight} asks for another.
     *
     * @param ease by how much the cap is longer than the armhole; 0 to 20 mm for knits (common practice)
     */
    public static FitCap fitCapToArmhole(Length ease) {
        return new FitCap(ease, Optional.empty());
    }

    /** Draws the sleeve straight down from its underarm points. */
    public static Step straightenSleeve() {
        return new StraightenSleeve();
    }

    /**
     * Splits the sleeve along a level style line and cuts what lies below it from another cloth.
     *
     * @param aboveHem how far above the hem the line lies; 12 to 18 cm (common practice)
     * @param below the cloth below it
     */
    public static Step splitSleeve(Length aboveHem, Cloth below) {
        return new SplitSleeve(aboveHem, below);
    }
}

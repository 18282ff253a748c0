package org.oaktag.garment;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was found of a garment when it was first asked for: shared by those that are the same but for their title, their
 * history and how they lie.
 *
 * <p>Two threads may both find; they come to the same, and either may be kept: as all fields of what is found are
 * final, none sees half of it. Each field is to be read once.
 */
final class Findings {

    /** The walk of the seams. */
    @Nullable
    SeamWalk walk;

    /** The finished measures. */
    @Nullable
    List<TakenMeasure> taken;

    /** The answers of the checks of the fit. */
    @Nullable
    List<Fit> fit;

    /** What is left of the garment from which this one was made. */
    @Nullable
    Kept kept;
}

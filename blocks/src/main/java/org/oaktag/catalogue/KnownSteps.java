package org.oaktag.catalogue;

import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjustments.TopSteps;

/**
 * Every kind of step that comes with the library, of whichever family.
 *
 * <pre>{@code
 * StepCatalogue all = KnownSteps.catalogue();
 * all.kinds().stream().map(StepKind::name).toList();   // "widen neckline", "lower armhole" ...
 * }</pre>
 */
public final class KnownSteps {

    private KnownSteps() {}

    /** Returns the catalogue of these kinds; add kinds of your own with {@link StepCatalogue#with}. */
    public static StepCatalogue catalogue() {
        return TopSteps.catalogue();
    }
}

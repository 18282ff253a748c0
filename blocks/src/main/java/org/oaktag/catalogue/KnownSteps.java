package org.oaktag.catalogue;

import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjustments.TopSteps;
import org.oaktag.skirt.SkirtSteps;

/**
 * Every kind of step that comes with the library, of whichever family.
 *
 * <pre>{@code
 * StepCatalogue all = KnownSteps.catalogue();
 * all.kinds().stream().map(StepKind::name).toList();   // "widen neckline", "lower armhole" ...
 * }</pre>
 */
public final class KnownSteps {

    private static final StepCatalogue CATALOGUE = TopSteps.catalogue().with(SkirtSteps.catalogue());

    private KnownSteps() {}

    /** Returns the catalogue of these kinds; add kinds of your own with {@link StepCatalogue#with(org.oaktag.adjust.StepKind)}. */
    public static StepCatalogue catalogue() {
        return CATALOGUE;
    }
}

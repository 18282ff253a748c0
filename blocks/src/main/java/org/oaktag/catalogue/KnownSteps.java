package org.oaktag.catalogue;

import java.util.stream.Stream;
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

    private static final StepCatalogue CATALOGUE =
            new StepCatalogue(Stream.of(TopSteps.catalogue(), SkirtSteps.catalogue())
                    .flatMap(family -> family.kinds().stream())
                    .toList());

    private KnownSteps() {}

    /** Returns the catalogue of these kinds; add kinds of your own with {@link StepCatalogue#with}. */
    public static StepCatalogue catalogue() {
        return CATALOGUE;
    }
}

package org.oaktag.skirt;

import org.oaktag.adjust.StepCatalogue;

/**
 * Every kind of step for a skirt, with what is usual for its amounts (common practice).
 *
 * <pre>{@code
 * SkirtSteps.catalogue().kind("flare skirt").amount("out").unit();   // = mm
 * }</pre>
 */
public final class SkirtSteps {

    private static final StepCatalogue CATALOGUE = SkirtShapes.steps().with(SkirtFinishes.steps());

    private SkirtSteps() {}

    /** Returns the catalogue of these kinds. */
    public static StepCatalogue catalogue() {
        return CATALOGUE;
    }
}

package org.oaktag.skirt;

import org.oaktag.adjust.Step;
import org.oaktag.adjust.StepCatalogue;
import org.oaktag.adjust.StepKind;

/**
 * Every kind of step for a skirt, a line for each, with what is usual for its amounts (common practice).
 *
 * <pre>{@code
 * SkirtSteps.catalogue().kind("flare skirt").amount("out").unit();   // = mm
 * }</pre>
 */
public final class SkirtSteps {

    private SkirtSteps() {}

    /** Returns the catalogue of these kinds. */
    public static StepCatalogue catalogue() {
        return StepCatalogue.of(
                kind(SetSkirtLength.class).usually("length", 450, 900),
                kind(FlareFromDarts.class).usually("share", 0.3, 1),
                kind(FlareSkirt.class).usually("out", -25, 80),
                kind(GoreSkirt.class).usually("spread", 0, 120),
                kind(YokeSkirt.class).usually("depth", 60, 150),
                kind(CircleSkirt.class).usually("share", 0.25, 1),
                kind(GatherSkirt.class).usually("ratio", 1.5, 3),
                kind(PleatSkirt.class).usually("number", 12, 40).usually("depth", 15, 40),
                kind(WrapSkirt.class).usually("overlap", 100, 300).usually("facing", 0, 60));
    }

    private static StepKind kind(Class<? extends Step> step) {
        return StepKind.of(step);
    }
}

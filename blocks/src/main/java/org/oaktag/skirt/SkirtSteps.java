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
                kind(WrapSkirt.class).usually("overlap", 100, 300).usually("facing", 0, 60),
                kind(CentreBackSeam.class),
                kind(Zip.class).usually("length", 150, 230),
                kind(ButtonFront.class).usually("stand", 15, 30).usually("count", 4, 9),
                kind(CentreBackVent.class).usually("width", 40, 50).usually("height", 150, 250),
                kind(StraightWaistband.class)
                        .usually("width", 25, 50)
                        .usually("ease", 0, 16)
                        .usually("underlap", 25, 40)
                        .usually("overlap", 0, 20),
                kind(ContouredWaistband.class).usually("width", 30, 60),
                kind(FaceWaist.class).usually("width", 40, 70).usually("cloth stretch", 0, 40),
                kind(ElasticWaistband.class).usually("width", 20, 50).usually("shorter", 10, 60),
                kind(InSeamPocket.class)
                        .usually("below waist", 30, 90)
                        .usually("opening", 140, 180)
                        .usually("cloth stretch", 0, 40),
                kind(SlantPocket.class)
                        .usually("from side", 25, 60)
                        .usually("down", 120, 180)
                        .usually("cloth stretch", 0, 40),
                kind(SkirtPatchPocket.class)
                        .among("half", SkirtNames.FRONT, SkirtNames.BACK)
                        .usually("width", 100, 160)
                        .usually("height", 110, 180)
                        .usually("from centre", 40, 100)
                        .usually("below waist", 120, 260)
                        .usually("cloth stretch", 0, 40),
                kind(LineSkirt.class)
                        .usually("shorter", 20, 30)
                        .usually("ease", 0, 15)
                        .usually("cloth stretch", 0, 40),
                kind(FaceHem.class).usually("width", 40, 70).usually("cloth stretch", 0, 40));
    }

    private static StepKind kind(Class<? extends Step> step) {
        return StepKind.of(step);
    }
}

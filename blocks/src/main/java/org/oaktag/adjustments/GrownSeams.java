package org.oaktag.adjustments;

import static org.oaktag.garment.FinishedMeasure.times;

import java.util.Optional;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasure;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.End;
import org.oaktag.garment.FinishedMeasure;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Quantity;
import org.oaktag.garment.Quantity.Across;
import org.oaktag.garment.Quantity.Corner;
import org.oaktag.garment.Quantity.FromEdge;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/** The seams and finished measures of a body whose sleeves are grown on. */
final class GrownSeams {

    private static final String REFIT = "grow the sleeve on after shoulders and side seams are settled";

    /** Further down than this, in millimetres, the underarm point says nothing of the chest. */
    private static final double STILL_AT_CHEST = 100;

    private GrownSeams() {}

    static Garment of(Assembly assembly, Garment before, boolean gusset, Length below) {
        Seam shoulder = before.seam(TopNames.SHOULDER_SEAM);
        assembly.sew(new Seam(
                shoulder.name(),
                shoulder.a().then(SeamSide.along(TopNames.FRONT, TopEdges.OVER_ARM)),
                shoulder.b().then(SeamSide.along(TopNames.BACK, TopEdges.OVER_ARM)),
                shoulder.rule(),
                shoulder.smoothAt(),
                REFIT));
        Seam side = before.seam(TopNames.SIDE_SEAM);
        SeamSide front = SeamSide.along(TopNames.FRONT, TopEdges.UNDERARM);
        SeamSide back = SeamSide.along(TopNames.BACK, TopEdges.UNDERARM);
        if (gusset) {
            assembly.sew(side.smoothAt(End.END));
            assembly.sew(Seam.flat(TopNames.SLEEVE_SEAM, front, back, REFIT).smoothAt(End.START));
        } else {
            assembly.sew(new Seam(
                    side.name(), front.then(side.a()), back.then(side.b()), side.rule(), side.smoothAt(), REFIT));
        }
        assembly.measure(sum(TopNames.SLEEVE_LENGTH, TopEdges.OVER_ARM, TopNames.FRONT)
                .against(BodyMeasure.ARM_LENGTH.asName()));
        assembly.measure(FinishedMeasure.of(
                TopNames.NECK_TO_WRIST,
                times(1, Quantity.lengthOf(TopNames.FRONT, TopEdges.SHOULDER)),
                times(1, Quantity.lengthOf(TopNames.FRONT, TopEdges.OVER_ARM))));
        assembly.measure(sum(TopNames.SLEEVE_HEM, TopEdges.SLEEVE_HEM, TopNames.FRONT, TopNames.BACK)
                .against(BodyMeasure.WRIST_GIRTH.asName()));
        assembly.measure(FinishedMeasure.of(
                        TopNames.SLEEVE_WIDTH, times(1, toOverArm(TopNames.FRONT)), times(1, toOverArm(TopNames.BACK)))
                .against(BodyMeasure.UPPER_ARM_GIRTH.asName()));
        assembly.leaveOut(TopNames.ARMHOLE_GIRTH);
        before.measures().stream()
                .filter(each -> each.name().equals(TopNames.WAIST_GIRTH))
                .forEach(each -> assembly.measure(waist(each)));
        if (!gusset && below.mm() > STILL_AT_CHEST) {
            before.measures().stream()
                    .filter(each -> each.name().equals(TopNames.CHEST_GIRTH))
                    .forEach(
                            each -> assembly.measure(new FinishedMeasure(each.name(), each.terms(), Optional.empty())));
        }
        return assembly.done();
    }

    /** Under a curve that ends below the waist, the width ends at the curve. */
    private static FinishedMeasure waist(FinishedMeasure measure) {
        return measure.taking(GrownSeams::endingAtUnderarm);
    }

    private static Quantity endingAtUnderarm(Quantity quantity) {
        return quantity instanceof Across across
                ? across.endingAt(EdgeRef.of(across.to().edge().piece(), TopEdges.UNDERARM))
                : quantity;
    }

    private static FinishedMeasure sum(Name measure, Name edge, Name... pieces) {
        return FinishedMeasure.of(
                measure,
                java.util.Arrays.stream(pieces)
                        .map(piece -> times(1, Quantity.lengthOf(piece, edge)))
                        .toArray(FinishedMeasure.Term[]::new));
    }

    private static FromEdge toOverArm(Name piece) {
        return new FromEdge(Corner.at(piece, TopEdges.UNDERARM, End.END), EdgeRef.of(piece, TopEdges.OVER_ARM));
    }
}

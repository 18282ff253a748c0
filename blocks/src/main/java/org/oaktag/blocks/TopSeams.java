package org.oaktag.blocks;

import java.util.List;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Name;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamRule;
import org.oaktag.garment.SeamSide;
import org.oaktag.measure.Length;

/** The seams of a top of front, back and sleeve. */
final class TopSeams {

    private TopSeams() {}

    static List<Seam> of(Length capEase) {
        return List.of(
                Seam.flat(
                                TopNames.SHOULDER_SEAM,
                                SeamSide.along(TopNames.FRONT, TopEdges.SHOULDER),
                                SeamSide.along(TopNames.BACK, TopEdges.SHOULDER),
                                "adjust both shoulders by the same amount")
                        .smooth(),
                Seam.flat(
                                TopNames.SIDE_SEAM,
                                SeamSide.along(TopNames.FRONT, EdgeNames.SIDE),
                                SeamSide.along(TopNames.BACK, EdgeNames.SIDE),
                                "straighten the side seams, front copied to back")
                        .smooth(),
                cap(TopNames.FRONT_ARMHOLE_SEAM, capEase),
                cap(TopNames.BACK_ARMHOLE_SEAM, capEase),
                Seam.flat(
                                TopNames.SLEEVE_SEAM,
                                SeamSide.along(TopNames.SLEEVE, TopEdges.UNDERARM_FRONT),
                                SeamSide.against(TopNames.SLEEVE, TopEdges.UNDERARM_BACK),
                                "straighten the sleeve")
                        .smooth());
    }

    /** Returns the seam of one half of the cap, half of the ease lying between the top and the notch. */
    static Seam cap(Name name, Length capEase) {
        boolean front = name.equals(TopNames.FRONT_ARMHOLE_SEAM);
        return Seam.of(
                name,
                SeamSide.along(front ? TopNames.FRONT : TopNames.BACK, TopEdges.ARMHOLE),
                front
                        ? SeamSide.along(TopNames.SLEEVE, TopEdges.CAP_FRONT)
                        : SeamSide.against(TopNames.SLEEVE, TopEdges.CAP_BACK),
                SeamRule.eased(
                        capEase.times(0.5), SeamRule.Span.upTo(front ? TopNames.FRONT_NOTCH : TopNames.BACK_NOTCH)),
                "refit the sleeve cap to the armhole");
    }
}

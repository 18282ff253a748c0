package org.oaktag.examples.lessons;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.measure.Length.mm;

import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.export.lesson.View;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/** How the cap of a sleeve is fitted to its armhole, and how the two are traded against each other. */
final class CapLessons {

    private static final Length EASE = mm(6);

    private CapLessons() {}

    /** The showpiece: one armhole, and caps of every height that fit it. */
    static Lesson fitTheCap(Garment block) {
        Garment opened =
                block.adjust(dropShoulder(mm(25))).adjust(lowerArmhole(mm(12))).adjust(straightenSideSeams());
        Term ease = Term.length("ease", EASE);
        return Lesson.of(
                        "Fit the sleeve cap to the armhole",
                        Slider.lengths("height of the cap", mm(60), mm(150), mm(5), mm(100)),
                        height -> new Trial(opened, fitCapToArmhole(EASE).atHeight(mm(height))))
                .saying(
                        "The shoulder was dropped by 25.0 mm and the armhole lowered by 12.0 mm: the cap of the block no"
                                + " longer reaches round it. The lower part of each half of the new cap is the armhole's own"
                                + " curve; a smooth crown joins the two, and the width is solved until each half is as long as"
                                + " its armhole and half of the ease.")
                .saying("Move the height and watch the width: a lower cap makes a wider sleeve, for the same armhole.")
                .showing(View.closeUp(TopNames.SLEEVE, TopEdges.CAP_BACK, TopEdges.CAP_FRONT))
                .showing(View.closeUp(TopNames.FRONT, TopEdges.ARMHOLE))
                .showing(View.closeUp(TopNames.BACK, TopEdges.ARMHOLE))
                .computing(Formula.exact(
                        Term.length("whole cap", played -> cap(played.after())),
                        Term.length("front armhole", played -> edge(played.after(), TopNames.FRONT, TopEdges.ARMHOLE))
                                .plus(Term.length(
                                        "back armhole",
                                        played -> edge(played.after(), TopNames.BACK, TopEdges.ARMHOLE)))
                                .plus(ease)))
                .computing(Formula.exact(
                        Term.length("front half of the cap", played -> edge(played.after(), TopEdges.CAP_FRONT)),
                        Term.length("front armhole", played -> edge(played.after(), TopNames.FRONT, TopEdges.ARMHOLE))
                                .plus(ease.over(Term.number(2)))))
                .computing(Formula.rough(
                        Term.length(
                                "width of the sleeve", played -> played.after().finished(TopNames.SLEEVE_WIDTH)),
                        straightCap(TopEdges.CAP_FRONT).plus(straightCap(TopEdges.CAP_BACK)),
                        "The triangle that is drawn by hand takes each half as a straight line; the curve is longer than"
                                + " its chord, so the triangle promises more width than there is."));
    }

    private static Term straightCap(Name half) {
        Term length = Term.length(half.value(), played -> edge(played.after(), half));
        Term height = Term.length("height", played -> ShoulderLessons.capHeight(played.after()));
        return length.squared().minus(height.squared()).root();
    }

    private static Length cap(Garment garment) {
        return edge(garment, TopEdges.CAP_FRONT).plus(edge(garment, TopEdges.CAP_BACK));
    }

    private static Length edge(Garment garment, Name sleeveEdge) {
        return edge(garment, TopNames.SLEEVE, sleeveEdge);
    }

    private static Length edge(Garment garment, Name piece, Name edge) {
        return garment.piece(piece).edge(edge).length();
    }
}

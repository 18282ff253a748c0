package org.oaktag.examples.lessons;

import static org.oaktag.adjustments.Sleeves.fitCapToArmhole;
import static org.oaktag.adjustments.Sleeves.splitSleeve;
import static org.oaktag.adjustments.Sleeves.straightenSleeve;
import static org.oaktag.examples.lessons.Terms.after;
import static org.oaktag.examples.lessons.Terms.edgeAfter;
import static org.oaktag.examples.lessons.Terms.edgeBefore;
import static org.oaktag.examples.lessons.Terms.number;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import java.util.List;
import org.oaktag.adjust.Closing;
import org.oaktag.adjust.LineAcross;
import org.oaktag.adjust.Place;
import org.oaktag.adjust.Recipe;
import org.oaktag.adjust.Slash;
import org.oaktag.adjust.SlashAndSpread;
import org.oaktag.adjust.Spread;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/** The sleeve below its cap. */
final class SleeveLessons {

    /** Where the slash begins: a hand's breadth of cap to either side keeps the crown smooth. */
    private static final Place ON_CAP = Place.along(TopEdges.CAP_FRONT, End.START, mm(20));

    private static final Place ON_HEM = Place.share(EdgeNames.HEM, 0.45);

    private static final Cloth CONTRAST =
            Cloth.knit("brushed fleece, amber", percent(45)).as(Cloth.CONTRAST);

    private SleeveLessons() {}

    static Lesson straighten(Garment block) {
        return Lesson.of(
                        "Straighten the sleeve",
                        Slider.lengths("height of the cap before", mm(70), mm(130), mm(4), mm(98)),
                        height -> new Trial(
                                block.adjust(fitCapToArmhole(mm(6)).atHeight(mm(height))), straightenSleeve()))
                .saying(
                        "From the underarm points the sleeve goes straight down, and the hem is drawn out to meet it: the"
                                + " sleeve is as wide at its hem as at its top. What the hem has gained is for the cuff to"
                                + " gather.")
                .saying(
                        "The cap was fitted first, at the height of the slider; a lower cap makes a wider sleeve, and so"
                                + " a wider hem.")
                .showing(TopNames.SLEEVE)
                .computing(Formula.exact(
                        after("hem of the sleeve", TopNames.SLEEVE_HEM), after("width", TopNames.SLEEVE_WIDTH)))
                .computing(Formula.exact(
                        edgeAfter("underarm edge", TopNames.SLEEVE, TopEdges.UNDERARM_FRONT),
                        after("sleeve length", TopNames.SLEEVE_LENGTH)
                                .minus(Term.length(
                                        "cap height", played -> ShoulderLessons.capHeight(played.after())))));
    }

    static Lesson slashAndSpread(Garment block) {
        Slash shut = Slash.of(LineAcross.straight(ON_CAP, ON_HEM), Spread.hinged(End.START, Angle.degrees(0)));
        Term slash = Term.length("slash", played -> slash(played.before()));
        return Lesson.of(
                        "Slash and spread",
                        Slider.angles(
                                "opened by", Angle.degrees(0), Angle.degrees(30), Angle.degrees(1.5), Angle.degrees(9)),
                        angle -> new Trial(
                                block,
                                new SlashAndSpread(
                                        TopNames.SLEEVE,
                                        List.of(Slash.of(shut.line(), Spread.hinged(End.START, Angle.degrees(angle)))),
                                        Closing.straight())))
                .saying("The sleeve is cut from the cap down to the hem, all but a thread, and opened like a door. The"
                        + " hinge is on the cap, which keeps its length; the hem gains the chord of the arc that its cut"
                        + " edge has swept.")
                .saying("The gap is closed by a straight line here, so that the arithmetic can be checked with a ruler;"
                        + " in a garment a smooth curve closes it.")
                .showing(TopNames.SLEEVE)
                .computing(Formula.exact(
                        edgeAfter("hem", TopNames.SLEEVE, EdgeNames.HEM),
                        edgeBefore("hem before", TopNames.SLEEVE, EdgeNames.HEM)
                                .plus(number(2)
                                        .times(slash)
                                        .times(Term.angle("angle", SleeveLessons::opened)
                                                .over(number(2))
                                                .sine()))))
                .computing(Formula.exact(
                        edgeAfter("front half of the cap", TopNames.SLEEVE, TopEdges.CAP_FRONT),
                        edgeBefore("front half before", TopNames.SLEEVE, TopEdges.CAP_FRONT)));
    }

    private static Length slash(Garment before) {
        var sleeve = before.piece(TopNames.SLEEVE);
        return mm(ON_CAP.on(sleeve).distanceTo(ON_HEM.on(sleeve)));
    }

    private static double opened(Recipe.Played played) {
        Spread spread = ((SlashAndSpread) played.step()).slashes().get(0).spread();
        return ((Spread.Hinged) spread).angle().degrees();
    }

    static Lesson split(Garment block) {
        Garment straight = block.adjust(fitCapToArmhole(mm(6))).adjust(straightenSleeve());
        return Lesson.of(
                        "Split the sleeve along a style line",
                        Slider.lengths("above the hem", mm(0), mm(300), mm(20), mm(140)),
                        above -> new Trial(straight, splitSleeve(mm(above), CONTRAST)))
                .saying("A level line is drawn across the sleeve and both parts get an edge of their own along it. The"
                        + " two edges are the same line, so the seam between them is true; what lies below is cut from"
                        + " another cloth. A style line usually lies 120.0 mm to 180.0 mm above the hem (common"
                        + " practice).")
                .showing(TopNames.SLEEVE, TopNames.SLEEVE_LOWER)
                .computing(Formula.exact(
                        edgeAfter("upper underarm edge", TopNames.SLEEVE, TopEdges.UNDERARM_FRONT),
                        edgeBefore("underarm edge before", TopNames.SLEEVE, TopEdges.UNDERARM_FRONT)
                                .minus(edgeAfter(
                                        "lower underarm edge", TopNames.SLEEVE_LOWER, TopEdges.UNDERARM_FRONT))))
                .computing(Formula.exact(
                        edgeAfter("upper edge of the lower part", TopNames.SLEEVE_LOWER, EdgeNames.TOP),
                        edgeAfter("lower edge of the upper part", TopNames.SLEEVE, EdgeNames.BOTTOM)));
    }
}

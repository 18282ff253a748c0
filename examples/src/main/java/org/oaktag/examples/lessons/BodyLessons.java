package org.oaktag.examples.lessons;

import static org.oaktag.adjustments.Armholes.lowerArmhole;
import static org.oaktag.adjustments.Bodies.straightenSideSeams;
import static org.oaktag.examples.lessons.Terms.after;
import static org.oaktag.examples.lessons.Terms.before;
import static org.oaktag.examples.lessons.Terms.corner;
import static org.oaktag.examples.lessons.Terms.edgeAfter;
import static org.oaktag.examples.lessons.Terms.number;
import static org.oaktag.measure.Length.mm;

import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.export.lesson.View;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/** The armhole and the side seam below it. */
final class BodyLessons {

    private BodyLessons() {}

    static Lesson lowerTheArmhole(Garment block) {
        Term lowered = Term.length(
                "lowered by",
                played -> mm(
                        underarm(played.after()).y() - underarm(played.before()).y()));
        return Lesson.of(
                        "Lower the armhole",
                        Slider.lengths("lowered by", mm(-20), mm(60), mm(4), mm(12)),
                        by -> new Trial(block, lowerArmhole(mm(by))))
                .saying("Both underarm points go straight down, so that the chest keeps its girth, and the armhole is"
                        + " drawn again below its pitch point only. Above that point it is untouched to the last bit.")
                .saying("The side seam loses what the point has moved. The sleeve was left as it is: its cap is now too"
                        + " short, and a sleeve that is not lifted with its armhole binds.")
                .showing(View.closeUp(TopNames.FRONT, TopEdges.ARMHOLE))
                .showing(View.closeUp(TopNames.BACK, TopEdges.ARMHOLE))
                .showing(View.closeUp(TopNames.SLEEVE, TopEdges.CAP_BACK, TopEdges.CAP_FRONT))
                .computing(Formula.exact(
                        Term.length("depth of the armhole", played -> depth(played.after())),
                        Term.length("depth before", played -> depth(played.before()))
                                .plus(lowered)))
                .computing(Formula.rough(
                        after("armhole", TopNames.ARMHOLE_GIRTH),
                        before("armhole before", TopNames.ARMHOLE_GIRTH)
                                .plus(number(2).times(lowered)),
                        "By hand: the tape goes down at the front and up at the back. The curve is a little shorter than"
                                + " that, as it turns under the arm."));
    }

    static Lesson straightenTheSides(Garment block) {
        return Lesson.of(
                        "Straighten the side seams",
                        Slider.lengths("armhole lowered before by", mm(0), mm(60), mm(4), mm(12)),
                        by -> new Trial(block.adjust(lowerArmhole(mm(by))), straightenSideSeams()))
                .saying("From the underarm point one straight line goes to the hem, and the front's is copied to the"
                        + " back: the two sides are equal because they are the same line. The hem is raised at the side"
                        + " just so far that it leaves the seam square.")
                .saying("The armhole was lowered first, by the amount of the slider; the lower it is, the more the line"
                        + " slants.")
                .showing(TopNames.FRONT, TopNames.BACK)
                .computing(Formula.exact(
                        edgeAfter("side seam", TopNames.FRONT, EdgeNames.SIDE),
                        Term.length("down", played -> down(played.after()))
                                .squared()
                                .plus(Term.length("across", played -> across(played.after()))
                                        .squared())
                                .root()))
                .computing(Formula.exact(
                        edgeAfter("back side seam", TopNames.BACK, EdgeNames.SIDE),
                        edgeAfter("front side seam", TopNames.FRONT, EdgeNames.SIDE)));
    }

    private static Point underarm(Garment garment) {
        return corner(garment, TopNames.FRONT, EdgeNames.SIDE, End.START);
    }

    private static Length depth(Garment garment) {
        return mm(underarm(garment).y()
                - corner(garment, TopNames.FRONT, TopEdges.ARMHOLE, End.START).y());
    }

    private static Length down(Garment garment) {
        return mm(corner(garment, TopNames.FRONT, EdgeNames.SIDE, End.END).y()
                - underarm(garment).y());
    }

    private static Length across(Garment garment) {
        return mm(Math.abs(
                corner(garment, TopNames.FRONT, EdgeNames.SIDE, End.END).x()
                        - underarm(garment).x()));
    }
}

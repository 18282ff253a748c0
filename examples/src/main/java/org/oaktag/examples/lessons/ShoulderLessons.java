package org.oaktag.examples.lessons;

import static org.oaktag.adjustments.Shoulders.dropShoulder;
import static org.oaktag.adjustments.Shoulders.moveShoulderForward;
import static org.oaktag.examples.lessons.Terms.after;
import static org.oaktag.examples.lessons.Terms.before;
import static org.oaktag.examples.lessons.Terms.edgeAfter;
import static org.oaktag.examples.lessons.Terms.edgeBefore;
import static org.oaktag.measure.Length.mm;

import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.export.lesson.View;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.measure.Length;

/** Where the shoulder ends, and where its seam lies. */
final class ShoulderLessons {

    private ShoulderLessons() {}

    static Lesson drop(Garment block) {
        Term drop = Term.length(
                "drop",
                played -> played.after()
                        .finished(TopNames.SHOULDER_LENGTH)
                        .minus(played.before().finished(TopNames.SHOULDER_LENGTH)));
        return Lesson.of(
                        "Drop the shoulder",
                        Slider.lengths("drop", mm(0), mm(80), mm(5), mm(25)),
                        by -> new Trial(block, dropShoulder(mm(by))))
                .saying(
                        "The shoulder runs on past the shoulder point along its own line, and the armhole moves out with"
                                + " it. What the shoulder gains the cap loses in height, so that the way from the side neck"
                                + " point over the shoulder to the wrist stays what it was.")
                .saying("The cap is drawn lower at its old length and so no longer fits the new armhole: the walk says"
                        + " by how much, and that the cap is to be fitted again.")
                .showing(TopNames.FRONT, TopNames.SLEEVE)
                .computing(Formula.exact(
                        after("shoulder", TopNames.SHOULDER_LENGTH),
                        before("shoulder before", TopNames.SHOULDER_LENGTH).plus(drop)))
                .computing(Formula.exact(
                        after("sleeve length", TopNames.SLEEVE_LENGTH),
                        before("sleeve before", TopNames.SLEEVE_LENGTH).minus(drop)))
                .computing(Formula.exact(
                        after("side neck to wrist", TopNames.NECK_TO_WRIST),
                        after("shoulder", TopNames.SHOULDER_LENGTH)
                                .plus(after("sleeve length", TopNames.SLEEVE_LENGTH))));
    }

    static Lesson moveForward(Garment block) {
        return Lesson.of(
                        "Move the shoulder seam forward",
                        Slider.lengths("forward", mm(-20), mm(40), mm(4), mm(12)),
                        by -> new Trial(block, moveShoulderForward(mm(by))))
                .saying("A strip is cut off the front along its shoulder and put to the back, turned over through the"
                        + " seam. Nothing is drawn again, so nothing is gained or lost: the neckline and the armhole keep"
                        + " their lengths to the last digit, and only the seam has moved.")
                .showing(View.closeUp(TopNames.FRONT, TopEdges.NECKLINE, TopEdges.SHOULDER, TopEdges.ARMHOLE))
                .showing(View.closeUp(TopNames.BACK, TopEdges.NECKLINE, TopEdges.SHOULDER, TopEdges.ARMHOLE))
                .computing(Formula.exact(
                        edgeAfter("back armhole", TopNames.BACK, TopEdges.ARMHOLE),
                        edgeBefore("back armhole before", TopNames.BACK, TopEdges.ARMHOLE)
                                .plus(edgeBefore("front armhole before", TopNames.FRONT, TopEdges.ARMHOLE)
                                        .minus(edgeAfter("front armhole", TopNames.FRONT, TopEdges.ARMHOLE)))))
                .computing(Formula.exact(
                        after("whole neckline", TopNames.NECKLINE_GIRTH),
                        before("whole neckline before", TopNames.NECKLINE_GIRTH)));
    }

    static Length capHeight(Garment garment) {
        return mm(Terms.corner(garment, TopNames.SLEEVE, TopEdges.CAP_FRONT, End.END)
                        .y()
                - Terms.corner(garment, TopNames.SLEEVE, TopEdges.CAP_FRONT, End.START)
                        .y());
    }
}

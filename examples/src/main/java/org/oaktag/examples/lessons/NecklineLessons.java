package org.oaktag.examples.lessons;

import static org.oaktag.adjustments.Necklines.widenNeckline;
import static org.oaktag.examples.lessons.Terms.after;
import static org.oaktag.examples.lessons.Terms.before;
import static org.oaktag.examples.lessons.Terms.corner;
import static org.oaktag.examples.lessons.Terms.edgeAfter;
import static org.oaktag.examples.lessons.Terms.edgeBefore;
import static org.oaktag.examples.lessons.Terms.number;
import static org.oaktag.measure.Length.mm;

import org.oaktag.adjust.Recipe;
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

/** What the neckline takes, the shoulder gives. */
final class NecklineLessons {

    private NecklineLessons() {}

    static Lesson widen(Garment block) {
        Term along = Term.length("along the shoulder", NecklineLessons::along);
        Term slope = Term.angle(
                "slope of the shoulder",
                played -> Math.toDegrees(played.before()
                        .piece(TopNames.FRONT)
                        .path(TopEdges.SHOULDER)
                        .startDirection()
                        .angle()));
        return Lesson.of(
                        "Widen the neckline",
                        Slider.lengths("along the shoulder", mm(-20), mm(60), mm(4), mm(8)),
                        by -> new Trial(block, widenNeckline(mm(by))))
                .saying(
                        "The side neck point moves along the shoulder line, front and back alike, and both necklines are"
                                + " drawn again with the directions that they had: square to the shoulder, level at the centre."
                                + " So the shoulder loses exactly what the point has moved.")
                .saying("The neckline grows by more: the tape goes round both sides, front and back. A layer to be worn"
                        + " over another wants 5.0 mm to 10.0 mm (common practice).")
                .showing(View.closeUp(TopNames.FRONT, TopEdges.NECKLINE, TopEdges.SHOULDER))
                .showing(View.closeUp(TopNames.BACK, TopEdges.NECKLINE, TopEdges.SHOULDER))
                .computing(Formula.exact(
                        edgeAfter("shoulder", TopNames.FRONT, TopEdges.SHOULDER),
                        edgeBefore("shoulder before", TopNames.FRONT, TopEdges.SHOULDER)
                                .minus(along)))
                .computing(Formula.exact(
                        Term.length("width of the neck", played -> width(played.after())),
                        Term.length("width before", played -> width(played.before()))
                                .plus(number(2).times(along).times(slope.cosine()))))
                .computing(Formula.rough(
                        after("whole neckline", TopNames.NECKLINE_GIRTH),
                        before("neckline before", TopNames.NECKLINE_GIRTH)
                                .plus(number(4).times(along)),
                        "By hand: four ends move, so four times the amount. The curves take less, as only a part of their"
                                + " length runs in that direction."));
    }

    private static Length along(Recipe.Played played) {
        return Terms.edge(played.before(), TopNames.FRONT, TopEdges.SHOULDER)
                .minus(Terms.edge(played.after(), TopNames.FRONT, TopEdges.SHOULDER));
    }

    private static Length width(Garment garment) {
        return mm(2
                * corner(garment, TopNames.FRONT, TopEdges.SHOULDER, End.START).x());
    }
}

package org.oaktag.examples.lessons;

import static org.oaktag.adjust.Darts.openDart;
import static org.oaktag.adjust.Darts.splitDart;
import static org.oaktag.examples.lessons.Terms.number;
import static org.oaktag.measure.Length.mm;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.adjust.MoveDart;
import org.oaktag.adjust.Place;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;

/** A dart turns about its apex: its angle is shared out, never lost. */
final class DartLessons {

    private static final Name HEM_DART = Name.of("hem dart");
    private static final Name SHOULDER_DART = Name.of("shoulder dart");

    private DartLessons() {}

    static Lesson rotate(Garment block) {
        Garment darted =
                block.adjust(openDart(TopNames.FRONT, HEM_DART, Place.share(EdgeNames.HEM, 0.6), mm(60), mm(350)));
        Term share = Term.share("share", played -> 100 * ((MoveDart) played.step()).share());
        Term angle = Term.angle(
                "angle of the hem dart before",
                played -> Dart.in(played.before().piece(TopNames.FRONT), HEM_DART)
                        .angle()
                        .degrees());
        Term leg = Term.length(
                "leg",
                played -> Dart.in(played.after().piece(TopNames.FRONT), SHOULDER_DART)
                        .leg());
        return Lesson.of(
                        "Rotate a dart",
                        Slider.shares("moved to the shoulder", percent(5), percent(95), percent(5), percent(50)),
                        moved -> new Trial(
                                darted,
                                splitDart(
                                        TopNames.FRONT,
                                        HEM_DART,
                                        Place.share(TopEdges.SHOULDER, 0.5),
                                        moved / 100,
                                        SHOULDER_DART)))
                .saying(
                        "The front has a dart that rises from its hem. A share of it is closed, and as much of the piece as lies"
                                + " between turns about the apex; a dart of that share opens at the shoulder. The angles add up"
                                + " to what they were, while the width at the mouth depends on how long the legs are.")
                .showing(TopNames.FRONT)
                .computing(Formula.exact(
                        Term.length(
                                "mouth of the new dart",
                                played -> Dart.in(played.after().piece(TopNames.FRONT), SHOULDER_DART)
                                        .width()),
                        number(2)
                                .times(leg)
                                .times(angle.times(share).over(number(2)).sine())))
                .computing(Formula.exact(
                        Term.length(
                                "mouth of the hem dart",
                                played -> Dart.in(played.after().piece(TopNames.FRONT), HEM_DART)
                                        .width()),
                        number(2)
                                .times(Term.length(
                                        "its leg",
                                        played -> Dart.in(played.after().piece(TopNames.FRONT), HEM_DART)
                                                .leg()))
                                .times(angle.times(number(1).minus(share))
                                        .over(number(2))
                                        .sine())));
    }
}

package org.oaktag.examples.lessons;

import static org.oaktag.adjust.Darts.splitDart;
import static org.oaktag.examples.lessons.Terms.number;
import static org.oaktag.measure.Percent.percent;

import org.oaktag.adjust.MoveDart;
import org.oaktag.adjust.Place;
import org.oaktag.export.lesson.Formula;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.export.lesson.Slider;
import org.oaktag.export.lesson.Term;
import org.oaktag.export.lesson.Trial;
import org.oaktag.garment.Dart;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.skirt.SkirtNames;

/** A dart of a skirt is closed, and its hem opens. */
final class SkirtLessons {

    private static final Name WAIST_DART = SkirtNames.dart(SkirtNames.FRONT, 1);
    private static final Name OPENING = Name.of("opening at the hem");

    private SkirtLessons() {}

    /**
     * Returns the lesson.
     *
     * @param skirt a straight skirt with one dart on each side of its front
     */
    static Lesson closeADart(Garment skirt) {
        Piece front = skirt.piece(SkirtNames.FRONT);
        // The hem runs from the side to the centre.
        double below = 1
                - Dart.in(front, WAIST_DART).apex().x()
                        / front.path(EdgeNames.HEM).start().x();
        Term share = Term.share("share", played -> 100 * ((MoveDart) played.step()).share());
        Term angle = Term.angle(
                "angle of the dart before",
                played -> Dart.in(played.before().piece(SkirtNames.FRONT), WAIST_DART)
                        .angle()
                        .degrees());
        Term cut = Term.length(
                "cut from its apex to the hem",
                played ->
                        Dart.in(played.after().piece(SkirtNames.FRONT), OPENING).leg());
        return Lesson.of(
                        "Close a dart and the hem opens",
                        Slider.shares("of the dart closed", percent(5), percent(95), percent(5), percent(50)),
                        closed -> new Trial(
                                skirt,
                                splitDart(
                                        SkirtNames.FRONT,
                                        WAIST_DART,
                                        Place.share(EdgeNames.HEM, below),
                                        closed / 100,
                                        OPENING)))
                .saying(
                        "The front of a straight skirt is cut from the apex of its dart straight down to the hem, and the dart is"
                                + " closed in part: what lies towards the side turns about the apex, and the hem opens. Filled"
                                + " with cloth, the opening is the flare of an A-line. The waist is as long as it was, and the"
                                + " flare begins no higher than the apex; the longer the skirt, the more of it there is.")
                .showing(SkirtNames.FRONT)
                .computing(Formula.exact(
                        Term.length(
                                "opening at the hem",
                                played -> Dart.in(played.after().piece(SkirtNames.FRONT), OPENING)
                                        .width()),
                        number(2)
                                .times(cut)
                                .times(angle.times(share).over(number(2)).sine())))
                .computing(Formula.exact(
                        Term.length(
                                "mouth of the dart that is left",
                                played -> Dart.in(played.after().piece(SkirtNames.FRONT), WAIST_DART)
                                        .width()),
                        number(2)
                                .times(Term.length(
                                        "its leg",
                                        played -> Dart.in(played.after().piece(SkirtNames.FRONT), WAIST_DART)
                                                .leg()))
                                .times(angle.times(number(1).minus(share))
                                        .over(number(2))
                                        .sine())));
    }
}

package org.oaktag.examples.lessons;

import java.util.List;
import org.oaktag.export.lesson.Lesson;
import org.oaktag.garment.Garment;

/** Every lesson, in the order in which they are best taken. */
public final class LessonBook {

    private LessonBook() {}

    /**
     * Returns the lessons on two blocks.
     *
     * @param block a knit top as it was drafted
     * @param skirt a straight skirt as it was drafted, with darts
     */
    public static List<Lesson> on(Garment block, Garment skirt) {
        return List.of(
                NecklineLessons.widen(block),
                ShoulderLessons.drop(block),
                ShoulderLessons.moveForward(block),
                BodyLessons.lowerTheArmhole(block),
                BodyLessons.straightenTheSides(block),
                CapLessons.fitTheCap(block),
                SleeveLessons.straighten(block),
                SleeveLessons.slashAndSpread(block),
                SleeveLessons.split(block),
                BandLessons.cuff(block),
                BandLessons.band(block),
                BandLessons.threePanelHood(block),
                DartLessons.rotate(block),
                SkirtLessons.closeADart(skirt));
    }
}

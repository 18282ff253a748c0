package org.oaktag.geometry;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.oaktag.PatternException;

/** Where an outline crosses itself: what cuts off little is a flaw in the drawing, and more is refused. */
final class OutlineFlaw {
    /** What a crossing may cut off and is no more than a flaw, in tolerances. */
    private static final double FLAW = 10;

    private OutlineFlaw() {}

    /**
     * Returns the crossing that is a flaw only, and is to blame where no offset is found.
     *
     * @throws PatternException if a crossing cuts off more
     */
    static Optional<Crossing> of(Outline outline, double tolerance) {
        Optional<Crossing> crossing = crossing(outline, FLAW * tolerance);
        crossing.filter(each -> cutOff(each, outline) > FLAW * tolerance).ifPresent(each -> {
            throw refused(each);
        });
        return crossing;
    }

    /**
     * Returns the crossing of the outline with itself that cuts off most, or else what may be one but is too small to
     * tell.
     */
    private static Optional<Crossing> crossing(Outline outline, double flaw) {
        if (!outline.meetsItself()) {
            return Optional.empty();
        }
        return outline.selfCrossings().stream()
                .filter(each -> each.kind() == Crossing.Kind.CROSS
                        || (each.kind() == Crossing.Kind.TOUCH && cutOff(each, outline) <= flaw))
                .max(Comparator.comparingDouble(each -> cutOff(each, outline)));
    }

    private static double cutOff(Crossing crossing, Outline outline) {
        double loop = Math.abs(crossing.second() - crossing.first());
        return Math.min(loop, outline.perimeter() - loop);
    }

    static PatternException refused(Crossing crossing) {
        return PatternException.of(
                "outline to be offset",
                "must not cross itself",
                String.format(
                        Locale.ROOT,
                        "a crossing at (%.1f, %.1f), %.1f and %.1f mm along it",
                        crossing.point().x(),
                        crossing.point().y(),
                        crossing.first(),
                        crossing.second()),
                "draw it round one area");
    }
}

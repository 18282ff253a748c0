package org.oaktag.adjust;

import java.util.List;
import java.util.Optional;
import org.oaktag.garment.Aspect;
import org.oaktag.garment.Notch;

/**
 * How many cuts a notch may have, by the sides of the garment at which the edges lie that it matches; the rule is told with
 * {@link Notch#count}.
 */
enum NotchCuts {
    FRONT,
    BACK,
    BOTH,
    NEITHER;

    private static final List<Integer> ON_FRONT = List.of(1, 3);
    private static final List<Integer> ON_BACK = List.of(2, 3);
    private static final List<Integer> ANYWHERE = List.of(1, 3, 2);

    /** Returns the numbers of cuts, the one that is tried first before the others. */
    List<Integer> counts() {
        return switch (this) {
            case FRONT, BOTH -> ON_FRONT;
            case BACK -> ON_BACK;
            case NEITHER -> ANYWHERE;
        };
    }

    /** Returns what two edges that are sewn to each other allow. */
    static NotchCuts of(Optional<Aspect> a, Optional<Aspect> b) {
        return of(isAt(Aspect.FRONT, a, b), isAt(Aspect.BACK, a, b));
    }

    private static boolean isAt(Aspect side, Optional<Aspect> a, Optional<Aspect> b) {
        return a.filter(side::equals).isPresent() || b.filter(side::equals).isPresent();
    }

    private static NotchCuts of(boolean front, boolean back) {
        if (front) {
            return back ? BOTH : FRONT;
        }
        return back ? BACK : NEITHER;
    }
}

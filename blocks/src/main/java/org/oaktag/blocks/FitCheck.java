package org.oaktag.blocks;

import java.util.Objects;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * Whether an opening of the garment passes over the part of the body that has to go through it. It says what the numbers
 * say and no more: seams, thread and comfort are not reckoned. Immutable.
 *
 * <pre>{@code
 * FitCheck neck = FitChecks.neck(hooded).orElseThrow();
 * neck.neededStretch();   // of the opening, to go over the head
 * neck.advice();          // what to do where the cloth does not stretch so far
 * }</pre>
 *
 * @param name the opening, such as {@code "neck opening"}
 * @param opening its girth at rest
 * @param body what must pass, such as {@code "head"}
 * @param mustPass the girth of what must pass
 * @param clothStretch how far the opening stretches before the least stretchy cloth in it is at its end
 */
public record FitCheck(String name, Length opening, String body, Length mustPass, Percent clothStretch) {

    /** In hundredths of stretch, so that an opening made just as large as advised passes. */
    private static final double ROUNDING = 1e-9;

    /** Refuses null. */
    public FitCheck {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(opening, "opening");
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(mustPass, "mustPass");
        Objects.requireNonNull(clothStretch, "clothStretch");
    }

    /** Returns how far the opening must stretch, (stretched - rest) / rest; 0 where it is wide enough at rest. */
    public Percent neededStretch() {
        return Percent.percent(Math.max(0, (mustPass.mm() - opening.mm()) / opening.mm() * 100));
    }

    /** Tells whether the stretch of the cloth is enough. */
    public boolean passes() {
        return neededStretch().percent() <= clothStretch.percent() + ROUNDING;
    }

    /** Returns the least girth at rest from which the cloth stretches far enough. */
    public Length leastOpening() {
        return mustPass.times(1 / (1 + clothStretch.fraction()));
    }

    /** Returns what would let it pass, as a phrase in the imperative, or an empty string where it passes. */
    public String advice() {
        return passes()
                ? ""
                : "make it at least " + leastOpening().roundedUp().text() + " or take a cloth that stretches by "
                        + neededStretch().roundedUp().text();
    }

    /** Returns the check as a sentence with its numbers, and the advice where there is any. */
    public String text() {
        String girth = name + " " + opening.text();
        if (opening.compareTo(mustPass) >= 0) {
            return girth + " is wider than the " + body + " (" + mustPass.text() + ") by "
                    + opening.minus(mustPass).text();
        }
        String fact = girth + " must stretch by " + neededStretch().text() + " to pass the " + body + " ("
                + mustPass.text() + "); the cloth gives " + clothStretch.text();
        return passes() ? fact : fact + ": " + advice();
    }

    @Override
    public String toString() {
        return text();
    }
}

package org.oaktag.lay;

import org.oaktag.PatternException;

/**
 * How hard a lay is tried, counted in tries and not in seconds, so that the same effort gives the same lay on every
 * machine. Immutable.
 *
 * <pre>{@code
 * Lay lay = Lay.of(
 *         CutList.of(top), shell, KnitTop.allowances(top), Spread.single(cm(150)).withNap(), Effort.tries(40));
 * }</pre>
 *
 * @param tries how many moves of a piece to a better place are tried, 1 to 1000000
 */
public record Effort(int tries) {

    private static final int MOST = 1_000_000;
    private static final int STANDARD = 32_000;

    /**
     * Checks the number.
     *
     * @throws PatternException if it is not 1 to 1000000
     */
    public Effort {
        if (tries < 1 || tries > MOST) {
            throw PatternException.of("effort of a lay", "must be 1 to " + MOST + " tries", "" + tries, "");
        }
    }

    /**
     * Returns the effort of so many tries.
     *
     * @throws PatternException if it is not 1 to 1000000
     */
    public static Effort tries(int tries) {
        return new Effort(tries);
    }

    /**
     * Returns an effort that takes one to two seconds for the pieces of a garment with a nap, and four to six without.
     */
    public static Effort standard() {
        return new Effort(STANDARD);
    }
}

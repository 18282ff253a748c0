package org.oaktag.garment;

import java.util.Objects;
import org.oaktag.garment.Opening.Way;
import org.oaktag.measure.Length;
import org.oaktag.measure.Percent;

/**
 * A girth of the garment, the girth of the body that has to go through it or stay in it, and what the cloth gives.
 * Immutable.
 *
 * <pre>{@code
 * Passage neck = new Passage("neckline", mm(430), "head", mm(560), percent(45), Opening.Way.PASSED);
 * neck.neededStretch().text();   // = 30.2 %
 * neck.verdict();                // = FITS
 * }</pre>
 *
 * @param ring what is measured, such as {@code "neckline"}
 * @param girth its girth at rest
 * @param part the part of the body, such as {@code "head"}
 * @param mustPass the girth of that part
 * @param clothStretch how far the ring stretches before the least stretchy cloth in it is at its end
 * @param way whether it passes or stays
 */
public record Passage(String ring, Length girth, String part, Length mustPass, Percent clothStretch, Way way) {

    /** Of the stretch of a cloth so much may be used for a moment (common practice). */
    private static final double FOR_A_MOMENT = 0.75;

    /** Of the stretch of a cloth so much may be used all day (common practice: a third to a half). */
    private static final double ALL_DAY = 1.0 / 3;

    /** From this stretch on a cloth is a rib or as stretchy as one, and is worn stretched (common practice). */
    private static final double WORN_STRETCHED = 75;

    /** In hundredths of stretch, so that a girth made just as large as advised passes. */
    private static final double ROUNDING = 1e-6;

    /** Refuses null. */
    public Passage {
        Objects.requireNonNull(ring, "ring");
        Objects.requireNonNull(girth, "girth");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(mustPass, "mustPass");
        Objects.requireNonNull(clothStretch, "clothStretch");
        Objects.requireNonNull(way, "way");
    }

    /** Returns how far the girth must stretch, (stretched - rest) / rest; 0 where it is wide enough at rest. */
    public Percent neededStretch() {
        return Percent.percent(Math.max(0, (mustPass.mm() - girth.mm()) / girth.mm() * 100));
    }

    /** Returns how far the girth opens with as much of the cloth's stretch as may be used. */
    public Length reach() {
        return girth.times(1 + usable());
    }

    /**
     * Returns whether the body goes through. For a moment: freely with three quarters of the stretch, and with a
     * caution up to all of it. All day: freely where no stretch is needed or a rib is worn stretched, with a caution up
     * to a third of the stretch.
     */
    public Fit.Verdict verdict() {
        double needed = neededStretch().percent();
        boolean free = way == Way.PASSED || clothStretch.percent() >= WORN_STRETCHED;
        if (needed <= (free ? 100 * usable() : 0) + ROUNDING) {
            return Fit.Verdict.FITS;
        }
        double most = way == Way.PASSED ? clothStretch.percent() : 100 * usable();
        return needed <= most + ROUNDING ? Fit.Verdict.STRAINS : Fit.Verdict.FAILS;
    }

    private double usable() {
        return (way == Way.PASSED ? FOR_A_MOMENT : ALL_DAY) * clothStretch.fraction();
    }

    /**
     * Returns the least girth at rest that fits: with the stretch that may be used for a moment, or all day with none.
     */
    public Length leastGirth() {
        boolean free = way == Way.PASSED || clothStretch.percent() >= WORN_STRETCHED;
        return free ? mustPass.times(1 / (1 + usable())) : mustPass;
    }

    /** Returns what would let it pass, as a phrase in the imperative, or an empty string where it fits. */
    public String advice() {
        if (verdict() == Fit.Verdict.FITS) {
            return "";
        }
        String wider = "make it at least " + leastGirth().roundedUp().text();
        return way == Way.PASSED
                ? wider + " or take a cloth that stretches by "
                        + Percent.percent(neededStretch().percent() / FOR_A_MOMENT)
                                .roundedUp()
                                .text()
                : wider;
    }

    /** Returns the numbers as a sentence, and the advice where there is any. */
    public String text() {
        if (girth.compareTo(mustPass) >= 0) {
            return ring + " " + girth.text() + " is wider than the " + part + " (" + mustPass.text() + ") by "
                    + girth.minus(mustPass).text();
        }
        String fact = way == Way.PASSED ? passed() : worn();
        return verdict() == Fit.Verdict.FITS ? fact : fact + ": " + advice();
    }

    private String passed() {
        return ring + " " + girth.text() + " must stretch by " + neededStretch().text() + " to pass the " + part + " ("
                + mustPass.text() + "); the cloth gives " + clothStretch.text()
                + (verdict() == Fit.Verdict.STRAINS
                        ? ", and should be asked for three quarters of it at the most"
                        : "");
    }

    private String worn() {
        return ring + " " + girth.text() + " is " + mustPass.minus(girth).text() + " narrower than the " + part + " ("
                + mustPass.text() + ") and is worn stretched by "
                + neededStretch().text() + "; the cloth gives "
                + clothStretch.text();
    }

    @Override
    public String toString() {
        return text();
    }
}

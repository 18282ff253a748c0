package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a check of the fit found. Immutable.
 *
 * <pre>{@code
 * Fit fit = new Fit(Name.of("waist"), Fit.Verdict.FITS, "waist girth 760.0 mm goes round the waist (700.0 mm)");
 * fit.isCaution();   // = false
 * }</pre>
 *
 * @param check the name of the check
 * @param verdict whether it fits
 * @param text the finding as a sentence with its numbers, and what would mend it
 */
public record Fit(Name check, Verdict verdict, String text) {

    /** Refuses null. */
    public Fit {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(verdict, "verdict");
        Objects.requireNonNull(text, "text");
    }

    /** Whether a garment fits at one place. */
    public enum Verdict {
        /** As a maker would have it. */
        FITS,
        /** Only where the cloth gives all that it has, or beside what is usual: a caution. */
        STRAINS,
        /** Not, whatever the cloth gives: a caution too, and more than that. */
        FAILS
    }

    static List<Fit> of(Garment garment) {
        List<Fit> all = new ArrayList<>(garment.checks().size());
        for (FitCheck check : garment.checks()) {
            check.of(garment).ifPresent(all::add);
        }
        return List.copyOf(all);
    }

    /**
     * Answers the checks of a garment that was made from an earlier one; an answer that stands is not asked for again.
     */
    static List<Fit> since(Garment earlier, Garment garment) {
        List<Fit> before = earlier.fit();
        List<Fit> all = new ArrayList<>(garment.checks().size());
        for (FitCheck check : garment.checks()) {
            if (isAsked(earlier, check, all.size()) && check.standsSince(earlier, garment)) {
                Kept.find(before, Fit::check, check.name(), all.size()).ifPresent(all::add);
            } else {
                check.of(garment).ifPresent(all::add);
            }
        }
        return List.copyOf(all);
    }

    /** Most checks stand where they stood, so that is where one is looked for first. */
    private static boolean isAsked(Garment earlier, FitCheck check, int place) {
        List<FitCheck> checks = earlier.checks();
        return (place < checks.size() && checks.get(place).equals(check)) || checks.contains(check);
    }

    /** Tells whether the maker has to be told. */
    public boolean isCaution() {
        return verdict != Verdict.FITS;
    }

    @Override
    public String toString() {
        return text;
    }
}

package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/**
 * Where a part of the body goes through the garment, or is in it as long as it is worn. It is as wide as the narrowest
 * of its rings, each stretched as far as its cloth gives: a neckband and the neckline to which it is sewn, a cuff and
 * the hem that is gathered on to it. Immutable.
 *
 * <pre>{@code
 * Opening cuff = Opening.passing(Name.of("cuff"), Name.of("hand girth"), "hand", Name.of("cuff girth"));
 * cuff.way();   // = PASSED
 * }</pre>
 *
 * @param name what it is called, unique among the checks of a garment
 * @param way how the body goes through it
 * @param body the measure of the body that has to pass
 * @param part the part of the body in plain words, for the sentence: {@code "head"}
 * @param rings the finished measures round it, each of which may hold it back
 */
public record Opening(Name name, Way way, Name body, String part, List<Name> rings) implements FitCheck {

    /** How the body goes through an opening. */
    public enum Way {
        /** For a moment, as a head does: three quarters of the stretch of the cloth may be used (common practice). */
        PASSED,
        /** For as long as the garment is worn: a third of the stretch may be used (common practice), and is told. */
        WORN
    }

    /**
     * Copies the rings.
     *
     * @throws PatternException if there is none
     */
    public Opening {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(part, "part");
        rings = List.copyOf(rings);
        if (rings.isEmpty()) {
            throw PatternException.of("opening '" + name + "'", "must have a girth", "no finished measure", "");
        }
    }

    /** Returns an opening through which a part of the body passes. */
    public static Opening passing(Name name, Name body, String part, Name... rings) {
        return new Opening(name, Way.PASSED, body, part, List.of(rings));
    }

    /** Returns an opening in which a part of the body stays. */
    public static Opening worn(Name name, Name body, String part, Name... rings) {
        return new Opening(name, Way.WORN, body, part, List.of(rings));
    }

    @Override
    public Optional<Fit> of(Garment garment) {
        String rests = garment.wearer().saysDerived(body);
        return measured(garment).map(passage -> new Fit(name, passage.verdict(), passage.text() + rests));
    }

    /** Tells whether all rings are as long as they were, and give as far with what is sewn to them. */
    @Override
    public boolean standsSince(Garment earlier, Garment garment) {
        if (!earlier.wearer().equals(garment.wearer())) {
            return false;
        }
        boolean isSewnAlike = garment.keptOf(earlier).isSewnAlike();
        for (int i = 0; i < rings.size(); i++) {
            Optional<TakenMeasure> ring = garment.findMeasure(rings.get(i));
            if (!ring.equals(earlier.findMeasure(rings.get(i)))
                    || !(isSewnAlike || ring.isEmpty() || givesAlike(ring.get().measure(), earlier, garment))) {
                return false;
            }
        }
        return true;
    }

    private static boolean givesAlike(FinishedMeasure ring, Garment earlier, Garment garment) {
        return Give.of(earlier, ring).equals(Give.of(garment, ring));
    }

    /** Returns the numbers; empty where the garment lacks all of its rings, or the wearer was not measured there. */
    public Optional<Passage> measured(Garment garment) {
        Optional<Length> mustPass =
                Optional.ofNullable(garment.wearer().measures().get(body));
        return mustPass.flatMap(girth -> around(garment, girth));
    }

    /**
     * Returns the numbers for a girth of the body that was not taken there but is known, such as one between two
     * levels; empty where the garment lacks all of its rings.
     */
    public Optional<Passage> around(Garment garment, Length mustPass) {
        Objects.requireNonNull(mustPass, "mustPass");
        Optional<Passage> narrowest = Optional.empty();
        for (Name ring : rings) {
            Optional<Passage> passage = passage(garment, ring, mustPass);
            if (passage.isPresent()
                    && (narrowest.isEmpty()
                            || passage.get().reach().compareTo(narrowest.get().reach()) < 0)) {
                narrowest = passage;
            }
        }
        return narrowest;
    }

    private Optional<Passage> passage(Garment garment, Name ring, Length mustPass) {
        return garment.findMeasure(ring)
                .flatMap(taken -> taken.length()
                        .map(girth -> new Passage(
                                ring.value(), girth, part, mustPass, Give.of(garment, taken.measure()), way)));
    }
}

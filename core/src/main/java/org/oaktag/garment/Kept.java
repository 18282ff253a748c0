package org.oaktag.garment;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What a garment still has of the one from which it was made: what was measured on nothing else need not be measured
 * again. Made for one comparison and used up by it.
 */
final class Kept {

    private final Map<Name, Twins> twins = new HashMap<>();

    /** A piece of both garments, before and now. */
    private record Twins(Piece before, Piece now, boolean areSame) {

        boolean keepPath(Name edge) {
            return areSame || (haveBoth(edge) && before.path(edge).equals(now.path(edge)));
        }

        boolean keepCorner(Name edge, End end) {
            return areSame || (haveBoth(edge) && before.corner(edge, end).equals(now.corner(edge, end)));
        }

        boolean keepOutline() {
            return areSame || before.edges().equals(now.edges());
        }

        /** Tells whether the edge is there with its notches, and between the same neighbours, to which it is at an angle. */
        boolean keepSewing(Name edge) {
            return areSame
                    || (keepPath(edge)
                            && before.before(edge)
                                    .path()
                                    .equals(now.before(edge).path())
                            && before.after(edge).path().equals(now.after(edge).path())
                            && before.notchesOn(edge).equals(now.notchesOn(edge)));
        }

        private boolean haveBoth(Name edge) {
            return before.hasEdge(edge) && now.hasEdge(edge);
        }
    }

    private Kept() {}

    static Kept of(Garment earlier, Garment garment) {
        Kept kept = new Kept();
        for (Piece now : garment.pieces()) {
            earlier.findPiece(now.name())
                    .ifPresent(before -> kept.twins.put(now.name(), new Twins(before, now, before.equals(now))));
        }
        return kept;
    }

    /** Returns what was known under a name: most of it stands where it stood, so that is where it is looked for first. */
    static <T> Optional<T> find(List<T> known, Function<T, Name> name, Name wanted, int place) {
        if (place < known.size() && name.apply(known.get(place)).equals(wanted)) {
            return Optional.of(known.get(place));
        }
        for (T each : known) {
            if (name.apply(each).equals(wanted)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /** Tells whether both sides of a seam are what they were. */
    boolean has(Seam seam) {
        return has(seam.a()) && has(seam.b());
    }

    private boolean has(SeamSide side) {
        for (SeamSide.Run run : side.runs()) {
            @Nullable Twins piece = twins.get(run.edge().piece());
            if (piece == null || !piece.keepSewing(run.edge().edge())) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether everything on which a measure is taken is what it was. */
    boolean has(FinishedMeasure measure) {
        for (FinishedMeasure.Term term : measure.terms()) {
            if (!has(term.quantity())) {
                return false;
            }
        }
        return true;
    }

    private boolean has(Quantity quantity) {
        for (Quantity.Corner corner : quantity.corners()) {
            @Nullable Twins piece = twins.get(corner.edge().piece());
            if (piece == null || !piece.keepCorner(corner.edge().edge(), corner.end())) {
                return false;
            }
        }
        for (EdgeRef edge : quantity.edges()) {
            @Nullable Twins piece = twins.get(edge.piece());
            if (piece == null || !piece.keepPath(edge.edge())) {
                return false;
            }
        }
        return hasOutlines(quantity.outlines());
    }

    private boolean hasOutlines(List<Name> pieces) {
        for (Name name : pieces) {
            @Nullable Twins piece = twins.get(name);
            if (piece == null || !piece.keepOutline()) {
                return false;
            }
        }
        return true;
    }
}

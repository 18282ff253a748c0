package org.oaktag.garment;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;

/**
 * What a garment still has of the one from which it was made: what was measured on nothing else need not be measured
 * again. Immutable.
 */
final class Kept {

    private final List<Piece> before;
    private final Garment garment;

    /** Of each piece of the garment, in their order, what became of it; null where it is new. */
    private final @Nullable Twins[] twins;

    /** A piece of both garments, before and now. */
    private record Twins(Piece before, Piece now, boolean areSame) {

        boolean keepPath(Name edge) {
            if (areSame) {
                return true;
            }
            int was = before.placeOf(edge);
            int is = now.placeOf(edge);
            return was >= 0 && is >= 0 && path(before, was).equals(path(now, is));
        }

        boolean keepCorner(Name edge, End end) {
            if (areSame) {
                return true;
            }
            int was = before.placeOf(edge);
            int is = now.placeOf(edge);
            return was >= 0 && is >= 0 && corner(before, was, end).equals(corner(now, is, end));
        }

        boolean keepOutline() {
            return areSame || before.edges().equals(now.edges());
        }

        /**
         * Tells whether the edge is there with its notches, and between the same neighbours, to which it is at an
         * angle.
         */
        boolean keepSewing(Name edge) {
            if (areSame) {
                return true;
            }
            int was = before.placeOf(edge);
            int is = now.placeOf(edge);
            return was >= 0
                    && is >= 0
                    && path(before, was).equals(path(now, is))
                    && path(before, was + before.edges().size() - 1)
                            .equals(path(now, is + now.edges().size() - 1))
                    && path(before, was + 1).equals(path(now, is + 1))
                    && (before.notches().equals(now.notches())
                            || before.notchesOn(edge).equals(now.notchesOn(edge)));
        }

        private static Path path(Piece piece, int place) {
            List<Edge> edges = piece.edges();
            return edges.get(place % edges.size()).path();
        }

        private static Point corner(Piece piece, int place, End end) {
            Path path = path(piece, place);
            return end == End.START ? path.start() : path.end();
        }
    }

    private Kept(Garment earlier, Garment garment) {
        this.before = earlier.pieces();
        this.garment = garment;
        List<Piece> pieces = garment.pieces();
        twins = new @Nullable Twins[pieces.size()];
        for (int i = 0; i < twins.length; i++) {
            Piece now = pieces.get(i);
            int place = earlier.placeOf(now.name());
            if (place >= 0) {
                Piece was = before.get(place);
                twins[i] = new Twins(was, now, was.equals(now));
            }
        }
    }

    static Kept of(Garment earlier, Garment garment) {
        return new Kept(earlier, garment);
    }

    /** Tells whether this is what is left of the pieces of that very garment. */
    boolean isOf(Garment other) {
        return before == other.pieces();
    }

    /**
     * Returns what was known under a name: most of it stands where it stood, so that is where it is looked for first.
     */
    static <T> Optional<T> find(List<T> known, Function<T, Name> name, Name wanted, int place) {
        if (place < known.size() && name.apply(known.get(place)).equals(wanted)) {
            return Optional.of(known.get(place));
        }
        for (int i = 0; i < known.size(); i++) {
            if (name.apply(known.get(i)).equals(wanted)) {
                return Optional.of(known.get(i));
            }
        }
        return Optional.empty();
    }

    /** Tells whether both sides of a seam are what they were. */
    boolean has(Seam seam) {
        return has(seam.a()) && has(seam.b());
    }

    private boolean has(SeamSide side) {
        List<SeamSide.Run> runs = side.runs();
        for (int i = 0; i < runs.size(); i++) {
            EdgeRef edge = runs.get(i).edge();
            @Nullable Twins piece = twins(edge.piece());
            if (piece == null || !piece.keepSewing(edge.edge())) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether everything on which a measure is taken is what it was. */
    boolean has(FinishedMeasure measure) {
        List<FinishedMeasure.Term> terms = measure.terms();
        for (int i = 0; i < terms.size(); i++) {
            if (!has(terms.get(i).quantity())) {
                return false;
            }
        }
        return true;
    }

    private boolean has(Quantity quantity) {
        return hasCorners(quantity.corners()) && hasPaths(quantity.edges()) && hasOutlines(quantity.outlines());
    }

    private boolean hasCorners(List<Quantity.Corner> corners) {
        for (int i = 0; i < corners.size(); i++) {
            EdgeRef edge = corners.get(i).edge();
            @Nullable Twins piece = twins(edge.piece());
            if (piece == null || !piece.keepCorner(edge.edge(), corners.get(i).end())) {
                return false;
            }
        }
        return true;
    }

    private boolean hasPaths(List<EdgeRef> edges) {
        for (int i = 0; i < edges.size(); i++) {
            EdgeRef edge = edges.get(i);
            @Nullable Twins piece = twins(edge.piece());
            if (piece == null || !piece.keepPath(edge.edge())) {
                return false;
            }
        }
        return true;
    }

    private boolean hasOutlines(List<Name> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            @Nullable Twins piece = twins(pieces.get(i));
            if (piece == null || !piece.keepOutline()) {
                return false;
            }
        }
        return true;
    }

    private @Nullable Twins twins(Name piece) {
        int place = garment.placeOf(piece);
        return place < 0 ? null : twins[place];
    }
}

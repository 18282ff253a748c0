package org.oaktag.garment;

import java.util.ArrayList;
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
    private final boolean isSewnAlike;

    /** The pieces that are not what they were, those that are gone among them. */
    private final List<Touched> touched;

    /**
     * A piece that is not what it was.
     *
     * @param name its name
     * @param before what it was, null where it was not there; nothing of it is kept then
     * @param now what it is, or was, where it is there no longer
     * @param keepOutline whether it has the very edges that it had
     */
    private record Touched(Name name, @Nullable Piece before, Piece now, boolean keepOutline) {

        static Touched of(Piece before, Piece now) {
            return new Touched(now.name(), before, now, before.edges().equals(now.edges()));
        }

        static Touched alone(Piece piece) {
            return new Touched(piece.name(), null, piece, false);
        }

        boolean keepPath(Name edge) {
            if (keepOutline || before == null) {
                return keepOutline;
            }
            int was = before.place(edge);
            int is = now.place(edge);
            return was >= 0 && is >= 0 && path(before, was).equals(path(now, is));
        }

        boolean keepCorner(Name edge, End end) {
            if (keepOutline || before == null) {
                return keepOutline;
            }
            int was = before.place(edge);
            int is = now.place(edge);
            return was >= 0 && is >= 0 && corner(before, was, end).equals(corner(now, is, end));
        }

        /**
         * Tells whether the edge is there with its notches, and between the same neighbours, to which it is at an
         * angle.
         */
        boolean keepSewing(Name edge) {
            return before != null
                    && (keepOutline || keepBetweenNeighbours(before, edge))
                    && (before.notches().equals(now.notches()) || keepNotches(before.notches(), now.notches(), edge));
        }

        private static boolean keepNotches(List<Notch> before, List<Notch> now, Name edge) {
            int was = next(before, 0, edge);
            int is = next(now, 0, edge);
            while (was < before.size() && is < now.size()) {
                if (!before.get(was).equals(now.get(is))) {
                    return false;
                }
                was = next(before, was + 1, edge);
                is = next(now, is + 1, edge);
            }
            return was == before.size() && is == now.size();
        }

        /** The place of the first notch on an edge from one place on, or the number of notches. */
        private static int next(List<Notch> notches, int from, Name edge) {
            int place = from;
            while (place < notches.size() && !notches.get(place).edge().equals(edge)) {
                place++;
            }
            return place;
        }

        private boolean keepBetweenNeighbours(Piece before, Name edge) {
            int was = before.place(edge);
            int is = now.place(edge);
            return was >= 0
                    && is >= 0
                    && path(before, was).equals(path(now, is))
                    && path(before, was + before.edges().size() - 1)
                            .equals(path(now, is + now.edges().size() - 1))
                    && path(before, was + 1).equals(path(now, is + 1));
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
        before = earlier.pieces();
        touched = touched(earlier, garment);
        isSewnAlike = earlier.seams().equals(garment.seams()) && haveTheSameCloths(earlier.pieces(), garment.pieces());
    }

    private static List<Touched> touched(Garment earlier, Garment garment) {
        List<Touched> touched = new ArrayList<>();
        List<Piece> before = earlier.pieces();
        List<Piece> pieces = garment.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Piece now = pieces.get(i);
            int place = earlier.placeOf(now.name(), i);
            if (place < 0) {
                touched.add(Touched.alone(now));
            } else if (!before.get(place).equals(now)) {
                touched.add(Touched.of(before.get(place), now));
            }
        }
        for (int i = 0; i < before.size(); i++) {
            Piece was = before.get(i);
            if (garment.placeOf(was.name(), i) < 0) {
                touched.add(Touched.alone(was));
            }
        }
        return List.copyOf(touched);
    }

    private static boolean haveTheSameCloths(List<Piece> before, List<Piece> now) {
        if (before.size() != now.size()) {
            return false;
        }
        for (int i = 0; i < now.size(); i++) {
            Piece was = before.get(i);
            Piece is = now.get(i);
            if (!was.name().equals(is.name()) || !was.cloth().equals(is.cloth())) {
                return false;
            }
        }
        return true;
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

    /** Tells whether the same edges are sewn to each other, by the same rules, of the same cloths. */
    boolean isSewnAlike() {
        return isSewnAlike;
    }

    /** Tells whether both sides of a seam are what they were. */
    boolean has(Seam seam) {
        return has(seam.a()) && has(seam.b());
    }

    private boolean has(SeamSide side) {
        List<SeamSide.Run> runs = side.runs();
        for (int i = 0; i < runs.size(); i++) {
            EdgeRef edge = runs.get(i).edge();
            @Nullable Touched piece = touched(edge.piece());
            if (piece != null && !piece.keepSewing(edge.edge())) {
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
        // Nearly all quantities are of these kinds, for which no lists are made.
        if (quantity instanceof Quantity.EdgeLength length) {
            return hasPath(length.edge());
        }
        if (quantity instanceof Quantity.Distance distance) {
            return hasCorner(distance.from()) && hasCorner(distance.to());
        }
        if (quantity instanceof Quantity.Drop drop) {
            return hasCorner(drop.from()) && hasCorner(drop.to());
        }
        return hasCorners(quantity.corners()) && hasPaths(quantity.edges()) && hasOutlines(quantity.outlines());
    }

    private boolean hasCorners(List<Quantity.Corner> corners) {
        for (int i = 0; i < corners.size(); i++) {
            if (!hasCorner(corners.get(i))) {
                return false;
            }
        }
        return true;
    }

    private boolean hasCorner(Quantity.Corner corner) {
        @Nullable Touched piece = touched(corner.edge().piece());
        return piece == null || piece.keepCorner(corner.edge().edge(), corner.end());
    }

    private boolean hasPaths(List<EdgeRef> edges) {
        for (int i = 0; i < edges.size(); i++) {
            if (!hasPath(edges.get(i))) {
                return false;
            }
        }
        return true;
    }

    private boolean hasPath(EdgeRef edge) {
        @Nullable Touched piece = touched(edge.piece());
        return piece == null || piece.keepPath(edge.edge());
    }

    private boolean hasOutlines(List<Name> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            @Nullable Touched piece = touched(pieces.get(i));
            if (piece != null && !piece.keepOutline()) {
                return false;
            }
        }
        return true;
    }

    /** Returns what became of a piece that is not what it was; null where it is. */
    private @Nullable Touched touched(Name piece) {
        for (int i = 0; i < touched.size(); i++) {
            if (touched.get(i).name.equals(piece)) {
                return touched.get(i);
            }
        }
        return null;
    }
}

package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.garment.Seam;
import org.oaktag.garment.SeamSide;
import org.oaktag.geometry.Point;

/**
 * A garment while notches are set on its seams: its pieces, and the pattern of every edge that is sewn, kept up to date
 * from notch to notch. Made by one step and used up by it.
 */
final class Notching {

    /** How near two notches of one piece may lie, in millimetres, and still be told from a double one. */
    private static final double CLEAR = 15;

    private final Garment garment;
    private final Map<Name, Piece> pieces = new LinkedHashMap<>();
    private final Map<EdgeRef, EdgePattern> patterns = new LinkedHashMap<>();

    /** For each edge that is sewn, itself and all that some seam joins to it. */
    private final Map<EdgeRef, Set<EdgeRef>> partners = new HashMap<>();

    Notching(Garment garment) {
        this.garment = garment;
        for (Piece piece : garment.pieces()) {
            pieces.put(piece.name(), piece);
        }
        for (Seam seam : garment.seams()) {
            List<EdgeRef> sewn = new ArrayList<>();
            seam.a().runs().forEach(run -> sewn.add(run.edge()));
            seam.b().runs().forEach(run -> sewn.add(run.edge()));
            for (EdgeRef edge : sewn) {
                partners.computeIfAbsent(edge, each -> new HashSet<>()).addAll(sewn);
                patterns.computeIfAbsent(edge, each -> patternOf(each));
            }
        }
    }

    /** One edge of a seam for which a notch is sought. */
    private final class Side {

        private final SeamSide.Run run;
        private final Piece piece;
        private final EdgePattern pattern;
        private final List<Point> taken;

        /** Leaves out what notches of this name there are: the one that is sought takes their place. */
        Side(SeamSide.Run run, Name notch) {
            this.run = run;
            this.piece = piece(run.edge().piece());
            List<Notch> others = new ArrayList<>(piece.notches());
            others.removeIf(each -> each.name().equals(notch));
            this.pattern = EdgePattern.of(edge(), others);
            this.taken = others.stream().map(piece::pointOf).toList();
        }

        /** Tells whether the notch lies off the others of the piece and makes the edge distinct. */
        boolean suits(Notch notch) {
            Point at = piece.pointOf(notch);
            for (Point other : taken) {
                if (other.distanceTo(at) < CLEAR) {
                    return false;
                }
            }
            return isDistinct(
                    run.edge(), pattern.with(new EdgePattern.Mark(notch.fromStart(pattern.length()), notch.count())));
        }

        private Edge edge() {
            return piece.edge(run.edge().edge());
        }
    }

    /** Tells whether neither edge of a seam could be taken for one to which the other is not sewn. */
    boolean isDistinct(SewnPair sewn) {
        for (SeamSide.Run run : sewn.runs()) {
            if (!isDistinct(run.edge(), Objects.requireNonNull(patterns.get(run.edge())))) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns the first notch that makes both edges of a seam distinct and lies off the other notches of their pieces.
     *
     * @param count how many cuts side by side are tried first
     */
    Optional<MatchingNotch> choice(SewnPair sewn, int count) {
        Name name = sewn.notch();
        List<Side> sides = sewn.runs().stream().map(run -> new Side(run, name)).toList();
        return MatchingNotch.first(
                count, choice -> sides.stream().allMatch(side -> side.suits(sewn.notch(side.run, choice))));
    }

    /** Sets a notch on both edges of a seam. */
    void set(SewnPair sewn, MatchingNotch choice) {
        for (SeamSide.Run run : sewn.runs()) {
            EdgeRef edge = run.edge();
            Piece notched = piece(edge.piece()).withNotch(sewn.notch(run, choice));
            pieces.put(edge.piece(), notched);
            patterns.put(edge, patternOf(edge));
        }
    }

    /** Sets the notches of the first edge of a folded band on its second as well. */
    void carry(SewnPair sewn) {
        Name band = sewn.a().edge().piece();
        pieces.put(band, sewn.carried(piece(band)));
    }

    /** Returns the garment with the notches that were set. */
    Garment notched() {
        return garment.withPieces(List.copyOf(pieces.values()));
    }

    private boolean isDistinct(EdgeRef edge, EdgePattern pattern) {
        Set<EdgeRef> own = partners.getOrDefault(edge, Set.of());
        for (Map.Entry<EdgeRef, EdgePattern> other : patterns.entrySet()) {
            if (pattern.fits(other.getValue()) && !own.contains(other.getKey())) {
                return false;
            }
        }
        return true;
    }

    private EdgePattern patternOf(EdgeRef edge) {
        Piece piece = piece(edge.piece());
        return EdgePattern.of(piece.edge(edge.edge()), piece.notches());
    }

    private Piece piece(Name name) {
        return Objects.requireNonNull(pieces.get(name));
    }
}

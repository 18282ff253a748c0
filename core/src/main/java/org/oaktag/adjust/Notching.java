package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;

/**
 * A garment while notches are set on its seams: its pieces, and the pattern of every stretch that is sewn, kept up to
 * date from notch to notch. Made by one step and used up by it.
 */
final class Notching {

    private final Garment garment;
    private final Map<Name, MarkedPiece> pieces = new LinkedHashMap<>();
    private final Map<List<EdgeRef>, Sewn> byEdges = new HashMap<>();
    private final List<Sewn> sewn = new ArrayList<>();

    /** The garment with the notches that there were when it was asked for last. */
    private Garment notched;

    /** What is known of a stretch that is sewn. */
    private static final class Sewn {

        private final Stretch stretch;
        private final MarkedPiece piece;
        private final List<EdgeRef> partners = new ArrayList<>();
        private final List<Sewn> rivals = new ArrayList<>();
        private final double length;
        private EdgePattern pattern;

        Sewn(Stretch stretch, MarkedPiece piece) {
            this.stretch = stretch;
            this.piece = piece;
            this.pattern = stretch.pattern(piece.notches());
            this.length = pattern.length();
        }

        /** Takes note of another that is as long, unless a seam joins it to this one. */
        void meet(Sewn other) {
            if (!other.stretch.isAmong(partners)) {
                rivals.add(other);
            }
        }
    }

    Notching(Garment garment, List<SewnSides> seams) {
        this.garment = garment;
        this.notched = garment;
        List<Piece> all = garment.pieces();
        for (int i = 0; i < all.size(); i++) {
            pieces.put(all.get(i).name(), new MarkedPiece(all.get(i)));
        }
        for (int s = 0; s < seams.size(); s++) {
            List<Stretch> stretches = seams.get(s).stretches();
            for (int i = 0; i < stretches.size(); i++) {
                Stretch stretch = stretches.get(i);
                Sewn known = byEdges.get(stretch.refs());
                if (known == null) {
                    known = new Sewn(stretch, piece(stretch.piece()));
                    byEdges.put(stretch.refs(), known);
                    sewn.add(known);
                }
                for (int k = 0; k < stretches.size(); k++) {
                    known.partners.addAll(stretches.get(k).refs());
                }
            }
        }
        double[] lengths = sewn.stream().mapToDouble(each -> each.length).toArray();
        for (int i = 0; i < lengths.length; i++) {
            for (int j = 0; j < i; j++) {
                if (EdgePattern.areAlike(lengths[i], lengths[j])) {
                    sewn.get(i).meet(sewn.get(j));
                    sewn.get(j).meet(sewn.get(i));
                }
            }
        }
    }

    /** Returns the garment with the notches that were set. */
    Garment notched() {
        List<Piece> now = new ArrayList<>(pieces.size());
        pieces.values().forEach(each -> now.add(each.piece()));
        if (!now.equals(notched.pieces())) {
            notched = notched.withPieces(now);
        }
        return notched;
    }

    /** Returns the notches that there are by now on an edge. */
    List<Notch> notchesOn(EdgeRef edge) {
        return piece(edge.piece()).notchesOn(edge.edge());
    }

    /** Tells whether there is a notch of that name by now on an edge. */
    boolean hasNotch(EdgeRef edge, Name name) {
        return piece(edge.piece()).hasNotch(edge.edge(), name);
    }

    /** Tells whether a stretch has no notch yet. */
    boolean isBare(Stretch stretch) {
        return known(stretch).pattern.marks().isEmpty();
    }

    /**
     * Tells whether a stretch could not be taken for one that is not its partner. One without a notch says nothing: it
     * is taken for any other of like length.
     */
    boolean isDistinct(Stretch stretch) {
        Sewn known = known(stretch);
        return known.rivals.isEmpty() || (!known.pattern.marks().isEmpty() && isDistinct(known, known.pattern));
    }

    private static boolean isDistinct(Sewn known, EdgePattern pattern) {
        for (int i = 0; i < known.rivals.size(); i++) {
            if (pattern.fits(known.rivals.get(i).pattern)) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether notches can be cut at two places that are sewn together. */
    boolean canBeCut(SewnSides.Match match) {
        return match.canBeCut(garment);
    }

    /** Returns how many cuts a notch at two places that are sewn together may have. */
    NotchCuts cuts(SewnSides.Match match) {
        return match.cuts(garment);
    }

    /** Tells whether a notch at two places that are sewn together can be cut and would tell both from all others. */
    boolean wouldTell(SewnSides sides, SewnSides.Match match, Name name, int count) {
        if (!canBeCut(match)) {
            return false;
        }
        return wouldTell(sides, match.onA(), name, count) && wouldTell(sides, match.onB(), name, count);
    }

    private boolean wouldTell(SewnSides sides, LaidSide.Spot spot, Name name, int count) {
        return wouldTell(sides, piece(spot.laid().edge().piece()), List.of(spot.notch(name, count)));
    }

    /** Tells whether notches lie off the others of their piece and would tell what they lie on from all others. */
    private boolean wouldTell(SewnSides sides, MarkedPiece piece, List<Notch> more) {
        List<Notch> all = piece.with(more);
        for (Stretch stretch : sides.stretches()) {
            if (stretch.hasSome(piece.name(), more) && !isDistinct(known(stretch), stretch.pattern(all))) {
                return false;
            }
        }
        for (Notch notch : more) {
            if (!piece.hasRoomFor(notch)) {
                return false;
            }
        }
        return true;
    }

    /** Sets notches on a piece if they tell what they lie on from all others. */
    boolean setIfTold(SewnSides sides, Name name, List<Notch> notches) {
        MarkedPiece piece = piece(name);
        boolean told = wouldTell(sides, piece, notches);
        if (told) {
            for (Notch notch : notches) {
                set(piece, notch);
            }
        }
        return told;
    }

    /** Sets a notch at both places of a seam that are sewn together. */
    void set(SewnSides.Match match, Name name, int count) {
        set(match.onA(), name, count);
        set(match.onB(), name, count);
    }

    private void set(LaidSide.Spot spot, Name name, int count) {
        set(piece(spot.laid().edge().piece()), spot.notch(name, count));
    }

    private void set(MarkedPiece piece, Notch notch) {
        piece.set(notch);
        for (int i = 0; i < sewn.size(); i++) {
            Sewn each = sewn.get(i);
            if (each.piece == piece && each.stretch.has(notch.edge())) {
                each.pattern = each.stretch.pattern(piece.notches());
            }
        }
    }

    /**
     * Takes off what was set for a seam at an earlier time, copies of it too, and tells whether there was something.
     */
    boolean clear(SewnSides sides) {
        boolean cleared = false;
        for (MarkedPiece piece : pieces.values()) {
            if (piece.removeIf(sides::isOwn)) {
                look(piece);
                cleared = true;
            }
        }
        return cleared;
    }

    /** Sets the notches of the first edge of a folded band on its second as well. */
    void carry(FoldedEdges edges) {
        MarkedPiece band = piece(edges.piece());
        band.set(edges.carried(garment, band.notches()));
    }

    /** Looks at the patterns of a piece anew. */
    private void look(MarkedPiece piece) {
        for (Sewn each : sewn) {
            if (each.piece == piece) {
                each.pattern = each.stretch.pattern(piece.notches());
            }
        }
    }

    private Sewn known(Stretch stretch) {
        return Objects.requireNonNull(byEdges.get(stretch.refs()));
    }

    private MarkedPiece piece(Name name) {
        return Objects.requireNonNull(pieces.get(name));
    }
}

package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.garment.EdgeRef;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;

/**
 * What is pinned in one go: the edges of one piece that follow one another on a side of a seam, most often one edge.
 *
 * @param edges the edges, at least one
 * @param refs which they are: of the same edges it is the same stretch of cloth, whichever seam it is in
 */
record Stretch(List<LaidSide.Laid> edges, List<EdgeRef> refs) {

    Stretch {
        edges = List.copyOf(edges);
        refs = List.copyOf(refs);
    }

    static Stretch of(List<LaidSide.Laid> edges) {
        return edges.size() == 1
                ? new Stretch(edges, List.of(edges.get(0).edge()))
                : new Stretch(edges, edges.stream().map(LaidSide.Laid::edge).toList());
    }

    Name piece() {
        return refs.get(0).piece();
    }

    /** Returns how far along the side it begins, in millimetres. */
    double begin() {
        return edges.get(0).begin();
    }

    double length() {
        LaidSide.Laid last = edges.get(edges.size() - 1);
        return last.begin() + last.length() - begin();
    }

    /** Tells whether some edge of it is long enough for a notch. */
    boolean hasRoom() {
        for (int i = 0; i < edges.size(); i++) {
            if (edges.get(i).length() >= 2 * LaidSide.FROM_CORNER) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether an edge of its piece is one of it. */
    boolean has(Name edge) {
        for (int i = 0; i < refs.size(); i++) {
            if (refs.get(i).edge().equals(edge)) {
                return true;
            }
        }
        return false;
    }

    /** Tells whether some of these notches of a piece lie on it. */
    boolean hasSome(Name piece, List<Notch> notches) {
        if (piece().equals(piece)) {
            for (int i = 0; i < notches.size(); i++) {
                if (has(notches.get(i).edge())) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Tells whether some edge of it is among these. */
    boolean isAmong(List<EdgeRef> others) {
        for (int i = 0; i < refs.size(); i++) {
            if (others.contains(refs.get(i))) {
                return true;
            }
        }
        return false;
    }

    /** Returns the pattern that these notches of its piece make along it. */
    EdgePattern pattern(List<Notch> notches) {
        List<EdgePattern.Mark> marks = new ArrayList<>();
        for (int k = 0; k < edges.size(); k++) {
            LaidSide.Laid laid = edges.get(k);
            for (int i = 0; i < notches.size(); i++) {
                Notch notch = notches.get(i);
                if (notch.edge().equals(laid.edge().edge())) {
                    marks.add(new EdgePattern.Mark(laid.placeOf(notch) - begin(), notch.count()));
                }
            }
        }
        return new EdgePattern(length(), marks);
    }
}

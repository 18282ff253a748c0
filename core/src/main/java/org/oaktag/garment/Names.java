package org.oaktag.garment;

import java.util.List;

/** The names of some things in their order, to find the place of one by. Immutable. */
final class Names {

    private final Name[] all;

    private Names(Name[] all) {
        this.all = all;
    }

    static Names ofEdges(List<Edge> edges) {
        Name[] all = new Name[edges.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = edges.get(i).name();
        }
        return new Names(all);
    }

    static Names ofPieces(List<Piece> pieces) {
        Name[] all = new Name[pieces.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = pieces.get(i).name();
        }
        return new Names(all);
    }

    /** Returns the names of some pieces: these, where all are of them and in their places. */
    Names of(List<Piece> pieces) {
        boolean same = pieces.size() == all.length;
        for (int i = 0; same && i < all.length; i++) {
            same = pieces.get(i).name().equals(all[i]);
        }
        return same ? this : ofPieces(pieces);
    }

    /** Returns the place of the first thing of a name, -1 where there is none. */
    int place(Name wanted) {
        for (int i = 0; i < all.length; i++) {
            if (all[i].equals(wanted)) {
                return i;
            }
        }
        return -1;
    }

    /** As the other, where it is likely to be known where the thing is. */
    int place(Name wanted, int likely) {
        return likely < all.length && all[likely].equals(wanted) ? likely : place(wanted);
    }
}

package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;

/**
 * What has to be cut for a garment: every piece once, numbered in the order of the garment. Immutable.
 *
 * <pre>{@code
 * for (CutList.Item item : CutList.of(hooded).from(rib)) {
 *     String line = item.number() + " of " + item.of() + ": " + item.piece().name() + ", "
 *             + item.piece().cut().instruction();
 * }
 * }</pre>
 *
 * <p><b>Parity.</b> A piece that is sewn to one that comes in left and right has to come in left and right as well: a
 * sleeve of which two are cut as drawn, and none mirrored, would give two left sleeves. A piece on the fold is both
 * hands in one.
 *
 * @param items the pieces to be cut
 */
public record CutList(List<Item> items) {

    /**
     * A piece to be cut.
     *
     * @param number its number, counted from 1
     * @param of how many numbered pieces there are
     * @param piece the piece
     */
    public record Item(int number, int of, Piece piece) {
        /** Refuses null. */
        public Item {
            Objects.requireNonNull(piece, "piece");
        }

        /** Returns the number as it stands on the piece, {@code "3 of 14"}. */
        public String numberText() {
            return number + " of " + of;
        }

        /** Returns how many come out of the cloth. */
        public int count() {
            return piece.cut().count();
        }

        /** Tells whether half of them are cut mirrored. */
        public boolean isMirrored() {
            return piece.cut() instanceof Cut.MirroredPair;
        }

        /** Tells whether it is cut on the fold. */
        public boolean isOnFold() {
            return piece.cut() instanceof Cut.OnFold;
        }
    }

    /** Copies the list. */
    public CutList {
        items = List.copyOf(items);
    }

    /**
     * Returns the cut list of a garment.
     *
     * @throws PatternException if a piece lacks the other hand that a seam of it needs
     */
    public static CutList of(Garment garment) {
        garment.seams().forEach(seam -> checkHands(garment, seam));
        List<Item> items = new ArrayList<>();
        for (Piece piece : garment.pieces()) {
            items.add(new Item(items.size() + 1, garment.pieces().size(), piece));
        }
        return new CutList(items);
    }

    /** Returns the cloths that are needed, in the order in which they come up. */
    public List<Cloth> cloths() {
        return items.stream().map(item -> item.piece().cloth()).distinct().toList();
    }

    /** Returns what is cut from one cloth, in order; none where it is not in the list. */
    public List<Item> from(Cloth cloth) {
        Objects.requireNonNull(cloth, "cloth");
        return items.stream().filter(item -> item.piece().cloth().equals(cloth)).toList();
    }

    /** How many come out as drawn and how many mirrored. */
    private record Hands(int drawn, int mirrored) {

        static Hands of(Cut cut) {
            if (cut instanceof Cut.Single single) {
                return new Hands(single.count(), 0);
            }
            int each = cut instanceof Cut.MirroredPair pair ? pair.pairs() : cut.count();
            return new Hands(each, each);
        }

        /** Tells whether every one of the other finds one of the same hand here. */
        boolean serves(Hands other) {
            return drawn >= other.drawn && mirrored >= other.mirrored;
        }
    }

    private static void checkHands(Garment garment, Seam seam) {
        for (SeamSide.Run a : seam.a().runs()) {
            for (SeamSide.Run b : seam.b().runs()) {
                checkServed(garment, seam, a.edge(), b.edge());
                checkServed(garment, seam, b.edge(), a.edge());
            }
        }
    }

    /** An edge that is sewn in a second seam finds its other hand there, as a half front does on a back drawn whole. */
    private static void checkServed(Garment garment, Seam seam, EdgeRef wanting, EdgeRef serving) {
        Piece piece = garment.piece(serving.piece());
        Piece other = garment.piece(wanting.piece());
        boolean sewnOnce =
                garment.seams().stream().filter(each -> each.has(wanting)).count() == 1;
        if (sewnOnce && !Hands.of(piece.cut()).serves(Hands.of(other.cut()))) {
            throw PatternException.of(
                    "cut of piece '" + piece.name() + "'",
                    "must give as many left and right as '" + other.name() + "' ("
                            + other.cut().instruction() + "), to which it is sewn in seam '" + seam.name() + "'",
                    piece.cut().instruction(),
                    "cut it as a mirrored pair or on the fold, as many as there are of the other");
        }
    }
}

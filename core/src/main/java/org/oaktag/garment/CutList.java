package org.oaktag.garment;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.oaktag.PatternException;

/**
 * What has to be cut for a garment, or for several together: every piece once, numbered in the order of its garment.
 * Immutable.
 *
 * <pre>{@code
 * for (CutList.Item item : CutList.of(hooded).from(rib)) {
 *     String line = item.number() + " of " + item.of() + ": " + item.piece().name() + ", "
 *             + item.piece().cut().instruction();
 * }
 * }</pre>
 *
 * <p>Several garments in one list, {@code CutList.of(List.of(hers, his))}, are cut from one lay; each piece keeps its
 * number and says whose it is.
 *
 * <p><b>Parity.</b> A piece that is sewn to one that comes in left and right has to come in left and right as well: a
 * sleeve of which two are cut as drawn, and none mirrored, would give two left sleeves. A piece on the fold is both
 * hands in one.
 *
 * @param items the pieces to be cut
 */
public record CutList(List<Item> items) {

    /**
     * Whose a piece is. Free text.
     *
     * @param title the title of its garment
     * @param wearer for whom that is
     */
    public record Owner(String title, String wearer) {
        /** Refuses null. */
        public Owner {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(wearer, "wearer");
        }
    }

    /**
     * A piece to be cut.
     *
     * @param owner whose it is
     * @param number its number, counted from 1 in its garment
     * @param of how many numbered pieces its garment has
     * @param piece the piece
     */
    public record Item(Owner owner, int number, int of, Piece piece) {
        /** Refuses null. */
        public Item {
            Objects.requireNonNull(owner, "owner");
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
        return of(List.of(garment));
    }

    /**
     * Returns what has to be cut for several garments, which may be of one style in several sizes, in their order.
     *
     * @throws PatternException if a piece lacks the other hand that a seam of it needs
     */
    public static CutList of(List<Garment> garments) {
        List<Item> items = new ArrayList<>();
        for (Garment garment : garments) {
            garment.seams().forEach(seam -> checkHands(garment, seam));
            Owner owner = new Owner(garment.title(), garment.wearer().name());
            List<Piece> pieces = garment.pieces();
            for (int i = 0; i < pieces.size(); i++) {
                items.add(new Item(owner, i + 1, pieces.size(), pieces.get(i)));
            }
        }
        return new CutList(items);
    }

    /** Returns whose pieces these are, in the order in which they come up. */
    public List<Owner> owners() {
        return items.stream().map(Item::owner).distinct().toList();
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

    /**
     * An edge that is sewn twice finds its other hand there: in a second seam, as a half front does on a back drawn
     * whole, or in the same one, as both halves of a waist do on a band drawn whole.
     */
    private static void checkServed(Garment garment, Seam seam, EdgeRef wanting, EdgeRef serving) {
        Piece piece = garment.piece(serving.piece());
        Piece other = garment.piece(wanting.piece());
        boolean sewnOnce = garment.seams().stream()
                        .flatMap(each -> Stream.of(each.a(), each.b()))
                        .flatMap(side -> side.runs().stream())
                        .filter(run -> run.edge().equals(wanting))
                        .count()
                == 1;
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

package org.oaktag.testkit.lay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.oaktag.lay.LaidPiece;
import org.oaktag.lay.Lay;

/**
 * Proves that pieces cannot be laid on a length of cloth, however they are laid.
 *
 * <p>Whatever lies on an upright line across the lay has to fit into the length together. Where the pieces may be put
 * along their line at will, even in slices, and only their places across the cloth have to be found, the question is
 * easier than the lay, and small enough to be answered by trying them all: where nothing fits here, no lay does. It is
 * the contiguous one-dimensional relaxation of strip packing, with pieces in the place of boxes: Martello, Monaci and
 * Vigo, "An exact approach to the strip-packing problem", INFORMS Journal on Computing 15 (2003), 310 to 319 (cited
 * from memory).
 *
 * <p>Places across are tried a pitch apart, each for all that lie before the next one, so that the answer holds for
 * every place. A smaller pitch proves more and takes longer.
 */
public final class ColumnBound {

    private static final int NOBODY = -1;

    private final int[][][] profiles;
    private final int[] twin;
    private final int[] room;
    private final boolean[] placed;

    private ColumnBound(Lay lay, double length, double pitch) {
        double gap = lay.spread().gap().mm();
        this.profiles = lay.pieces().stream()
                .map(piece -> ways(piece, lay.spread().nap(), gap, pitch))
                .toArray(int[][][]::new);
        this.twin = twins(lay.pieces(), profiles);
        this.room = new int[(int) Math.floor((lay.spread().tableWidth().mm() + gap) / pitch) + 1];
        Arrays.fill(room, (int) Math.ceil(Profile.FINE * (length + gap)));
        this.placed = new boolean[profiles.length];
    }

    /**
     * Tells whether it is not ruled out that the pieces of a lay can be laid on such a length of the same cloth.
     *
     * @param lay which pieces, and how they may be turned
     * @param length mm
     * @param pitch how far apart places across the cloth are tried, mm
     */
    public static boolean allows(Lay lay, double length, double pitch) {
        ColumnBound bound = new ColumnBound(lay, length, pitch);
        List<List<Place>> places = new ArrayList<>();
        for (int piece = 0; piece < bound.profiles.length; piece++) {
            places.add(bound.places(
                    piece, lay.pieces().get(piece).through() == LaidPiece.Through.ON_FOLD ? 1 : bound.room.length));
        }
        return bound.fitsAll(places, bound.profiles.length);
    }

    /**
     * Returns a length, mm, below which no lay of the same pieces can come.
     *
     * @param lay a lay of them
     * @param pitch how far apart places across the cloth are tried, mm
     * @param within how near to the greatest length that can be proved the answer has to lie, mm
     */
    public static double length(Lay lay, double pitch, double within) {
        double ruledOut = lay.area() / lay.spread().shrunkWidth().mm();
        double allowed = lay.length().mm();
        while (allowed - ruledOut > within) {
            double middle = (ruledOut + allowed) / 2;
            if (allows(lay, middle, pitch)) {
                allowed = middle;
            } else {
                ruledOut = middle;
            }
        }
        return ruledOut;
    }

    /** A way to lie, and the line before which the piece begins. */
    private record Place(int way, int line) {}

    private static int[][] ways(LaidPiece piece, boolean nap, double gap, double pitch) {
        int[] asItLies = Profile.of(piece.outline(), false, gap, pitch);
        int[] turned = Profile.of(piece.outline(), true, gap, pitch);
        boolean oneWay = nap || piece.through() == LaidPiece.Through.ON_FOLD || Arrays.equals(asItLies, turned);
        return oneWay ? new int[][] {asItLies} : new int[][] {asItLies, turned};
    }

    /**
     * Returns for each piece the one before it that is just like it, so that the two need not be tried both ways round.
     */
    private static int[] twins(List<LaidPiece> pieces, int[][][] profiles) {
        int[] twin = new int[profiles.length];
        Arrays.fill(twin, NOBODY);
        for (int later = 0; later < profiles.length; later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (pieces.get(earlier).through() == pieces.get(later).through()
                        && Arrays.deepEquals(profiles[earlier], profiles[later])) {
                    twin[later] = earlier;
                }
            }
        }
        return twin;
    }

    private List<Place> places(int piece, int lines) {
        List<Place> places = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            for (int way = 0; way < profiles[piece].length; way++) {
                Place place = new Place(way, line);
                if (fits(piece, place)) {
                    places.add(place);
                }
            }
        }
        return places;
    }

    private boolean fits(int piece, Place place) {
        int[] taken = profiles[piece][place.way];
        if (place.line + taken.length > room.length) {
            return false;
        }
        for (int i = 0; i < taken.length; i++) {
            if (taken[i] > room[place.line + i]) {
                return false;
            }
        }
        return true;
    }

    /** Places the piece first that has the fewest places left. */
    private boolean fitsAll(List<List<Place>> places, int left) {
        if (left == 0) {
            return true;
        }
        int piece = fewest(places);
        placed[piece] = true;
        for (Place place : places.get(piece)) {
            take(piece, place, 1);
            List<List<Place>> after = after(piece, place, places);
            boolean fits = !after.isEmpty() && fitsAll(after, left - 1);
            take(piece, place, -1);
            if (fits) {
                return true;
            }
        }
        placed[piece] = false;
        return false;
    }

    private int fewest(List<List<Place>> places) {
        int fewest = NOBODY;
        for (int piece = 0; piece < placed.length; piece++) {
            if (!placed[piece]
                    && (fewest == NOBODY
                            || places.get(piece).size() < places.get(fewest).size())) {
                fewest = piece;
            }
        }
        return fewest;
    }

    private void take(int piece, Place place, int times) {
        int[] taken = profiles[piece][place.way];
        for (int i = 0; i < taken.length; i++) {
            room[place.line + i] -= times * taken[i];
        }
    }

    /** Returns the places that are left to the others, or none where one of them has none. */
    private List<List<Place>> after(int piece, Place place, List<List<Place>> places) {
        List<List<Place>> after = new ArrayList<>();
        for (int other = 0; other < placed.length; other++) {
            List<Place> left = new ArrayList<>();
            if (!placed[other]) {
                for (Place each : places.get(other)) {
                    boolean ordered = (twin[other] != piece || each.line >= place.line)
                            && (twin[piece] != other || each.line <= place.line);
                    if (ordered && fits(other, each)) {
                        left.add(each);
                    }
                }
                if (left.isEmpty()) {
                    return List.of();
                }
            }
            after.add(left);
        }
        return after;
    }
}

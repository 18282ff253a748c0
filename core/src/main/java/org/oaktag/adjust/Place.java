package org.oaktag.adjust;

import java.util.Locale;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Length;

/**
 * A place on an edge, told so that it holds for every size: a share of the edge's length from one of its ends, and a
 * distance further on.
 *
 * <pre>{@code
 * Place.along(HEM, End.START, mm(60));   // 60 mm from where the hem begins
 * Place.share(HEM, 0.5);                 // its middle
 * Place.corner(HEM, End.END);            // where it ends
 * }</pre>
 *
 * <p>Immutable.
 *
 * @param edge the edge
 * @param from the end from which it counts
 * @param share the share of the edge's length, 0 to 1
 * @param further how much further along the edge, negative for back towards that end
 */
public record Place(Name edge, End from, double share, Length further) {

    /** How far off its edge, in millimetres, a place may lie through rounding. */
    private static final double ROUNDING = 1e-6;

    /**
     * Checks the share.
     *
     * @throws PatternException if it is not 0 to 1
     */
    public Place {
        Objects.requireNonNull(edge, "edge");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(further, "further");
        if (!(share >= 0 && share <= 1)) {
            throw PatternException.of("place on edge '" + edge + "'", "share must be 0 to 1", "" + share, "");
        }
    }

    /** Returns the place at a distance from one end of an edge. */
    public static Place along(Name edge, End from, Length distance) {
        return new Place(edge, from, 0, distance);
    }

    /**
     * Returns the place at a share of the edge's length from its start.
     *
     * @throws PatternException if the share is not 0 to 1
     */
    public static Place share(Name edge, double share) {
        return new Place(edge, End.START, share, Length.ZERO);
    }

    /** Returns the place at one end of an edge. */
    public static Place corner(Name edge, End end) {
        return along(edge, end, Length.ZERO);
    }

    /**
     * Returns how far from the start of its edge the place lies on this piece, in millimetres.
     *
     * @throws PatternException if the piece has no such edge, or the place lies off it
     */
    public double distanceOn(Piece piece) {
        double length = piece.path(edge).length();
        double fromEnd = share * length + further.mm();
        if (fromEnd < -ROUNDING || fromEnd > length + ROUNDING) {
            throw PatternException.of(
                    "place on edge '" + edge + "' of piece '" + piece.name() + "'",
                    "must lie on it, 0 to " + Length.mm(length).roundedDown().text() + " from its " + word(),
                    Length.mm(fromEnd).text(),
                    "");
        }
        double inside = Math.min(Math.max(fromEnd, 0), length);
        return from == End.START ? inside : length - inside;
    }

    /**
     * Returns the point on this piece.
     *
     * @throws PatternException if the piece has no such edge, or the place lies off it
     */
    public Point on(Piece piece) {
        Path path = piece.path(edge);
        return path.pointAt(Math.min(distanceOn(piece), path.length()));
    }

    /** Returns the place as it is read: {@code "60.0 mm from the start of 'hem'"}. */
    public String text() {
        String origin = "the " + word() + " of '" + edge + "'";
        if (share == 0) {
            return further.equals(Length.ZERO) ? origin : further.text() + " from " + origin;
        }
        String part = String.format(Locale.ROOT, "%.1f %% of '%s' from its %s", share * 100, edge, word());
        return further.equals(Length.ZERO) ? part : part + " and " + further.text();
    }

    private String word() {
        return from == End.START ? "start" : "end";
    }
}

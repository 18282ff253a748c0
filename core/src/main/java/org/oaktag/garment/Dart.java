package org.oaktag.garment;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * A dart: a wedge of cloth taken out of an edge by sewing its two legs together.
 *
 * <pre>{@code
 * Garment darted = block.adjust(openDart(FRONT, Name.of("bust"), Place.share(SIDE, 0.2), mm(25), mm(110)));
 * Dart bust = Dart.in(darted.piece(FRONT), Name.of("bust"));
 * bust.width().text();   // = 25.0 mm
 * bust.angle();          // what it takes out
 * }</pre>
 *
 * <p>In a piece the legs are two edges of the outline, named {@code "<dart> leg a"} and {@code "<dart> leg b"},
 * clockwise from the edge to the apex and back; the edge goes on behind them as {@code "<edge> past <dart>"}. So a seam
 * can join the legs, and a seam along the edge leaves them out. Immutable.
 *
 * @param name the dart's name, unique in its piece
 * @param mouthA where leg a leaves the edge
 * @param apex where the legs meet
 * @param mouthB where leg b comes back to the edge
 */
public record Dart(Name name, Point mouthA, Point apex, Point mouthB) {

    private static final String PAST = "past";

    /**
     * Checks the legs.
     *
     * @throws PatternException if their lengths differ by more than 0.01 mm, or they lie on each other
     */
    public Dart {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(mouthA, "mouthA");
        Objects.requireNonNull(apex, "apex");
        Objects.requireNonNull(mouthB, "mouthB");
        double a = mouthA.distanceTo(apex);
        double b = mouthB.distanceTo(apex);
        if (Math.abs(a - b) > WalkedSeam.TOLERANCE.mm()) {
            throw PatternException.of(
                    "dart '" + name + "'",
                    "must have legs of equal length",
                    Length.mm(a).text() + " and " + Length.mm(b).text(),
                    "move its apex onto the middle line of its mouth");
        }
        if (mouthA.equals(mouthB) || mouthA.equals(apex)) {
            throw PatternException.of("dart '" + name + "'", "must take in some cloth", "legs on each other", "");
        }
    }

    /**
     * Returns the dart of that name in a piece.
     *
     * @throws PatternException if the piece has none, or its legs are not straight and of equal length
     */
    public static Dart in(Piece piece, Name name) {
        Path a = piece.path(legA(name));
        Path b = piece.path(legB(name));
        if (a.curves().size() != 1 || b.curves().size() != 1 || !a.end().equals(b.start())) {
            throw PatternException.of(
                    "dart '" + name + "' of piece '" + piece.name() + "'",
                    "must have two straight legs that meet at its apex",
                    a.end().equals(b.start())
                            ? "legs of " + a.curves().size() + " and "
                                    + b.curves().size() + " parts"
                            : "a leg a that does not end where leg b begins",
                    "take this step before the piece is turned over or its legs are redrawn");
        }
        return new Dart(name, a.start(), a.end(), b.end());
    }

    /** Returns the darts of a piece, clockwise. */
    public static List<Dart> all(Piece piece) {
        String ending = legA(Name.of("x")).value().substring(1);
        return piece.edges().stream()
                .map(Edge::name)
                .filter(edge -> edge.value().endsWith(ending))
                .map(edge -> Name.of(edge.value().substring(0, edge.value().length() - ending.length())))
                .filter(name -> piece.hasEdge(legB(name)))
                .map(name -> in(piece, name))
                .toList();
    }

    /** Returns the name of the leg that leaves the edge. */
    public static Name legA(Name dart) {
        return dart.with("leg a");
    }

    /** Returns the name of the leg that comes back to it. */
    public static Name legB(Name dart) {
        return dart.with("leg b");
    }

    /** Returns the name of what goes on of an edge behind a dart. */
    public static Name past(Name edge, Name dart) {
        return edge.with(PAST).with(dart.value());
    }

    /** Returns the name of the edge of which a dart parted a stretch; that of any other edge is its own. */
    public static Name whole(Name edge) {
        int past = edge.value().indexOf(" " + PAST + " ");
        return past < 0 ? edge : Name.of(edge.value().substring(0, past));
    }

    /** Returns the angle between the legs. */
    public Angle angle() {
        return Angle.radians(Math.abs(mouthB.minus(apex).angleTo(mouthA.minus(apex))));
    }

    /** Returns the length of a leg. */
    public Length leg() {
        return Length.mm(mouthA.distanceTo(apex));
    }

    /** Returns how wide its mouth is, straight across: what it takes out of the edge. */
    public Length width() {
        return Length.mm(mouthA.distanceTo(mouthB));
    }
}

package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.garment.End;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.measure.Length;

/**
 * Leaves the notches of an edge where they are on the cloth when the edge is drawn longer or shorter at one end.
 *
 * <pre>{@code
 * Path side = SideSeam.straight(front);
 * Piece straight = KeptNotches.redrawn(
 *         front, Map.of(SIDE, side, HEM, SideSeam.hem(front, side)), SIDE, End.START);   // as far below the armhole
 * }</pre>
 */
public final class KeptNotches {

    private KeptNotches() {}

    /**
     * Returns the piece with other edges.
     *
     * @param edges the edges by their names, that whose notches are kept among them
     * @param edge the edge whose notches are kept
     * @param still the end of it that stays where it is
     * @throws PatternException if a notch lies on what is cut off
     */
    public static Piece redrawn(Piece piece, Map<Name, Path> edges, Name edge, End still) {
        double length = edges.getOrDefault(edge, piece.path(edge)).length();
        double more = length - piece.path(edge).length();
        Piece redrawn = piece.withoutNotchesOn(edge).redrawn(edges);
        List<Notch> notches = new ArrayList<>(redrawn.notches());
        for (Notch notch : piece.notches()) {
            if (notch.edge().equals(edge)) {
                notches.add(kept(piece, notch, notch.from() == still ? 0 : more, length));
            }
        }
        return redrawn.withNotches(notches);
    }

    private static Notch kept(Piece piece, Notch notch, double more, double length) {
        double distance = notch.distance() + more;
        if (distance < 0 || distance > length) {
            throw PatternException.of(
                    "notch '" + notch.name() + "' of the " + piece.name(),
                    "must lie on what is left of the " + notch.edge() + ", 0 to "
                            + Length.mm(length).roundedDown().text() + " from its end",
                    Length.mm(distance).text(),
                    "take this step before the one that set the notch");
        }
        return notch.at(Length.mm(distance));
    }
}

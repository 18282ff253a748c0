package org.oaktag.adjust;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Predicate;
import org.oaktag.garment.Name;
import org.oaktag.garment.Notch;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Point;

/** A piece while notches are set on it. Made by one step and used up by it. */
final class MarkedPiece {

    /** How near two notches of one piece may lie, in millimetres, and still be told from a double one. */
    private static final double CLEAR = 15;

    private final List<Notch> notches;

    /** Where the first of the notches lie, as far as somebody has asked. */
    private final List<Point> points = new ArrayList<>();

    /** The piece with notches that may be fewer or others by now. */
    private Piece piece;

    MarkedPiece(Piece piece) {
        this.piece = piece;
        this.notches = new ArrayList<>(piece.notches());
    }

    Name name() {
        return piece.name();
    }

    List<Notch> notches() {
        return Collections.unmodifiableList(notches);
    }

    /** Returns the piece with its notches as they are by now. */
    Piece piece() {
        if (!notches.equals(piece.notches())) {
            piece = piece.withNotches(notches);
        }
        return piece;
    }

    /** Returns the notches on an edge. */
    List<Notch> notchesOn(Name edge) {
        List<Notch> on = new ArrayList<>();
        for (Notch notch : notches) {
            if (notch.edge().equals(edge)) {
                on.add(notch);
            }
        }
        return on;
    }

    boolean hasNotch(Name edge, Name name) {
        for (Notch notch : notches) {
            if (notch.name().equals(name) && notch.edge().equals(edge)) {
                return true;
            }
        }
        return false;
    }

    /** Returns the notches with some more. */
    List<Notch> with(List<Notch> more) {
        List<Notch> all = new ArrayList<>(notches);
        all.addAll(more);
        return all;
    }

    /** Tells whether a notch lies off all that there are. */
    boolean hasRoomFor(Notch notch) {
        if (notches.isEmpty()) {
            return true;
        }
        for (int i = points.size(); i < notches.size(); i++) {
            points.add(piece.pointOf(notches.get(i)));
        }
        Point at = piece.pointOf(notch);
        for (Point point : points) {
            if (point.distanceTo(at) < CLEAR) {
                return false;
            }
        }
        return true;
    }

    /** Sets a notch in the place of the one of its name on its edge. */
    void set(Notch notch) {
        removeIf(each -> each.edge().equals(notch.edge()) && each.name().equals(notch.name()));
        notches.add(notch);
    }

    /** Sets these notches in the place of all that there are. */
    void set(List<Notch> others) {
        points.clear();
        notches.clear();
        notches.addAll(others);
    }

    /** Takes notches off, and tells whether there were any. */
    boolean removeIf(Predicate<Notch> unwanted) {
        boolean removed = notches.removeIf(unwanted);
        if (removed) {
            points.clear();
        }
        return removed;
    }
}

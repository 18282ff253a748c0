package org.oaktag.draft;

import java.util.List;
import java.util.Objects;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * An oblong that is laid on a piece as a pocket, open at its upper edge. Immutable.
 *
 * <pre>{@code
 * Patch patch = new Patch(Name.of("pocket"), Point.of(60, 250), mm(130), mm(150));
 * patch.corners().size();                                // = 4
 * Piece shell = patch.laidOn().on(front);                // its place marked
 * patch.piece(front.cloth()).edge(EdgeNames.OPENING);    // turned back
 * }</pre>
 *
 * @param name the name of the pocket
 * @param corner its upper corner at the left
 * @param width how wide it is
 * @param height how high it is
 */
public record Patch(Name name, Point corner, Length width, Length height) {

    /** Refuses null. */
    public Patch {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(corner, "corner");
        Objects.requireNonNull(width, "width");
        Objects.requireNonNull(height, "height");
    }

    /** Returns its corners, clockwise from the upper one at the left. */
    public List<Point> corners() {
        Point right = corner.plus(Vector.of(width.mm(), 0));
        Vector down = Vector.of(0, height.mm());
        return List.of(corner, right, right.plus(down), corner.plus(down));
    }

    /** Returns its rim. */
    public Path line() {
        List<Point> corners = corners();
        return Path.polyline(corners.get(0), corners.get(1), corners.get(2), corners.get(3), corners.get(0));
    }

    /** Returns where it is laid on. */
    public LaidOn laidOn() {
        return new LaidOn(name, line(), corners());
    }

    /** Returns the pocket, one for either side. */
    public Piece piece(Cloth cloth) {
        Point a = corners().get(0);
        Point b = corners().get(1);
        Point c = corners().get(2);
        Point d = corners().get(3);
        Point middle = a.midpoint(b);
        return Piece.of(
                name,
                List.of(
                        Edge.straight(EdgeNames.OPENING, a, b).withFinish(EdgeFinish.TURNED_BACK_SQUARE),
                        Edge.straight(EdgeNames.SIDE, b, c),
                        Edge.straight(EdgeNames.BOTTOM, c, d),
                        Edge.straight(EdgeNames.CENTRE, d, a)),
                new Grainline(
                        middle.plus(Vector.of(0, 0.2 * height.mm())), middle.plus(Vector.of(0, 0.8 * height.mm()))),
                Cut.pair(),
                cloth);
    }
}

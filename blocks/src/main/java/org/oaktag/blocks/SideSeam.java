package org.oaktag.blocks;

import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** The side seam of a front or a back, and the hem that meets it. */
public final class SideSeam {

    private SideSeam() {}

    /**
     * Returns the side seam drawn straight from the underarm point to the hem, its lower end raised so far that a hem
     * square to it does not dip. A seam that is straight already is returned as it is.
     *
     * @param piece a front or a back
     */
    public static Path straight(Piece piece) {
        Path side = piece.path(EdgeNames.SIDE);
        if (side.curves().size() == 1 && side.curves().get(0) instanceof Line) {
            return side;
        }
        Point underarm = side.start();
        Point corner = side.end();
        Vector down = corner.minus(underarm).unit();
        double across = corner.x() - piece.path(EdgeNames.HEM).end().x();
        return Path.of(new Line(underarm, corner.plus(down.times(-HemShape.raise(across, down)))));
    }

    /** Returns the hem drawn from the end of a side seam, square to it, to the centre of the piece. */
    public static Path hem(Piece piece, Path side) {
        return HemShape.draw(
                side.end(), side.endDirection(), piece.path(EdgeNames.HEM).end());
    }
}

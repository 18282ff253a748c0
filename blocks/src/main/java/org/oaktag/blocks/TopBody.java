package org.oaktag.blocks;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * Front and back together, redrawn when their side seams or the lower ends of their centres have moved.
 *
 * <pre>{@code
 * Garment straightened = TopBody.withSides(
 *         block, Map.of(FRONT, SideSeam.straight(block.piece(FRONT)), BACK, SideSeam.straight(block.piece(BACK))));
 * }</pre>
 *
 * <p>Both hems run on smoothly across the side seam. With both centres at one level each hem is square to its side
 * seam; with one lower than the other they slope from the higher to the lower, at the seam one and a half times as
 * steeply as on the whole, as a cut aslant through a tube does nearly (there: pi/2 times).
 */
public final class TopBody {

    /** Front and back, in this order. */
    public static final List<Name> HALVES = List.of(TopNames.FRONT, TopNames.BACK);

    private static final double SLOPE_AT_SEAM = 1.5;
    private static final double LEVEL = 1e-9;

    /** The sine of an angle by which a direction turns through rounding alone. */
    private static final double SAME_DIRECTION = 1e-12;

    private TopBody() {}

    /**
     * Returns the garment with other side seams. Where one begins elsewhere or in another direction, the armhole is
     * redrawn below its pitch point; where one ends so, both hems are.
     *
     * @param sides the side seams by the name of their piece, from the underarm point down
     * @throws PatternException if a side seam does not run down to the hem, as when a vent is cut, or an armhole that
     *     is redrawn is not whole
     */
    public static Garment withSides(Garment garment, Map<Name, Path> sides) {
        sides.forEach((name, side) -> {
            if (startMoves(garment.piece(name), side)) {
                TopPieces.withArmhole(garment, name);
            }
        });
        return redrawn(garment, sides, Map.of());
    }

    /**
     * Returns the garment with the lower ends of its centres elsewhere on their lines, and both hems redrawn.
     *
     * @param centres the lower ends by the name of their piece
     * @throws PatternException if a side seam does not run down to the hem
     */
    public static Garment withCentres(Garment garment, Map<Name, Point> centres) {
        return redrawn(garment, Map.of(), centres);
    }

    /**
     * Returns the level at which an unraised hem of both pieces would lie: midway between the ends of their centres.
     */
    public static double hemLevel(Garment garment) {
        return HALVES.stream()
                .mapToDouble(name -> centreEnd(garment.piece(name)).y())
                .average()
                .orElseThrow();
    }

    /** Returns the lower end of the centre of a piece. */
    public static Point centreEnd(Piece piece) {
        return piece.path(EdgeNames.CENTRE).start();
    }

    /**
     * Returns the garment with other side seams and other lower ends of its centres, as the two methods above do.
     *
     * @throws PatternException if a side seam does not run down to the hem
     */
    public static Garment redrawn(Garment garment, Map<Name, Path> sides, Map<Name, Point> centres) {
        Half front = Half.of(garment, TopNames.FRONT, sides, centres);
        Half back = Half.of(garment, TopNames.BACK, sides, centres);
        boolean hemMoves = !centres.isEmpty() || front.endMoves() || back.endMoves();
        double drop = back.centre.y() - front.centre.y();
        double run = front.run() + back.run();
        double turn = Math.abs(drop) <= LEVEL ? 0 : Math.atan(SLOPE_AT_SEAM * drop / run);
        return garment.withPiece(front.redrawn(hemMoves, turn)).withPiece(back.redrawn(hemMoves, -turn));
    }

    private static boolean startMoves(Piece piece, Path side) {
        Path old = piece.path(EdgeNames.SIDE);
        return !side.start().equals(old.start()) || turns(side.startDirection(), old.startDirection());
    }

    private static boolean turns(Vector direction, Vector old) {
        return Math.abs(direction.cross(old)) > SAME_DIRECTION;
    }

    /** A piece with the side seam and the lower end of the centre that it is to have. */
    private record Half(Garment garment, Piece piece, Path side, Point centre) {

        static Half of(Garment garment, Name name, Map<Name, Path> sides, Map<Name, Point> centres) {
            Piece piece = TopPieces.half(garment, name, EdgeNames.SIDE);
            return new Half(
                    garment,
                    piece,
                    sides.getOrDefault(piece.name(), piece.path(EdgeNames.SIDE)),
                    centres.getOrDefault(piece.name(), centreEnd(piece)));
        }

        double run() {
            return side.end().x() - centre.x();
        }

        boolean endMoves() {
            Path old = piece.path(EdgeNames.SIDE);
            return !side.end().equals(old.end()) || turns(side.endDirection(), old.endDirection());
        }

        Piece redrawn(boolean hemMoves, double turn) {
            Map<Name, Path> edges = new HashMap<>(Map.of(EdgeNames.SIDE, side));
            if (startMoves(piece, side)) {
                TopPieces.half(garment, piece.name(), TopEdges.SHOULDER, TopEdges.ARMHOLE, EdgeNames.SIDE);
                edges.put(TopEdges.ARMHOLE, TopArmhole.withUnderarm(piece, side));
            }
            if (hemMoves) {
                TopPieces.half(garment, piece.name(), EdgeNames.SIDE, EdgeNames.HEM, EdgeNames.CENTRE);
                Path line = piece.path(EdgeNames.CENTRE);
                edges.put(EdgeNames.HEM, HemShape.draw(side.end(), side.endDirection(), centre, turn));
                edges.put(EdgeNames.CENTRE, Redraw.between(line, centre, line.end()));
            }
            boolean startStays = !startMoves(piece, side);
            return KeptNotches.redrawn(piece, edges, EdgeNames.SIDE, startStays ? End.START : End.END);
        }
    }
}

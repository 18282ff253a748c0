package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.OutlineOffset;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/** The neckline of a front or a back, redrawn when the centre or the shoulder that it meets has moved. */
public final class TopNeckline {

    private static final double TOLERANCE = 0.01;
    private static final double MITRE = 10;

    private TopNeckline() {}

    /**
     * Returns the piece with its neckline drawn between another point of the centre and the start of another shoulder
     * seam, to which it keeps its angle. A V or a square neckline is drawn anew as such; any other keeps its shape as
     * {@link Redraw} does.
     *
     * @param piece a front or a back
     * @param centre where the neckline begins, on the centre line
     * @param shoulder the shoulder seam, from the side neck point outwards
     * @throws PatternException if neckline and shoulder do not meet, as when a stand is grown on
     */
    public static Piece redrawn(Piece piece, Point centre, Path shoulder) {
        return with(piece, path(piece, centre, shoulder), shoulder);
    }

    /**
     * Returns the neckline alone, drawn as by {@link #redrawn}.
     *
     * @throws PatternException if neckline and shoulder do not meet
     */
    public static Path path(Piece piece, Point centre, Path shoulder) {
        checkMeetsShoulder(piece);
        Path old = piece.path(EdgeNames.NECKLINE);
        NeckStyle style = NeckStyle.of(old);
        Vector oldAlong = piece.path(EdgeNames.SHOULDER).startDirection();
        Vector along = shoulder.startDirection();
        double turn = Math.atan2(oldAlong.cross(along), oldAlong.dot(along));
        Point sideNeck = shoulder.start();
        return style == NeckStyle.ROUND
                ? turnedAtEnd(Redraw.between(old, centre, sideNeck), turn)
                : style.draw(
                        BodyHalf.of(piece), centre, sideNeck, old.endDirection().rotated(turn));
    }

    /**
     * Returns the piece with its neckline drawn in a style between the points that it has.
     *
     * @throws PatternException if neckline and shoulder do not meet
     */
    public static Piece inStyle(Piece piece, NeckStyle style) {
        checkMeetsShoulder(piece);
        Path old = piece.path(EdgeNames.NECKLINE);
        Path neckline = style.draw(BodyHalf.of(piece), old.start(), old.end(), old.endDirection());
        return with(piece, neckline, piece.path(EdgeNames.SHOULDER));
    }

    /**
     * Returns the piece with a boat neckline: flat across the middle, turning up to the shoulder at its end.
     *
     * @param centre where the neckline begins, on the centre line
     * @param shoulder what is left of the shoulder seam
     * @throws PatternException if neckline and shoulder do not meet
     */
    public static Piece boat(Piece piece, Point centre, Path shoulder) {
        checkMeetsShoulder(piece);
        Vector arriving = piece.path(EdgeNames.NECKLINE).endDirection();
        return with(piece, NeckShape.boat(centre, shoulder.start(), arriving), shoulder);
    }

    /**
     * Returns the piece with its neckline moved in parallel to itself, within 0.01 mm.
     *
     * @param by how far into the piece, in millimetres
     * @throws PatternException if neckline and shoulder do not meet, or the piece has no room
     */
    public static Piece movedIn(Piece piece, double by) {
        checkMeetsShoulder(piece);
        List<Path> edges = new ArrayList<>();
        double[] distances = new double[piece.edges().size()];
        int place = 0;
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(EdgeNames.NECKLINE)) {
                place = edges.size();
                distances[place] = -by;
            }
            edges.add(edge.path());
        }
        OutlineOffset inner = OutlineOffset.outward(edges, distances, CornerStyle.mitre(MITRE), TOLERANCE);
        int neckline = place;
        Path moved = Path.of(inner.parts().stream()
                .filter(part -> part.edge() == neckline)
                .flatMap(part -> part.path().curves().stream())
                .toList());
        Path shoulder = piece.path(EdgeNames.SHOULDER);
        Path left = shoulder.sub(shoulder.nearest(moved.end()).distanceAlong(), shoulder.length());
        Point centre =
                Point.of(piece.path(EdgeNames.CENTRE).end().x(), moved.start().y());
        return with(piece, Redraw.between(moved, centre, left.start()), left);
    }

    /**
     * Checks that neckline and shoulder meet at the side neck point.
     *
     * @throws PatternException if there is another edge between them
     */
    public static void checkMeetsShoulder(Piece piece) {
        Edge next = piece.after(EdgeNames.NECKLINE);
        if (!next.name().equals(EdgeNames.SHOULDER)) {
            throw PatternException.of(
                    "neckline of the " + piece.name(),
                    "must meet the shoulder seam at the side neck point for this step",
                    "edge '" + next.name() + "' between them",
                    "put this step before the one that draws that edge");
        }
    }

    /** Returns a piece with another neckline and shoulder; the centre reaches up or down to the neckline. */
    private static Piece with(Piece piece, Path neckline, Path shoulder) {
        Path centre = piece.path(EdgeNames.CENTRE);
        return piece.redrawn(Map.of(
                EdgeNames.NECKLINE,
                neckline,
                EdgeNames.SHOULDER,
                shoulder,
                EdgeNames.CENTRE,
                Redraw.between(centre, centre.start(), neckline.start())));
    }

    private static Path turnedAtEnd(Path neckline, double turn) {
        List<Curve> curves = new ArrayList<>(neckline.curves());
        int last = curves.size() - 1;
        if (turn == 0 || !(curves.get(last) instanceof Cubic cubic)) {
            return neckline;
        }
        Vector handle = cubic.control2().minus(cubic.end()).rotated(turn);
        curves.set(last, new Cubic(cubic.start(), cubic.control1(), cubic.end().plus(handle), cubic.end()));
        return Path.of(curves);
    }
}

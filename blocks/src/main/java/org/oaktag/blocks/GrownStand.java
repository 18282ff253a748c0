package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;

/**
 * A stand grown on to a neckline, as of a funnel neck. The shoulder seam runs up into it in one curve, whose tangents
 * meet at the side neck point; the stand leans in towards the neck, and its upper edge leaves the centre level and meets
 * the seam square. The seam edge of the back is that of the front, carried over, so that both are equal. Immutable.
 *
 * <pre>{@code
 * GrownStand stand = GrownStand.on(front, 60);
 * Piece grown = stand.grownOn(front);   // with the edge "stand" above the neckline
 * }</pre>
 *
 * @param seam the seam edge, from its top down into the shoulder
 * @param along how much of the shoulder it takes up, in millimetres
 */
public record GrownStand(Path seam, double along) {

    /** How far the stand leans in: its sides in a body with sloping shoulders follow the neck (our own choice). */
    private static final double LEAN = Math.toRadians(8);

    private static final double ALONG_SHARE = 0.6;
    private static final double MOST_OF_SHOULDER = 0.4;
    private static final double HANDLE = 2.0 / 3;

    /** Refuses null. */
    public GrownStand {
        Objects.requireNonNull(seam, "seam");
    }

    /**
     * Draws the seam edge of a stand on a front.
     *
     * @param front the front
     * @param height how high the stand is above the side neck point, in millimetres
     */
    public static GrownStand on(Piece front, double height) {
        Path shoulder = front.path(EdgeNames.SHOULDER);
        double along = Math.min(ALONG_SHARE * height, MOST_OF_SHOULDER * shoulder.length());
        Point sideNeck = shoulder.start();
        Point top = sideNeck.plus(Vector.of(-Math.tan(LEAN) * height, -height));
        return new GrownStand(Path.of(rounded(top, sideNeck, shoulder.pointAt(along))), along);
    }

    /**
     * Returns the stand carried over to the shoulder of the other piece.
     *
     * @param front the piece it was drawn on
     * @param back the other piece
     */
    public GrownStand carried(Piece front, Piece back) {
        Path from = front.path(EdgeNames.SHOULDER);
        Path to = back.path(EdgeNames.SHOULDER);
        double turn = to.startDirection().angle() - from.startDirection().angle();
        Transform carry = Transform.rotation(turn, from.start())
                .then(Transform.translation(to.start().minus(from.start())));
        return new GrownStand(seam.transformed(carry), along);
    }

    /** Returns a piece with this stand grown on. */
    public Piece grownOn(Piece piece) {
        Path shoulder = piece.path(EdgeNames.SHOULDER);
        Path left = shoulder.sub(along, shoulder.length());
        Path stand = Redraw.between(seam, seam.start(), left.start());
        Path top = topEdge(piece.path(EdgeNames.CENTRE).end().x(), stand);
        Path centre = piece.path(EdgeNames.CENTRE);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(EdgeNames.NECKLINE)) {
                edges.add(edge.withPath(top));
                edges.add(new Edge(EdgeNames.STAND, stand));
            } else if (edge.name().equals(EdgeNames.SHOULDER)) {
                edges.add(edge.withPath(left));
            } else if (edge.name().equals(EdgeNames.CENTRE)) {
                edges.add(edge.withPath(Path.of(new Line(centre.start(), top.start()))));
            } else {
                edges.add(edge);
            }
        }
        return piece.withEdges(edges);
    }

    /** Draws the upper edge as half of a parabola with its lowest point on the centre line. */
    private static Path topEdge(double centreX, Path stand) {
        Point top = stand.start();
        Vector square = stand.startDirection().leftNormal();
        double half = (top.x() - centreX) / 2;
        Point corner = Point.of(centreX + half, top.y() - square.y() / square.x() * half);
        return Path.of(rounded(Point.of(centreX, corner.y()), corner, top));
    }

    private static Cubic rounded(Point from, Point corner, Point to) {
        return new Cubic(from, from.lerp(corner, HANDLE), to.lerp(corner, HANDLE), to);
    }
}

package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;

/**
 * A stand grown on to a neckline, as of a funnel neck. The shoulder seam runs up into it in one curve, whose tangents
 * meet at the side neck point; the stand leans in towards the neck. Its upper edge leaves both centres level and runs
 * on smoothly over the seam, tilted forward so far that the stand is as high at the centre front as at the centre back:
 * the front of a neckline lies lower than its back, and a level edge would cover the mouth. The seam edge of the back
 * is that of the front, carried over, so that both are equal. Immutable.
 *
 * <pre>{@code
 * GrownStand stand = GrownStand.on(front, block.piece(BACK), 60);
 * Piece grown = stand.grownOn(front);   // with the edge "stand" above the neckline
 * }</pre>
 *
 * @param seam the seam edge, from its top down into the shoulder
 * @param along how much of the shoulder it takes up, in millimetres
 * @param tilt by how much the upper edge is turned off square where it meets the seam, down in front and up behind
 */
public record GrownStand(Path seam, double along, Angle tilt) {

    /** How far the stand leans in: its sides in a body with sloping shoulders follow the neck (our own choice). */
    private static final double LEAN = Math.toRadians(8);

    private static final double ALONG_SHARE = 0.6;
    private static final double MOST_OF_SHOULDER = 0.4;
    private static final double HANDLE = 2.0 / 3;

    /** More than this and the upper edge would bend too sharply at the centres to be finished. */
    private static final double MOST_TILT = Math.toRadians(38);

    /** Refuses null. */
    public GrownStand {
        Objects.requireNonNull(seam, "seam");
        Objects.requireNonNull(tilt, "tilt");
    }

    /**
     * Draws the seam edge of a stand on a front, and tilts its upper edge.
     *
     * @param front the front
     * @param back the back, to which it is to be carried
     * @param height how high the stand is above the side neck point, in millimetres
     */
    public static GrownStand on(Piece front, Piece back, double height) {
        Path shoulder = front.path(TopEdges.SHOULDER);
        double along = Math.min(ALONG_SHARE * height, MOST_OF_SHOULDER * shoulder.length());
        Point sideNeck = shoulder.start();
        Point top = sideNeck.plus(Vector.of(-Math.tan(LEAN) * height, -height));
        Path seam = Path.of(rounded(top, sideNeck, shoulder.pointAt(along)));
        OptionalDouble tilt = RootFinder.solve(
                tried -> {
                    GrownStand stand = new GrownStand(seam, along, Angle.radians(tried));
                    return stand.centreHeight(front)
                            - stand.carried(front, back).centreHeight(back);
                },
                0,
                MOST_TILT);
        return new GrownStand(seam, along, Angle.radians(tilt.orElse(MOST_TILT)));
    }

    /** Returns how high the stand is on the centre line of a piece, above its neckline, in millimetres. */
    public double centreHeight(Piece piece) {
        Point centre = piece.path(EdgeNames.CENTRE).end();
        return centre.y() - topEdge(piece, seam).start().y();
    }

    /**
     * Returns the stand carried over to the shoulder of the other piece.
     *
     * @param front the piece it was drawn on
     * @param back the other piece
     */
    public GrownStand carried(Piece front, Piece back) {
        Path from = front.path(TopEdges.SHOULDER);
        Path to = back.path(TopEdges.SHOULDER);
        double turn = to.startDirection().angle() - from.startDirection().angle();
        Transform carry = Transform.rotation(turn, from.start())
                .then(Transform.translation(to.start().minus(from.start())));
        return new GrownStand(seam.transformed(carry), along, tilt);
    }

    /** Returns a piece with this stand grown on. */
    public Piece grownOn(Piece piece) {
        Path shoulder = piece.path(TopEdges.SHOULDER);
        Path left = shoulder.sub(along, shoulder.length());
        Path stand = Redraw.between(seam, seam.start(), left.start());
        Path top = topEdge(piece, stand);
        Path centre = piece.path(EdgeNames.CENTRE);
        List<Edge> edges = new ArrayList<>();
        for (Edge edge : piece.edges()) {
            if (edge.name().equals(TopEdges.NECKLINE)) {
                edges.add(edge.withPath(top));
                edges.add(new Edge(TopEdges.STAND, stand));
            } else if (edge.name().equals(TopEdges.SHOULDER)) {
                edges.add(edge.withPath(left));
            } else if (edge.name().equals(EdgeNames.CENTRE)) {
                edges.add(edge.withPath(Path.of(new Line(centre.start(), top.start()))));
            } else {
                edges.add(edge);
            }
        }
        return piece.withEdges(edges);
    }

    /** Draws the upper edge of a piece as half of a parabola with its summit on the centre line. */
    private Path topEdge(Piece piece, Path stand) {
        double centreX = piece.path(EdgeNames.CENTRE).end().x();
        double forward = BodyHalf.of(piece) == BodyHalf.FRONT ? -tilt.radians() : tilt.radians();
        Point top = stand.start();
        Vector towards = stand.startDirection().leftNormal().rotated(forward);
        double half = (top.x() - centreX) / 2;
        Point corner = Point.of(centreX + half, top.y() - towards.y() / towards.x() * half);
        return Path.of(rounded(Point.of(centreX, corner.y()), corner, top));
    }

    private static Cubic rounded(Point from, Point corner, Point to) {
        return new Cubic(from, from.lerp(corner, HANDLE), to.lerp(corner, HANDLE), to);
    }
}

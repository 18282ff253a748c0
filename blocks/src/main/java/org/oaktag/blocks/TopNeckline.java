package org.oaktag.blocks;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.oaktag.PatternException;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.End;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.CornerStyle;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.OffsetPath;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The neckline of a front or a back, redrawn when the centre or the shoulder that it meets has moved.
 *
 * <pre>{@code
 * Piece pointed = TopNeckline.inStyle(front, NeckStyle.V);
 * }</pre>
 */
public final class TopNeckline {

    private static final double TOLERANCE = 0.01;
    private static final double MITRE = 10;
    private static final double PAST_SHOULDER = 2;

    private TopNeckline() {}

    /**
     * Returns how deep below its side neck point a neckline of this half-width must lie at the centre, in millimetres,
     * to bend to a radius of no less than some 14 mm: below that no allowance and no band lies flat round it.
     */
    public static double leastDepth(double halfWidth) {
        return NeckShape.leastDepth(halfWidth);
    }

    /**
     * Returns the piece with its neckline drawn between another point of the centre and the start of another shoulder
     * seam, to which it keeps its angle. A V or a square neckline is drawn anew as such; any other keeps what it can
     * of its shape and bends the other way nowhere that it did not.
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
        TopPieces.require(piece, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Path old = piece.path(TopEdges.NECKLINE);
        NeckStyle style = NeckStyle.of(old);
        Vector oldAlong = piece.path(TopEdges.SHOULDER).startDirection();
        Vector along = shoulder.startDirection();
        double turn = Math.atan2(oldAlong.cross(along), oldAlong.dot(along));
        Vector arriving = turn == 0 ? old.endDirection() : old.endDirection().rotated(turn);
        return style == NeckStyle.ROUND
                ? NeckShape.redrawn(old, centre, shoulder.start(), arriving)
                : style.draw(centre, shoulder.start(), arriving);
    }

    /**
     * Returns the piece with its neckline drawn in a style between the points that it has.
     *
     * @throws PatternException if neckline and shoulder do not meet
     */
    public static Piece inStyle(Piece piece, NeckStyle style) {
        TopPieces.require(piece, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Path old = piece.path(TopEdges.NECKLINE);
        Path neckline = style.draw(old.start(), old.end(), old.endDirection());
        return with(piece, neckline, piece.path(TopEdges.SHOULDER));
    }

    /**
     * Returns the piece with a boat neckline: flat across the middle, turning up to the shoulder at its end.
     *
     * @param centre where the neckline begins, on the centre line
     * @param shoulder what is left of the shoulder seam
     * @throws PatternException if neckline and shoulder do not meet
     */
    public static Piece boat(Piece piece, Point centre, Path shoulder) {
        TopPieces.require(piece, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Vector arriving = piece.path(TopEdges.NECKLINE).endDirection();
        return with(piece, NeckShape.boat(centre, shoulder.start(), arriving), shoulder);
    }

    /**
     * Returns front and back with their necklines moved in parallel to themselves, within 0.01 mm. Each is taken over
     * the centre to its mirror image and over the shoulder seam on to the neckline of the other, moved, and cut off at
     * the centre and at the shoulder seam, at the same distance along it on both.
     *
     * @param by how far into the pieces, in millimetres
     * @throws PatternException if neckline and shoulder do not meet, or a moved neckline does not reach the shoulder
     */
    public static List<Piece> movedIn(Piece front, Piece back, double by) {
        Path onFront = within(front, back, by);
        Path onBack = within(back, front, by);
        double along = (alongShoulder(front, onFront) + alongShoulder(back, onBack)) / 2;
        return List.of(endingAt(front, onFront, along), endingAt(back, onBack, along));
    }

    private static double alongShoulder(Piece piece, Path neckline) {
        return piece.path(TopEdges.SHOULDER).nearest(neckline.end()).distanceAlong();
    }

    private static Piece endingAt(Piece piece, Path neckline, double along) {
        Path shoulder = piece.path(TopEdges.SHOULDER);
        Path left = shoulder.sub(along, shoulder.length());
        Point onCentre = Point.of(
                piece.path(TopEdges.NECKLINE).start().x(), neckline.start().y());
        return with(piece, Redraw.between(neckline, onCentre, left.start()), left);
    }

    private static Path within(Piece piece, Piece other, double by) {
        TopPieces.require(piece, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Path neckline = piece.path(TopEdges.NECKLINE);
        Path shoulder = piece.path(TopEdges.SHOULDER);
        Point centre = neckline.start();
        Path half = neckline.then(beyondShoulder(piece, other, PAST_SHOULDER * by));
        Path mirrored = half.transformed(Transform.mirrorX(centre.x())).reversed();
        Path moved = OffsetPath.of(
                Redraw.between(mirrored, mirrored.start(), centre).then(half),
                -by,
                CornerStyle.mitre(MITRE),
                TOLERANCE);
        double atCentre = cut(
                piece, moved, Path.polyline(centre, piece.path(EdgeNames.CENTRE).start()));
        Path inner = moved.sub(atCentre, moved.length());
        return inner.sub(0, cut(piece, inner, shoulder));
    }

    /**
     * Returns the neckline of the other piece as it runs on where the shoulders are sewn, so long; straight on where it
     * ends.
     */
    private static Path beyondShoulder(Piece piece, Piece other, double reach) {
        Point sideNeck = piece.path(TopEdges.NECKLINE).end();
        Vector along = piece.path(TopEdges.SHOULDER).startDirection();
        Path onward = other.path(TopEdges.NECKLINE).reversed();
        Vector otherAlong = other.path(TopEdges.SHOULDER).startDirection();
        Transform laidOn = Transform.translation(sideNeck.minus(onward.start()))
                .then(Transform.rotation(Math.atan2(otherAlong.cross(along), otherAlong.dot(along)), sideNeck))
                .then(Transform.mirror(sideNeck, sideNeck.plus(along)));
        Path run = onward.length() > reach ? onward.sub(0, reach) : onward;
        Path laid = run.transformed(laidOn);
        Path from = Redraw.between(laid, sideNeck, laid.end());
        return onward.length() > reach
                ? from
                : from.then(Path.polyline(
                        from.end(), from.end().plus(from.endDirection().times(reach))));
    }

    /** Returns how far along a moved neckline it meets the centre line or the shoulder. */
    private static double cut(Piece piece, Path moved, Path line) {
        return Crossings.between(moved, line).stream()
                .map(Crossing::first)
                .max(Comparator.naturalOrder())
                .orElseThrow(() -> PatternException.of(
                        "neckline of the " + piece.name(),
                        "must still meet centre and shoulder when it is moved in",
                        "a neckline that misses them",
                        "move it by less"));
    }

    /** Returns a piece with another neckline and shoulder; the centre reaches up or down to the neckline. */
    private static Piece with(Piece piece, Path neckline, Path shoulder) {
        Path centre = piece.path(EdgeNames.CENTRE);
        Piece drawn = KeptNotches.redrawn(
                piece,
                Map.of(
                        TopEdges.NECKLINE,
                        neckline,
                        TopEdges.SHOULDER,
                        shoulder,
                        EdgeNames.CENTRE,
                        Redraw.between(centre, centre.start(), neckline.start())),
                TopEdges.SHOULDER,
                End.END);
        if (drawn.outline().meetsItself()) {
            throw PatternException.of(
                    "neckline of the " + piece.name(),
                    "must not run into the rest of the piece, such as the slash of a gusset or a dart",
                    "one that is " + Length.mm(neckline.length()).text() + " long",
                    "draw it higher and narrower");
        }
        return drawn;
    }
}

package org.oaktag.blocks;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Crossing;
import org.oaktag.geometry.Crossings;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The strip that a shoulder seam leaves on the other piece when it is moved: cut from one piece along a line parallel
 * to the seam and put to the other, mirrored through the seam as when it is folded open. What the one neckline and the
 * one armhole lose the others gain, curve by curve.
 *
 * <pre>{@code
 * ShoulderStrip strip = ShoulderStrip.of(block.piece(FRONT), 15);
 * Piece back = strip.putTo(block.piece(BACK));   // what the front lost it gains
 * }</pre>
 *
 * @param giver the piece that loses it
 * @param width how wide it is, in millimetres
 * @param alongNeckline how far the neckline is cut off, from the shoulder, in millimetres
 * @param alongArmhole how far the armhole is cut off, from the shoulder
 */
public record ShoulderStrip(Piece giver, double width, double alongNeckline, double alongArmhole) {

    private static final double STRAIGHT = 1e-6;
    private static final double LEFT_OF_UPPER = 10;

    /** Refuses null. */
    public ShoulderStrip {
        Objects.requireNonNull(giver, "giver");
    }

    /**
     * Cuts a strip of a width along the shoulder of a piece.
     *
     * @throws PatternException if the shoulder is not one straight line, or the strip reaches past the neckline or the
     *     upper part of the armhole
     */
    public static ShoulderStrip of(Piece giver, double width) {
        TopPieces.require(giver, TopEdges.NECKLINE, TopEdges.SHOULDER);
        Path shoulder = giver.path(TopEdges.SHOULDER);
        if (shoulder.length() - shoulder.chord() > STRAIGHT) {
            throw PatternException.of(
                    "shoulder seam of the " + giver.name(),
                    "must be one straight line to be moved",
                    "a bent one",
                    "move the seam before the shoulder is bent");
        }
        Vector along = shoulder.end().minus(shoulder.start()).unit();
        Point on = shoulder.start().plus(along.rightNormal().times(width));
        Path neckline = giver.path(TopEdges.NECKLINE).reversed();
        Path armhole = giver.path(TopEdges.ARMHOLE);
        List<Curve> curves = armhole.curves();
        double upper = Path.of(curves.subList(0, curves.size() - 1)).length() - LEFT_OF_UPPER;
        double cutNeck = first(neckline, on, along);
        double cutArmhole = first(armhole, on, along);
        if (cutNeck >= neckline.length() || cutArmhole > upper) {
            throw PatternException.of(
                    "shoulder seam of the " + giver.name(),
                    "must stay above the pitch point of the armhole and the middle of the neckline, which lets it be moved by "
                            + Length.mm(most(giver, along)).roundedDown().text() + " at the most",
                    Length.mm(width).text(),
                    "");
        }
        return new ShoulderStrip(giver, width, cutNeck, cutArmhole);
    }

    /** Returns the piece that loses the strip. */
    public Piece left() {
        Path neckline = giver.path(TopEdges.NECKLINE);
        Path armhole = giver.path(TopEdges.ARMHOLE);
        Path shorter = neckline.splitAt(neckline.length() - alongNeckline).before();
        Path lower = armhole.splitAt(alongArmhole).after();
        return giver.redrawn(Map.of(
                TopEdges.NECKLINE, shorter,
                TopEdges.SHOULDER, Path.polyline(shorter.end(), lower.start()),
                TopEdges.ARMHOLE, lower));
    }

    /** Returns the other piece with the strip put to its shoulder. */
    public Piece putTo(Piece other) {
        Path from = giver.path(TopEdges.SHOULDER);
        Path to = other.path(TopEdges.SHOULDER);
        Vector a = from.end().minus(from.start());
        Vector b = to.end().minus(to.start());
        Transform open = Transform.mirror(from.start(), from.end())
                .then(Transform.rotation(Math.atan2(a.cross(b), a.dot(b)), from.start()))
                .then(Transform.translation(to.start().minus(from.start())));
        Path neckline = giver.path(TopEdges.NECKLINE);
        Path onNeck = neckline.splitAt(neckline.length() - alongNeckline)
                .after()
                .transformed(open)
                .reversed();
        Path onArm = giver.path(TopEdges.ARMHOLE)
                .splitAt(alongArmhole)
                .before()
                .transformed(open)
                .reversed();
        Path longer = other.path(TopEdges.NECKLINE).then(Redraw.between(onNeck, to.start(), onNeck.end()));
        Path deeper = Redraw.between(onArm, onArm.start(), to.end()).then(other.path(TopEdges.ARMHOLE));
        return other.redrawn(Map.of(
                TopEdges.NECKLINE, longer,
                TopEdges.SHOULDER, Path.polyline(longer.end(), deeper.start()),
                TopEdges.ARMHOLE, deeper));
    }

    /**
     * Returns how far along a path that begins at the shoulder the parallel meets it first; its length if it never
     * does.
     */
    private static double first(Path path, Point on, Vector along) {
        return Crossings.ofLine(path, on, along).stream()
                .map(Crossing::first)
                .min(Comparator.naturalOrder())
                .orElse(path.length());
    }

    /** How far, square to the shoulder, both the upper part of the armhole and the neckline reach. */
    private static double most(Piece giver, Vector along) {
        Path armhole = giver.path(TopEdges.ARMHOLE);
        List<Curve> curves = armhole.curves();
        Path upper = Path.of(curves.subList(0, curves.size() - 1));
        Vector across = along.rightNormal();
        double arm = across.dot(
                upper.pointAt(Math.max(0, upper.length() - LEFT_OF_UPPER)).minus(armhole.start()));
        Path neckline = giver.path(TopEdges.NECKLINE);
        return Math.min(arm, across.dot(neckline.start().minus(neckline.end())));
    }
}

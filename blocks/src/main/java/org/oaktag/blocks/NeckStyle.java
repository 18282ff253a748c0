package org.oaktag.blocks;

import java.util.List;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * How a neckline runs between the centre and the side neck point. Whatever the style, it arrives at the shoulder in the
 * direction in which the other half of the neckline goes on.
 *
 * <pre>{@code
 * Garment pointed = block.adjust(reshapeNeckline(NeckStyle.V));
 * }</pre>
 */
public enum NeckStyle {
    /** A curve that leaves the centre square. */
    ROUND("round") {
        @Override
        Path draw(Point centre, Point sideNeck, Vector arriving) {
            return NeckShape.round(centre, sideNeck, arriving);
        }
    },
    /** Straight from a point at the centre, bending only where it comes to the shoulder. */
    V("v") {
        @Override
        Path draw(Point centre, Point sideNeck, Vector arriving) {
            double bend = BEND * centre.distanceTo(sideNeck);
            Point corner = sideNeck.plus(arriving.times(-bend));
            Point joint = corner.plus(centre.minus(corner).unit().times(bend));
            return Path.of(new Line(centre, joint), rounded(joint, corner, sideNeck));
        }
    },
    /** Level from the centre to a corner and upright from there, bending only where it comes to the shoulder. */
    SQUARE("square") {
        @Override
        Path draw(Point centre, Point sideNeck, Vector arriving) {
            double bend = BEND * (centre.y() - sideNeck.y());
            Point above = sideNeck.plus(arriving.times(-bend));
            Point joint = Point.of(above.x(), above.y() + bend);
            Point corner = Point.of(above.x(), centre.y());
            return Path.of(new Line(centre, corner), new Line(corner, joint), rounded(joint, above, sideNeck));
        }
    };

    private static final double BEND = 0.25;
    private static final double HANDLE = 2.0 / 3;

    private final String label;

    NeckStyle(String label) {
        this.label = label;
    }

    /** Returns the style as a maker says it: {@code "round"}, {@code "v"}, {@code "square"}. */
    public String label() {
        return label;
    }

    /** Draws a neckline in this style that arrives at the side neck point in that direction. */
    abstract Path draw(Point centre, Point sideNeck, Vector arriving);

    /**
     * Returns the style of a neckline that was drawn in one; any other neckline counts as round. A V or a square one
     * whose bend went to the other piece when the shoulder seam was moved still counts as such.
     */
    static NeckStyle of(Path neckline) {
        List<Curve> curves = neckline.curves();
        boolean bends = curves.get(curves.size() - 1) instanceof Cubic;
        int straight = bends ? curves.size() - 1 : curves.size();
        if (!curves.subList(0, straight).stream().allMatch(Line.class::isInstance)) {
            return ROUND;
        }
        return switch (straight) {
            case 1 -> V;
            case 2 -> SQUARE;
            default -> ROUND;
        };
    }

    private static Cubic rounded(Point from, Point corner, Point to) {
        return new Cubic(from, from.lerp(corner, HANDLE), to.lerp(corner, HANDLE), to);
    }
}

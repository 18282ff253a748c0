package org.oaktag.blocks;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Angle;
import org.oaktag.measure.Length;

/**
 * The shoulder seam of a front or a back, from the side neck point outwards, drawn longer, shorter or at another slope.
 *
 * <pre>{@code
 * Path dropped = ShoulderSeam.extended(FRONT, front.path(SHOULDER), mm(25), degrees(0));
 * dropped.length() - front.path(SHOULDER).length();   // = 25.0
 * }</pre>
 */
public final class ShoulderSeam {

    /** A shoulder seam shorter than this, in millimetres, cannot be sewn. */
    public static final double LEAST = 20;

    private ShoulderSeam() {}

    /**
     * Returns a shoulder seam that runs on past its end, along its own line or bent, or that ends before it.
     *
     * @param piece the piece of which it is, for the message
     * @param shoulder the seam as it is
     * @param by how far it runs on; negative to take it back
     * @param bend by how much the new part turns down
     * @throws PatternException if less than 20 mm of the seam would be left
     */
    public static Path extended(Name piece, Path shoulder, Length by, Angle bend) {
        Objects.requireNonNull(piece, "piece");
        double least = LEAST - shoulder.length();
        if (by.mm() < least) {
            throw PatternException.of(
                    "shoulder of the " + piece,
                    "can be taken back by " + Length.mm(-least).roundedDown().text()
                            + " at the most, or nothing of it is left",
                    by.negated().text(),
                    "");
        }
        if (by.mm() <= 0) {
            return by.mm() == 0 ? shoulder : shoulder.sub(0, shoulder.length() + by.mm());
        }
        Vector onward = shoulder.endDirection().rotated(bend.radians());
        Point end = shoulder.end().plus(onward.times(by.mm()));
        List<Curve> curves = shoulder.curves();
        if (bend.degrees() == 0 && curves.size() == 1 && curves.get(0) instanceof Line line) {
            return Path.of(new Line(line.start(), end));
        }
        return shoulder.then(Path.of(new Line(shoulder.end(), end)));
    }

    /** Returns a shoulder seam turned about the side neck point, downwards for a positive angle; its length stays. */
    public static Path turned(Path shoulder, double radians) {
        Point sideNeck = shoulder.start();
        Path turned = shoulder.transformed(Transform.rotation(radians, sideNeck));
        return Redraw.between(turned, sideNeck, turned.end());
    }
}

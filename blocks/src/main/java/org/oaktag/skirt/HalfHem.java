package org.oaktag.skirt;

import org.oaktag.PatternException;
import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The hem of a half: square to the side seam and to the centre, and between them one arc of a circle that both lines
 * touch, straight on from it to whichever end lies further off. Where neither leans it is straight.
 *
 * @param side where the side seam ends
 * @param down its direction there
 * @param centre where the centre begins
 * @param up its direction there
 */
record HalfHem(Point side, Vector down, Point centre, Vector up) {

    /** Below this angle, radians, the side does not lean. */
    private static final double LEVEL = 1e-7;

    /** No hem is drawn with a tighter bend than this, mm. */
    private static final double LEAST_RADIUS = 100;

    /** With this radius, mm, a hem that would bend more tightly, or both ways, is drawn. */
    private static final double USUAL_RADIUS = 300;

    /** How much of the hem the bend may take on either side. */
    private static final double MOST_SHARE = 0.4;

    private static final double FINE = 1e-4;

    private Vector leaving() {
        return down.rightNormal();
    }

    private Vector arriving() {
        return up.leftNormal();
    }

    private double turn() {
        return leaving().angleTo(arriving());
    }

    /** How far from the side the lines square to side and centre meet, mm. */
    private double fromSide() {
        return centre.minus(side).cross(arriving()) / leaving().cross(arriving());
    }

    /** How far from the centre they do. */
    private double fromCentre() {
        return leaving().cross(centre.minus(side)) / leaving().cross(arriving());
    }

    /**
     * Returns by how much the side has to be longer so that the hem bends one way and not too tightly, mm; negative for
     * shorter.
     */
    double lacking() {
        double turn = Math.abs(turn());
        Vector across = arriving();
        if (turn < LEVEL) {
            return centre.minus(side).cross(across) / down.cross(across);
        }
        double least = LEAST_RADIUS * Math.tan(turn / 2);
        if (fromSide() >= least && fromCentre() >= least) {
            return 0;
        }
        double width = side.distanceTo(centre);
        double wanted = Math.min(USUAL_RADIUS * Math.tan(turn / 2), MOST_SHARE * width);
        double gain = -down.cross(across) / leaving().cross(across);
        double bySide = (wanted - fromSide()) / gain;
        if (fromSide() < least) {
            return bySide;
        }
        double loss = -leaving().cross(down) / leaving().cross(across);
        return (wanted - fromCentre()) / loss;
    }

    /** Tells whether it bends one way, or not at all. */
    boolean isFair() {
        return Math.abs(turn()) < LEVEL ? lacking() == 0 : fromSide() > 0 && fromCentre() > 0;
    }

    /**
     * Returns the hem, from the side to the centre.
     *
     * @throws PatternException if it would bend both ways
     */
    Path drawn() {
        double turn = turn();
        if (Math.abs(turn) < LEVEL) {
            return Path.polyline(side, centre);
        }
        double before = fromSide();
        double after = fromCentre();
        double tangent = Math.min(before, after);
        if (!(tangent > 0)) {
            throw PatternException.of(
                    "hem",
                    "must run square from the side seam to the centre and bend one way",
                    "a side seam that ends " + Length.mm(-before).text() + " off such a line",
                    "take a smaller amount");
        }
        Point from = side.plus(leaving().times(before - tangent));
        Point to = centre.plus(arriving().times(tangent - after));
        double radius = tangent / Math.tan(Math.abs(turn) / 2);
        Vector inward = turn > 0 ? leaving().rightNormal() : leaving().leftNormal();
        Path arc =
                Arcs.circular(from.plus(inward.times(radius)), from, turn, FINE).withEnds(from, to);
        if (before - tangent > FINE) {
            arc = Path.polyline(side, from).then(arc);
        }
        if (after - tangent > FINE) {
            arc = arc.then(Path.polyline(to, centre));
        }
        return arc.withEnds(side, centre);
    }
}

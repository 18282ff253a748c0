package org.oaktag.skirt;

import org.oaktag.geometry.Arcs;
import org.oaktag.geometry.Curve;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;

/**
 * The side seam of a half, from the waist over the hip to the hem.
 *
 * @param path where it runs
 * @param hip how far along it the hip lies, mm
 */
record SideLine(Path path, double hip) {

    /** How much of what lies below the hip is bent where the seam is to run straight from there. */
    private static final double BENT_SHARE = 0.3;

    /** A side that turns by less, radians, is straight. */
    private static final double STRAIGHT = 1e-7;

    /** To this, radians, a lean is found. */
    private static final double FOUND = 1e-12;

    private static final double FINE = 1e-6;

    /** Returns how long it is below the hip, mm. */
    double below() {
        return path.length() - hip;
    }

    private Path upper() {
        return path.sub(0, hip);
    }

    private Vector atHip() {
        return path.directionAt(hip);
    }

    /** Returns how far its end lies outside the line that goes on straight from the hip, mm. */
    double out() {
        return path.end().minus(path.pointAt(hip)).dot(atHip().leftNormal());
    }

    /** Returns by how much it turns outwards from the hip to the hem, radians. */
    double lean() {
        return path.endDirection().angleTo(atHip());
    }

    /** Returns the end of a side that bends outwards by an angle, in a curve down to the hem or to straight on. */
    private double out(double lean, boolean curved) {
        double bent = below() * (curved ? 1 : BENT_SHARE);
        double straight = below() - bent;
        double arc = Math.abs(lean) < STRAIGHT ? bent * lean / 2 : bent * (1 - Math.cos(lean)) / lean;
        return arc + straight * Math.sin(lean);
    }

    /**
     * Returns the side drawn anew below the hip, as long as it was.
     *
     * @param lean by how much it turns outwards from there, radians, less than a right angle
     * @param curved whether it turns down to the hem, or runs on straight after a short bend
     */
    SideLine leaning(double lean, boolean curved) {
        Point start = path.pointAt(hip);
        Vector direction = atHip();
        double bent = below() * (curved ? 1 : BENT_SHARE);
        if (Math.abs(lean) < STRAIGHT) {
            return new SideLine(upper().then(Path.polyline(upper().end(), start.plus(direction.times(below())))), hip);
        }
        double radius = bent / Math.abs(lean);
        Vector inward = lean > 0 ? direction.leftNormal() : direction.rightNormal();
        Path arc = Arcs.circular(start.plus(inward.times(radius)), start, -lean, FINE);
        Path drawn = upper().then(arc.withEnds(upper().end(), arc.end()));
        if (!curved) {
            Vector on = direction.rotated(-lean);
            drawn = drawn.then(Path.polyline(arc.end(), arc.end().plus(on.times(below() - bent))));
        }
        return new SideLine(drawn, hip);
    }

    /** Returns the side whose end lies so far outside the line straight on from the hip, mm. */
    SideLine reaching(double out, boolean curved) {
        double least = -Math.PI / 2;
        double most = Math.PI / 2;
        while (most - least > FOUND) {
            double middle = (least + most) / 2;
            if (out(middle, curved) < out) {
                least = middle;
            } else {
                most = middle;
            }
        }
        return leaning((least + most) / 2, curved);
    }

    /** Returns the side longer at the hem, straight on, or shorter. */
    SideLine longer(double by) {
        if (by <= 0) {
            return by == 0 ? this : new SideLine(path.sub(0, path.length() + by), hip);
        }
        Curve last = path.curves().get(path.curves().size() - 1);
        Point end = path.end().plus(path.endDirection().times(by));
        if (last instanceof Line line) {
            Path straight = Path.polyline(line.start(), end);
            if (path.curves().size() == 1) {
                return new SideLine(straight, hip);
            }
            Path before = path.sub(0, path.length() - line.length());
            return new SideLine(before.withEnds(before.start(), line.start()).then(straight), hip);
        }
        return new SideLine(path.then(Path.polyline(path.end(), end)), hip);
    }
}

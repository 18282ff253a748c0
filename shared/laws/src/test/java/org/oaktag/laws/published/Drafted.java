package org.oaktag.laws.published;

import org.oaktag.blocks.ArmholeShape;
import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopEase;
import org.oaktag.blocks.TopEdges;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Percent;

/** A knit top as the books measure it, in millimetres. */
record Drafted(Garment block) {

    static Drafted top(BodyMeasurements body, EaseCategory category) {
        return new Drafted(
                KnitTop.draft(body, TopEase.of(category), Cloth.knit("sweatshirt knit", Percent.percent(25))));
    }

    double armhole() {
        return block.finished(TopNames.ARMHOLE_GIRTH).mm();
    }

    /** From the nape straight down to the level of the underarm point. */
    double scyeDepth() {
        return path(TopNames.BACK, EdgeNames.SIDE).start().y()
                - path(TopNames.BACK, TopEdges.NECKLINE).start().y();
    }

    /** From the nape straight down to the level of the waist, where the side bends in most. */
    double napeToWaist() {
        return path(TopNames.BACK, EdgeNames.SIDE).curves().get(0).end().y()
                - path(TopNames.BACK, TopEdges.NECKLINE).start().y();
    }

    double backNeckHalfWidth() {
        return path(TopNames.BACK, TopEdges.NECKLINE).bounds().width();
    }

    double backNeckRise() {
        return path(TopNames.BACK, TopEdges.NECKLINE).bounds().height();
    }

    double frontNeckHalfWidth() {
        return path(TopNames.FRONT, TopEdges.NECKLINE).bounds().width();
    }

    double frontNeckDepth() {
        return path(TopNames.FRONT, TopEdges.NECKLINE).bounds().height();
    }

    /** The back's share of the half neckline. */
    double backShareOfNeckline() {
        double back = path(TopNames.BACK, TopEdges.NECKLINE).length();
        return back / (back + path(TopNames.FRONT, TopEdges.NECKLINE).length());
    }

    double capHeight() {
        return path(TopNames.SLEEVE, TopEdges.CAP_FRONT).bounds().height();
    }

    /** How steeply the shoulder falls, in degrees. */
    double shoulderSlope() {
        Path shoulder = path(TopNames.BACK, TopEdges.SHOULDER);
        Vector along = shoulder.end().minus(shoulder.start());
        return Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x())));
    }

    double shoulder() {
        return path(TopNames.BACK, TopEdges.SHOULDER).length();
    }

    /** From centre back to the pitch point. */
    double halfBack() {
        return pitch(TopNames.BACK).x();
    }

    /** From centre front to the pitch point. */
    double halfFront() {
        return pitch(TopNames.FRONT).x();
    }

    /** Tells whether the chest leaves the back its breadth: the armhole has more than the least run of 28 mm. */
    boolean hasRoomForItsBack() {
        return path(TopNames.BACK, TopEdges.ARMHOLE).end().x() - halfBack() > 28.01;
    }

    /** Between both pitch points, under the arm. */
    double armholeWidth() {
        return 2 * path(TopNames.BACK, TopEdges.ARMHOLE).end().x() - halfBack() - halfFront();
    }

    /** The cap's height as a share of the drop from the shoulder point to the underarm point. */
    double capShare() {
        Path armhole = path(TopNames.BACK, TopEdges.ARMHOLE);
        return capHeight() / (armhole.end().y() - armhole.start().y());
    }

    double sleeveWidth() {
        return block.finished(TopNames.SLEEVE_WIDTH).mm();
    }

    /** How far the back armhole stays off the corner below its pitch point, under 45 degrees. */
    double backHollow() {
        Path armhole = path(TopNames.BACK, TopEdges.ARMHOLE);
        Point corner = Point.of(halfBack(), armhole.end().y());
        double above = armhole.curves().get(0).length();
        double below = armhole.length();
        while (below - above > 1e-9) {
            double middle = (above + below) / 2;
            Vector off = armhole.pointAt(middle).minus(corner);
            if (off.x() < -off.y()) {
                above = middle;
            } else {
                below = middle;
            }
        }
        return armhole.pointAt(above).distanceTo(corner);
    }

    /** From the underarm point up along the seam. */
    double frontNotch() {
        return notch(TopNames.FRONT, TopNames.FRONT_NOTCH);
    }

    /** From the underarm point up along the seam. */
    double backNotch() {
        return notch(TopNames.BACK, TopNames.BACK_NOTCH);
    }

    private double notch(Name piece, Name name) {
        double length = path(piece, TopEdges.ARMHOLE).length();
        return length
                - block.piece(piece).notch(TopEdges.ARMHOLE, name).orElseThrow().fromStart(length);
    }

    private Point pitch(Name piece) {
        return ArmholeShape.pitch(path(piece, TopEdges.ARMHOLE));
    }

    private Path path(Name piece, Name edge) {
        return block.piece(piece).path(edge);
    }
}

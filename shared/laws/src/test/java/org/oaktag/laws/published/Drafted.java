package org.oaktag.laws.published;

import org.oaktag.blocks.KnitTop;
import org.oaktag.blocks.TopNames;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.body.EaseCategory;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Garment;
import org.oaktag.garment.Name;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Percent;

/** A knit top as the books measure it, in millimetres. */
record Drafted(Garment block) {

    static Drafted top(BodyMeasurements body, EaseCategory category) {
        return new Drafted(KnitTop.draft(body, Ease.of(category), Cloth.knit("sweatshirt knit", Percent.percent(25))));
    }

    double armhole() {
        return block.finished(TopNames.ARMHOLE_GIRTH).mm();
    }

    /** From the nape straight down to the level of the underarm point. */
    double scyeDepth() {
        return path(TopNames.BACK, EdgeNames.SIDE).start().y()
                - path(TopNames.BACK, EdgeNames.NECKLINE).start().y();
    }

    double backNeckHalfWidth() {
        return path(TopNames.BACK, EdgeNames.NECKLINE).bounds().width();
    }

    double frontNeckDepth() {
        return path(TopNames.FRONT, EdgeNames.NECKLINE).bounds().height();
    }

    /** The back's share of the half neckline. */
    double backShareOfNeckline() {
        double back = path(TopNames.BACK, EdgeNames.NECKLINE).length();
        return back / (back + path(TopNames.FRONT, EdgeNames.NECKLINE).length());
    }

    double capHeight() {
        return path(TopNames.SLEEVE, EdgeNames.CAP_FRONT).bounds().height();
    }

    /** How steeply the shoulder falls, in degrees. */
    double shoulderSlope() {
        Path shoulder = path(TopNames.BACK, EdgeNames.SHOULDER);
        Vector along = shoulder.end().minus(shoulder.start());
        return Math.toDegrees(Math.atan2(Math.abs(along.y()), Math.abs(along.x())));
    }

    private Path path(Name piece, Name edge) {
        return block.piece(piece).path(edge);
    }
}

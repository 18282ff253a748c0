package org.oaktag.blocks;

import java.util.List;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.body.Ease;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The points of a half body, front and back in one frame: centre at x = 0, side neck point at y = 0. Immutable.
 *
 * <p>The neck's half-width is N/5 - 2 mm and the back neck rises 20 mm (common practice), the shoulders fall by 20
 * degrees (common practice: 18 to 22), the rest is measured.
 */
record BodyDraft(
        Point sideNeck,
        Vector alongShoulder,
        Point shoulder,
        Point underarm,
        Point waist,
        Point hem,
        double napeToUnderarm,
        double halfAcrossBack,
        double frontNeckDepth) {

    private static final double SLOPE = Math.toRadians(20);
    static final double BACK_RISE = 20;
    private static final double LEAST_DEPTH_SHARE = 0.35;
    private static final double MOST_DEPTH_SHARE = 3.5;
    private static final double MOST_WAIST_SUPPRESSION = 20;
    private static final double SIDE_HANDLE = 0.38;
    private static final double GRAIN_FROM = 0.35;
    private static final double GRAIN_TO = 0.85;
    private static final Vector DOWN = Vector.of(0, 1);

    /** Reckons the points, the armhole deepened by so many millimetres. */
    static BodyDraft of(BodyMeasurements body, Ease ease, double deepened) {
        double neck = mm(body, BodyMeasure.NECK_BASE_GIRTH);
        Point sideNeck = Point.of(neck / 5 - 2, 0);
        Vector along = Vector.polar(1, SLOPE);
        double chest = (mm(body, BodyMeasure.BUST_GIRTH) + ease.bust().mm()) / 4;
        double waist = (mm(body, BodyMeasure.WAIST_GIRTH) + ease.waist().mm()) / 4;
        double hip = (mm(body, BodyMeasure.HIP_GIRTH) + ease.hip().mm()) / 4;
        double scye = mm(body, BodyMeasure.NAPE_TO_ARMPIT) + ease.scyeDepth().mm() + deepened;
        double waistLevel = BACK_RISE + mm(body, BodyMeasure.BACK_WAIST_LENGTH);
        double hemLevel = waistLevel + mm(body, BodyMeasure.WAIST_TO_HIP);
        double depth = frontNeckDepth(sideNeck, along, neck + ease.neckline().mm());
        return new BodyDraft(
                sideNeck,
                along,
                sideNeck.plus(along.times(mm(body, BodyMeasure.SHOULDER_LENGTH))),
                Point.of(chest, BACK_RISE + scye),
                Point.of(Math.max(waist, Math.min(chest, hip) - MOST_WAIST_SUPPRESSION), waistLevel),
                Point.of(hip, hemLevel),
                scye,
                mm(body, BodyMeasure.ACROSS_BACK) / 2,
                depth);
    }

    /** Returns how far the pitch point had to move in to leave room for an armhole, in millimetres. */
    double pitchMovedIn(BodyHalf half) {
        return halfAcrossBack + half.besideAcrossBack() - pitch(half).x();
    }

    /** Tells whether it is the underarm point, and not the shoulder point, that leaves no room for the across back. */
    boolean isShortAtUnderarm() {
        return underarm.x() - ArmholeShape.INSIDE_UNDERARM < shoulder.x() - ArmholeShape.INSIDE_SHOULDER;
    }

    Path armhole(BodyHalf half) {
        return ArmholeShape.draw(half, shoulder, alongShoulder, pitch(half), underarm, DOWN);
    }

    /** Returns how deep the armhole is: from the shoulder point straight down to the underarm point. */
    double armholeDepth() {
        return underarm.y() - shoulder.y();
    }

    Piece draw(BodyHalf half, Cloth cloth) {
        Point centreNeck = Point.of(0, half == BodyHalf.FRONT ? frontNeckDepth : BACK_RISE);
        Point centreHem = Point.of(0, hem.y());
        Path neckline = half == BodyHalf.FRONT
                ? NeckShape.front(centreNeck, sideNeck, alongShoulder)
                : NeckShape.back(centreNeck, sideNeck, alongShoulder);
        double grain = sideNeck.x();
        return Piece.of(
                half.piece(),
                List.of(
                        new Edge(EdgeNames.NECKLINE, neckline),
                        Edge.straight(EdgeNames.SHOULDER, sideNeck, shoulder),
                        new Edge(EdgeNames.ARMHOLE, armhole(half)),
                        new Edge(EdgeNames.SIDE, Path.of(upright(underarm, waist), upright(waist, hem))),
                        new Edge(EdgeNames.HEM, HemShape.draw(hem, DOWN, centreHem)),
                        Edge.straight(EdgeNames.CENTRE, centreHem, centreNeck)),
                new Grainline(Point.of(grain, GRAIN_FROM * hem.y()), Point.of(grain, GRAIN_TO * hem.y())),
                Cut.onFold(EdgeNames.CENTRE),
                cloth);
    }

    private Point pitch(BodyHalf half) {
        double wanted = halfAcrossBack + half.besideAcrossBack();
        double most =
                Math.min(shoulder.x() - ArmholeShape.INSIDE_SHOULDER, underarm.x() - ArmholeShape.INSIDE_UNDERARM);
        return Point.of(Math.min(wanted, most), BACK_RISE + half.pitchShare() * napeToUnderarm);
    }

    private static Cubic upright(Point from, Point to) {
        Vector handle = DOWN.times(SIDE_HANDLE * (to.y() - from.y()));
        return new Cubic(from, from.plus(handle), to.plus(handle.negated()), to);
    }

    private static double frontNeckDepth(Point sideNeck, Vector along, double neckline) {
        double back = NeckShape.back(Point.of(0, BACK_RISE), sideNeck, along).length();
        double least = LEAST_DEPTH_SHARE * sideNeck.x();
        double most = MOST_DEPTH_SHARE * sideNeck.x();
        OptionalDouble depth = Unknown.solve(tried -> front(sideNeck, along, tried) + back - neckline / 2, least, most);
        return depth.orElseThrow(() -> PatternException.of(
                "front neckline",
                "a neckline on a neck base of this girth spans "
                        + Length.mm(2 * (front(sideNeck, along, least) + back)).text() + " to "
                        + Length.mm(2 * (front(sideNeck, along, most) + back)).text(),
                Length.mm(neckline).text(),
                "give the neckline another ease"));
    }

    private static double front(Point sideNeck, Vector along, double depth) {
        return NeckShape.front(Point.of(0, depth), sideNeck, along).length(1e-9);
    }

    private static double mm(BodyMeasurements body, BodyMeasure measure) {
        return body.measure(measure).mm();
    }
}

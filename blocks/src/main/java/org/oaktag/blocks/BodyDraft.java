package org.oaktag.blocks;

import java.util.List;
import java.util.OptionalDouble;
import org.oaktag.PatternException;
import org.oaktag.body.BodyMeasure;
import org.oaktag.body.BodyMeasurements;
import org.oaktag.draft.RootFinder;
import org.oaktag.garment.Cloth;
import org.oaktag.garment.Cut;
import org.oaktag.garment.Edge;
import org.oaktag.garment.EdgeFinish;
import org.oaktag.garment.EdgeNames;
import org.oaktag.garment.Grainline;
import org.oaktag.garment.Piece;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Vector;
import org.oaktag.measure.Length;

/**
 * The points of a half body, front and back in one frame: centre at x = 0, side neck point at y = 0. Immutable.
 *
 * <p>The neck's half-width is N/5 - 2 mm (common practice); the back neck rises a third of it (a rule of the Japanese
 * block of 2000, from memory), 18 to 25 mm; the shoulders fall by 20 degrees (common practice: 18 to 22).
 *
 * <p>Of half the ease at the bust the back takes 28 %, the front 24 % and the armhole 48 % (common practice: 25 to 30,
 * 15 to 25 and 45 to 60). Where the pitch points that follow leave no hollow below the measured shoulder, the shoulder
 * is drawn longer; where they leave more than one hollow can bridge, they move out. The front's lies 8 to 12 mm nearer
 * to the centre than the back's.
 *
 * @param depth how far the underarm point lies below the armpit, in millimetres
 */
record BodyDraft(
        Point sideNeck,
        Vector alongShoulder,
        Point shoulder,
        Point underarm,
        Point waist,
        Point hem,
        double backRise,
        double depth,
        double shoulderBeyond,
        double pitchBack,
        double pitchFront,
        double narrowerThanBody,
        double frontNeckDepth) {

    private static final double SLOPE = Math.toRadians(20);

    private static final double BACK_SHARE = 0.28;
    private static final double FRONT_SHARE = 0.24;
    private static final double FRONT_INSIDE = 8;
    private static final double MOST_FRONT_INSIDE = 12;

    /**
     * How far inside the shoulder point the back's pitch point may lie, as a share of the drop: the front's lies
     * deeper.
     */
    private static final double MOST_INSIDE = 0.18;

    private static final double LEAST_DEPTH_SHARE = 0.35;
    private static final double MOST_DEPTH_SHARE = 3.5;
    private static final double MOST_WAIST_SUPPRESSION = 20;

    /** The side goes in to the waist by no more than this share of the way down to it, some 6 degrees. */
    private static final double MOST_SUPPRESSION_SLOPE = 0.1;

    private static final double GRAIN_FROM = 0.35;
    private static final double GRAIN_TO = 0.85;
    private static final Vector DOWN = Vector.of(0, 1);

    /** Computes the points with the underarm point so far below the armpit, in millimetres. */
    static BodyDraft of(BodyMeasurements body, TopAmounts ease, double depth) {
        Length neck = body.measure(BodyMeasure.NECK_BASE_GIRTH);
        double neckline = neck.mm() + ease.neckline().mm();
        return of(
                body,
                ease,
                depth,
                frontNeckDepth(NeckShape.sideNeck(neck), Vector.polar(1, SLOPE), NeckShape.backRise(neck), neckline));
    }

    /** Computes the points of the same body and ease with the underarm point at another depth; the neckline stays. */
    BodyDraft at(BodyMeasurements body, TopAmounts ease, double otherDepth) {
        return of(body, ease, otherDepth, frontNeckDepth);
    }

    private static BodyDraft of(BodyMeasurements body, TopAmounts ease, double depth, double frontNeckDepth) {
        Point sideNeck = NeckShape.sideNeck(body.measure(BodyMeasure.NECK_BASE_GIRTH));
        double rise = NeckShape.backRise(body.measure(BodyMeasure.NECK_BASE_GIRTH));
        Vector along = Vector.polar(1, SLOPE);
        double chest = (mm(body, BodyMeasure.BUST_GIRTH) + ease.bust().mm()) / 4;
        double waist = (mm(body, BodyMeasure.WAIST_GIRTH) + ease.waist().mm()) / 4;
        double hip = (mm(body, BodyMeasure.HIP_GIRTH) + ease.hip().mm()) / 4;
        Point underarm = Point.of(chest, rise + mm(body, BodyMeasure.NAPE_TO_ARMPIT) + depth);
        double halfBack = mm(body, BodyMeasure.ACROSS_BACK) / 2;
        double wanted = halfBack + BACK_SHARE * ease.bust().mm() / 2;
        double most = chest - ArmholeShape.LEAST_RUN;
        double inFront = frontInside(ease.bust());
        double measured = mm(body, BodyMeasure.SHOULDER_LENGTH);
        ShoulderReach reach = new ShoulderReach(sideNeck, along, underarm);
        double drawn = Math.min(Math.max(measured, reach.least(Math.min(wanted, most))), reach.most(most - inFront));
        Point shoulder = sideNeck.plus(along.times(drawn));
        double drop = BodyHalf.BACK.pitchShare() * (underarm.y() - shoulder.y());
        double pitch = Math.min(Math.max(wanted, shoulder.x() - MOST_INSIDE * drop), most);
        double waistLevel = rise + mm(body, BodyMeasure.BACK_WAIST_LENGTH);
        double hemLevel = waistLevel + mm(body, BodyMeasure.WAIST_TO_HIP);
        double narrowest = Math.max(
                Math.min(chest, hip) - MOST_WAIST_SUPPRESSION,
                chest - MOST_SUPPRESSION_SLOPE * Math.max(waistLevel - underarm.y(), 0));
        return new BodyDraft(
                sideNeck,
                along,
                shoulder,
                underarm,
                Point.of(Math.max(waist, narrowest), waistLevel),
                Point.of(hip, hemLevel),
                rise,
                depth,
                drawn - measured,
                pitch,
                pitch - inFront,
                halfBack - pitch,
                frontNeckDepth);
    }

    /** How long a shoulder may be for its end to lie outside the pitch points so that the armhole is one hollow. */
    private record ShoulderReach(Point sideNeck, Vector along, Point underarm) {

        double least(double pitchBack) {
            return length(pitchBack, ArmholeShape.LEAST_INSIDE * BodyHalf.BACK.pitchShare());
        }

        double most(double pitchFront) {
            return length(pitchFront, ArmholeShape.mostInside(along) * BodyHalf.FRONT.pitchShare());
        }

        private double length(double pitch, double inside) {
            return (pitch + inside * underarm.y() - sideNeck.x()) / (along.x() + inside * along.y());
        }
    }

    Path armhole(BodyHalf half) {
        return ArmholeShape.draw(shoulder, alongShoulder, pitch(half), underarm, side().startDirection());
    }

    /**
     * Returns the band in which the cap of its sleeve belongs: the farther the shoulder is drawn past the body's, the
     * lower.
     */
    CapBand capBand() {
        return CapBand.dropped(shoulderBeyond);
    }

    /** Returns how deep the armhole is: from the shoulder point straight down to the underarm point. */
    double armholeDepth() {
        return underarm.y() - shoulder.y();
    }

    Piece draw(BodyHalf half, Cloth cloth) {
        Point centreNeck = Point.of(0, half == BodyHalf.FRONT ? frontNeckDepth : backRise);
        Point centreHem = Point.of(0, hem.y());
        Path neckline = half == BodyHalf.FRONT
                ? NeckShape.front(centreNeck, sideNeck, alongShoulder)
                : NeckShape.back(centreNeck, sideNeck, alongShoulder);
        double grain = sideNeck.x();
        return Piece.of(
                        half.piece(),
                        List.of(
                                new Edge(TopEdges.NECKLINE, neckline),
                                Edge.straight(TopEdges.SHOULDER, sideNeck, shoulder),
                                new Edge(TopEdges.ARMHOLE, armhole(half)),
                                new Edge(EdgeNames.SIDE, side()),
                                new Edge(EdgeNames.HEM, HemShape.draw(hem, DOWN, centreHem), EdgeFinish.TURNED_BACK),
                                Edge.straight(EdgeNames.CENTRE, centreHem, centreNeck)),
                        new Grainline(Point.of(grain, GRAIN_FROM * hem.y()), Point.of(grain, GRAIN_TO * hem.y())),
                        Cut.onFold(EdgeNames.CENTRE),
                        cloth)
                .withAspect(half.aspect());
    }

    private Path side() {
        return SideSeam.shaped(underarm, waist, hem);
    }

    private Point pitch(BodyHalf half) {
        return Point.of(
                half == BodyHalf.FRONT ? pitchFront : pitchBack, shoulder.y() + half.pitchShare() * armholeDepth());
    }

    /** How much nearer to the centre the front's pitch point lies: what its smaller share of the ease makes of 8 mm. */
    private static double frontInside(Length ease) {
        double inside = FRONT_INSIDE + (BACK_SHARE - FRONT_SHARE) * ease.mm() / 2;
        return Math.min(Math.max(inside, FRONT_INSIDE), MOST_FRONT_INSIDE);
    }

    private static double frontNeckDepth(Point sideNeck, Vector along, double rise, double neckline) {
        double back = NeckShape.back(Point.of(0, rise), sideNeck, along).length();
        double least = LEAST_DEPTH_SHARE * sideNeck.x();
        double most = MOST_DEPTH_SHARE * sideNeck.x();
        OptionalDouble depth =
                RootFinder.solve(tried -> front(sideNeck, along, tried) + back - neckline / 2, least, most);
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

package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The side panel of a three-panel hood, drawn for a head and a neckline: the face straight down x = 0, the crown from
 * there level over the head, round its back and down to the nape, and the neck edge from the nape back to the front.
 *
 * <p>Crown and neck edge are square to each other at the nape, crown and face at the top, neck edge and face at the
 * front; so the outlines run on smoothly where the panels meet. One number is solved: how far the nape lies behind the
 * face, so that the neck edge has the length asked for, to within 1e-8 mm. The shares by which the curves are drawn are
 * our own, found by drawing hoods for many heads and necklines and looking at them; they have no published source.
 * Immutable.
 *
 * @param face from the front end of the neck edge straight up to the crown
 * @param crown from the face over the head to the nape
 * @param neck from the nape to the front
 * @param shoulder the distance from the nape along the neck edge to the shoulder seam, in millimetres
 * @param height how high the crown lies above the shoulder, in millimetres
 * @param depth how far the panel reaches back from the face, in millimetres
 * @param widest how far below the top of the crown it reaches that far, in millimetres
 */
public record HoodPanel(Path face, Path crown, Path neck, double shoulder, double height, double depth, double widest) {

    /** The tape from side neck point over the crown to side neck point, as a share of the head girth: common practice. */
    private static final double TAPE_SHARE = 1.15;

    /** What half of that tape is given in ease: common practice is 10 to 100 mm. */
    private static final double HEIGHT_EASE = 40;

    private static final double DEPTH_SHARE = 0.40;
    private static final double DEPTH_EASE = 25;
    private static final double LEAST_HEIGHT = 120;
    private static final double LEAST_HEIGHT_SHARE = 0.4;
    private static final double MOST_HEIGHT_SHARE = 0.9;

    /** The neck edge is at least this many times as long as it rises, so that it stays a gentle curve. */
    private static final double GENTLE = 3.2;

    private static final double LEAST_NECK = 60;
    private static final double NECK_HANDLE = 0.42;
    private static final double WIDEST_SHARE = 0.44;
    private static final double CROWN_TOP_HANDLE = 0.64;
    private static final double CROWN_BACK_HANDLE = 0.58;
    private static final double NAPE_HANDLE = 0.46;
    private static final double LEAST_BACK_HANDLE = 0.30;
    private static final double MOST_BACK_HANDLE = 0.50;

    /** A panel narrows towards the nape by at most this share of the fall from its widest place: more is a pinch. */
    private static final double MOST_NARROWING = 0.42;

    /**
     * Draws the panel.
     *
     * @param shape what the hood shall look like
     * @param headGirth the head girth
     * @param halfNeckline front and back neckline of one side together
     * @param backNeckline the back neckline of one side
     * @param lap by how much the two fronts of the hood lap over each other at centre front
     * @throws PatternException if no well-formed panel has that neck edge, or a height or depth that was given is out of
     *     its range; the message says what would work
     */
    public static HoodPanel draw(
            HoodShape shape, Length headGirth, Length halfNeckline, Length backNeckline, Length lap) {
        double strip = shape.stripWidth().mm() / 2;
        double rise = shape.rise().mm();
        double length = neckLength(shape, halfNeckline, backNeckline, lap);
        double run = Unknown.solve(x -> neck(x, rise).length(1e-9) - length, rise / 2, length)
                .orElseThrow(() -> new IllegalStateException("no neck edge " + length + " mm long rises " + rise));
        Path neckAtZero = neck(run, rise);
        double shoulder = backNeckline.mm() - strip;
        double height = height(shape, headGirth);
        double faceLength = height - neckAtZero.pointAt(shoulder).y();
        double widest = WIDEST_SHARE * faceLength;
        double nape = faceLength - rise;
        double depth = depth(shape, headGirth, run, run + MOST_NARROWING * (nape - widest));
        return new HoodPanel(
                Path.of(new Line(Point.of(0, faceLength), Point.ORIGIN)),
                crown(depth, widest, run, nape),
                neckAtZero.transformed(Transform.translation(0, faceLength)),
                shoulder,
                height,
                depth,
                widest);
    }

    private static double neckLength(HoodShape shape, Length halfNeckline, Length backNeckline, Length lap) {
        double strip = shape.stripWidth().mm() / 2;
        if (!(strip < backNeckline.mm())) {
            throw PatternException.of(
                    "strip of the hood",
                    "must end before the shoulder seam, so be narrower than the back neckline, "
                            + backNeckline.times(2).text(),
                    shape.stripWidth().text(),
                    "take a narrower strip");
        }
        double length = halfNeckline.mm() + lap.mm() / 2 - strip;
        double least = Math.max(LEAST_NECK, GENTLE * shape.rise().mm());
        if (!(length >= least)) {
            throw PatternException.of(
                    "neck edge of the hood",
                    "half the neckline and half the lap, less half the strip, must be at least "
                            + Length.mm(least).text() + " to rise by "
                            + shape.rise().text(),
                    Length.mm(length).text(),
                    remedy(shape, length, Length.mm(least - length)));
        }
        return length;
    }

    private static String remedy(HoodShape shape, double length, Length lacking) {
        List<String> ways = new ArrayList<>();
        ways.add("widen the neckline by " + lacking.times(2).roundedUp().text() + " in all");
        if (shape.stripWidth().minus(lacking.times(2)).compareTo(HoodShape.LEAST_STRIP) >= 0) {
            ways.add("take a strip narrower by " + lacking.times(2).roundedUp().text());
        }
        if (length >= LEAST_NECK) {
            ways.add("take a rise of at most "
                    + Length.mm(length / GENTLE).roundedDown().text());
        }
        return String.join(", or ", ways);
    }

    private static double height(HoodShape shape, Length headGirth) {
        double strip = shape.stripWidth().mm() / 2;
        double height = shape.height().map(Length::mm).orElse(TAPE_SHARE * headGirth.mm() / 2 + HEIGHT_EASE - strip);
        check(
                "height of the hood",
                "the panel and half the strip must together be 0.4 to 0.9 of the head girth, " + headGirth.text(),
                height,
                Math.max(LEAST_HEIGHT, LEAST_HEIGHT_SHARE * headGirth.mm() - strip),
                MOST_HEIGHT_SHARE * headGirth.mm() - strip);
        return height;
    }

    private static double depth(HoodShape shape, Length headGirth, double least, double most) {
        Optional<Length> given = shape.depth();
        if (given.isEmpty()) {
            double share = DEPTH_SHARE * headGirth.mm()
                    + DEPTH_EASE
                    - shape.stripWidth().mm() / 2;
            return Math.min(Math.max(share, least), most);
        }
        check(
                "depth of the hood",
                "the panel must reach at least as far back as its neck edge, and not so far that it is pinched there",
                given.get().mm(),
                least,
                most);
        return given.get().mm();
    }

    private static void check(String thing, String rule, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw PatternException.of(
                    thing,
                    rule,
                    Length.mm(value).text(),
                    "take " + Length.mm(least).roundedUp().text() + " to "
                            + Length.mm(most).roundedDown().text());
        }
    }

    /** The neck edge, level at both its ends, with its front end in the origin. */
    private static Path neck(double run, double rise) {
        return Path.of(new Cubic(
                Point.of(run, -rise),
                Point.of(run * (1 - NECK_HANDLE), -rise),
                Point.of(run * NECK_HANDLE, 0),
                Point.ORIGIN));
    }

    /**
     * The crown, in two curves that meet upright at the widest place. The lower handle there is such that both have one
     * curvature (for a handle h and a far control point that lies c aside it is 2 c / (3 h²)), as far as the fall to the
     * nape allows.
     */
    private static Path crown(double depth, double widest, double run, double nape) {
        double fall = nape - widest;
        double above = CROWN_BACK_HANDLE * widest;
        double sameCurvature = above * Math.sqrt((depth - run) / ((1 - CROWN_TOP_HANDLE) * depth));
        double below = Math.min(Math.max(sameCurvature, LEAST_BACK_HANDLE * fall), MOST_BACK_HANDLE * fall);
        Point back = Point.of(depth, widest);
        return Path.of(
                new Cubic(Point.ORIGIN, Point.of(CROWN_TOP_HANDLE * depth, 0), Point.of(depth, widest - above), back),
                new Cubic(
                        back,
                        Point.of(depth, widest + below),
                        Point.of(run, nape - NAPE_HANDLE * fall),
                        Point.of(run, nape)));
    }
}

package org.oaktag.blocks;

import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;
import org.oaktag.draft.RootFinder;
import org.oaktag.geometry.Cubic;
import org.oaktag.geometry.Line;
import org.oaktag.geometry.Path;
import org.oaktag.geometry.Point;
import org.oaktag.geometry.Transform;
import org.oaktag.measure.Length;

/**
 * The side panel of a hood, drawn for a head and a neckline: the face straight down x = 0, the crown from
 * there level over the head, round its back and down to the nape, and the neck edge from the nape back to the front.
 *
 * <pre>{@code
 * HoodPanel panel = HoodPanel.draw(HoodShape.twoPiece(), mm(560), mm(200), mm(75), mm(0));
 * }</pre>
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
 * @param height how high the top of the crown lies above the shoulder, in millimetres
 * @param depth how far the panel reaches back from the face, in millimetres
 * @param widest how far below the top of the crown it reaches that far, in millimetres
 * @param rules how neck edge, height and depth were computed, a sentence each
 */
public record HoodPanel(
        Path face,
        Path crown,
        Path neck,
        double shoulder,
        double height,
        double depth,
        double widest,
        List<String> rules) {

    private static final double NECK_HANDLE = 0.42;
    private static final double WIDEST_SHARE = 0.44;
    private static final double CROWN_TOP_HANDLE = 0.72;
    private static final double CROWN_BACK_HANDLE = 0.60;
    private static final double NAPE_HANDLE = 0.46;
    private static final double LEAST_BACK_HANDLE = 0.30;
    private static final double MOST_BACK_HANDLE = 0.50;

    /** A panel narrows towards the nape by at most this share of the fall from its widest place: more is a pinch. */
    private static final double MOST_NARROWING = 0.42;

    /** Copies the list. */
    public HoodPanel {
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(crown, "crown");
        Objects.requireNonNull(neck, "neck");
        rules = List.copyOf(rules);
    }

    /**
     * Draws the panel.
     *
     * @param shape what the hood shall look like
     * @param headGirth the head girth
     * @param halfNeckline front and back neckline of one side together
     * @param backNeckline the back neckline of one side
     * @param lap by how much the two fronts of the hood lap over each other at centre front
     * @throws PatternException if no well-formed panel has that neck edge, or a height or depth that was given is out
     *     of its range; the message says what would work
     */
    public static HoodPanel draw(
            HoodShape shape, Length headGirth, Length halfNeckline, Length backNeckline, Length lap) {
        double strip = shape.stripWidth().mm() / 2;
        double rise = shape.rise().mm();
        HoodSize.Sized edge = HoodSize.neckEdge(shape, halfNeckline, backNeckline, lap);
        double length = edge.mm();
        double run = RootFinder.solve(x -> neck(x, rise).length(1e-9) - length, rise / 2, length)
                .orElseThrow(() -> new IllegalStateException("no neck edge " + length + " mm long rises " + rise));
        Path neckAtZero = neck(run, rise);
        double shoulder = backNeckline.mm() - strip;
        HoodSize.Sized height = HoodSize.height(shape, headGirth);
        double faceLength = height.mm() - neckAtZero.pointAt(shoulder).y();
        double widest = WIDEST_SHARE * faceLength;
        double nape = faceLength - rise;
        HoodSize.Sized depth = HoodSize.depth(shape, headGirth, run, run + MOST_NARROWING * (nape - widest));
        return new HoodPanel(
                Path.of(new Line(Point.of(0, faceLength), Point.ORIGIN)),
                crown(depth.mm(), widest, run, nape),
                neckAtZero.transformed(Transform.translation(0, faceLength)),
                shoulder,
                height.mm(),
                depth.mm(),
                widest,
                List.of(edge.rule(), height.rule(), depth.rule()));
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
     * curvature (for a handle h and a far control point that lies c aside it is 2 c / (3 h²)), as far as the fall to
     * the nape allows.
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

package org.oaktag.blocks;

import java.util.ArrayList;
import java.util.List;
import org.oaktag.PatternException;
import org.oaktag.measure.Length;

/** Computes how large the side panel of a hood must be, and refuses what no well-formed panel has. */
final class HoodSize {

    /**
     * The tape from side neck point over the crown to side neck point, as a share of the head girth: common practice.
     */
    private static final double TAPE_SHARE = 1.15;

    /** What half of that tape is given in ease: common practice is 10 to 100 mm. */
    private static final Length HEIGHT_EASE = Length.mm(40);

    /**
     * Without a strip the panels meet in a ridge, which falls away sooner from the middle of the head; our own, by
     * looking.
     */
    private static final Length RIDGE_EASE = Length.mm(10);

    private static final Length LEAST_HEIGHT = Length.mm(120);
    private static final double LEAST_HEIGHT_SHARE = 0.4;
    private static final double MOST_HEIGHT_SHARE = 0.9;

    /** How far the panel reaches back, half the strip counted, as a share of the head girth; our own, by looking. */
    private static final double DEPTH_SHARE = 0.40;

    private static final Length DEPTH_EASE = Length.mm(25);

    /**
     * Where the neckline is so wide that the depth follows from it, the panel still swings in to the nape by so much.
     */
    private static final Length SWING = Length.mm(10);

    /** The neck edge is at least this many times as long as it rises, so that it stays a gentle curve. */
    private static final double GENTLE = 3.2;

    private static final Length LEAST_NECK = Length.mm(60);

    private HoodSize() {}

    /**
     * A size and how it was computed.
     *
     * @param mm the size in millimetres
     * @param rule the sentence
     */
    record Sized(double mm, String rule) {}

    static Sized neckEdge(HoodShape shape, Length halfNeckline, Length backNeckline, Length lap) {
        Length halfStrip = shape.stripWidth().times(0.5);
        if (halfStrip.compareTo(backNeckline) > 0) {
            throw PatternException.of(
                    "strip of the hood",
                    "must end at the shoulder seam, so be at most "
                            + backNeckline.times(2).roundedDown().text() + " wide, as the back neckline",
                    shape.stripWidth().text(),
                    "take a narrower strip");
        }
        Length length = halfNeckline.plus(lap.times(0.5)).minus(halfStrip);
        Length least = Length.mm(Math.max(LEAST_NECK.mm(), GENTLE * shape.rise().mm()));
        if (length.compareTo(least) < 0) {
            throw PatternException.of(
                    "neck edge of the hood",
                    "half the neckline and half the lap, less half the strip, must be at least "
                            + least.roundedUp().text() + " to rise by "
                            + shape.rise().text(),
                    length.text(),
                    remedy(shape, length, least.minus(length).times(2)));
        }
        return new Sized(
                length.mm(),
                "neck edge of a side panel = half the neckline " + halfNeckline.text() + " + half the lap "
                        + lap.times(0.5).text() + lessStrip(shape) + " = " + length.text());
    }

    private static String lessStrip(HoodShape shape) {
        return shape.hasStrip()
                ? " - half the strip " + shape.stripWidth().times(0.5).text()
                : "";
    }

    private static String remedy(HoodShape shape, Length length, Length lacking) {
        List<String> ways = new ArrayList<>();
        ways.add("widen the neckline by " + lacking.roundedUp().text() + " in all");
        if (shape.stripWidth().minus(lacking).compareTo(HoodShape.LEAST_STRIP) >= 0) {
            ways.add("take a strip narrower by " + lacking.roundedUp().text());
        }
        if (length.compareTo(LEAST_NECK) >= 0) {
            ways.add("take a rise of at most "
                    + length.times(1 / GENTLE).roundedDown().text());
        }
        return String.join(", or ", ways);
    }

    static Sized height(HoodShape shape, Length head) {
        Length halfStrip = shape.stripWidth().times(0.5);
        Length ease = shape.hasStrip() ? HEIGHT_EASE : HEIGHT_EASE.plus(RIDGE_EASE);
        Length fromHead = head.times(TAPE_SHARE / 2).plus(ease).minus(halfStrip);
        Length height = shape.height().orElse(fromHead);
        check(
                "height of the hood",
                "the panel and half the strip must together be 0.4 to 0.9 of the head girth, " + head.text(),
                height,
                Length.mm(Math.max(LEAST_HEIGHT.mm(), LEAST_HEIGHT_SHARE * head.mm() - halfStrip.mm())),
                head.times(MOST_HEIGHT_SHARE).minus(halfStrip));
        return new Sized(
                height.mm(),
                shape.height().isPresent()
                        ? "height of the top of the crown above the shoulder = " + height.text() + ", as given"
                        : "height of the top of the crown above the shoulder = half the tape from side neck point over the crown"
                                + " to the other, " + head.times(TAPE_SHARE / 2).text() + " (" + TAPE_SHARE
                                + " of the head girth " + head.text() + " is the whole, common practice) + ease "
                                + ease.text() + lessStrip(shape) + " = " + height.text());
    }

    /**
     * Computes the depth.
     *
     * @param run how far the neck edge runs back, which is the least
     * @param most the most that does not pinch the panel at the nape
     */
    static Sized depth(HoodShape shape, Length head, double run, double most) {
        String depth = "depth of a side panel from the face back = ";
        if (shape.depth().isPresent()) {
            Length given = shape.depth().get();
            check(
                    "depth of the hood",
                    "the panel must reach at least as far back as its neck edge, and not so far that it is pinched there",
                    given,
                    Length.mm(run),
                    Length.mm(most));
            return new Sized(given.mm(), depth + given.text() + ", as given");
        }
        Length halfStrip = shape.stripWidth().times(0.5);
        Length share = head.times(DEPTH_SHARE).plus(DEPTH_EASE).minus(halfStrip);
        Length least = Length.mm(Math.min(run + SWING.mm(), most));
        if (share.compareTo(least) < 0) {
            return new Sized(
                    least.mm(),
                    depth + "run of the neck edge " + Length.mm(run).text() + " + "
                            + least.minus(Length.mm(run)).text() + " = " + least.text()
                            + ": the head alone would ask for " + share.text());
        }
        if (share.mm() > most) {
            return new Sized(
                    most,
                    depth + Length.mm(most).text() + ", the most that does not pinch it at the nape: the head alone"
                            + " would ask for " + share.text());
        }
        return new Sized(
                share.mm(),
                depth + DEPTH_SHARE + " of the head girth " + head.text() + " + ease " + DEPTH_EASE.text()
                        + lessStrip(shape) + " = " + share.text());
    }

    private static void check(String thing, String rule, Length value, Length least, Length most) {
        if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
            throw PatternException.of(
                    thing,
                    rule,
                    value.text(),
                    "take " + least.roundedUp().text() + " to "
                            + most.roundedDown().text());
        }
    }
}

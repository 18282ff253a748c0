package org.oaktag.skirt;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.oaktag.draft.DartedEdge.Wedge;
import org.oaktag.garment.Name;
import org.oaktag.measure.Length;

/**
 * How much of the difference of hip and waist the side seam takes in, and how much the darts of the front and of the
 * back, their number, widths and depths.
 *
 * <p>Published drafts have the side take between a third and seven tenths of it; here it is half. The back, below which
 * the seat stands out, has five eighths of what the darts take. One dart is at most 35 mm wide (Li Lisha and Guo Sida),
 * 30 mm here before another is added; a dart under 8 mm is not worth sewing. Those of the front are 8 to 10 cm deep and
 * those of the back 11 to 14 (common practice) on a body whose hip lies 20 to 22 cm below the waist, in proportion on
 * another; a narrow one is shallower, and that nearer the side is, too.
 *
 * @param perQuarter the mean difference of hip and waist of a quarter, mm; negative where the waist is the greater
 * @param front the widths of the darts of the front half, mm, all alike
 * @param back those of the back half
 */
record DartPlan(double perQuarter, List<Double> front, List<Double> back) {

    private static final double SIDE_SHARE = 0.5;
    private static final double FRONT_SHARE = 3.0 / 8;
    private static final double LEAST_WIDTH = 8;
    private static final double USUAL_WIDTH = 30;

    /** The greatest that a side seam is taken in, mm a quarter, before it bends like no body. */
    private static final double MOST_AT_SIDE = 45;

    /** A dart as wide as this, mm, is as deep as its place allows. */
    private static final double FULL_WIDTH = 20;

    private static final double LEAST_DEPTH_SHARE = 0.6;

    /** Of the depth of the dart nearest the centre, that of each further one is less by this share. */
    private static final double SHALLOWER = 0.1;

    private static final double[] FRONT_DEPTH = {0.46, 80, 105};
    private static final double[] BACK_DEPTH = {0.63, 110, 145};

    static DartPlan of(double perQuarter) {
        double darts = 2 * Math.max(perQuarter * (1 - SIDE_SHARE), perQuarter - MOST_AT_SIDE);
        if (darts * FRONT_SHARE >= LEAST_WIDTH) {
            return new DartPlan(perQuarter, parted(darts * FRONT_SHARE), parted(darts * (1 - FRONT_SHARE)));
        }
        return new DartPlan(perQuarter, List.of(), darts >= LEAST_WIDTH ? parted(darts) : List.of());
    }

    /** Returns the plan without darts, as for a cloth that stretches. */
    static DartPlan without(double perQuarter) {
        return new DartPlan(perQuarter, List.of(), List.of());
    }

    private static List<Double> parted(double width) {
        int count = (int) Math.ceil(width / USUAL_WIDTH);
        return Collections.nCopies(count, width / count);
    }

    /** Returns what the side takes in when the darts are as planned, mm a quarter. */
    double side() {
        return perQuarter - (sum(front) + sum(back)) / 2;
    }

    /** Returns the most that a side takes in, mm a quarter. */
    static double mostAtSide() {
        return MOST_AT_SIDE;
    }

    private static double sum(List<Double> widths) {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * Returns the darts of a half on its sewn waist.
     *
     * @param half the front or the back
     * @param sewn how long its waist is when the darts are sewn, mm
     * @param hipDepth how far the hip lies below the waist, mm
     */
    List<Wedge> wedges(Name half, double sewn, double hipDepth) {
        boolean isFront = half.equals(SkirtNames.FRONT);
        List<Double> widths = isFront ? front : back;
        double[] depth = isFront ? FRONT_DEPTH : BACK_DEPTH;
        double open = sewn + sum(widths);
        List<Wedge> wedges = new ArrayList<>();
        double before = 0;
        for (int i = 0; i < widths.size(); i++) {
            double width = widths.get(i);
            double middle = open * (i + 1) / (widths.size() + 1);
            double usual = Math.min(Math.max(depth[0] * hipDepth, depth[1]), depth[2]);
            double share = LEAST_DEPTH_SHARE + (1 - LEAST_DEPTH_SHARE) * Math.min(1, width / FULL_WIDTH);
            double deep = Math.min(usual * share * (1 - SHALLOWER * i), 0.8 * hipDepth);
            wedges.add(new Wedge(
                    SkirtNames.dart(half, i + 1), middle - before - width / 2, Length.mm(width), Length.mm(deep)));
            before += width;
        }
        return wedges;
    }
}

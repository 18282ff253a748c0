package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.oaktag.PatternException;

/**
 * One offset of an outline: made ready, sought with its hooks drawn in and, if need be, as it is drawn, and returned in
 * the sense and with the edges of the outline.
 */
final class OutlineTask {
    private final List<OutlineLoops> ways;
    private final double greatest;
    private final boolean inward;
    private final boolean reversed;
    private final int count;

    /** A crossing that is a flaw only, and is to blame where no offset is found. */
    private final Optional<Crossing> flaw;

    /** The way that leads to loops that keep their distance, or else the last. */
    private final OutlineLoops way;

    /** The loops that are left at the distances asked for. */
    private final Optional<List<List<RawCurve>>> found;

    private OutlineTask(
            List<OutlineLoops> ways,
            double greatest,
            boolean inward,
            boolean reversed,
            int count,
            Optional<Crossing> flaw) {
        this.ways = List.copyOf(ways);
        this.greatest = greatest;
        this.inward = inward;
        this.reversed = reversed;
        this.count = count;
        this.flaw = flaw;
        OutlineLoops last = ways.get(0);
        Optional<List<List<RawCurve>>> loops = last.found();
        for (int i = 1; i < ways.size() && !works(loops); i++) {
            last = ways.get(i);
            loops = last.found();
        }
        this.way = last;
        this.found = loops;
    }

    static OutlineTask of(
            List<Path> edges, double[] distances, CornerStyle within, List<CornerStyle> corners, double wanted) {
        Plane.positive("tolerance", wanted);
        Outline outline = closed(edges);
        boolean inward = isInward(edges, distances);
        double tolerance = OffsetCurve.tolerance(edges, distances, wanted);
        if (corners.size() != edges.size()) {
            throw new IllegalArgumentException(
                    "there must be one corner for each of the " + edges.size() + " edges, got " + corners.size());
        }
        Optional<Crossing> flaw = OutlineFlaw.of(outline, tolerance);
        boolean reverse = outline.isClockwise() == inward;
        List<Path> run = reverse ? OffsetSense.reversed(edges) : edges;
        List<CornerStyle> styles = reverse ? OffsetSense.reversedCorners(corners) : corners;
        OffsetSource drawn = OffsetSource.of(run, true, tolerance);
        OffsetSource unhooked = OffsetSource.unhooked(run, true, tolerance);
        List<OutlineLoops> ways = new ArrayList<>();
        if (!unhooked.edges().equals(drawn.edges())) {
            // What drawing in hooks moves the outline by is taken from what the offset may be off.
            double rest = (1 - Dust.UNHOOKED) * tolerance;
            ways.add(new OutlineLoops(
                    unhooked, left(unhooked, distances, reverse), joins(unhooked, within, styles), rest, inward));
        }
        ways.add(new OutlineLoops(
                drawn, left(drawn, distances, reverse), joins(drawn, within, styles), tolerance, inward));
        double greatest = Arrays.stream(distances).map(Math::abs).max().orElseThrow();
        return new OutlineTask(ways, greatest, inward, reverse, edges.size(), flaw);
    }

    private static OffsetCorners joins(OffsetSource source, CornerStyle within, List<CornerStyle> styles) {
        return new OffsetCorners(
                within, source.index().stream().map(styles::get).toList(), false);
    }

    private static double[] left(OffsetSource source, double[] distances, boolean reverse) {
        double[] left = new double[source.edges().size()];
        for (int i = 0; i < left.length; i++) {
            int edge = source.index().get(i);
            left[i] = Math.abs(distances[reverse ? distances.length - 1 - edge : edge]);
        }
        return left;
    }

    /** Tells whether there is a loop that keeps its distance. */
    private static boolean works(Optional<List<List<RawCurve>>> loops) {
        return loops.filter(found -> !found.isEmpty()).isPresent();
    }

    private static Outline closed(List<Path> edges) {
        if (edges.isEmpty()) {
            throw new IllegalArgumentException("an outline needs at least one edge, got none");
        }
        Outline outline = Outline.of(edges.size() == 1 ? edges.get(0) : OffsetSense.joined(edges));
        if (outline.signedArea() == 0) {
            throw new IllegalArgumentException("an outline must enclose an area to have an outside, got area 0");
        }
        return outline;
    }

    private static boolean isInward(List<Path> edges, double[] distances) {
        if (distances.length != edges.size()) {
            throw new IllegalArgumentException(
                    "there must be one distance for each of the " + edges.size() + " edges, got " + distances.length);
        }
        boolean inward = false;
        boolean outward = false;
        for (double distance : distances) {
            Plane.finite("offset distance", distance);
            inward |= distance < 0;
            outward |= distance > 0;
        }
        if (inward && outward) {
            throw new IllegalArgumentException("distances must all be at least 0 or all be at most 0, got both signs");
        }
        return inward;
    }

    /** Returns the one loop of an offset that works. */
    List<RawCurve> only() {
        List<List<RawCurve>> loops = kept();
        if (loops.size() != 1) {
            throw refused(loops.size());
        }
        return loops.get(0);
    }

    /**
     * Returns every loop, the greatest first: of an inward offset its parts, of an outward one its outermost loop and
     * then its holes.
     */
    List<List<RawCurve>> all() {
        List<List<RawCurve>> loops = new ArrayList<>(kept());
        if (!inward && loops.isEmpty()) {
            throw refused(0);
        }
        if (!inward) {
            loops.addAll(way.holes());
        }
        loops.sort(Comparator.comparingDouble(loop -> -Math.abs(Area.signed(OutlineLoops.path(loop)))));
        return loops;
    }

    /** Returns the loops that are left: one if the offset works. */
    private List<List<RawCurve>> kept() {
        return found.orElseThrow(
                () -> refused("must keep its distance all along", ", at which no run was found that does"));
    }

    private PatternException refused(int loops) {
        String rule = inward
                ? loops == 0 ? "must leave some of the outline" : "must leave the outline in one piece"
                : "must go round the outline in one run";
        return refused(rule, ", which leaves " + loops + " pieces");
    }

    private PatternException refused(String rule, String why) {
        return flaw.map(OutlineFlaw::refused)
                .orElseGet(() -> PatternException.of(
                        inward ? "inward offset" : "outward offset",
                        rule,
                        GreatestDistance.told(greatest) + why,
                        GreatestDistance.remedy(greatest, this::leavesOne)));
    }

    /** Tells whether one loop is left with all distances in one share, so that the greatest is that one. */
    private boolean leavesOne(double less) {
        return ways.stream()
                .map(each -> each.inShare(less / greatest).found())
                .filter(OutlineTask::works)
                .findFirst()
                .filter(loops -> loops.orElseThrow().size() == 1)
                .isPresent();
    }

    /** Returns the edges, by their index in the outline, beside which none of the loops runs. */
    List<Integer> lost(List<List<RawCurve>> loops) {
        List<Integer> lost = new ArrayList<>();
        for (int edge = 0; edge < count; edge++) {
            int i = way.source().index().indexOf(reversed ? count - 1 - edge : edge);
            if (i < 0 || way.isLost(i, loops)) {
                lost.add(edge);
            }
        }
        return lost;
    }

    /** Returns a loop in the sense and with the edges of the outline. */
    OutlineOffset offset(List<RawCurve> loop) {
        List<OffsetPart> parts = OutlineParts.of(loop, way.source().index());
        List<OffsetPart> inSense = reversed ? OffsetSense.reversedParts(parts, count) : parts;
        return new OutlineOffset(
                inSense,
                Outline.of(OffsetSense.joined(
                        inSense.stream().map(OffsetPart::path).toList())));
    }
}

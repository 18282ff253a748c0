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

    /** What is found at the distances asked for. */
    private final Found found;

    /**
     * What is found the first way that leads to loops that keep their distance, or else the last.
     *
     * @param loops those that are left; nothing if there are some, but they come too near
     */
    private record Found(OutlineLoops way, Optional<List<List<RawCurve>>> loops) {
        /**
         * Seeks each way, and if that leads to loops that come too near, each more finely: a stretch no longer than the
         * tolerance is wide may be let pass though one end of it is too near.
         */
        static Found of(List<OutlineLoops> ways) {
            Found found = first(ways);
            if (found.loops().isPresent()) {
                return found;
            }
            Found finer = first(ways.stream().map(OutlineLoops::finer).toList());
            return finer.works() ? finer : found;
        }

        private static Found first(List<OutlineLoops> ways) {
            Found found = new Found(ways.get(0), ways.get(0).found());
            for (int i = 1; i < ways.size() && !found.works(); i++) {
                found = new Found(ways.get(i), ways.get(i).found());
            }
            return found;
        }

        /** Tells whether there is a loop that keeps its distance. */
        boolean works() {
            return loops.filter(some -> !some.isEmpty()).isPresent();
        }
    }

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
        this.found = Found.of(this.ways);
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
            loops.addAll(found.way().holes());
        }
        loops.sort(Comparator.comparingDouble(loop -> -Math.abs(Area.signed(OutlineLoops.path(loop)))));
        return loops;
    }

    /** Returns the loops that are left: one if the offset works. */
    private List<List<RawCurve>> kept() {
        return found.loops()
                .orElseThrow(
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
        return Found.of(ways.stream().map(each -> each.inShare(less / greatest)).toList())
                .loops()
                .filter(loops -> loops.size() == 1)
                .isPresent();
    }

    /** Returns the edges, by their index in the outline, beside which none of the loops runs. */
    List<Integer> lost(List<List<RawCurve>> loops) {
        List<Integer> lost = new ArrayList<>();
        for (int edge = 0; edge < count; edge++) {
            int i = found.way().source().index().indexOf(reversed ? count - 1 - edge : edge);
            if (i < 0 || found.way().isLost(i, loops)) {
                lost.add(edge);
            }
        }
        return lost;
    }

    /** Returns a loop in the sense and with the edges of the outline. */
    OutlineOffset offset(List<RawCurve> loop) {
        List<OffsetPart> parts = OutlineParts.of(loop, found.way().source().index());
        List<OffsetPart> inSense = reversed ? OffsetSense.reversedParts(parts, count) : parts;
        return new OutlineOffset(
                inSense,
                Outline.of(OffsetSense.joined(
                        inSense.stream().map(OffsetPart::path).toList())));
    }
}

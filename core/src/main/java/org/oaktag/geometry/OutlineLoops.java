package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The loops of the parallels of the edges of an outline that keep their distances, sought in several ways. */
final class OutlineLoops {
    /** At how many places each curve of a result is looked at again. */
    private static final int PLACES = 7;

    private static final int STEP_PLACES = 24;

    /** What is sought more finely takes this share of the tolerance. */
    private static final double FINER = 0.25;

    private static final int MANY_PLACES = 64;

    private final OffsetSource source;
    private final double[] distances;
    private final OffsetCorners corners;
    private final double tolerance;
    private final boolean inward;

    /**
     * @param source the edges without their dust, run so that the side to which they move is on their left
     * @param distances one for each of them, mm
     */
    OutlineLoops(OffsetSource source, double[] distances, OffsetCorners corners, double tolerance, boolean inward) {
        this.source = source;
        this.distances = distances.clone();
        this.corners = corners;
        this.tolerance = tolerance;
        this.inward = inward;
    }

    OffsetSource source() {
        return source;
    }

    /** Returns the same with all distances in a share. */
    OutlineLoops inShare(double share) {
        double[] scaled = Arrays.stream(distances).map(each -> each * share).toArray();
        return new OutlineLoops(source, scaled, corners, tolerance, inward);
    }

    /** Returns the same with parallels and a trim that are more exact. */
    OutlineLoops finer() {
        return new OutlineLoops(source, distances, corners, FINER * tolerance, inward);
    }

    /**
     * Returns the loops that are left, or empty if there are some and they come too near whichever way they are sought.
     */
    Optional<List<List<RawCurve>>> found() {
        List<List<RawCurve>> loops = loops(corners, false);
        if (keepTheirDistance(loops, corners)) {
            return Optional.of(loops);
        }
        OffsetCorners carried = corners.withAllCarried();
        List<List<RawCurve>> carriedLoops = loops(carried, false);
        if (keepTheirDistance(carriedLoops, carried)) {
            return Optional.of(carriedLoops);
        }
        List<List<RawCurve>> bridged = loops(corners, true);
        if (keepTheirDistance(bridged, corners)) {
            return Optional.of(bridged);
        }
        return loops.isEmpty() && carriedLoops.isEmpty() ? Optional.of(loops) : Optional.empty();
    }

    private List<List<RawCurve>> trimmed(OffsetCorners joins, boolean bridged) {
        RawOffset run = new RawOffset(source.edges(), distances, joins, tolerance);
        List<RawCurve> raw = run.closedRun();
        OffsetCutters cutters = OffsetCutters.of(source.edges(), distances, joins, run.cutOff(), tolerance);
        return OffsetTrim.loops(raw, cutters, clearance(joins, tolerance), bridged);
    }

    private Clearance clearance(OffsetCorners joins, double besideCorners) {
        return new Clearance(source.edges(), distances, joins, true, tolerance, besideCorners);
    }

    private List<List<RawCurve>> loops(OffsetCorners joins, boolean bridged) {
        List<List<RawCurve>> kept = new ArrayList<>();
        for (List<RawCurve> loop : trimmed(joins, bridged)) {
            // Run like its source: inside out loops are the holes that an outward offset leaves.
            if (Area.signed(path(loop)) > 0 != inward) {
                kept.add(loop);
            }
        }
        if (!inward && kept.size() > 1) {
            kept.sort((a, b) -> Double.compare(Math.abs(path(b).sweep()), Math.abs(path(a).sweep())));
            return kept.subList(0, 1);
        }
        return kept;
    }

    /**
     * Tells whether there is a loop, and all along it the distances are kept; the trim has looked at the middle of each
     * stretch only.
     */
    private boolean keepTheirDistance(List<List<RawCurve>> loops, OffsetCorners joins) {
        Clearance clearance = clearance(joins, 2 * tolerance);
        return !loops.isEmpty() && loops.stream().flatMap(List::stream).allMatch(raw -> isKept(clearance, raw));
    }

    private boolean isKept(Clearance clearance, RawCurve raw) {
        int places = isStep(raw) ? STEP_PLACES : PLACES;
        for (int i = 0; i < places; i++) {
            // The end of a curve is the start of the next.
            if (!clearance.isKeptBy(raw.curve().pointAt((double) i / places), raw.edge())) {
                return false;
            }
        }
        return true;
    }

    /** Tells whether a curve leads from one distance to another. */
    private boolean isStep(RawCurve raw) {
        return raw.corner()
                && raw.curve() instanceof Line
                && distances[raw.edge()] != distances[(raw.edge() + 1) % distances.length];
    }

    /** Returns the loops round the holes of an outward offset. */
    List<List<RawCurve>> holes() {
        Clearance clearance = clearance(corners, 2 * tolerance);
        return trimmed(corners, false).stream()
                .filter(loop -> Area.signed(path(loop)) < 0)
                .filter(loop -> loop.stream().allMatch(raw -> isKept(clearance, raw)))
                .toList();
    }

    /** Tells whether none of the loops runs beside an edge. */
    boolean isLost(int i, List<List<RawCurve>> loops) {
        List<RawCurve> beside = loops.stream()
                .flatMap(List::stream)
                .filter(raw -> raw.edge() == i)
                .toList();
        return OffsetCover.of(source.edges().get(i), distances[i], beside, tolerance)
                        .isNone(tolerance)
                && !isPassed(i, loops.stream().map(OutlineLoops::path).toList());
    }

    /**
     * Tells whether a loop runs beside an edge after all, as part of another's prolongation that lies on its own
     * parallel.
     */
    private boolean isPassed(int i, List<Path> loops) {
        Path edge = source.edges().get(i);
        for (int k = 0; k < MANY_PLACES; k++) {
            double along = edge.length() * (k + 0.5) / MANY_PLACES;
            Point parallel = edge.pointAt(along)
                    .plus(edge.directionAt(along).leftNormal().times(distances[i]));
            if (loops.stream().anyMatch(loop -> loop.nearest(parallel).distance() <= tolerance)) {
                return true;
            }
        }
        return false;
    }

    static Path path(List<RawCurve> loop) {
        return Path.of(loop.stream().map(RawCurve::curve).toList());
    }
}

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import org.oaktag.PatternException;

/**
 * One offset of an outline, made ready: the edges without their dust, run so that the side to which they move is on
 * their left.
 */
final class OutlineTask {
    /** Where each curve of a result is looked at again. */
    private static final int PLACES = 7;

    private static final int MANY_PLACES = 64;

    /**
     * What a crossing of an outline with itself may cut off and is no more than a flaw in the drawing, in tolerances.
     */
    private static final double FLAW = 10;

    private final OffsetSource source;
    private final double[] left;
    private final OffsetCorners corners;
    private final double tolerance;
    private final boolean inward;
    private final boolean reversed;
    private final int count;

    /** A crossing that is a flaw only, and is to blame where no offset is found. */
    private final Optional<Crossing> flaw;

    /** The loops that are left at the distances asked for. */
    private final Optional<List<List<RawCurve>>> found;

    private OutlineTask(
            OffsetSource source,
            double[] left,
            OffsetCorners corners,
            double tolerance,
            boolean inward,
            boolean reversed,
            int count,
            Optional<Crossing> flaw) {
        this.source = source;
        this.left = left;
        this.corners = corners;
        this.tolerance = tolerance;
        this.inward = inward;
        this.reversed = reversed;
        this.count = count;
        this.flaw = flaw;
        this.found = found(left);
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
        Optional<Crossing> crossing = crossing(outline, FLAW * tolerance);
        crossing.filter(each -> cutOff(each, outline) > FLAW * tolerance).ifPresent(each -> {
            throw crossed(each);
        });
        boolean reverse = outline.isClockwise() == inward;
        List<Path> run = reverse ? OffsetSense.reversed(edges) : edges;
        List<CornerStyle> styles = reverse ? OffsetSense.reversedCorners(corners) : corners;
        BiFunction<OffsetSource, Double, OutlineTask> task = (source, fine) -> new OutlineTask(
                source,
                left(source, distances, reverse),
                new OffsetCorners(
                        within, source.index().stream().map(styles::get).toList(), false),
                fine,
                inward,
                reverse,
                edges.size(),
                crossing);
        OffsetSource source = OffsetSource.of(run, true, tolerance);
        OutlineTask asDrawn = task.apply(source, tolerance);
        if (asDrawn.works()) {
            return asDrawn;
        }
        OffsetSource unhooked = OffsetSource.unhooked(run, true, tolerance);
        if (unhooked.edges().equals(source.edges())) {
            return asDrawn;
        }
        // The hooks have moved the outline by half the tolerance at most, and the other half is left for the offset.
        OutlineTask bolder = task.apply(unhooked, 0.5 * tolerance);
        return bolder.works() ? bolder : asDrawn;
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
    private boolean works() {
        return found.filter(loops -> !loops.isEmpty()).isPresent();
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

    /**
     * Returns the crossing of the outline with itself that cuts off most, or else what may be one but is too small to
     * tell.
     */
    private static Optional<Crossing> crossing(Outline outline, double flaw) {
        if (!outline.meetsItself()) {
            return Optional.empty();
        }
        return outline.selfCrossings().stream()
                .filter(each -> each.kind() == Crossing.Kind.CROSS
                        || (each.kind() == Crossing.Kind.TOUCH && cutOff(each, outline) <= flaw))
                .max(Comparator.comparingDouble(each -> cutOff(each, outline)));
    }

    private static double cutOff(Crossing crossing, Outline outline) {
        double loop = Math.abs(crossing.second() - crossing.first());
        return Math.min(loop, outline.perimeter() - loop);
    }

    private static PatternException crossed(Crossing crossing) {
        return PatternException.of(
                "outline to be offset",
                "must not cross itself",
                String.format(
                        Locale.ROOT,
                        "a crossing at (%.1f, %.1f), %.1f and %.1f mm along it",
                        crossing.point().x(),
                        crossing.point().y(),
                        crossing.first(),
                        crossing.second()),
                "draw it round one area");
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
            Clearance clearance = clearance(left, corners, 2 * tolerance);
            for (List<RawCurve> loop : trimmed(left, corners, false)) {
                boolean hole = Area.signed(path(loop)) < 0;
                if (hole && loop.stream().allMatch(raw -> isKept(clearance, raw))) {
                    loops.add(loop);
                }
            }
        }
        loops.sort(Comparator.comparingDouble(loop -> -Math.abs(Area.signed(path(loop)))));
        return loops;
    }

    /** Returns the loops that are left: one if the offset works. */
    private List<List<RawCurve>> kept() {
        return found.orElseThrow(this::unkept);
    }

    /**
     * Returns the loops that are left, or empty if there are some and they come too near whichever way they are sought.
     */
    private Optional<List<List<RawCurve>>> found(double[] distances) {
        List<List<RawCurve>> loops = loops(distances, corners, false);
        if (keepTheirDistance(loops, distances, corners)) {
            return Optional.of(loops);
        }
        OffsetCorners carried = corners.withAllCarried();
        List<List<RawCurve>> carriedLoops = loops(distances, carried, false);
        if (keepTheirDistance(carriedLoops, distances, carried)) {
            return Optional.of(carriedLoops);
        }
        List<List<RawCurve>> bridged = loops(distances, corners, true);
        if (keepTheirDistance(bridged, distances, corners)) {
            return Optional.of(bridged);
        }
        return loops.isEmpty() && carriedLoops.isEmpty() ? Optional.of(loops) : Optional.empty();
    }

    private List<List<RawCurve>> trimmed(double[] distances, OffsetCorners joins, boolean bridged) {
        List<RawCurve> raw = new RawOffset(source.edges(), distances, joins, tolerance).closedRun();
        return OffsetTrim.loops(raw, clearance(distances, joins, tolerance), bridged);
    }

    private Clearance clearance(double[] distances, OffsetCorners joins, double besideCorners) {
        return new Clearance(source.edges(), distances, joins, true, tolerance, besideCorners);
    }

    private List<List<RawCurve>> loops(double[] distances, OffsetCorners joins, boolean bridged) {
        List<List<RawCurve>> kept = new ArrayList<>();
        for (List<RawCurve> loop : trimmed(distances, joins, bridged)) {
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
    private boolean keepTheirDistance(List<List<RawCurve>> loops, double[] distances, OffsetCorners joins) {
        Clearance clearance = clearance(distances, joins, 2 * tolerance);
        return !loops.isEmpty() && loops.stream().flatMap(List::stream).allMatch(raw -> isKept(clearance, raw));
    }

    private static boolean isKept(Clearance clearance, RawCurve raw) {
        for (int i = 0; i < PLACES; i++) {
            if (!clearance.isKeptBy(raw.curve().pointAt((i + 0.5) / PLACES), raw.edge())) {
                return false;
            }
        }
        return true;
    }

    private PatternException refused(int loops) {
        if (flaw.isPresent()) {
            return crossed(flaw.orElseThrow());
        }
        double greatest = Arrays.stream(left).max().orElseThrow();
        String rule = inward
                ? loops == 0 ? "must leave some of the outline" : "must leave the outline in one piece"
                : "must go round the outline in one run";
        return PatternException.of(
                inward ? "inward offset" : "outward offset",
                rule,
                GreatestDistance.told(greatest) + ", which leaves " + loops + " pieces",
                remedy(greatest));
    }

    private String remedy(double greatest) {
        return GreatestDistance.remedy(greatest, less -> {
            double[] scaled =
                    Arrays.stream(left).map(d -> d * (less / greatest)).toArray();
            return found(scaled).filter(found -> found.size() == 1).isPresent();
        });
    }

    private PatternException unkept() {
        if (flaw.isPresent()) {
            return crossed(flaw.orElseThrow());
        }
        double greatest = Arrays.stream(left).max().orElseThrow();
        return PatternException.of(
                inward ? "inward offset" : "outward offset",
                "must keep its distance all along",
                GreatestDistance.told(greatest) + ", at which no run was found that does",
                remedy(greatest));
    }

    /** Returns the edges, by their index in the outline, beside which none of the loops runs. */
    List<Integer> lost(List<List<RawCurve>> loops) {
        List<Integer> lost = new ArrayList<>();
        for (int edge = 0; edge < count; edge++) {
            int i = source.index().indexOf(reversed ? count - 1 - edge : edge);
            if (i < 0 || isLost(i, loops)) {
                lost.add(edge);
            }
        }
        return lost;
    }

    private boolean isLost(int i, List<List<RawCurve>> loops) {
        List<RawCurve> beside = loops.stream()
                .flatMap(List::stream)
                .filter(raw -> raw.edge() == i)
                .toList();
        return OffsetCover.of(source.edges().get(i), left[i], beside, tolerance).isNone(tolerance)
                && !isPassed(i, loops.stream().map(OutlineTask::path).toList());
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
                    .plus(edge.directionAt(along).leftNormal().times(left[i]));
            if (loops.stream().anyMatch(loop -> loop.nearest(parallel).distance() <= tolerance)) {
                return true;
            }
        }
        return false;
    }

    /** Returns a loop in the sense and with the edges of the outline. */
    OutlineOffset offset(List<RawCurve> loop) {
        List<OffsetPart> parts = new ArrayList<>();
        for (OffsetPart part : parts(loop)) {
            parts.add(new OffsetPart(part.path(), source.index().get(part.edge()), part.corner()));
        }
        List<OffsetPart> inSense = reversed ? OffsetSense.reversedParts(parts, count) : parts;
        return new OutlineOffset(
                inSense,
                Outline.of(OffsetSense.joined(
                        inSense.stream().map(OffsetPart::path).toList())));
    }

    private static List<OffsetPart> parts(List<RawCurve> loop) {
        int count = loop.size();
        int first = 0;
        while (first < count && isSame(loop.get(first), loop.get((first + count - 1) % count))) {
            first++;
        }
        List<OffsetPart> parts = new ArrayList<>();
        List<Curve> curves = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            RawCurve raw = loop.get((first + i) % count);
            curves.add(raw.curve());
            if (i + 1 == count || !isSame(raw, loop.get((first + i + 1) % count))) {
                parts.add(new OffsetPart(Path.of(curves), raw.edge(), raw.corner()));
                curves.clear();
            }
        }
        return parts;
    }

    private static boolean isSame(RawCurve a, RawCurve b) {
        return a.edge() == b.edge() && a.corner() == b.corner();
    }

    private static Path path(List<RawCurve> loop) {
        return Path.of(loop.stream().map(RawCurve::curve).toList());
    }
}

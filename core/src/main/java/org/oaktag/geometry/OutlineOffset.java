package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;

/**
 * The outline that runs beside another at a distance of its own for each edge, such as a cut line beside a seam line. Immutable and
 * thread-safe.
 *
 * <pre>{@code
 * List<Path> edges = front.edges().stream().map(Edge::path).toList();
 * double[] distances = edges.stream().mapToDouble(edge -> 10).toArray();
 * distances[edges.size() - 1] = 0;   // the last edge is on the fold
 * OutlineOffset cutLine = OutlineOffset.outward(edges, distances, CornerStyle.mitre(4), 0.01);
 * cutLine.outline().area() > front.outline().area();   // = true
 * }</pre>
 *
 * <p><b>Rule.</b> On its own side of the outline no point of the result is nearer to an edge than that edge's distance, less the
 * tolerance; beyond the end of an edge its neighbour's distance counts if that is less. An edge at distance 0, such as a fold, stays
 * where it is: the parallels beside it are prolonged or trimmed to its own straight prolongation.
 *
 * <p><b>Method.</b> The parallels of the edges ({@link OffsetCurve}) are joined round outer corners in the style asked for; at inner
 * corners the greater of two different distances is carried round in an arc. Where they run into each other the run is cut at all its
 * self-crossings, and only the parts that keep their distance from every edge remain. If nothing is left that way, or what is left comes
 * too near, because an edge bends in more sharply than its distance right beside a corner, the greater distance is carried round outer
 * corners as well. With several loops left the outward offset is the outermost; an inward one that falls apart is refused.
 *
 * <p><b>Error.</b> Each part lies within the tolerance of its exact parallel; the rule is tested at the middle of every stretch between
 * two crossings, where alone it can change, and again at seven places of every curve of the result. It is held against fine buffers of
 * JTS. Points among the curves are left out; a cusp is gone round.
 *
 * <p><b>Cost.</b> O(n²) for a run of n curves, all pairs of which may cross; of most their boxes tell that they do not.
 *
 * @param parts in order round the outline, each beside one source edge or at one corner
 * @param outline the parts as one outline, run in the sense of the source
 */
public record OutlineOffset(List<OffsetPart> parts, Outline outline) {

    /** Where each curve of a result is looked at again. */
    private static final int PLACES = 7;

    public OutlineOffset {
        Objects.requireNonNull(outline, "outline");
        parts = List.copyOf(parts);
    }

    /**
     * Returns the outline moved outwards.
     *
     * @param edges the edges of a closed outline in order, each starting where the last ended, in either sense
     * @param distances one for each edge, mm, all of them at least 0 to go outwards or all at most 0 to go inwards
     * @param corner how outer corners are joined
     * @param tolerance greatest distance of each part from its exact parallel, mm
     * @throws IllegalArgumentException if the edges do not close, or have no area, or the distances do not match them or have mixed
     *     signs, or the tolerance is not positive and finite
     * @throws PatternException if an inward offset leaves nothing or falls apart, or an outward one cannot go round in one run; it names
     *     the greatest distance that works
     */
    public static OutlineOffset outward(List<Path> edges, double[] distances, CornerStyle corner, double tolerance) {
        return outward(edges, distances, corner, Collections.nCopies(edges.size(), corner), tolerance);
    }

    /**
     * Returns the outline moved outwards, every corner between two edges in a style of its own.
     *
     * @param edges the edges of a closed outline in order, each starting where the last ended, in either sense
     * @param distances one for each edge, mm, all of them at least 0 to go outwards or all at most 0 to go inwards
     * @param within how outer corners within an edge are joined
     * @param corners for each edge how it is joined to the next if the corner between them is an outer one
     * @param tolerance greatest distance of each part from its exact parallel, mm
     * @throws IllegalArgumentException if the edges do not close, or have no area, or the distances or corners do not match them, or
     *     the distances have mixed signs, or the tolerance is not positive and finite
     * @throws PatternException if an inward offset leaves nothing or falls apart, or an outward one cannot go round in one run; it names
     *     the greatest distance that works
     */
    public static OutlineOffset outward(
            List<Path> edges, double[] distances, CornerStyle within, List<CornerStyle> corners, double tolerance) {
        Plane.positive("tolerance", tolerance);
        Outline source = closed(edges);
        boolean inward = isInward(edges, distances);
        if (corners.size() != edges.size()) {
            throw new IllegalArgumentException(
                    "there must be one corner for each of the " + edges.size() + " edges, got " + corners.size());
        }
        boolean reverse = source.isClockwise() == inward;
        List<Path> run = reverse ? reversed(edges) : edges;
        double[] left = new double[distances.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = Math.abs(distances[reverse ? left.length - 1 - i : i]);
        }
        OffsetCorners joins = new OffsetCorners(within, reverse ? reversedCorners(corners) : corners, false);
        List<List<RawCurve>> loops = kept(run, left, joins, tolerance, inward);
        if (loops.size() != 1) {
            throw refused(run, left, joins, tolerance, inward, loops.size());
        }
        List<OffsetPart> parts = parts(loops.get(0));
        if (reverse) {
            parts = reversedParts(parts, edges.size());
        }
        return new OutlineOffset(parts, Outline.of(joined(parts)));
    }

    /**
     * Returns the outline moved outwards by the same distance throughout, inwards if it is negative; its one edge has index 0.
     *
     * @throws IllegalArgumentException if the outline has no area, or the tolerance is not positive and finite
     * @throws PatternException if an inward offset leaves nothing or falls apart
     */
    public static OutlineOffset outward(Outline outline, double distance, CornerStyle corner, double tolerance) {
        return outward(List.of(outline.path()), new double[] {distance}, corner, tolerance);
    }

    private static Outline closed(List<Path> edges) {
        if (edges.isEmpty()) {
            throw new IllegalArgumentException("an outline needs at least one edge, got none");
        }
        Path path = edges.get(0);
        for (Path edge : edges.subList(1, edges.size())) {
            path = path.then(edge);
        }
        Outline outline = Outline.of(path);
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

    /** Returns the loops that are left: one if the offset works. */
    private static List<List<RawCurve>> kept(
            List<Path> run, double[] left, OffsetCorners corners, double tolerance, boolean inward) {
        List<List<RawCurve>> loops = loops(run, left, corners, tolerance, inward);
        if (!keepTheirDistance(loops, run, left, corners, tolerance)) {
            OffsetCorners carried = corners.withAllCarried();
            List<List<RawCurve>> carriedLoops = loops(run, left, carried, tolerance, inward);
            if (loops.isEmpty() || keepTheirDistance(carriedLoops, run, left, carried, tolerance)) {
                return carriedLoops;
            }
        }
        return loops;
    }

    private static List<List<RawCurve>> loops(
            List<Path> run, double[] left, OffsetCorners corners, double tolerance, boolean inward) {
        List<RawCurve> raw = new RawOffset(run, left, corners, tolerance).closedRun();
        List<List<RawCurve>> loops = OffsetTrim.loops(raw, new Clearance(run, left, corners, true, tolerance));
        List<List<RawCurve>> kept = new ArrayList<>();
        for (List<RawCurve> loop : loops) {
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
     * Tells whether there is a loop, and all along it the distances are kept; the trim has looked at the middle of each stretch only.
     */
    private static boolean keepTheirDistance(
            List<List<RawCurve>> loops, List<Path> run, double[] left, OffsetCorners corners, double tolerance) {
        Clearance clearance = new Clearance(run, left, corners, true, tolerance, 2 * tolerance);
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

    private static PatternException refused(
            List<Path> run, double[] left, OffsetCorners corners, double tolerance, boolean inward, int count) {
        double greatest = Arrays.stream(left).max().orElseThrow();
        String rule = inward
                ? count == 0 ? "must leave some of the outline" : "must leave the outline in one piece"
                : "must go round the outline in one run";
        return PatternException.of(
                inward ? "inward offset" : "outward offset",
                rule,
                greatest + " mm, which leaves " + count + " pieces",
                GreatestDistance.remedy(greatest, less -> {
                    double[] scaled =
                            Arrays.stream(left).map(d -> d * (less / greatest)).toArray();
                    return kept(run, scaled, corners, tolerance, inward).size() == 1;
                }));
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

    private static List<Path> reversed(List<Path> edges) {
        List<Path> back = new ArrayList<>(edges.size());
        for (Path edge : edges) {
            back.add(edge.reversed());
        }
        Collections.reverse(back);
        return back;
    }

    /** The corner after edge i is, backwards, the corner after edge n - 2 - i, and what arrived there now leaves. */
    private static List<CornerStyle> reversedCorners(List<CornerStyle> corners) {
        int n = corners.size();
        List<CornerStyle> back = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            CornerStyle style = corners.get(Math.floorMod(n - 2 - i, n));
            back.add(
                    style instanceof CornerStyle.SquaredTo squared
                            ? new CornerStyle.SquaredTo(!squared.second(), squared.limit())
                            : style);
        }
        return back;
    }

    /** Of a run of n edges backwards, edge i is n - 1 - i, and the corner after it is the corner before that: after n - 2 - i. */
    private static List<OffsetPart> reversedParts(List<OffsetPart> parts, int n) {
        List<OffsetPart> back = new ArrayList<>(parts.size());
        for (OffsetPart part : parts) {
            int edge = Math.floorMod(n - (part.corner() ? 2 : 1) - part.edge(), n);
            back.add(new OffsetPart(part.path().reversed(), edge, part.corner()));
        }
        Collections.reverse(back);
        return back;
    }

    private static Path joined(List<OffsetPart> parts) {
        return Path.of(
                parts.stream().flatMap(part -> part.path().curves().stream()).toList());
    }

    private static Path path(List<RawCurve> loop) {
        return Path.of(loop.stream().map(RawCurve::curve).toList());
    }
}

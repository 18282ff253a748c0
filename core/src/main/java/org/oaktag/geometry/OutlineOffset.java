package org.oaktag.geometry;

import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.oaktag.PatternException;

/**
 * The outline that runs beside another at a distance of its own for each edge, such as a cut line beside a seam line.
 * Immutable and thread-safe.
 *
 * <pre>{@code
 * List<Path> edges = front.edges().stream().map(Edge::path).toList();
 * double[] distances = edges.stream().mapToDouble(edge -> 10).toArray();
 * distances[edges.size() - 1] = 0;   // the last edge is on the fold
 * OutlineOffset cutLine = OutlineOffset.outward(edges, distances, CornerStyle.mitre(4), 0.01);
 * cutLine.outline().area() > front.outline().area();   // = true
 * }</pre>
 *
 * <p><b>Rule.</b> On its own side of the outline no point of the result is nearer to an edge than that edge's distance,
 * less the tolerance; beyond the end of an edge its neighbour's distance counts if that is less. An edge at distance 0,
 * such as a fold, stays where it is: the parallels beside it are prolonged or trimmed to its own straight prolongation.
 *
 * <p><b>Method.</b> The parallels of the edges ({@link OffsetCurve}) are joined round outer corners in the style asked
 * for; at inner corners the greater of two different distances is carried round in an arc. Where they run into each
 * other the run is cut at all its self-crossings, and only the parts that keep their distance from every edge remain.
 * If nothing is left that way, or what is left comes too near, because an edge bends in more sharply than its distance
 * right beside a corner, the greater distance is carried round outer corners as well. With several loops left the
 * outward offset is the outermost; an inward one that falls apart is refused. {@link OffsetLoops} returns every loop,
 * holes and parts, and names the edges that have none beside them.
 *
 * <p><b>Error.</b> Each part lies within the tolerance of its exact parallel; the rule is tested at the middle of every
 * stretch between two crossings, where alone it can change, and again at seven places of every curve of the result. It
 * is held against fine buffers of JTS. Points among the curves, edges without length, and curves and handles of a
 * millionth of the size are left out; a cusp is gone round. Where no offset keeps its distance for the sake of hooks,
 * handles no longer than the tolerance, they are drawn in as well. An outline that crosses itself is refused, unless
 * what its crossing cuts off is no longer than ten tolerances.
 *
 * <p><b>Cost.</b> About n log n for a run of n curves: crossings and distances are asked of trees of boxes.
 *
 * @param parts in order round the outline, each beside one source edge or at one corner
 * @param outline the parts as one outline, run in the sense of the source
 */
public record OutlineOffset(List<OffsetPart> parts, Outline outline) {

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
     * @throws IllegalArgumentException if the edges do not close, or have no area, or the distances do not match them
     *     or have mixed signs, or the tolerance is not positive and finite
     * @throws PatternException if the outline crosses itself, an inward offset leaves nothing or falls apart, an
     *     outward one cannot go round in one run, or none is found that keeps its distance all along; but for the first
     *     it names a distance that works
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
     * @throws IllegalArgumentException if the edges do not close, or have no area, or the distances or corners do not
     *     match them, or the distances have mixed signs, or the tolerance is not positive and finite
     * @throws PatternException if the outline crosses itself, an inward offset leaves nothing or falls apart, an
     *     outward one cannot go round in one run, or none is found that keeps its distance all along; but for the first
     *     it names a distance that works
     */
    public static OutlineOffset outward(
            List<Path> edges, double[] distances, CornerStyle within, List<CornerStyle> corners, double tolerance) {
        OutlineTask task = OutlineTask.of(edges, distances, within, corners, tolerance);
        return task.offset(task.only());
    }

    /**
     * Returns the outline moved outwards by the same distance throughout, inwards if it is negative; its one edge has
     * index 0.
     *
     * @throws IllegalArgumentException if the outline has no area, or the tolerance is not positive and finite
     * @throws PatternException as the others
     */
    public static OutlineOffset outward(Outline outline, double distance, CornerStyle corner, double tolerance) {
        return outward(List.of(outline.path()), new double[] {distance}, corner, tolerance);
    }
}

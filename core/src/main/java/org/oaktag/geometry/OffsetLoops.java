package org.oaktag.geometry;

import java.util.Collections;
import java.util.List;

/**
 * Every loop that an outline makes when it is moved outwards or inwards, and which of its edges have none beside them.
 * Immutable.
 *
 * <pre>{@code
 * // A sack 100 mm wide inside, with a mouth of 10 mm: 8 mm outside it the mouth is closed, and within a square of 84 mm is left.
 * Outline sack = Outline.of(Path.polyline(Point.of(0, 0), Point.of(60, 0), Point.of(60, 20), Point.of(20, 20), Point.of(20, 120),
 *         Point.of(120, 120), Point.of(120, 20), Point.of(70, 20), Point.of(70, 0), Point.of(140, 0), Point.of(140, 140), Point.of(0, 140), Point.of(0, 0)));
 * OffsetLoops.outward(sack, 8, CornerStyle.mitre(2), 0.01).loops().size();   // = 2
 * }</pre>
 *
 * <p>Rule, method, error and cost are those of {@link OutlineOffset}, which returns the one loop of the ordinary case
 * and refuses others.
 *
 * @param loops the greatest first, each in the sense in which its edges run: of an outward offset the outermost and
 *     then the holes inside it, which run against it; of an inward one the parts into which it falls; none if nothing
 *     is left, and only inwards
 * @param lost indices of the edges beside which no loop runs anywhere, edges without length among them, rising
 */
public record OffsetLoops(List<OutlineOffset> loops, List<Integer> lost) {
    /** Copies the lists. */
    public OffsetLoops {
        loops = List.copyOf(loops);
        lost = List.copyOf(lost);
    }

    /**
     * Returns the loops of an outline moved outwards.
     *
     * @param edges the edges of a closed outline in order, each starting where the last ended, in either sense
     * @param distances one for each edge, mm, all of them at least 0 to go outwards or all at most 0 to go inwards
     * @param corner how outer corners are joined
     * @param tolerance greatest distance of each part from its exact parallel, mm
     * @throws IllegalArgumentException if the edges do not close, or have no area, or the distances do not match them
     *     or have mixed signs, or the tolerance is not positive and finite
     * @throws org.oaktag.PatternException if the outline crosses itself, or no loop is found that keeps its distance,
     *     which an outward offset always has; the message gives a distance that works
     */
    public static OffsetLoops outward(List<Path> edges, double[] distances, CornerStyle corner, double tolerance) {
        OutlineTask task =
                OutlineTask.of(edges, distances, corner, Collections.nCopies(edges.size(), corner), tolerance);
        List<List<RawCurve>> loops = task.all();
        return new OffsetLoops(loops.stream().map(task::offset).toList(), task.lost(loops));
    }

    /**
     * Returns the loops of an outline moved outwards by the same distance throughout, inwards if it is negative; its
     * one edge has index 0.
     *
     * @throws IllegalArgumentException if the outline has no area, or the tolerance is not positive and finite
     * @throws org.oaktag.PatternException if the outline crosses itself, or no loop is found that keeps its distance,
     *     which an outward offset always has; the message gives a distance that works
     */
    public static OffsetLoops outward(Outline outline, double distance, CornerStyle corner, double tolerance) {
        return outward(List.of(outline.path()), new double[] {distance}, corner, tolerance);
    }
}

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * What is moved when a run of edges is offset: the edges without their dust. Points among the curves and curves too
 * small to have a direction are left out, and what comes after joins on; dust handles are drawn in. A run that has none
 * of these is left as it is.
 *
 * @param edges those that are left, in order, each starting where the last ended
 * @param index where each was among all of them
 */
record OffsetSource(List<Path> edges, List<Integer> index) {
    OffsetSource {
        edges = List.copyOf(edges);
        index = List.copyOf(index);
    }

    /**
     * Returns what is left of connected edges that are not one single point.
     *
     * @param closed whether the last ends where the first starts
     * @param tolerance that of the offset, mm: nothing moves by more than a tenth of it
     */
    static OffsetSource of(List<Path> edges, boolean closed, double tolerance) {
        return of(edges, closed, tolerance, curve -> Dust.retracted(curve, tolerance));
    }

    /** As the other, hooks up to as long as the tolerance drawn in as well, so that what is left lies within half of it. */
    static OffsetSource unhooked(List<Path> edges, boolean closed, double tolerance) {
        return of(edges, closed, tolerance, curve -> Dust.unhooked(curve, tolerance));
    }

    private static OffsetSource of(List<Path> edges, boolean closed, double tolerance, UnaryOperator<Curve> cleaned) {
        double dust = Dust.floor(size(edges), tolerance);
        List<List<Curve>> kept = new ArrayList<>();
        @Nullable Point pen = null;
        for (Path edge : edges) {
            List<Curve> curves = new ArrayList<>();
            for (Curve curve : edge.curves()) {
                if (isDust(curve, pen == null ? curve.start() : pen, dust)) {
                    continue;
                }
                Curve clean = cleaned.apply(curve);
                curves.add(pen == null ? clean : Joined.withEnds(clean, pen, clean.end()));
                pen = clean.end();
            }
            kept.add(curves);
        }
        List<Path> left = new ArrayList<>();
        List<Integer> index = new ArrayList<>();
        for (int i = 0; i < kept.size(); i++) {
            List<Curve> curves = kept.get(i);
            if (curves.isEmpty()) {
                continue;
            }
            if (closed && left.isEmpty() && pen != null) {
                curves.set(0, Joined.withEnds(curves.get(0), pen, curves.get(0).end()));
            }
            left.add(curves.equals(edges.get(i).curves()) ? edges.get(i) : Path.of(curves));
            index.add(i);
        }
        return new OffsetSource(left, index);
    }

    private static double size(List<Path> edges) {
        Bounds bounds = hull(edges.get(0));
        for (Path edge : edges) {
            bounds = bounds.union(hull(edge));
        }
        return Math.max(bounds.width(), bounds.height());
    }

    private static Bounds hull(Path path) {
        CurveTree tree = path.tree();
        return new Bounds(tree.minX(0), tree.minY(0), tree.maxX(0), tree.maxY(0));
    }

    private static boolean isDust(Curve curve, Point pen, double dust) {
        boolean ends = curve.start().isCloseTo(pen, dust) && curve.end().isCloseTo(pen, dust);
        return ends
                && (!(curve instanceof Cubic cubic)
                        || (cubic.control1().isCloseTo(pen, dust)
                                && cubic.control2().isCloseTo(pen, dust)));
    }
}

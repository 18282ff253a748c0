package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What is moved when a run of edges is offset: the edges without their dust. Points among the curves and curves too
 * small to have a direction are left out, and what comes after joins on; dust handles are drawn in. A run that has none
 * of these is left as it is.
 *
 * @param edges those that are left, in order, each starting where the last ended
 * @param index where each was among all of them
 * @param curves for each of them, where each of its curves was among those of the whole edge
 */
record OffsetSource(List<Path> edges, List<Integer> index, List<List<Integer>> curves) {
    OffsetSource {
        edges = List.copyOf(edges);
        index = List.copyOf(index);
        curves = List.copyOf(curves);
    }

    /**
     * Returns what is left of connected edges that are not one single point.
     *
     * @param closed whether the last ends where the first starts
     * @param tolerance that of the offset, mm: nothing moves by more than a tenth of it
     */
    static OffsetSource of(List<Path> edges, boolean closed, double tolerance) {
        return new Cleaning(edges, tolerance, false).source(closed);
    }

    /**
     * As the other, hooks left out or drawn in as well, so that what is left lies within {@link Dust#UNHOOKED}
     * tolerances. An edge that is nothing but a hook stays.
     */
    static OffsetSource unhooked(List<Path> edges, boolean closed, double tolerance) {
        return new Cleaning(edges, tolerance, true).source(closed);
    }

    /** The pen goes along the edges and draws what is no dust. */
    private static final class Cleaning {
        private final List<Path> edges;
        private final double tolerance;
        private final boolean hooks;
        private final double dust;
        private final double hook;
        private @Nullable Point pen;

        Cleaning(List<Path> edges, double tolerance, boolean hooks) {
            this.edges = edges;
            this.tolerance = tolerance;
            this.hooks = hooks;
            double size = size(edges);
            this.dust = Dust.floor(size, tolerance);
            this.hook = Dust.hook(size, tolerance);
        }

        OffsetSource source(boolean closed) {
            List<List<Curve>> kept = new ArrayList<>();
            List<Integer> index = new ArrayList<>();
            List<List<Integer>> origins = new ArrayList<>();
            for (int i = 0; i < edges.size(); i++) {
                List<Integer> from = new ArrayList<>();
                @Nullable Point before = pen;
                List<Curve> curves = drawn(edges.get(i), hooks ? hook : dust, from);
                if (curves.isEmpty()) {
                    pen = before;
                    curves = drawn(edges.get(i), dust, from);
                }
                if (!curves.isEmpty()) {
                    kept.add(curves);
                    index.add(i);
                    origins.add(List.copyOf(from));
                }
            }
            if (closed && pen != null) {
                Curve first = kept.get(0).get(0);
                kept.get(0).set(0, Joined.withEnds(first, pen, first.end()));
            }
            List<Path> left = new ArrayList<>();
            for (int i = 0; i < kept.size(); i++) {
                Path edge = edges.get(index.get(i));
                left.add(kept.get(i).equals(edge.curves()) ? edge : Path.of(kept.get(i)));
            }
            return new OffsetSource(left, index, origins);
        }

        private List<Curve> drawn(Path edge, double least, List<Integer> from) {
            List<Curve> curves = new ArrayList<>();
            for (int k = 0; k < edge.curves().size(); k++) {
                Curve curve = edge.curves().get(k);
                if (isDust(curve, pen == null ? curve.start() : pen, least)) {
                    continue;
                }
                Point start = pen == null ? curve.start() : pen;
                Curve clean = Dust.retracted(curve, tolerance);
                if (hooks) {
                    clean = Dust.unhooked(clean, start.distanceTo(curve.start()), tolerance);
                }
                curves.add(Joined.withEnds(clean, start, clean.end()));
                from.add(k);
                pen = clean.end();
            }
            return curves;
        }
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

package org.oaktag.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The curves of a path in a tree of upright boxes, so that a question looks at the few curves that it concerns.
 * Immutable.
 *
 * <p>A node stands for a run of neighbouring curves and has two halves of it below, down to single curves. Curves that
 * follow each other on a path touch, so runs keep together without being sorted. The nodes lie in the order in which a
 * walk from the root meets them: below node i come i + 1 and {@code after(i + 1)}, and a walk that does not look below
 * i goes on with {@code after(i)}. The box of a curve is that of its control points, exact; 2 n - 1 nodes of 44 bytes
 * for n curves, and 8 bytes a curve.
 */
final class CurveTree {
    private static final int SIDES = 4;

    private final double[] boxes;
    private final int[] after;
    private final int[] from;
    private final int[] to;
    private final double[] heights;

    private CurveTree(List<Curve> curves) {
        int count = curves.size();
        int nodes = 2 * count - 1;
        boxes = new double[SIDES * nodes];
        after = new int[nodes];
        from = new int[nodes];
        to = new int[nodes];
        heights = new double[count + 1];
        for (int i = 0; i < count; i++) {
            heights[i] = curves.get(i).start().y();
        }
        heights[count] = curves.get(count - 1).end().y();
        fill(0, 0, count, curves);
    }

    static CurveTree of(List<Curve> curves) {
        return new CurveTree(curves);
    }

    private int fill(int node, int first, int end, List<Curve> curves) {
        from[node] = first;
        to[node] = end;
        if (end - first == 1) {
            Bounds hull = CurveContacts.hull(curves.get(first));
            boxes[SIDES * node] = hull.minX();
            boxes[SIDES * node + 1] = hull.minY();
            boxes[SIDES * node + 2] = hull.maxX();
            boxes[SIDES * node + 3] = hull.maxY();
            after[node] = node + 1;
            return after[node];
        }
        int middle = (first + end) >>> 1;
        int left = node + 1;
        int right = fill(left, first, middle, curves);
        after[node] = fill(right, middle, end, curves);
        boxes[SIDES * node] = Math.min(minX(left), minX(right));
        boxes[SIDES * node + 1] = Math.min(minY(left), minY(right));
        boxes[SIDES * node + 2] = Math.max(maxX(left), maxX(right));
        boxes[SIDES * node + 3] = Math.max(maxY(left), maxY(right));
        return after[node];
    }

    int nodes() {
        return after.length;
    }

    /** Returns the node after all those below this one. */
    int after(int node) {
        return after[node];
    }

    boolean isCurve(int node) {
        return after[node] == node + 1;
    }

    /** Returns the index of the first curve of the node's run. */
    int from(int node) {
        return from[node];
    }

    /** Returns the index after that of the last. */
    int to(int node) {
        return to[node];
    }

    /** Returns y of the start of the node's run. */
    double startY(int node) {
        return heights[from[node]];
    }

    /** Returns y of the end of the node's run. */
    double endY(int node) {
        return heights[to[node]];
    }

    double minX(int node) {
        return boxes[SIDES * node];
    }

    double minY(int node) {
        return boxes[SIDES * node + 1];
    }

    double maxX(int node) {
        return boxes[SIDES * node + 2];
    }

    double maxY(int node) {
        return boxes[SIDES * node + 3];
    }

    /** Returns the greatest absolute coordinate, mm. */
    double reach() {
        return Math.max(Math.max(Math.abs(minX(0)), Math.abs(maxX(0))), Math.max(Math.abs(minY(0)), Math.abs(maxY(0))));
    }

    /** Tells whether a point lies off the box of a node by more than the margin, above, below, left or right of it. */
    boolean isBeside(int node, Point point, double margin) {
        int at = SIDES * node;
        double x = point.x();
        double y = point.y();
        return y < boxes[at + 1] - margin
                || y > boxes[at + 3] + margin
                || x < boxes[at] - margin
                || x > boxes[at + 2] + margin;
    }

    /** Returns the distance of a point from the box of a node, 0 inside, mm. */
    double distance(int node, Point point) {
        double x = Math.max(Math.max(minX(node) - point.x(), point.x() - maxX(node)), 0);
        double y = Math.max(Math.max(minY(node) - point.y(), point.y() - maxY(node)), 0);
        return Math.sqrt(x * x + y * y);
    }

    /**
     * Returns the pairs of one curve each whose boxes come this near to each other, in order of the first curve, then
     * of the second.
     */
    List<CurvePair> pairsWith(CurveTree other, double near) {
        List<CurvePair> pairs = new ArrayList<>();
        collect(0, other, 0, near, pairs);
        pairs.sort(CurvePair.ORDER);
        return pairs;
    }

    /**
     * Returns the pairs of different curves of this path whose boxes come this near to each other, the earlier curve
     * first, in order.
     */
    List<CurvePair> pairsWithin(double near) {
        List<CurvePair> pairs = new ArrayList<>();
        for (int node = 0; node < after.length; node++) {
            if (!isCurve(node)) {
                collect(node + 1, this, after[node + 1], near, pairs);
            }
        }
        pairs.sort(CurvePair.ORDER);
        return pairs;
    }

    private void collect(int a, CurveTree other, int b, double near, List<CurvePair> pairs) {
        if (minX(a) > other.maxX(b) + near
                || other.minX(b) > maxX(a) + near
                || minY(a) > other.maxY(b) + near
                || other.minY(b) > maxY(a) + near) {
            return;
        }
        if (isCurve(a) && other.isCurve(b)) {
            pairs.add(new CurvePair(from[a], other.from[b]));
        } else if (other.isCurve(b) || (!isCurve(a) && to[a] - from[a] >= other.to[b] - other.from[b])) {
            collect(a + 1, other, b, near, pairs);
            collect(after[a + 1], other, b, near, pairs);
        } else {
            collect(a, other, b + 1, near, pairs);
            collect(a, other, other.after[b + 1], near, pairs);
        }
    }
}

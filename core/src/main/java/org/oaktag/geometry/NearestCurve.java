package org.oaktag.geometry;

import java.util.List;

/**
 * The place of a path nearest to a point, the first along the path of several: what looking at every curve in turn
 * would find, to the last bit. Boxes that lie further off than the best place so far are passed over, the nearer of two
 * is looked into first.
 */
final class NearestCurve {
    /** What rounding may take off a distance, in units in the last place of the greatest coordinate. */
    private static final double ROUNDING = 16;

    private final CurveTree tree;
    private final List<Curve> curves;
    private final Point point;
    private final double slack;
    private int index;
    private Nearest best;

    private NearestCurve(CurveTree tree, List<Curve> curves, Point point) {
        this.tree = tree;
        this.curves = curves;
        this.point = point;
        this.slack = ROUNDING * Math.ulp(Math.max(tree.reach(), Math.max(Math.abs(point.x()), Math.abs(point.y()))));
        this.index = nearestBox();
        this.best = curves.get(index).nearest(point);
    }

    static NearestCurve of(Path path, Point point) {
        NearestCurve search = new NearestCurve(path.tree(), path.curves(), point);
        search.look(0);
        return search;
    }

    int index() {
        return index;
    }

    Path.Location location() {
        return new Path.Location(index, best.t());
    }

    Nearest place() {
        return best;
    }

    /** The curve at the end of a way down into the nearer box each time: where to begin. */
    private int nearestBox() {
        int node = 0;
        while (!tree.isCurve(node)) {
            int right = tree.after(node + 1);
            node = tree.distance(right, point) < tree.distance(node + 1, point) ? right : node + 1;
        }
        return tree.from(node);
    }

    private void look(int node) {
        if (tree.distance(node, point) > best.distance() + slack) {
            return;
        }
        if (!tree.isCurve(node)) {
            int left = node + 1;
            int right = tree.after(left);
            boolean rightFirst = tree.distance(right, point) < tree.distance(left, point);
            look(rightFirst ? right : left);
            look(rightFirst ? left : right);
            return;
        }
        int candidate = tree.from(node);
        if (candidate != index) {
            Nearest place = curves.get(candidate).nearest(point);
            if (place.distance() < best.distance() || (place.distance() == best.distance() && candidate < index)) {
                best = place;
                index = candidate;
            }
        }
    }
}

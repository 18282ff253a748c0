package org.oaktag.lay;

/**
 * Lays parts one by one in a given order, each as near to the beginning of the cloth as it goes and then as near to one
 * side, holes between others not left out: the bottom-left-fill rule of Burke, Hellier, Kendall and Whitwell, "A new
 * bottom-left-fill heuristic algorithm for the two-dimensional irregular packing problem", Operations Research 54 (2006),
 * 587 to 601. As there, the one coordinate runs over a grid and the other is found exactly; here from the slices of
 * {@link NoFit}.
 */
final class Packing {

    private final Nesting nesting;

    Packing(Nesting nesting) {
        this.nesting = nesting;
    }

    /** Lays all parts in the order of the plan. */
    Layout lay(Plan plan) {
        Placed placed = new Placed(nesting);
        for (int i = 0; i < plan.order.length; i++) {
            place(plan, i, placed);
        }
        return placed.layout();
    }

    private void place(Plan plan, int place, Placed placed) {
        int part = plan.order[place];
        double best = Double.POSITIVE_INFINITY;
        int[] ways = nesting.ways(part);
        for (int way = 0; way < ways.length; way++) {
            if (plan.way[part] != Plan.EITHER && plan.way[part] % ways.length != way) {
                continue;
            }
            int candidate = ways[way];
            double height = nesting.shapes().get(candidate).height();
            int last = nesting.lastColumn(candidate);
            for (int k = 0; k <= last; k++) {
                int at = plan.fromRight[part] ? last - k : k;
                double lowest = placed.lowest(candidate, at, plan.order, place, best - height);
                if (lowest + height < best - Placed.TOUCHING) {
                    best = lowest + height;
                    placed.shape[part] = candidate;
                    placed.column[part] = at;
                    placed.y[part] = lowest;
                }
            }
        }
    }
}

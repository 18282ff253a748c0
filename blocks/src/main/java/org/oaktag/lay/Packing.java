package org.oaktag.lay;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Lays parts one by one in a given order, each as near to the beginning of the cloth as it goes and then as near to the
 * left, holes between others not left out: the bottom-left-fill rule of Burke, Hellier, Kendall and Whitwell, "A new
 * bottom-left-fill heuristic algorithm for the two-dimensional irregular packing problem", Operations Research 54
 * (2006), 587 to 601. As there, the one coordinate runs over a grid and the other is found exactly; here from the
 * slices of {@link NoFit}.
 */
final class Packing {

    private final Nesting nesting;

    Packing(Nesting nesting) {
        this.nesting = nesting;
    }

    /** Returns the best of the orders that lay the greatest first, by several measures. */
    Layout greatestFirst() {
        List<ToDoubleFunction<Part>> measures = List.of(
                part -> part.outline().area(),
                part -> part.shapes().get(0).height(),
                part -> part.shapes().get(0).width(),
                part -> part.shapes().get(0).height() * part.shapes().get(0).width());
        Layout best = lay(nesting.greatestFirst(measures.get(0)));
        for (ToDoubleFunction<Part> measure : measures.subList(1, measures.size())) {
            best = best.orBetter(lay(nesting.greatestFirst(measure)));
        }
        return best;
    }

    /** Lays all parts in an order. */
    Layout lay(int[] order) {
        Placed placed = new Placed(nesting);
        for (int i = 0; i < order.length; i++) {
            place(order, i, placed);
        }
        return placed.layout();
    }

    private void place(int[] order, int place, Placed placed) {
        int part = order[place];
        double best = Double.POSITIVE_INFINITY;
        for (int way : nesting.ways(part)) {
            double height = nesting.height(way);
            for (int at = 0; at <= nesting.lastColumn(way); at++) {
                double lowest = placed.lowest(way, at, order, place, best - height);
                if (lowest + height < best - Placed.TOUCHING) {
                    best = lowest + height;
                    placed.put(part, way, at, lowest);
                }
            }
        }
    }
}

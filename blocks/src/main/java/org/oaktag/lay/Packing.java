package org.oaktag.lay;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Lays parts one by one in a given order, each as near to the beginning of the cloth as it goes and then as near to one
 * side, holes between others not left out: the bottom-left-fill rule of Burke, Hellier, Kendall and Whitwell, "A new
 * bottom-left-fill heuristic algorithm for the two-dimensional irregular packing problem", Operations Research 54 (2006),
 * 587 to 601. As there, the one coordinate runs over a grid and the other is found exactly; here from the slices of
 * {@link NoFit}. Not thread-safe; the tables fill as they are asked for.
 */
final class Packing {

    /** How far apart the places across the cloth are that are tried, mm. */
    static final double PITCH = 2;

    /** Two shapes that come nearer than this to where they touch are said to touch, mm. */
    private static final double TOUCHING = 1e-9;

    private final List<Part> parts;
    private final List<Shape> shapes;
    private final int[][] shapeOf;
    private final int[] lastColumn;
    private final @Nullable NoFit[][] noFits;
    private final double width;
    private final double gap;

    /**
     * Where a part lies.
     *
     * @param shape its shape, as an index of {@link #shapes()}
     * @param x how far it lies from the left selvage or the fold, mm
     * @param y how far it lies from the beginning, mm
     */
    record Seat(int shape, double x, double y) {}

    /**
     * What a try gives.
     *
     * @param seats where each part lies
     * @param length how much of the length of the cloth all take, mm
     * @param spread the distances of the lower edges from the beginning, each times its height and width, summed: of two
     *     lays that are equally long, the one with the lesser has more room left at its end
     */
    record Result(List<Seat> seats, double length, double spread) {

        boolean isBetterThan(Result other) {
            return length < other.length - TOUCHING || (length <= other.length + TOUCHING && spread < other.spread);
        }
    }

    /**
     * Prepares the shapes of all parts.
     *
     * @param parts what is to be laid; every shape fits into the width
     * @param width the width of the table that the cloth covers, mm
     * @param gap the room between two shapes, mm
     */
    Packing(List<Part> parts, double width, double gap) {
        this.parts = parts;
        this.width = width;
        this.gap = gap;
        this.shapes = parts.stream()
                .flatMap(part -> part.shapes().stream())
                .distinct()
                .toList();
        this.shapeOf = parts.stream()
                .map(part -> part.shapes().stream().mapToInt(shapes::indexOf).toArray())
                .toArray(int[][]::new);
        this.lastColumn = shapes.stream()
                .mapToInt(shape -> shape.onFold() ? 0 : (int) Math.floor((width - shape.width()) / PITCH + TOUCHING))
                .toArray();
        this.noFits = new NoFit[shapes.size()][shapes.size()];
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** Lays all parts on shelves. */
    Result onShelves() {
        return Shelves.of(parts, shapes, width, gap);
    }

    /** Lays all parts in the order of the plan. */
    Result lay(Plan plan) {
        int count = parts.size();
        int[] shape = new int[count];
        int[] column = new int[count];
        double[] y = new double[count];
        int[] laid = new int[count];
        double length = 0;
        double spread = 0;
        for (int i = 0; i < count; i++) {
            int part = plan.order[i];
            double best = Double.POSITIVE_INFINITY;
            int[] ways = shapeOf[part];
            for (int way = 0; way < ways.length; way++) {
                if (plan.way[part] != Plan.EITHER && plan.way[part] % ways.length != way) {
                    continue;
                }
                int candidate = ways[way];
                double height = shapes.get(candidate).height();
                int last = lastColumn[candidate];
                for (int k = 0; k <= last; k++) {
                    int at = plan.fromRight[part] ? last - k : k;
                    double lowest = lowest(candidate, at, laid, i, shape, column, y, best - height);
                    if (lowest + height < best - TOUCHING) {
                        best = lowest + height;
                        shape[part] = candidate;
                        column[part] = at;
                        y[part] = lowest;
                    }
                }
            }
            laid[i] = part;
            Shape taken = shapes.get(shape[part]);
            length = Math.max(length, best);
            spread += best * taken.height() * taken.width();
        }
        List<Seat> seats = IntStream.range(0, count)
                .mapToObj(part -> new Seat(shape[part], column[part] * PITCH, y[part]))
                .toList();
        return new Result(seats, length, spread);
    }

    /** Returns the least y at which the shape overlaps none of those that are laid, or infinity where it is not below a limit. */
    private double lowest(
            int candidate, int at, int[] laid, int count, int[] shape, int[] column, double[] y, double limit) {
        double lowest = 0;
        boolean raised = true;
        while (raised) {
            raised = false;
            for (int i = 0; i < count; i++) {
                int other = laid[i];
                double[] forbidden = noFit(shape[other], candidate).at(at - column[other]);
                for (int k = 0; k < forbidden.length; k += 2) {
                    double below = lowest - y[other];
                    if (below > forbidden[k] + TOUCHING && below < forbidden[k + 1] - TOUCHING) {
                        lowest = y[other] + forbidden[k + 1];
                        raised = true;
                    }
                }
                if (lowest >= limit) {
                    return Double.POSITIVE_INFINITY;
                }
            }
        }
        return lowest;
    }

    private NoFit noFit(int fixed, int moving) {
        NoFit known = noFits[fixed][moving];
        if (known == null) {
            known = NoFit.of(shapes.get(fixed), shapes.get(moving), PITCH, gap);
            noFits[fixed][moving] = known;
            if (fixed != moving) {
                noFits[moving][fixed] = known.reversed();
            }
        }
        return known;
    }
}

package org.oaktag.lay;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/** In which order parts are laid, and how each. Once made it is not changed. */
final class Plan {

    /** Whichever shape ends nearer to the beginning of the cloth. */
    static final int EITHER = -1;

    private static final int WAYS = 2;

    /** The parts, by index. */
    final int[] order;

    /** Which of its shapes each part is laid in, or {@link #EITHER}. */
    final int[] way;

    /** Whether each part is laid as near to the right as it goes, instead of to the left. */
    final boolean[] fromRight;

    private Plan(int[] order, int[] way, boolean[] fromRight) {
        this.order = order;
        this.way = way;
        this.fromRight = fromRight;
    }

    /** Returns the plan that lays the parts with the greatest measure first. */
    static Plan greatestFirst(List<Part> parts, ToDoubleFunction<Part> measure) {
        int[] order = IntStream.range(0, parts.size())
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -measure.applyAsDouble(parts.get(i))))
                .mapToInt(i -> i)
                .toArray();
        int[] way = new int[parts.size()];
        Arrays.fill(way, EITHER);
        return new Plan(order, way, new boolean[parts.size()]);
    }

    /** Returns a plan that differs a little: two parts change places, one moves elsewhere, or one is laid in another way. */
    Plan varied(SplittableRandom random) {
        Plan copy = new Plan(order.clone(), way.clone(), fromRight.clone());
        int changes = 1 + random.nextInt(2);
        for (int i = 0; i < changes; i++) {
            copy.vary(random);
        }
        return copy;
    }

    /** Returns a plan of the same parts in an order drawn by lot (Fisher and Yates). */
    Plan shuffled(SplittableRandom random) {
        Plan copy = new Plan(order.clone(), way.clone(), fromRight.clone());
        Arrays.fill(copy.way, EITHER);
        for (int i = order.length - 1; i > 0; i--) {
            copy.exchange(i, random.nextInt(i + 1));
        }
        return copy;
    }

    private void exchange(int a, int b) {
        int part = order[a];
        order[a] = order[b];
        order[b] = part;
    }

    private void vary(SplittableRandom random) {
        int a = random.nextInt(order.length);
        int b = random.nextInt(order.length);
        switch (random.nextInt(5)) {
            case 0, 1 -> exchange(a, b);
            case 2 -> {
                int part = order[a];
                int step = a < b ? 1 : -1;
                for (int i = a; i != b; i += step) {
                    order[i] = order[i + step];
                }
                order[b] = part;
            }
            case 3 -> fromRight[order[a]] = !fromRight[order[a]];
            default -> way[order[a]] = random.nextInt(WAYS + 1) - 1;
        }
    }
}

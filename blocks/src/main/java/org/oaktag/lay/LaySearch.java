package org.oaktag.lay;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Lays the parts on {@link Shelves}, then in one order after another: first the greatest first, by several measures, then in
 * rounds of small changes to what was good. A change is taken up where it is no worse than what was taken up some tries before
 * (late acceptance: Burke and Bykov, "The late acceptance hill-climbing heuristic", European Journal of Operational Research
 * 258 (2017), 70 to 78). The best of a round is then {@link Squeeze squeezed}, and the next sets out from an order drawn by lot.
 *
 * <p>Its random numbers come from a fixed seed, and it stops after so many tries and not after a time, so that the same
 * parts give the same lay everywhere. With more tries the same ones come first, so that they are never worse. Where parts may be
 * turned, they are laid without turning first, with as many tries, so that without a nap no lay is longer than with one.
 */
final class LaySearch {

    private static final long SEED = 20_260_101L;

    /** How many tries back a plan is compared with. */
    private static final int MEMORY = 25;

    /** How many small changes a round tries. */
    private static final int WALK = 1000;

    /** How many moves for each part a round tries to squeeze what it found. */
    private static final int MOVES = 150;

    private final Nesting nesting;
    private final Packing packing;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private int left;
    private Layout best;

    private LaySearch(Nesting nesting, Effort effort, Layout best) {
        this.nesting = nesting;
        this.packing = new Packing(nesting);
        this.left = effort.tries();
        this.best = best;
    }

    static Layout best(Nesting nesting, Effort effort) {
        Layout upright = new LaySearch(nesting.upright(), effort, Shelves.of(nesting)).search();
        return nesting.isTurnable() ? new LaySearch(nesting, effort, upright).search() : upright;
    }

    private Layout search() {
        Plan start = greatestFirst();
        while (left > 0) {
            squeeze(walk(start));
            start = start.shuffled(random);
        }
        return best;
    }

    /** Returns the best of the orders that lay the greatest first. */
    private Plan greatestFirst() {
        List<Plan> plans = List.of(
                Plan.greatestFirst(nesting.parts(), part -> part.outline().area()),
                Plan.greatestFirst(nesting.parts(), part -> part.shapes().get(0).height()),
                Plan.greatestFirst(nesting.parts(), part -> part.shapes().get(0).width()),
                Plan.greatestFirst(
                        nesting.parts(),
                        part -> part.shapes().get(0).height()
                                * part.shapes().get(0).width()));
        Plan first = plans.get(0);
        Layout shortest = lay(first);
        for (Plan plan : plans.subList(1, plans.size())) {
            if (left > 0) {
                Layout layout = lay(plan);
                if (layout.isBetterThan(shortest)) {
                    first = plan;
                    shortest = layout;
                }
            }
        }
        return first;
    }

    private Layout walk(Plan start) {
        Plan plan = start;
        Layout current = lay(start);
        Layout shortest = current;
        Layout[] memory = new Layout[MEMORY];
        Arrays.fill(memory, current);
        for (int i = 0; i < WALK && left > 0; i++) {
            Plan varied = plan.varied(random);
            Layout layout = lay(varied);
            int late = i % MEMORY;
            if (!current.isBetterThan(layout) || !memory[late].isBetterThan(layout)) {
                plan = varied;
                current = layout;
            }
            memory[late] = current;
            if (current.isBetterThan(shortest)) {
                shortest = current;
            }
        }
        return shortest;
    }

    private void squeeze(Layout from) {
        int moves = Math.min(left, MOVES * nesting.parts().size());
        Squeeze squeeze = new Squeeze(nesting, random, moves);
        take(squeeze.shorter(from, best));
        left -= moves - squeeze.left();
    }

    private Layout lay(Plan plan) {
        left--;
        Layout layout = packing.lay(plan);
        take(layout);
        return layout;
    }

    private void take(Layout layout) {
        if (layout.isBetterThan(best)) {
            best = layout;
        }
    }
}

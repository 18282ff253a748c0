package org.oaktag.lay;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Tries one order of the parts after another: first the greatest first, by several measures, then small changes of what
 * was good. A change is taken up where it is no worse than what was taken up some tries before (late acceptance: Burke and
 * Bykov, "The late acceptance hill-climbing heuristic", European Journal of Operational Research 258 (2017), 70 to 78).
 * Boxes on {@link Shelves} are taken where nothing is shorter.
 *
 * <p>Its random numbers come from a fixed seed, and it stops after so many tries and not after a time, so that the same
 * parts give the same lay everywhere.
 */
final class LaySearch {

    private static final long SEED = 20_260_101L;

    /** How many tries back a plan is compared with. */
    private static final int MEMORY = 25;

    /** After so many tries the search sets out again from an order drawn by lot. */
    private static final int WALK = 250;

    private LaySearch() {}

    static Packing.Result best(Packing packing, List<Part> parts, Effort effort) {
        List<Plan> first = firstPlans(parts);
        Plan start = first.get(0);
        Packing.Result best = packing.lay(start);
        for (Plan each : first.subList(1, Math.min(first.size(), effort.tries()))) {
            Packing.Result result = packing.lay(each);
            if (result.isBetterThan(best)) {
                start = each;
                best = result;
            }
        }
        SplittableRandom random = new SplittableRandom(SEED);
        for (int left = effort.tries() - first.size(); left > 0; left -= WALK) {
            Packing.Result result = walk(packing, start, random, Math.min(left, WALK));
            if (result.isBetterThan(best)) {
                best = result;
            }
            start = start.shuffled(random);
        }
        Packing.Result onShelves = packing.onShelves();
        return onShelves.isBetterThan(best) ? onShelves : best;
    }

    private static Packing.Result walk(Packing packing, Plan start, SplittableRandom random, int tries) {
        Plan plan = start;
        Packing.Result current = packing.lay(start);
        Packing.Result best = current;
        Packing.Result[] memory = new Packing.Result[MEMORY];
        Arrays.fill(memory, current);
        for (int i = 0; i < tries; i++) {
            Plan varied = plan.varied(random);
            Packing.Result result = packing.lay(varied);
            int late = i % MEMORY;
            if (!current.isBetterThan(result) || !memory[late].isBetterThan(result)) {
                plan = varied;
                current = result;
            }
            memory[late] = current;
            if (current.isBetterThan(best)) {
                best = current;
            }
        }
        return best;
    }

    private static List<Plan> firstPlans(List<Part> parts) {
        return List.of(
                Plan.greatestFirst(parts, part -> part.outline().area()),
                Plan.greatestFirst(parts, part -> part.shapes().get(0).height()),
                Plan.greatestFirst(parts, part -> part.shapes().get(0).width()),
                Plan.greatestFirst(
                        parts,
                        part -> part.shapes().get(0).height()
                                * part.shapes().get(0).width()));
    }
}

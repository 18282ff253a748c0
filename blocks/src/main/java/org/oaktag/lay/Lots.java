package org.oaktag.lay;

import java.util.SplittableRandom;

/** Lots drawn from a fixed seed, the same on every machine. */
final class Lots {

    private static final long SEED = 20_260_101L;

    private final SplittableRandom random = new SplittableRandom(SEED);

    /** Returns a whole number from 0, below a limit. */
    int below(int limit) {
        return random.nextInt(limit);
    }

    /** Puts numbers into an order drawn by lot (Fisher and Yates). */
    void shuffle(int[] all) {
        for (int i = all.length - 1; i > 0; i--) {
            int j = below(i + 1);
            int swapped = all[i];
            all[i] = all[j];
            all[j] = swapped;
        }
    }
}
